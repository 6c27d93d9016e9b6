/** Light or dark sheet: follows the system until a person chooses, and then keeps that choice. */

export type SheetTheme = 'light' | 'dark';

const KEY = 'elbowroom.sheet';
const darkSystem = () => window.matchMedia('(prefers-color-scheme: dark)');

/** Storage may be forbidden; then the choice lasts as long as the tab. */
function chosenTheme(): SheetTheme | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : undefined;
  } catch {
    return undefined;
  }
}

export function currentTheme(): SheetTheme {
  return document.documentElement.dataset.sheet === 'dark' ? 'dark' : 'light';
}

export function setTheme(theme: SheetTheme): void {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // The page still changes; it only cannot remember.
  }
  document.documentElement.dataset.sheet = theme;
}

/** Sets the sheet for the first time and goes on following the system while nothing is chosen. */
export function followTheme(): void {
  const system = darkSystem();
  const apply = () => {
    document.documentElement.dataset.sheet = chosenTheme() ?? (system.matches ? 'dark' : 'light');
  };
  apply();
  system.addEventListener('change', apply);
}
