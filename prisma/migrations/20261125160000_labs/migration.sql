-- Whatever was started or set before there were other labs belongs to the first one.
ALTER TABLE "Attempt" ADD COLUMN "lab" TEXT NOT NULL DEFAULT 'pick-the-pair';

ALTER TABLE "AssignmentPart" ADD COLUMN "minutesAllowed" INTEGER;

ALTER TABLE "Accommodation" ADD COLUMN "extraTime" TEXT NOT NULL DEFAULT 'none';

ALTER TABLE "Mark" ADD COLUMN "gateFailed" BOOLEAN NOT NULL DEFAULT false;
