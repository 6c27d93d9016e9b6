/** The keys of the plan view. They leave alone whatever has keys of its own: fields, tree, tabs, dialogs. */
import { useEffect, useRef } from 'react';
import { nudgeOpenPlan, type ScreenDirection, screenStep } from '../store/nudge';
import { deletePart, turnOpenPart } from '../store/part-actions';
import { previewPlan, redo, undo } from '../store/plan-store';
import { solutionStore } from '../store/solution-store';
import { fitView, lookFrom, type StandardView, selectPart, viewStore } from '../store/view-store';
import { cancelShelfDrag } from '../viewport/shelf-drag';

const NUDGES: Readonly<Record<string, ScreenDirection>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  PageUp: 'nearer',
  PageDown: 'farther',
};

const VIEWS: Readonly<Record<string, StandardView>> = {
  '0': 'three-quarter',
  '1': 'side',
  '2': 'front',
  '3': 'rear',
  '4': 'back',
  '5': 'top',
  '6': 'floor',
};

const HAS_OWN_KEYS = 'input, textarea, select, dialog, [role="tree"], [role="tablist"], [contenteditable]';

const isTextField = (target: EventTarget | null) =>
  target instanceof Element && target.matches('textarea, input:not([type="checkbox"], [type="range"])');

/** Undo works everywhere but in a text field, which has its own. */
function onUndoKeys(event: KeyboardEvent): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || isTextField(event.target)) return false;
  const key = event.key.toLowerCase();
  if (key === 'z' && !event.shiftKey) undo();
  else if (key === 'y' || key === 'z') redo();
  else return false;
  return true;
}

function onPartKeys(event: KeyboardEvent): boolean {
  const { selectedPart, view } = viewStore.getState();
  if (selectedPart === undefined) return false;
  const nudge = NUDGES[event.key];
  if (nudge !== undefined) {
    const { scene } = solutionStore.getState();
    nudgeOpenPlan(scene, selectedPart, screenStep(view, nudge, event.shiftKey ? 0.1 : 1));
    return true;
  }
  if (event.key === 'Delete' || event.key === 'Backspace') deletePart(selectedPart);
  else if (event.key.toLowerCase() === 'r') turnOpenPart(selectedPart);
  else return false;
  return true;
}

function onViewKeys(event: KeyboardEvent, showKeys: () => void): boolean {
  const view = VIEWS[event.key];
  if (view !== undefined) lookFrom(view);
  else if (event.key === '?') showKeys();
  else if (event.key === 'f') fitView();
  else if (event.key === 'x') viewStore.setState(({ xray }) => ({ xray: !xray }));
  else if (event.key === 'Escape') {
    cancelShelfDrag();
    previewPlan(undefined);
    selectPart(undefined);
  } else return false;
  return true;
}

export function useKeys(showKeys: () => void): void {
  const show = useRef(showKeys);
  show.current = showKeys;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      const target = event.target instanceof Element ? event.target : undefined;
      // A dialog whose focused control has gone away leaves the focus to the page behind it.
      if (document.querySelector('dialog[open]')) return;
      const handled =
        onUndoKeys(event) ||
        (!event.ctrlKey &&
          !event.metaKey &&
          !event.altKey &&
          !target?.closest(HAS_OWN_KEYS) &&
          (onPartKeys(event) || onViewKeys(event, () => show.current())));
      if (handled) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
