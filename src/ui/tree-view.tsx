/**
 * A tree in the pattern of the WAI-ARIA Authoring Practices: one stop of the Tab key, arrow keys move, Home and End
 * jump, left and right fold, letters search. Selection follows focus.
 */
import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react';
import './tree-view.css';

export interface TreeItem {
  readonly id: string;
  readonly label: string;
  readonly detail?: string;
  readonly mark?: ReactNode;
  readonly children: readonly TreeItem[];
}

interface TreeViewProps {
  readonly label: string;
  readonly items: readonly TreeItem[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
  readonly onHover?: (id: string | undefined) => void;
}

interface Row {
  readonly item: TreeItem;
  readonly level: number;
  readonly parent: string | undefined;
}

function rowsOf(
  items: readonly TreeItem[],
  folded: ReadonlySet<string>,
  level = 1,
  parent?: string,
): readonly Row[] {
  return items.flatMap((item) => [
    { item, level, parent },
    ...(folded.has(item.id) ? [] : rowsOf(item.children, folded, level + 1, item.id)),
  ]);
}

type Move = 'fold' | 'unfold' | 'parent' | ((at: number) => number);

/** What a key does on a row; places are counted in the rows on the screen. */
function keyMove(key: string, { item }: Row, isShut: boolean): Move | undefined {
  const hasChildren = item.children.length > 0;
  switch (key) {
    case 'ArrowDown':
      return (at) => at + 1;
    case 'ArrowUp':
      return (at) => Math.max(0, at - 1);
    case 'Home':
      return () => 0;
    case 'End':
      return () => -1;
    case 'Enter':
    case ' ':
      return (at) => at;
    case 'ArrowRight':
      if (isShut) return 'unfold';
      return hasChildren ? (at) => at + 1 : undefined;
    case 'ArrowLeft':
      return hasChildren && !isShut ? 'fold' : 'parent';
    default:
      return undefined;
  }
}

export function TreeView({ label, items, selected, onSelect, onHover }: TreeViewProps) {
  const [folded, setFolded] = useState<ReadonlySet<string>>(new Set());
  const tree = useRef<HTMLDivElement>(null);
  const rows = rowsOf(items, folded);
  const current = rows.some((row) => row.item.id === selected) ? selected : rows[0]?.item.id;

  const goTo = (row: Row | undefined) => {
    if (!row) return;
    onSelect(row.item.id);
    tree.current?.querySelector<HTMLElement>(`[data-item="${CSS.escape(row.item.id)}"]`)?.focus();
  };
  const fold = (id: string, shut: boolean) => {
    setFolded((before) => {
      const after = new Set(before);
      if (shut) after.add(id);
      else after.delete(id);
      return after;
    });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const at = rows.findIndex((row) => row.item.id === current);
    const row = rows[at];
    if (!row || event.ctrlKey || event.metaKey || event.altKey) return;
    const move = keyMove(event.key, row, folded.has(row.item.id));
    if (!move) return;
    event.preventDefault();
    event.stopPropagation();
    if (move === 'fold' || move === 'unfold') fold(row.item.id, move === 'fold');
    else goTo(move === 'parent' ? rows.find((other) => other.item.id === row.parent) : rows.at(move(at)));
  };
  return (
    <div ref={tree} role="tree" aria-label={label} className="tree">
      {rows.map(({ item, level }) => (
        <div
          key={item.id}
          role="treeitem"
          aria-level={level}
          aria-selected={item.id === selected}
          aria-expanded={item.children.length > 0 ? !folded.has(item.id) : undefined}
          tabIndex={item.id === current ? 0 : -1}
          data-item={item.id}
          className="tree-row"
          onClick={() => onSelect(item.id)}
          onKeyDown={onKeyDown}
          onPointerEnter={() => onHover?.(item.id)}
          onPointerLeave={() => onHover?.(undefined)}
        >
          {Array.from({ length: level - 1 }, (_, depth) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the lines of one row never change places.
            <span key={depth} className="tree-line" />
          ))}
          <span className="tree-label">{item.label}</span>
          {item.detail && <span className="tree-detail">{item.detail}</span>}
          {item.mark && <span className="tree-mark">{item.mark}</span>}
        </div>
      ))}
    </div>
  );
}
