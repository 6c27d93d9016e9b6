/**
 * The last edit before a page is left. IndexedDB may not finish what is begun then; this storage writes at once. What
 * is rescued is taken over at the next start, if storage still holds the revision it was made from.
 */
import { z } from 'zod';
import { type Plan, readPlanValue } from '../../geometry';

/** One entry for each plan: two tabs may be closed together. */
const PREFIX = 'elbowroom rescue ';
/** Nobody misses an edit for longer, ms. */
const KEPT_FOR = 30 * 24 * 3_600_000;

const rescueSchema = z.strictObject({
  planId: z.string().min(1).max(80),
  /** Undefined for a plan that had never been saved. */
  base: z.int().min(1).optional(),
  rescuedAt: z.number(),
  plan: z.unknown(),
});

export interface Rescue {
  readonly planId: string;
  /** The revision in storage that the edit was made from; undefined when there was none yet. */
  readonly base: number | undefined;
  readonly plan: Plan;
}

/** Writes at once. Without such storage, or without room in it, nothing happens. */
export function writeRescue({ planId, base, plan }: Rescue): void {
  const text = JSON.stringify({ planId, base, rescuedAt: Date.now(), plan });
  attempt(() => localStorage.setItem(PREFIX + planId, text));
}

export function clearRescue(planId: string): void {
  attempt(() => localStorage.removeItem(PREFIX + planId));
}

/** All that is there and can be read; what is too old or cannot be read is thrown away. */
export function readRescues(now = Date.now()): readonly Rescue[] {
  const keys = attempt(() => Object.keys(localStorage).filter((key) => key.startsWith(PREFIX))) ?? [];
  return keys.flatMap((key) => {
    const rescue = readRescue(attempt(() => localStorage.getItem(key)) ?? '', now);
    if (!rescue || PREFIX + rescue.planId !== key) {
      attempt(() => localStorage.removeItem(key));
      return [];
    }
    return [rescue];
  });
}

function readRescue(text: string, now: number): Rescue | undefined {
  const value = attempt((): unknown => JSON.parse(text));
  const parsed = rescueSchema.safeParse(value);
  if (!parsed.success || now - parsed.data.rescuedAt > KEPT_FOR) return undefined;
  const { planId, base } = parsed.data;
  const read = readPlanValue(parsed.data.plan);
  return read.ok ? { planId, base, plan: read.plan } : undefined;
}

/** The storage is missing, full or forbidden in some browsers and windows, and then throws. */
function attempt<T>(action: () => T): T | undefined {
  try {
    return action();
  } catch {
    return undefined;
  }
}
