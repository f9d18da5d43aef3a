-- DropIndex
DROP INDEX "Attempt_studentId_assignmentId_mode_number_key";

-- AlterTable
ALTER TABLE "Student" ADD COLUMN "leftAt" DATETIME;
ALTER TABLE "Student" ADD COLUMN "sourcedId" TEXT;

-- AlterTable
ALTER TABLE "Group" ADD COLUMN "kitId" TEXT;

-- AlterTable
ALTER TABLE "Attempt" ADD COLUMN "returnedAt" DATETIME;

-- CreateTable
CREATE TABLE "Comment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "attemptId" TEXT NOT NULL,
    "criterion" TEXT NOT NULL DEFAULT '',
    "text" TEXT NOT NULL,
    "teacherId" TEXT,
    "changedAt" DATETIME NOT NULL,
    CONSTRAINT "Comment_attemptId_fkey" FOREIGN KEY ("attemptId") REFERENCES "Attempt" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Comment_teacherId_fkey" FOREIGN KEY ("teacherId") REFERENCES "Teacher" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "CoverLink" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdById" TEXT,
    "createdAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "CoverLink_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "CoverLink_createdById_fkey" FOREIGN KEY ("createdById") REFERENCES "Teacher" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Class" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "retentionDate" DATETIME NOT NULL,
    "idleSignOutMinutes" INTEGER,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "nextCardNumber" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL,
    "archivedAt" DATETIME,
    "signOffLevel" INTEGER NOT NULL DEFAULT 3,
    "sourcedId" TEXT
);
INSERT INTO "new_Class" ("code", "createdAt", "id", "idleSignOutMinutes", "isDemo", "name", "nextCardNumber", "retentionDate", "timeZone") SELECT "code", "createdAt", "id", "idleSignOutMinutes", "isDemo", "name", "nextCardNumber", "retentionDate", "timeZone" FROM "Class";
DROP TABLE "Class";
ALTER TABLE "new_Class" RENAME TO "Class";
CREATE UNIQUE INDEX "Class_code_key" ON "Class"("code");
CREATE TABLE "new_Assignment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'draft',
    "attemptsAllowed" INTEGER,
    "dueAt" DATETIME,
    "dueTimeZone" TEXT NOT NULL,
    "graceMinutes" INTEGER NOT NULL,
    "latePenaltyPerDay" REAL NOT NULL,
    "latePenaltyCap" REAL NOT NULL,
    "passMark" REAL NOT NULL,
    "feedback" TEXT NOT NULL,
    "counting" TEXT NOT NULL,
    "publishedAt" DATETIME,
    "feedbackReleasedAt" DATETIME,
    "weight" REAL NOT NULL DEFAULT 1,
    "needsSignOff" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" DATETIME NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Assignment_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);
INSERT INTO "new_Assignment" ("attemptsAllowed", "classId", "counting", "createdAt", "dueAt", "dueTimeZone", "feedback", "feedbackReleasedAt", "graceMinutes", "id", "latePenaltyCap", "latePenaltyPerDay", "passMark", "publishedAt", "state", "title", "version") SELECT "attemptsAllowed", "classId", "counting", "createdAt", "dueAt", "dueTimeZone", "feedback", "feedbackReleasedAt", "graceMinutes", "id", "latePenaltyCap", "latePenaltyPerDay", "passMark", "publishedAt", "state", "title", "version" FROM "Assignment";
DROP TABLE "Assignment";
ALTER TABLE "new_Assignment" RENAME TO "Assignment";
CREATE INDEX "Assignment_classId_idx" ON "Assignment"("classId");
CREATE TABLE "new_AssignmentPart" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "assignmentId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "scenarioVersionId" TEXT,
    "templates" JSONB,
    "windowMinutes" INTEGER,
    "minutesAllowed" INTEGER,
    "weight" REAL NOT NULL DEFAULT 1,
    CONSTRAINT "AssignmentPart_assignmentId_fkey" FOREIGN KEY ("assignmentId") REFERENCES "Assignment" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "AssignmentPart_scenarioVersionId_fkey" FOREIGN KEY ("scenarioVersionId") REFERENCES "ScenarioVersion" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);
INSERT INTO "new_AssignmentPart" ("assignmentId", "id", "kind", "minutesAllowed", "position", "reference", "scenarioVersionId", "templates", "windowMinutes") SELECT "assignmentId", "id", "kind", "minutesAllowed", "position", "reference", "scenarioVersionId", "templates", "windowMinutes" FROM "AssignmentPart";
DROP TABLE "AssignmentPart";
ALTER TABLE "new_AssignmentPart" RENAME TO "AssignmentPart";
CREATE INDEX "AssignmentPart_scenarioVersionId_idx" ON "AssignmentPart"("scenarioVersionId");
CREATE UNIQUE INDEX "AssignmentPart_assignmentId_position_key" ON "AssignmentPart"("assignmentId", "position");
CREATE TABLE "new_Observation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "studentId" TEXT NOT NULL,
    "skill" TEXT NOT NULL,
    "level" INTEGER NOT NULL,
    "gates" JSONB NOT NULL,
    "instrument" TEXT NOT NULL,
    "conditions" JSONB NOT NULL,
    "note" TEXT NOT NULL,
    "prompts" INTEGER NOT NULL DEFAULT 0,
    "observedAt" DATETIME NOT NULL,
    "key" TEXT NOT NULL,
    "receivedAt" DATETIME NOT NULL,
    "retractedAt" DATETIME,
    "assessorId" TEXT,
    CONSTRAINT "Observation_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Observation_assessorId_fkey" FOREIGN KEY ("assessorId") REFERENCES "Teacher" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);
-- An observation from before had no key of a device: its own id serves.
INSERT INTO "new_Observation" ("assessorId", "conditions", "gates", "id", "instrument", "level", "note", "observedAt", "skill", "studentId", "key", "receivedAt") SELECT "assessorId", "conditions", "gates", "id", "instrument", "level", "note", "observedAt", "skill", "studentId", "id", "observedAt" FROM "Observation";
DROP TABLE "Observation";
ALTER TABLE "new_Observation" RENAME TO "Observation";
CREATE UNIQUE INDEX "Observation_key_key" ON "Observation"("key");
CREATE INDEX "Observation_studentId_idx" ON "Observation"("studentId");
CREATE INDEX "Observation_assessorId_idx" ON "Observation"("assessorId");
CREATE TABLE "new_Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenHash" TEXT NOT NULL,
    "teacherId" TEXT,
    "studentId" TEXT,
    "coverId" TEXT,
    "device" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "lastSeenAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "Session_teacherId_fkey" FOREIGN KEY ("teacherId") REFERENCES "Teacher" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Session_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Session_coverId_fkey" FOREIGN KEY ("coverId") REFERENCES "CoverLink" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);
INSERT INTO "new_Session" ("createdAt", "device", "endedAt", "id", "lastSeenAt", "studentId", "teacherId", "tokenHash") SELECT "createdAt", "device", "endedAt", "id", "lastSeenAt", "studentId", "teacherId", "tokenHash" FROM "Session";
DROP TABLE "Session";
ALTER TABLE "new_Session" RENAME TO "Session";
CREATE UNIQUE INDEX "Session_tokenHash_key" ON "Session"("tokenHash");
CREATE INDEX "Session_teacherId_idx" ON "Session"("teacherId");
CREATE INDEX "Session_studentId_idx" ON "Session"("studentId");
CREATE INDEX "Session_coverId_idx" ON "Session"("coverId");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE INDEX "Comment_teacherId_idx" ON "Comment"("teacherId");

-- CreateIndex
CREATE UNIQUE INDEX "Comment_attemptId_criterion_key" ON "Comment"("attemptId", "criterion");

-- CreateIndex
CREATE UNIQUE INDEX "CoverLink_tokenHash_key" ON "CoverLink"("tokenHash");

-- CreateIndex
CREATE INDEX "CoverLink_classId_idx" ON "CoverLink"("classId");

-- CreateIndex
CREATE INDEX "CoverLink_createdById_idx" ON "CoverLink"("createdById");

-- CreateIndex
CREATE UNIQUE INDEX "Student_classId_sourcedId_key" ON "Student"("classId", "sourcedId");

-- CreateIndex
CREATE UNIQUE INDEX "Attempt_studentId_partId_mode_number_key" ON "Attempt"("studentId", "partId", "mode", "number");

