/** How much of a foreign file is looked at. Beyond these it is refused whole, before it costs memory or patience. */
export const fileLimits = {
  /** Bytes: fifty thousand parts with every field filled take about half of it. */
  bytes: 48_000_000,
  parts: 60_000,
  columns: 600,
  /** Characters of one cell or one text. */
  cell: 2000,
  /** Brackets within brackets; a part needs seven. */
  nesting: 24,
  /** Complaints that are listed; more are counted. */
  faults: 500,
} as const;
