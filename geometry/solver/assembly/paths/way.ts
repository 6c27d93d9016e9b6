/** A way out of a seat (or, reversed, into it), and everything it meets. */
import type { Motion } from '../../../space/motion';
import { bitOf, type UnitSet } from '../assembly-bodies';

/** The first place on a way where a unit meets another. */
export interface WayContact {
  /** Unit that is met; -1 for what never moves. */
  readonly unit: number;
  /** Box numbers. */
  readonly mover: number;
  readonly obstacle: number;
  /** Which motion of the way (out of the seat), and how far into it: mm of a slide, degrees of a turn. */
  readonly motion: number;
  readonly at: number;
}

/** What one unit meets on one way out. */
export interface WayRecord {
  readonly motions: readonly Motion[];
  /** Movable units that are met anywhere on the way. */
  readonly blockers: UnitSet;
  /** Whether something is met that never moves: the way is then no way at all. */
  readonly fixed: boolean;
  /** First contact with each unit met (and with what never moves). */
  readonly contacts: readonly WayContact[];
}

/** Collects first contacts, one for each unit. */
export class ContactLog {
  blockers: UnitSet = 0n;
  fixed = false;
  readonly contacts: WayContact[] = [];
  private readonly indexOf = new Map<number, number>();

  add(contact: WayContact): void {
    if (contact.unit < 0) this.fixed = true;
    else this.blockers |= bitOf(contact.unit);
    const known = this.indexOf.get(contact.unit);
    if (known === undefined) {
      this.indexOf.set(contact.unit, this.contacts.length);
      this.contacts.push(contact);
      return;
    }
    const before = this.contacts[known];
    if (before && before.motion === contact.motion && contact.at < before.at) this.contacts[known] = contact;
  }

  record(motions: readonly Motion[]): WayRecord {
    return { motions, blockers: this.blockers, fixed: this.fixed, contacts: this.contacts };
  }
}
