// What the phone keeps while there is no signal: the last list of each job, and the changes that wait to be sent. IndexedDB, because pictures are too large for the other storage.
import type { FieldSnapshot, QueuedEvent } from "@/lib/papers/field-list";

const NAME = "twelvemonth-field";
type Stored = QueuedEvent & { readonly jobId: string; readonly turn: number };

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("lists", { keyPath: "jobId" });
      request.result.createObjectStore("waiting", { keyPath: "id" });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("This phone's storage cannot be opened."));
  });
}

/** Runs one request over a store. Rejects where the phone refuses (private browsing, storage full). */
async function withStore<T>(store: "lists" | "waiting", mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const db = await opened();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = db.transaction(store, mode);
      const request = work(transaction.objectStore(store));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onerror = () => reject(transaction.error ?? new Error("This phone's storage refused."));
      transaction.onabort = () => reject(transaction.error ?? new Error("This phone's storage is full."));
    });
  } finally {
    db.close();
  }
}

export async function listKept(jobId: string): Promise<FieldSnapshot | null> {
  const found = await withStore("lists", "readonly", (store) => store.get(jobId) as IDBRequest<FieldSnapshot | undefined>);
  return found ?? null;
}

export async function listKeep(snapshot: FieldSnapshot): Promise<void> {
  await withStore("lists", "readwrite", (store) => store.put(snapshot));
}

/** Changes of a job that wait, in the order in which they were made. */
export async function waitingEvents(jobId: string): Promise<QueuedEvent[]> {
  const all = await withStore("waiting", "readonly", (store) => store.getAll() as IDBRequest<Stored[]>);
  return all
    .filter((event) => event.jobId === jobId)
    .sort((a, b) => a.turn - b.turn)
    .map(({ jobId: _job, turn: _turn, ...event }) => event);
}

export async function eventKeep(jobId: string, event: QueuedEvent, turn: number): Promise<void> {
  await withStore("waiting", "readwrite", (store) => store.put({ ...event, jobId, turn } satisfies Stored));
}

export async function eventsSent(ids: readonly string[]): Promise<void> {
  for (const id of ids) await withStore("waiting", "readwrite", (store) => store.delete(id));
}
