-- CreateTable
CREATE TABLE "Teacher" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "email" TEXT NOT NULL,
    "displayName" TEXT NOT NULL,
    "passwordHash" TEXT NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Class" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "retentionDate" DATETIME NOT NULL,
    "idleSignOutMinutes" INTEGER,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "nextCardNumber" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "ClassMember" (
    "classId" TEXT NOT NULL,
    "teacherId" TEXT NOT NULL,
    "role" TEXT NOT NULL,

    PRIMARY KEY ("classId", "teacherId"),
    CONSTRAINT "ClassMember_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "ClassMember_teacherId_fkey" FOREIGN KEY ("teacherId") REFERENCES "Teacher" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Student" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    "cardNumber" INTEGER NOT NULL,
    "displayName" TEXT NOT NULL,
    "secretHash" TEXT,
    CONSTRAINT "Student_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Accommodation" (
    "studentId" TEXT NOT NULL PRIMARY KEY,
    "extraAttempts" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Accommodation_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Group" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    CONSTRAINT "Group_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "GroupMember" (
    "groupId" TEXT NOT NULL,
    "studentId" TEXT NOT NULL,

    PRIMARY KEY ("groupId", "studentId"),
    CONSTRAINT "GroupMember_groupId_fkey" FOREIGN KEY ("groupId") REFERENCES "Group" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "GroupMember_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Scenario" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    CONSTRAINT "Scenario_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ScenarioVersion" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "scenarioId" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "placeName" TEXT NOT NULL,
    "kitId" TEXT,
    "siteId" TEXT,
    "content" JSONB NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "ScenarioVersion_scenarioId_fkey" FOREIGN KEY ("scenarioId") REFERENCES "Scenario" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Assignment" (
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
    "createdAt" DATETIME NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Assignment_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AssignmentPart" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "assignmentId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "scenarioVersionId" TEXT,
    "templates" JSONB,
    "windowMinutes" INTEGER,
    CONSTRAINT "AssignmentPart_assignmentId_fkey" FOREIGN KEY ("assignmentId") REFERENCES "Assignment" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "AssignmentPart_scenarioVersionId_fkey" FOREIGN KEY ("scenarioVersionId") REFERENCES "ScenarioVersion" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Attempt" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "studentId" TEXT NOT NULL,
    "assignmentId" TEXT,
    "partId" TEXT,
    "mode" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "status" TEXT NOT NULL DEFAULT 'open',
    "title" TEXT NOT NULL,
    "placeName" TEXT NOT NULL,
    "kitId" TEXT,
    "template" TEXT NOT NULL,
    "seed" TEXT NOT NULL,
    "variant" JSONB NOT NULL,
    "answerKey" JSONB NOT NULL,
    "policy" JSONB,
    "dueTimeZone" TEXT NOT NULL,
    "graderVersion" INTEGER NOT NULL,
    "generatorVersion" INTEGER NOT NULL,
    "catalogueVersion" TEXT NOT NULL,
    "zoneRulesVersion" TEXT NOT NULL,
    "startedAt" DATETIME NOT NULL,
    "submittedAt" DATETIME,
    "submission" JSONB,
    "submissionKey" TEXT,
    CONSTRAINT "Attempt_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Attempt_assignmentId_fkey" FOREIGN KEY ("assignmentId") REFERENCES "Assignment" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Attempt_partId_fkey" FOREIGN KEY ("partId") REFERENCES "AssignmentPart" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Event" (
    "attemptId" TEXT NOT NULL,
    "sequence" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "at" DATETIME NOT NULL,

    PRIMARY KEY ("attemptId", "sequence"),
    CONSTRAINT "Event_attemptId_fkey" FOREIGN KEY ("attemptId") REFERENCES "Attempt" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Mark" (
    "attemptId" TEXT NOT NULL,
    "graderVersion" INTEGER NOT NULL,
    "total" REAL NOT NULL,
    "result" JSONB NOT NULL,
    "gradedAt" DATETIME NOT NULL,

    PRIMARY KEY ("attemptId", "graderVersion"),
    CONSTRAINT "Mark_attemptId_fkey" FOREIGN KEY ("attemptId") REFERENCES "Attempt" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Override" (
    "studentId" TEXT NOT NULL,
    "assignmentId" TEXT NOT NULL,
    "mark" REAL,
    "excused" BOOLEAN NOT NULL DEFAULT false,
    "note" TEXT NOT NULL,
    "changedAt" DATETIME NOT NULL,

    PRIMARY KEY ("studentId", "assignmentId"),
    CONSTRAINT "Override_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Override_assignmentId_fkey" FOREIGN KEY ("assignmentId") REFERENCES "Assignment" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Extension" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "assignmentId" TEXT NOT NULL,
    "studentId" TEXT,
    "groupId" TEXT,
    "dueAt" DATETIME NOT NULL,
    "note" TEXT NOT NULL,
    "changedAt" DATETIME NOT NULL,
    CONSTRAINT "Extension_assignmentId_fkey" FOREIGN KEY ("assignmentId") REFERENCES "Assignment" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Extension_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Extension_groupId_fkey" FOREIGN KEY ("groupId") REFERENCES "Group" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Observation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "studentId" TEXT NOT NULL,
    "skill" TEXT NOT NULL,
    "level" INTEGER NOT NULL,
    "gates" JSONB NOT NULL,
    "instrument" TEXT NOT NULL,
    "conditions" JSONB NOT NULL,
    "note" TEXT NOT NULL,
    "observedAt" DATETIME NOT NULL,
    "assessorId" TEXT,
    CONSTRAINT "Observation_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Observation_assessorId_fkey" FOREIGN KEY ("assessorId") REFERENCES "Teacher" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Audit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "classId" TEXT NOT NULL,
    "teacherId" TEXT,
    "action" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,
    "reason" TEXT,
    "graderVersion" INTEGER,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Audit_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenHash" TEXT NOT NULL,
    "teacherId" TEXT,
    "studentId" TEXT,
    "device" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "lastSeenAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "Session_teacherId_fkey" FOREIGN KEY ("teacherId") REFERENCES "Teacher" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Session_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "classId" TEXT,
    "role" TEXT,
    "invitedById" TEXT,
    "createdAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "usedAt" DATETIME,
    CONSTRAINT "Invitation_classId_fkey" FOREIGN KEY ("classId") REFERENCES "Class" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Invitation_invitedById_fkey" FOREIGN KEY ("invitedById") REFERENCES "Teacher" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SecurityEvent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "subject" TEXT,
    "at" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Place" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "name" TEXT NOT NULL,
    "foldedName" TEXT NOT NULL,
    "foldedAscii" TEXT NOT NULL,
    "country" TEXT NOT NULL,
    "region" TEXT NOT NULL,
    "latitudeDeg" REAL NOT NULL,
    "longitudeDeg" REAL NOT NULL,
    "elevationM" INTEGER NOT NULL,
    "timeZone" TEXT NOT NULL,
    "population" INTEGER NOT NULL
);

-- CreateTable
CREATE TABLE "ContentImport" (
    "name" TEXT NOT NULL PRIMARY KEY,
    "version" TEXT NOT NULL,
    "importedAt" DATETIME NOT NULL
);

-- CreateIndex
CREATE UNIQUE INDEX "Teacher_email_key" ON "Teacher"("email");

-- CreateIndex
CREATE UNIQUE INDEX "Class_code_key" ON "Class"("code");

-- CreateIndex
CREATE INDEX "ClassMember_teacherId_idx" ON "ClassMember"("teacherId");

-- CreateIndex
CREATE UNIQUE INDEX "Student_classId_cardNumber_key" ON "Student"("classId", "cardNumber");

-- CreateIndex
CREATE UNIQUE INDEX "Group_classId_name_key" ON "Group"("classId", "name");

-- CreateIndex
CREATE INDEX "GroupMember_studentId_idx" ON "GroupMember"("studentId");

-- CreateIndex
CREATE INDEX "Scenario_classId_idx" ON "Scenario"("classId");

-- CreateIndex
CREATE UNIQUE INDEX "ScenarioVersion_scenarioId_version_key" ON "ScenarioVersion"("scenarioId", "version");

-- CreateIndex
CREATE INDEX "Assignment_classId_idx" ON "Assignment"("classId");

-- CreateIndex
CREATE INDEX "AssignmentPart_scenarioVersionId_idx" ON "AssignmentPart"("scenarioVersionId");

-- CreateIndex
CREATE UNIQUE INDEX "AssignmentPart_assignmentId_position_key" ON "AssignmentPart"("assignmentId", "position");

-- CreateIndex
CREATE INDEX "Attempt_assignmentId_idx" ON "Attempt"("assignmentId");

-- CreateIndex
CREATE INDEX "Attempt_partId_idx" ON "Attempt"("partId");

-- CreateIndex
CREATE UNIQUE INDEX "Attempt_studentId_assignmentId_mode_number_key" ON "Attempt"("studentId", "assignmentId", "mode", "number");

-- CreateIndex
CREATE INDEX "Override_assignmentId_idx" ON "Override"("assignmentId");

-- CreateIndex
CREATE INDEX "Extension_studentId_idx" ON "Extension"("studentId");

-- CreateIndex
CREATE INDEX "Extension_groupId_idx" ON "Extension"("groupId");

-- CreateIndex
CREATE UNIQUE INDEX "Extension_assignmentId_studentId_key" ON "Extension"("assignmentId", "studentId");

-- CreateIndex
CREATE UNIQUE INDEX "Extension_assignmentId_groupId_key" ON "Extension"("assignmentId", "groupId");

-- CreateIndex
CREATE INDEX "Observation_studentId_idx" ON "Observation"("studentId");

-- CreateIndex
CREATE INDEX "Observation_assessorId_idx" ON "Observation"("assessorId");

-- CreateIndex
CREATE INDEX "Audit_classId_at_idx" ON "Audit"("classId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "Session_tokenHash_key" ON "Session"("tokenHash");

-- CreateIndex
CREATE INDEX "Session_teacherId_idx" ON "Session"("teacherId");

-- CreateIndex
CREATE INDEX "Session_studentId_idx" ON "Session"("studentId");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenHash_key" ON "Invitation"("tokenHash");

-- CreateIndex
CREATE INDEX "Invitation_classId_idx" ON "Invitation"("classId");

-- CreateIndex
CREATE INDEX "Invitation_invitedById_idx" ON "Invitation"("invitedById");

-- CreateIndex
CREATE INDEX "SecurityEvent_at_idx" ON "SecurityEvent"("at");

-- CreateIndex
CREATE INDEX "Place_foldedName_idx" ON "Place"("foldedName");

-- CreateIndex
CREATE INDEX "Place_foldedAscii_idx" ON "Place"("foldedAscii");

