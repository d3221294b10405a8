-- By hand: Job gets its columns by ALTER (to recreate it inside the transaction would take the beds with it), every CHECK, and the move of lots' places
-- to a table of their own. A check is not part of the schema file: a generated migration that recreates Lot or Reservation would drop it (lots.test.ts would fail).
-- AlterTable
ALTER TABLE "Bed" ADD COLUMN "drawing" JSONB;
ALTER TABLE "Job" ADD COLUMN "plantingOn" TEXT;
ALTER TABLE "Job" ADD COLUMN "stepsAllowed" INTEGER NOT NULL DEFAULT 0;

-- CreateTable
CREATE TABLE "JobStage" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "stage" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "who" TEXT NOT NULL DEFAULT '',
    "note" TEXT NOT NULL DEFAULT '',
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "JobStage_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Underlay" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "bedId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "mime" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "bytes" BLOB NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Underlay_bedId_fkey" FOREIGN KEY ("bedId") REFERENCES "Bed" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Supplier" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "contact" TEXT NOT NULL DEFAULT '',
    "minimumCents" INTEGER,
    "multiple" INTEGER NOT NULL DEFAULT 1,
    "leadDays" INTEGER,
    "notes" TEXT NOT NULL DEFAULT '',
    "columnMaps" JSONB NOT NULL DEFAULT '{}',
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "deletedAt" DATETIME
);

-- CreateTable
CREATE TABLE "StockPlace" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "block" TEXT NOT NULL DEFAULT '',
    "row" TEXT NOT NULL DEFAULT '',
    "bay" TEXT NOT NULL DEFAULT '',
    "position" INTEGER NOT NULL
);

-- CreateTable
CREATE TABLE "LotEvent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "lotId" TEXT NOT NULL,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "who" TEXT NOT NULL DEFAULT '',
    "kind" TEXT NOT NULL,
    "why" TEXT NOT NULL DEFAULT '',
    "before" JSONB NOT NULL,
    "after" JSONB NOT NULL,
    CONSTRAINT "LotEvent_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Reservation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "lotId" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "bedId" TEXT NOT NULL,
    "rowId" TEXT NOT NULL,
    "open" INTEGER NOT NULL CHECK ("open" >= 0),
    "pulled" INTEGER NOT NULL DEFAULT 0 CHECK ("pulled" >= 0),
    "steps" INTEGER NOT NULL DEFAULT 0,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Reservation_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reservation_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StockList" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplierId" TEXT NOT NULL,
    "fileName" TEXT NOT NULL,
    "lines" INTEGER NOT NULL,
    "who" TEXT NOT NULL DEFAULT '',
    "acceptedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "StockList_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "UnmatchedLine" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplierId" TEXT NOT NULL,
    "listId" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "written" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "size" TEXT NOT NULL DEFAULT '',
    "quantity" INTEGER,
    "prices" JSONB NOT NULL DEFAULT '[]',
    "remarks" TEXT NOT NULL DEFAULT '',
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "UnmatchedLine_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "LearnedName" (
    "supplierId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "taxonId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,

    PRIMARY KEY ("supplierId", "key")
);

-- CreateTable
CREATE TABLE "Truck" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "payloadLb" REAL NOT NULL,
    "deckLengthFt" REAL NOT NULL,
    "deckWidthFt" REAL NOT NULL,
    "clearFt" REAL,
    "position" INTEGER NOT NULL DEFAULT 0
);

-- CreateTable
CREATE TABLE "PullEvent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "lineId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL DEFAULT 0,
    "note" TEXT NOT NULL DEFAULT '',
    "data" TEXT NOT NULL DEFAULT '',
    "who" TEXT NOT NULL DEFAULT '',
    "doneAt" DATETIME NOT NULL,
    "receivedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "knew" INTEGER NOT NULL DEFAULT 0,
    "conflict" BOOLEAN NOT NULL DEFAULT false,
    "settledAt" DATETIME
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Lot" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "taxonId" TEXT NOT NULL,
    "taxonName" TEXT NOT NULL,
    "size" TEXT NOT NULL DEFAULT '',
    "placeId" TEXT,
    "supplierId" TEXT,
    "listId" TEXT,
    "quantity" INTEGER NOT NULL DEFAULT 0 CHECK ("quantity" >= 0),
    "reserved" INTEGER NOT NULL DEFAULT 0 CHECK ("reserved" >= 0 AND "reserved" <= "quantity"),
    "readyFrom" TEXT,
    "priceCents" INTEGER,
    "prices" JSONB NOT NULL DEFAULT '[]',
    "costCents" INTEGER,
    "grade" TEXT NOT NULL DEFAULT '',
    "code" TEXT NOT NULL DEFAULT '',
    "remarks" TEXT NOT NULL DEFAULT '',
    "countedAt" DATETIME,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "deletedAt" DATETIME,
    CONSTRAINT "Lot_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "StockPlace" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Lot_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);
INSERT INTO "StockPlace" ("id", "block", "position") SELECT 'place' || min("id"), "place", row_number() OVER (ORDER BY "place") FROM "Lot" WHERE "place" <> '' GROUP BY "place";
INSERT INTO "new_Lot" ("countedAt", "createdAt", "deletedAt", "id", "placeId", "priceCents", "quantity", "remarks", "size", "taxonId", "taxonName", "updatedAt", "version") SELECT "countedAt", "createdAt", "deletedAt", "id", (SELECT "p"."id" FROM "StockPlace" AS "p" WHERE "p"."block" = "Lot"."place" AND "Lot"."place" <> ''), "priceCents", "quantity", "remarks", "size", "taxonId", "taxonName", "updatedAt", "version" FROM "Lot";
DROP TABLE "Lot";
ALTER TABLE "new_Lot" RENAME TO "Lot";
CREATE INDEX "Lot_taxonId_idx" ON "Lot"("taxonId");
CREATE INDEX "Lot_supplierId_idx" ON "Lot"("supplierId");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE INDEX "JobStage_jobId_createdAt_idx" ON "JobStage"("jobId", "createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "StockPlace_block_row_bay_key" ON "StockPlace"("block", "row", "bay");

-- CreateIndex
CREATE INDEX "LotEvent_lotId_at_idx" ON "LotEvent"("lotId", "at");

-- CreateIndex
CREATE INDEX "Reservation_jobId_idx" ON "Reservation"("jobId");

-- CreateIndex
CREATE UNIQUE INDEX "Reservation_lotId_bedId_rowId_key" ON "Reservation"("lotId", "bedId", "rowId");

-- CreateIndex
CREATE INDEX "UnmatchedLine_supplierId_idx" ON "UnmatchedLine"("supplierId");

-- CreateIndex
CREATE INDEX "PullEvent_jobId_idx" ON "PullEvent"("jobId");

-- CreateIndex
CREATE INDEX "PullEvent_lineId_idx" ON "PullEvent"("lineId");
