/** Tabs in the WAI-ARIA pattern: left and right choose, Tab goes on into the panel. */
import { type KeyboardEvent, type ReactNode, useId } from 'react';
import './tabs.css';

export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly badge?: ReactNode;
}

interface TabsProps {
  readonly label: string;
  readonly tabs: readonly Tab[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
  readonly children: ReactNode;
}

export function Tabs({ label, tabs, chosen, onChoose, children }: TabsProps) {
  const base = useId();
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const at = tabs.findIndex((tab) => tab.id === chosen);
    const next = tabs[(at + step + tabs.length) % tabs.length];
    if (!next) return;
    onChoose(next.id);
    document.getElementById(`${base}-${next.id}`)?.focus();
  };
  return (
    <div className="tabs">
      <div role="tablist" aria-label={label} className="tab-list" onKeyDown={onKeyDown} tabIndex={-1}>
        {tabs.map((tab) => (
          <button
            key={tab.id}
            id={`${base}-${tab.id}`}
            type="button"
            role="tab"
            aria-selected={tab.id === chosen}
            aria-controls={`${base}-panel`}
            tabIndex={tab.id === chosen ? 0 : -1}
            onClick={() => onChoose(tab.id)}
          >
            {tab.label}
            {tab.badge}
          </button>
        ))}
      </div>
      <div id={`${base}-panel`} role="tabpanel" aria-labelledby={`${base}-${chosen}`} className="tab-panel">
        {children}
      </div>
    </div>
  );
}
