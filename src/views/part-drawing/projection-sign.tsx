/**
 * The sign of first-angle projection after ISO 5456-2: a cut-off cone, and to its right the view from the left, in
 * which both circles are seen because the small end looks that way.
 */
export function ProjectionSign() {
  return (
    <svg className="projection-sign" width="56" height="24" viewBox="-5 -2 56 24" aria-hidden="true">
      <path d="M0 5 L20 0 L20 20 L0 15 Z" />
      <circle cx="38" cy="10" r="10" />
      <circle cx="38" cy="10" r="5" />
      <path className="centre-line" d="M-4 10 H24 M26 10 H50 M38 -2 V22" />
    </svg>
  );
}
