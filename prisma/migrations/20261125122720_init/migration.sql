-- CreateTable
CREATE TABLE "Mark" (
    "key" TEXT NOT NULL PRIMARY KEY,
    "value" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "Zip" (
    "zip" TEXT NOT NULL PRIMARY KEY,
    "lat" REAL NOT NULL,
    "lon" REAL NOT NULL,
    "state" TEXT,
    "zone" TEXT
);

-- CreateTable
CREATE TABLE "Taxon" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "data" JSONB NOT NULL
);

-- CreateTable
CREATE TABLE "Job" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "client" TEXT NOT NULL DEFAULT '',
    "address" TEXT NOT NULL DEFAULT '',
    "town" TEXT NOT NULL DEFAULT '',
    "zip" TEXT,
    "state" TEXT,
    "lat" REAL,
    "lon" REAL,
    "elevationFt" REAL,
    "zone" TEXT,
    "zoneByHand" BOOLEAN NOT NULL DEFAULT false,
    "growingTarget" REAL NOT NULL DEFAULT 0.27,
    "winterTarget" REAL NOT NULL DEFAULT 0.2,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "archivedAt" DATETIME,
    "deletedAt" DATETIME
);

-- CreateTable
CREATE TABLE "Bed" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "size" JSONB NOT NULL,
    "light" TEXT NOT NULL,
    "moisture" TEXT NOT NULL,
    "ph" REAL,
    "salt" TEXT NOT NULL,
    "deer" TEXT NOT NULL,
    "faces" TEXT NOT NULL DEFAULT '',
    "notes" TEXT NOT NULL DEFAULT '',
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "deletedAt" DATETIME,
    CONSTRAINT "Bed_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BedRow" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "bedId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "taxonId" TEXT NOT NULL,
    "taxonName" TEXT NOT NULL,
    "quantity" JSONB NOT NULL,
    "spacingFt" REAL,
    "size" TEXT NOT NULL DEFAULT '',
    "remarks" TEXT NOT NULL DEFAULT '',
    "existing" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "BedRow_bedId_fkey" FOREIGN KEY ("bedId") REFERENCES "Bed" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Bed_jobId_position_idx" ON "Bed"("jobId", "position");

-- CreateIndex
CREATE INDEX "BedRow_bedId_position_idx" ON "BedRow"("bedId", "position");
