/**
 * The browser's own storage (IndexedDB): plans, parts made by the person, and which plan was open last. All access
 * goes through here. Every function rejects when the browser keeps nothing (private windows, storage full or
 * forbidden); `whyNotSaved` puts that in words.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { PartSpec, Plan } from '../../geometry';

export interface StoredPlan {
  readonly id: string;
  /** Rises with each save; a tab that holds an older number must not overwrite. */
  readonly revision: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** As it was written, perhaps by another version: read it through `readPlanValue`. */
  readonly plan: Plan;
}

export interface StoredPart {
  readonly id: string;
  readonly spec: PartSpec;
}

interface PlanDatabase extends DBSchema {
  plans: { key: string; value: StoredPlan };
  ownParts: { key: string; value: StoredPart };
  settings: { key: string; value: string };
}

const NAME = 'elbowroom';
/** Raise it with each change of the stores below, and add the step to `upgrade`. */
const VERSION = 1;

let opened: Promise<IDBPDatabase<PlanDatabase>> | undefined;

export function planDatabase(): Promise<IDBPDatabase<PlanDatabase>> {
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

async function open(): Promise<IDBPDatabase<PlanDatabase>> {
  if (typeof indexedDB === 'undefined') throw new Error('this browser has no storage');
  const forget = () => {
    opened = undefined;
  };
  const database = await openDB<PlanDatabase>(NAME, VERSION, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('plans', { keyPath: 'id' });
        db.createObjectStore('ownParts', { keyPath: 'id' });
        db.createObjectStore('settings');
      }
    },
    blocking() {
      // A newer version of the page wants to upgrade: let it, and open again when something is asked of us.
      database.close();
      forget();
    },
    terminated: forget,
  });
  return database;
}

/** Closes the database and forgets it, so that the next call opens it anew. */
export async function closePlanDatabase(): Promise<void> {
  const database = await opened?.catch(() => undefined);
  database?.close();
  opened = undefined;
}

export function whyNotSaved(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') return 'the browser’s storage is full';
  if (name === 'VersionError') return 'a newer version of this page has changed the storage; reload the page';
  return 'this browser keeps no data for this page';
}

/** A key nobody else has. Works without a secure context, where `crypto.randomUUID` is missing. */
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
