import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { course } from '../course/lessons';
import { skills } from '../course/skills';
import { filesOfLesson, registered, registrations } from './new-lesson-files';

const help = `Makes the folders of a new lesson, the last of the course, and enters it everywhere.

  npm run new-lesson -- SLUG "Title" SKILL     small letters and hyphens; one of
                                               ${skills.join(' ')}

Then replace what stands in ‹angle quotes›, give it two figures and six families of questions (see
DEVELOPERS.md, "How to add"), join it to its neighbours (previous, next), and let npm test name what is
still missing.`;

function refuse(message: string): void {
  console.error(`${message}\n\n${help}`);
  process.exitCode = 2;
}

function main(): void {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { help: { type: 'boolean', short: 'h', default: false } },
  });
  if (values.help) {
    console.log(help);
    return;
  }
  const [slug = '', title = '', wanted = ''] = positionals;
  const skill = skills.find((one) => one === wanted);
  if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(slug)) {
    refuse(`"${slug}" is no slug: use small letters, figures and hyphens.`);
    return;
  }
  if (title.trim() === '') {
    refuse('The lesson needs a title.');
    return;
  }
  if (skill === undefined) {
    refuse(`"${wanted}" is no skill.`);
    return;
  }
  const lesson = { slug, title, skill, number: course.length + 1 };
  const files = filesOfLesson(lesson);
  const there = [...files.keys()].find((file) => existsSync(file));
  if (there !== undefined) {
    refuse(`${there} is there already. Nothing was changed.`);
    return;
  }

  // All texts first: a registry that has changed its form stops everything before anything is written.
  const texts = [
    ...files,
    ...registrations(lesson).map((one): [string, string] => [
      one.file,
      registered(readFileSync(one.file, 'utf8'), one),
    ]),
  ];
  for (const [file, text] of texts) {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
    console.log(file);
  }
}

main();
