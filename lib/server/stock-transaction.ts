// Writes to the stock: one after the other, whoever else writes at the same time.
import { database, type Transaction } from "./database";

/** How long a writer waits for its turn, and for its own work: many come at once on the morning of a sale. */
const WAIT_MS = 30_000;
const TRIES = 6;

function isBusy(error: unknown): boolean {
  return error instanceof Error && /SQLITE_BUSY|database is locked|P1008|P2034/.test(`${error.message} ${"code" in error ? String(error.code) : ""}`);
}

/**
 * Runs the work in a transaction that holds the database's one write lock from its first statement. Another process that holds it longer than SQLite waits
 * is waited for again. Throws what the work throws; then nothing of it is written.
 */
export async function stockTransaction<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await database().$transaction(work, { maxWait: WAIT_MS, timeout: WAIT_MS });
    } catch (error) {
      if (!isBusy(error) || attempt >= TRIES) throw error;
      await new Promise((resolve) => setTimeout(resolve, 40 * attempt));
    }
  }
}

/** Thrown inside a transaction to undo it; its answer is returned by `stockAnswer`, so that expected failures stay returned values. */
class Undone<A> extends Error {
  constructor(readonly answer: A) {
    super("undone");
  }
}

/** As `stockTransaction`, for work that may have to be undone with an answer: it calls `undo(answer)`, and the answer comes back with nothing written. */
export async function stockAnswer<A>(work: (tx: Transaction, undo: (answer: A) => never) => Promise<A>): Promise<A> {
  const undo = (answer: A): never => {
    throw new Undone(answer);
  };
  try {
    return await stockTransaction((tx) => work(tx, undo));
  } catch (error) {
    if (error instanceof Undone) return error.answer as A;
    throw error;
  }
}
