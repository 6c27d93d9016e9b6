/** Paper is white: while the page is being printed, the light sheet is in place. */
import { useEffect } from 'react';

export function useLightPaper(): void {
  useEffect(() => {
    const { dataset } = document.documentElement;
    let before: string | undefined;
    const toLight = () => {
      before = dataset.sheet;
      dataset.sheet = 'light';
    };
    const back = () => {
      if (before === undefined) delete dataset.sheet;
      else dataset.sheet = before;
    };
    window.addEventListener('beforeprint', toLight);
    window.addEventListener('afterprint', back);
    return () => {
      window.removeEventListener('beforeprint', toLight);
      window.removeEventListener('afterprint', back);
    };
  }, []);
}
