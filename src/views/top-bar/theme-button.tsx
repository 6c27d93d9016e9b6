/** Light or dark sheet. */
import { useState } from 'react';
import { currentTheme, setTheme } from '../../ui/sheet-theme';

export function ThemeButton() {
  const [theme, keepTheme] = useState(currentTheme);
  const other = theme === 'dark' ? 'light' : 'dark';
  return (
    <button
      type="button"
      className="button icon"
      aria-label={`Change to the ${other} sheet`}
      title={`Change to the ${other} sheet`}
      onClick={() => {
        setTheme(other);
        keepTheme(other);
      }}
    >
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
        <circle cx="8" cy="8" r="5.5" fill="none" stroke="currentColor" />
        <path d="M8 2.5a5.5 5.5 0 0 1 0 11z" fill="currentColor" />
      </svg>
    </button>
  );
}
