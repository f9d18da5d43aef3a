-- CreateTable
CREATE TABLE "AskedQuestion" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "studentId" TEXT NOT NULL,
    "lesson" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "skill" TEXT NOT NULL,
    "family" TEXT NOT NULL,
    "template" TEXT NOT NULL,
    "seed" TEXT NOT NULL,
    "generatorVersion" INTEGER NOT NULL,
    "graderVersion" INTEGER NOT NULL,
    "item" JSONB NOT NULL,
    "answer" JSONB,
    "mark" REAL,
    "askedAt" DATETIME NOT NULL,
    "answeredAt" DATETIME,
    CONSTRAINT "AskedQuestion_studentId_fkey" FOREIGN KEY ("studentId") REFERENCES "Student" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE UNIQUE INDEX "AskedQuestion_studentId_lesson_number_key" ON "AskedQuestion"("studentId", "lesson", "number");

