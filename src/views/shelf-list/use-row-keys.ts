/** Arrow keys through a list of rows: the focus stays on the same button of the row that it goes to. */
import { type KeyboardEvent, type RefObject, useEffect, useRef, useState } from 'react';
import type { RowWindow } from './use-row-window';

export interface RowKeys {
  /** The one row whose buttons the Tab key reaches. */
  readonly active: number;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
  readonly onFocus: (index: number) => void;
}

export function useRowKeys(
  count: number,
  { scrollTo, page, rows }: RowWindow,
  list: RefObject<HTMLElement | null>,
): RowKeys {
  const [chosen, setActive] = useState(0);
  const active = Math.min(chosen, Math.max(0, count - 1));
  /** The button that is to take the focus as soon as its row stands in the page. */
  const wanted = useRef<string>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a row that is scrolled to comes with the next rows.
  useEffect(() => {
    if (wanted.current === undefined) return;
    const row = list.current?.querySelector(`[data-index="${active}"]`);
    const target = row?.querySelector<HTMLElement>(`[data-action="${wanted.current}"]`);
    const button = target ?? row?.querySelector<HTMLElement>('[data-action="place"]');
    if (!button) return;
    wanted.current = undefined;
    button.focus({ preventScroll: true });
  }, [active, rows, list]);
  return {
    active,
    onFocus: setActive,
    onKeyDown: (event) => {
      const action = event.target instanceof HTMLElement ? event.target.dataset.action : undefined;
      const next = nextRow(event.key, active, page);
      if (action === undefined || next === undefined || event.ctrlKey || event.metaKey || event.altKey)
        return;
      event.preventDefault();
      const to = Math.max(0, Math.min(count - 1, next));
      wanted.current = action;
      setActive(to);
      scrollTo(to);
    },
  };
}

function nextRow(key: string, active: number, page: number): number | undefined {
  switch (key) {
    case 'ArrowDown':
      return active + 1;
    case 'ArrowUp':
      return active - 1;
    case 'PageDown':
      return active + page;
    case 'PageUp':
      return active - page;
    case 'Home':
      return 0;
    case 'End':
      return Number.MAX_SAFE_INTEGER;
    default:
      return undefined;
  }
}
