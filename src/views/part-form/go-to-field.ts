import { inputId } from './field-row';

/** Brings the field of a path into view, unfolds what hides it, and gives it the focus. */
export function goToField(path: string): void {
  const input =
    document.getElementById(inputId(path)) ?? document.getElementById(inputId(path.replace(/\.[^.]+$/, '')));
  const fold = input?.closest('details');
  if (fold) fold.open = true;
  input?.scrollIntoView({ block: 'center' });
  input?.focus();
}
