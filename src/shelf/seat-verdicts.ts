/** How the entries of the shelf would sit in the open plan, as far as it is known; found beside the page. */
import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { PartSpec, Plan } from '../../geometry';
import { planStore } from '../store/plan-store';
import { viewStore } from '../store/view-store';
import { ShelfClient } from '../workers/shelf-client';
import type { SeatVerdict, ShelfCandidate } from '../workers/shelf-request';
import type { ShelfEntry } from './shelf-entry';

interface Known {
  readonly spec: PartSpec;
  readonly verdict: SeatVerdict;
}

export interface ShownVerdict extends SeatVerdict {
  /** False for that of the plan before, until the part has been tried again. */
  readonly fresh: boolean;
}

/** By id of the entry. */
export const verdictStore = createStore<{ readonly verdicts: ReadonlyMap<string, ShownVerdict> }>()(() => ({
  verdicts: new Map(),
}));

/** How often a sorted or narrowed list follows what is being found, ms: it must not jump under the pointer. */
const FOLLOW_MS = 500;

/** Keeps the verdicts up with the plan. */
class SeatWatch {
  private readonly client = new ShelfClient((found) => this.take(found));
  /** What is known about the plan as it is. */
  private known = new Map<string, Known>();
  private plan: Plan | undefined;
  private selected: string | undefined;
  private wanted: readonly ShelfEntry[] = [];
  /** Written to in place: copies of tens of thousands, many times a second, would hold the page up. */
  private shown = new Map<string, ShownVerdict>();

  constructor() {
    planStore.subscribe(() => this.follow());
    viewStore.subscribe(() => this.follow());
    this.follow();
  }

  /** Entries to know about, the most urgent first; none when nobody looks. */
  want(entries: readonly ShelfEntry[]): void {
    this.wanted = entries;
    this.client.want(this.open());
  }

  private open(): readonly ShelfCandidate[] {
    return this.wanted.filter(({ id, spec }) => this.known.get(id)?.spec !== spec);
  }

  /** A plan that is only renamed, or a part that is only being dragged, asks nothing new. */
  private follow(): void {
    const { plan } = planStore.getState();
    const { selectedPart: selected } = viewStore.getState();
    const isSamePlan = plan.parts === this.plan?.parts && plan.gaps === this.plan.gaps;
    if (isSamePlan && selected === this.selected) return;
    // Another part is selected: that matters to those that could take its place, or that of the one before.
    const kinds = new Set([this.selected, selected].map((id) => plan.parts[id ?? '']?.spec.kind));
    const stays = ({ spec }: Known) => isSamePlan && !kinds.has(spec.kind);
    this.known = new Map([...this.known].filter(([, known]) => stays(known)));
    if (!isSamePlan) this.plan = plan;
    this.selected = selected;
    if (this.plan) this.client.setQuestion(this.plan, selected);
    for (const [id, verdict] of this.shown) this.shown.set(id, { ...verdict, fresh: this.known.has(id) });
    this.show();
    this.client.want(this.open());
  }

  private take(found: readonly (readonly [ShelfCandidate, SeatVerdict])[]): void {
    for (const [{ id, spec }, verdict] of found) {
      this.known.set(id, { spec, verdict });
      this.shown.set(id, { ...verdict, fresh: true });
    }
    this.show();
  }

  /** Whoever shows a verdict looks its own up again. */
  private show(): void {
    verdictStore.setState({ verdicts: this.shown });
  }
}

let watch: SeatWatch | undefined;

/** Says which entries matter as long as the list stands: those in view first, then those it is ordered by. */
export function useSeatVerdicts(inView: readonly ShelfEntry[], others: readonly ShelfEntry[]): void {
  useEffect(() => {
    const seen = new Set(inView);
    watch ??= new SeatWatch();
    watch.want([...inView, ...others.filter((entry) => !seen.has(entry))]);
  }, [inView, others]);
  useEffect(() => () => watch?.want([]), []);
}

/** Of one entry; undefined until it is known. */
export function useSeatVerdict(id: string): ShownVerdict | undefined {
  return useStore(verdictStore, ({ verdicts }) => verdicts.get(id));
}

/** All of them, a few times a second, for a list that is sorted or narrowed by them; else none. */
export function useAllVerdicts(needed: boolean): ReadonlyMap<string, ShownVerdict> {
  const [shown, setShown] = useState(NONE);
  useEffect(() => {
    if (!needed) {
      setShown(NONE);
      return undefined;
    }
    const look = () => setShown(new Map(verdictStore.getState().verdicts));
    look();
    return followSlowly(look);
  }, [needed]);
  return shown;
}

/** Calls back some time after a change, however many there are. Returns a function that ends it. */
function followSlowly(look: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const unsubscribe = verdictStore.subscribe(() => {
    timer ??= setTimeout(() => {
      timer = undefined;
      look();
    }, FOLLOW_MS);
  });
  return () => {
    unsubscribe();
    clearTimeout(timer);
  };
}

const NONE: ReadonlyMap<string, ShownVerdict> = new Map();
