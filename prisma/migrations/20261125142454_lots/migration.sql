-- The CHECK below is by hand: the database itself refuses a negative quantity. A check is not part of the schema file.
-- CreateTable
CREATE TABLE "Lot" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "taxonId" TEXT NOT NULL,
    "taxonName" TEXT NOT NULL,
    "size" TEXT NOT NULL DEFAULT '',
    "place" TEXT NOT NULL DEFAULT '',
    "quantity" INTEGER NOT NULL DEFAULT 0 CHECK ("quantity" >= 0),
    "priceCents" INTEGER,
    "remarks" TEXT NOT NULL DEFAULT '',
    "countedAt" DATETIME,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "deletedAt" DATETIME
);

-- CreateIndex
CREATE INDEX "Lot_taxonId_idx" ON "Lot"("taxonId");
