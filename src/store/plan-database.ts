/**
 * The browser's own storage (IndexedDB): plans, parts made by the person with their earlier versions, remarks and
 * photos on entries of the shelf, and which plan was open last. All access
 * goes through here. Every function rejects when the browser keeps nothing (private windows, storage full or
 * forbidden); `whyNotSaved` puts that in words.
 */
import { type DBSchema, type IDBPDatabase, type IDBPObjectStore, openDB, type StoreNames } from 'idb';
import type { Plan } from '../../geometry';
import type { PartVersion, Photo, Remarks, StoredPart } from './stored-records';

export interface StoredPlan {
  readonly id: string;
  /** Rises with each save; a tab that holds an older number must not overwrite. */
  readonly revision: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** As it was written, perhaps by another version: read it through `readPlanValue`. */
  readonly plan: Plan;
}

export interface PlanDatabase extends DBSchema {
  plans: { key: string; value: StoredPlan };
  ownParts: { key: string; value: StoredPart };
  /** By part and revision. */
  partVersions: { key: [string, number]; value: PartVersion };
  remarks: { key: string; value: Remarks };
  photos: { key: string; value: Photo; indexes: { entry: string } };
  settings: { key: string; value: string };
}

const NAME = 'elbowroom';
/** Raise it with each change of the stores below, and add the step to `upgrade`. */
const VERSION = 2;

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
    async upgrade(db, from, _to, transaction) {
      if (from < 1) {
        db.createObjectStore('plans', { keyPath: 'id' });
        db.createObjectStore('ownParts', { keyPath: 'id' });
        db.createObjectStore('settings');
      }
      if (from < 2) {
        db.createObjectStore('partVersions', { keyPath: ['part', 'revision'] });
        db.createObjectStore('remarks', { keyPath: 'entry' });
        db.createObjectStore('photos', { keyPath: 'id' }).createIndex('entry', 'entry');
        if (from === 1) await numberOwnParts(transaction.objectStore('ownParts'));
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

/** Parts kept by version 1 had neither revision nor time. */
async function numberOwnParts(
  parts: IDBPObjectStore<PlanDatabase, StoreNames<PlanDatabase>[], 'ownParts', 'versionchange'>,
): Promise<void> {
  const savedAt = Date.now();
  for (let cursor = await parts.openCursor(); cursor; cursor = await cursor.continue())
    await cursor.update({ ...cursor.value, revision: 1, savedAt });
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
