/** Which rows of a long list stand in the page: those in view and a few about them. */
import { useVirtualizer } from '@tanstack/react-virtual';
import { type RefObject, useLayoutEffect, useState } from 'react';

/** Three lines of text and room to touch, px. */
export const ROW_HEIGHT = 64;
/** A list up to this long stands in the page whole: the browser's own search finds everything in it. */
const ALL_ROWS = 150;
/** Rows kept ready on either side of what is seen. */
const OVERSCAN = 8;
/** Before the page has measured itself. */
const FIRST_SIGHT = 12;

export interface RowWindow {
  /** Indices of the rows that stand in the page. */
  readonly rows: readonly number[];
  /** First and last row in view. */
  readonly first: number;
  readonly last: number;
  readonly scrollTo: (index: number) => void;
  /** Rows that are in view at a time. */
  readonly page: number;
}

export function useRowWindow(count: number, list: RefObject<HTMLElement | null>): RowWindow {
  const [margin, setMargin] = useState(0);
  const virtualizer = useVirtualizer<Element, HTMLElement>({
    count,
    getScrollElement: () => scrollerOf(list.current),
    estimateSize: () => ROW_HEIGHT,
    overscan: OVERSCAN,
    scrollMargin: margin,
    // The tools stick to the top of the list and would cover the row that is scrolled to.
    scrollPaddingStart: toolsHeight(list.current),
  });
  useLayoutEffect(() => {
    const scroller = scrollerOf(list.current);
    if (!scroller || !list.current) return;
    const offset =
      list.current.getBoundingClientRect().top - scroller.getBoundingClientRect().top + scroller.scrollTop;
    setMargin(Math.round(offset));
  });
  const { startIndex: first, endIndex: last } = virtualizer.range ?? {
    startIndex: 0,
    endIndex: Math.min(count, FIRST_SIGHT) - 1,
  };
  return {
    rows:
      count <= ALL_ROWS
        ? Array.from({ length: count }, (_, index) => index)
        : virtualizer.getVirtualItems().map(({ index }) => index),
    first,
    last,
    scrollTo: (index) => virtualizer.scrollToIndex(index),
    page: Math.max(1, last - first - 1),
  };
}

function scrollerOf(element: Element | null): Element | null {
  for (let at = element?.parentElement; at; at = at.parentElement)
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
  return null;
}

function toolsHeight(list: Element | null): number {
  return list?.parentElement?.querySelector('.shelf-tools')?.getBoundingClientRect().height ?? 0;
}
