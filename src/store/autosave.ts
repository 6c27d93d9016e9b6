/**
 * Saves the open plan soon after each edit, and at once when the page is left; as that save may not be finished any
 * more, the edit is rescued beside it. One save at a time; a save that finds another revision in storage than the one
 * it started from writes nothing and says so.
 */
import type { Plan } from '../../geometry';
import { joinTabs, type TabChannel } from './other-tabs';
import { whyNotSaved } from './plan-database';
import { putPlan } from './plan-library';
import { planStore } from './plan-store';
import { clearRescue, writeRescue } from './rescue';
import { savingStore, setSaving } from './saving-store';

/** Quiet time after an edit before it is written. */
const DELAY_MS = 400;

/** What is known to stand in storage for the open plan. */
interface Base {
  readonly planId: string;
  readonly plan: Plan;
  readonly revision: number | undefined;
}

export interface Autosave {
  /** States what is in storage for the plan that is opened next; without revision: nothing yet. */
  readonly setBase: (planId: string, plan: Plan, revision: number | undefined) => void;
  /** Saves what is not saved yet; resolves when it is written or has failed. */
  readonly flush: () => Promise<void>;
  /** Tells other tabs that a plan was deleted. */
  readonly tellDeleted: (planId: string) => void;
  /** Tells other tabs that storage holds another revision of a plan. */
  readonly tellChanged: (planId: string, revision: number) => void;
  readonly stop: () => void;
}

class PlanSaver implements Autosave {
  private base: Base | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private underWay: Promise<void> = Promise.resolve();
  private readonly channel: TabChannel;
  private readonly unsubscribe: () => void;

  constructor() {
    this.channel = joinTabs((news) => {
      if (news.planId === this.base?.planId) this.hear(news.revision);
    });
    this.unsubscribe = planStore.subscribe(() => {
      if (this.isDirty() && savingStore.getState().kind !== 'overtaken') this.schedule();
    });
  }

  setBase = (planId: string, plan: Plan, revision: number | undefined): void => {
    clearTimeout(this.timer);
    this.base = { planId, plan, revision };
    setSaving({ kind: revision === undefined ? 'saving' : 'saved' });
  };

  flush = (): Promise<void> => {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.underWay = this.underWay.then(() => this.save());
    return this.underWay;
  };

  /** Puts what is not saved yet where it is safe at once, whatever becomes of the page. */
  rescue = (): void => {
    const { base } = this;
    if (base && this.isDirty())
      writeRescue({ planId: base.planId, base: base.revision, plan: planStore.getState().plan });
  };

  tellDeleted = (planId: string): void => this.channel.tell({ planId, revision: undefined });

  tellChanged = (planId: string, revision: number): void => this.channel.tell({ planId, revision });

  stop = (): void => {
    clearTimeout(this.timer);
    this.unsubscribe();
    this.channel.close();
  };

  private hear(revision: number | undefined): void {
    if (revision === undefined) setSaving({ kind: 'overtaken', by: 'deletion' });
    else if (revision > (this.base?.revision ?? 0)) setSaving({ kind: 'overtaken', by: 'newer revision' });
  }

  private isDirty(): boolean {
    const { planId, plan, readOnly } = planStore.getState();
    if (readOnly || !this.base || planId !== this.base.planId) return false;
    return plan !== this.base.plan || this.base.revision === undefined;
  }

  private schedule(): void {
    if (savingStore.getState().kind !== 'off') setSaving({ kind: 'saving' });
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.flush(), DELAY_MS);
  }

  private async save(): Promise<void> {
    const { base } = this;
    if (!base || !this.isDirty() || savingStore.getState().kind === 'overtaken') return;
    const { plan } = planStore.getState();
    try {
      const result = await putPlan(base.planId, plan, base.revision);
      if (result.saved) clearRescue(base.planId);
      if (this.base !== base) return;
      if (!result.saved) {
        setSaving({
          kind: 'overtaken',
          by: result.found === undefined ? 'deletion' : 'newer revision',
        });
        return;
      }
      this.base = { planId: base.planId, plan, revision: result.revision };
      this.channel.tell({ planId: base.planId, revision: result.revision });
      if (this.isDirty()) this.schedule();
      else setSaving({ kind: 'saved' });
    } catch (error) {
      setSaving({ kind: 'off', why: whyNotSaved(error) });
    }
  }
}

export function startAutosave(): Autosave {
  const saver = new PlanSaver();
  const onLeave = () => {
    saver.rescue();
    void saver.flush();
  };
  const onHide = () => {
    if (document.visibilityState === 'hidden') onLeave();
  };
  window.addEventListener('pagehide', onLeave);
  document.addEventListener('visibilitychange', onHide);
  return {
    setBase: saver.setBase,
    flush: saver.flush,
    tellDeleted: saver.tellDeleted,
    tellChanged: saver.tellChanged,
    stop: () => {
      window.removeEventListener('pagehide', onLeave);
      document.removeEventListener('visibilitychange', onHide);
      saver.stop();
    },
  };
}
