-- Adds columns one by one: the table stays, and so do the beds that refer to it.
-- AlterTable
ALTER TABLE "Job" ADD COLUMN "microclimate" TEXT NOT NULL DEFAULT 'open';
ALTER TABLE "Job" ADD COLUMN "warmingF" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "Job" ADD COLUMN "spring" TEXT NOT NULL DEFAULT 'normal';
