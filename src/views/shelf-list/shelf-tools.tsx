/** Search, filters and order of the shelf. */
import { type ReactNode, useState } from 'react';
import { kindName, partKinds } from '../../../geometry';
import { type ShelfOrder, type ShelfWish, shelfOrders } from '../../shelf/arrange-shelf';
import { readNumber } from '../../ui/numbers';

interface ShelfToolsProps {
  readonly wish: ShelfWish;
  readonly onWish: (change: Partial<ShelfWish>) => void;
  readonly onNewPart: () => void;
  readonly onTidy: () => void;
  readonly onBackup: () => void;
  readonly onFiles: () => void;
  /** How many parts are shown. */
  readonly children: ReactNode;
}

const ORDER_NAMES: Readonly<Record<ShelfOrder, string>> = {
  shelf: 'As on the shelf',
  'most room': 'Most room first',
  tightest: 'Tightest first',
  length: 'Longest edge',
  price: 'Price',
  mass: 'Mass',
};

export function ShelfTools({
  wish,
  onWish,
  onNewPart,
  onTidy,
  onBackup,
  onFiles,
  children,
}: ShelfToolsProps) {
  const [more, setMore] = useState(false);
  const { typed, kind, fitting } = wish;
  return (
    <div className="shelf-tools">
      <div className="shelf-search">
        <input
          type="search"
          className="field"
          placeholder="Find a part"
          aria-label="Find a part on the shelf"
          value={typed}
          onChange={(event) => onWish({ typed: event.target.value })}
        />
        <button type="button" className="button" onClick={onNewPart}>
          New part
        </button>
      </div>
      <div className="shelf-filters">
        <select
          className="select"
          aria-label="Kind of part"
          value={kind ?? ''}
          onChange={(event) => onWish({ kind: partKinds.find((one) => one === event.target.value) })}
        >
          <option value="">All kinds</option>
          {partKinds.map((one) => (
            <option key={one} value={one}>
              {kindName(one)}
            </option>
          ))}
        </select>
        <label className="check">
          <input
            type="checkbox"
            checked={fitting}
            onChange={(event) => onWish({ fitting: event.target.checked })}
          />
          Only what fits
        </label>
      </div>
      {more && (
        <MoreTools wish={wish} onWish={onWish} onTidy={onTidy} onBackup={onBackup} onFiles={onFiles} />
      )}
      <div className="shelf-count">
        {children}
        <button
          type="button"
          className="button small plain"
          aria-expanded={more}
          aria-controls="shelf-more"
          onClick={() => setMore(!more)}
        >
          {more ? 'Less' : 'More'}
        </button>
      </div>
    </div>
  );
}

function MoreTools({
  wish,
  onWish,
  onTidy,
  onBackup,
  onFiles,
}: Omit<ShelfToolsProps, 'onNewPart' | 'children'>) {
  const { order, longest, favourites } = wish;
  return (
    <div id="shelf-more" className="shelf-more">
      <label className="labelled">
        <span>Order</span>
        <select
          className="select"
          value={order}
          onChange={(event) =>
            onWish({ order: shelfOrders.find((one) => one === event.target.value) ?? 'shelf' })
          }
        >
          {shelfOrders.map((one) => (
            <option key={one} value={one}>
              {ORDER_NAMES[one]}
            </option>
          ))}
        </select>
      </label>
      <label className="labelled">
        <span>Longest, mm</span>
        <input
          className="field number"
          inputMode="decimal"
          placeholder="any"
          defaultValue={longest === undefined ? '' : String(longest)}
          onChange={(event) => onWish({ longest: readNumber(event.target.value) })}
        />
      </label>
      <label className="check shelf-favourites">
        <input
          type="checkbox"
          checked={favourites}
          onChange={(event) => onWish({ favourites: event.target.checked })}
        />
        Favourites
      </label>
      <div className="shelf-more-row">
        <button type="button" className="button small" onClick={onTidy}>
          Duplicates
        </button>
        <button type="button" className="button small" onClick={onBackup}>
          Backup
        </button>
        <button type="button" className="button small" onClick={onFiles}>
          Part files
        </button>
      </div>
    </div>
  );
}
