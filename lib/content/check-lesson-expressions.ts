import type { LessonFrontMatter } from './lesson-front-matter';
import { namedComponents, type LessonOutline } from './lesson-outline';
import { UnknownExpression, type Reckoning } from './reckoning';

/** Every number must come from a known quantity, and every reason must be true. */
export function expressionsKnown({
  frontMatter,
  outline,
  reckoning,
}: {
  frontMatter: LessonFrontMatter;
  outline: LessonOutline;
  reckoning: Reckoning;
}): string[] {
  const problems: string[] = [];
  const attempt = (where: string, ask: () => boolean, otherwise: string) => {
    try {
      if (!ask()) problems.push(`${where}: ${otherwise}`);
    } catch (error) {
      if (!(error instanceof UnknownExpression)) throw error;
      problems.push(`${where}: ${error.message}`);
    }
  };
  for (const { attributes } of namedComponents(outline, 'Computed')) {
    const value = attributes['value'] ?? '';
    attempt(`<Computed value="${value}">`, () => reckoning.text(value) !== '', 'is empty');
  }
  for (const { attributes } of namedComponents(outline, 'Figure')) {
    attempt(
      `The figure "${attributes['name'] ?? ''}"`,
      () => reckoning.fill(attributes['alternative'] ?? '') !== '',
      'has no alternative',
    );
  }
  for (const piece of outline.pieces) {
    if (piece.kind !== 'component') continue;
    for (const condition of (piece.attributes['holds'] ?? '').split(';')) {
      if (condition.trim() === '') continue;
      attempt(
        `<${piece.name}>`,
        () => reckoning.holds(condition.trim()),
        `"${condition.trim()}" is not true`,
      );
    }
  }
  for (const { item } of [...frontMatter.retrieval, ...frontMatter.checks]) {
    const where = `The question "${item.id}"`;
    const sentences =
      item.kind === 'choice'
        ? item.options.flatMap((option) => [option.text, option.reason])
        : [item.reason, ...item.slips.map((slip) => slip.reason)];
    for (const sentence of [item.prompt, ...sentences]) {
      attempt(where, () => reckoning.fill(sentence) !== '', 'has an empty sentence');
    }
    if (item.kind === 'numeric') continue;
    for (const condition of item.options.flatMap((option) => option.shownBy)) {
      attempt(where, () => reckoning.holds(condition), `"${condition}" is not true`);
    }
    attempt(
      where,
      () => {
        const measures = item.options.map((option) =>
          option.measure === undefined ? Number.NaN : reckoning.number(option.measure),
        );
        const best = Math.max(...measures);
        return (
          Number.isNaN(best) ||
          measures[item.options.findIndex((one) => one.id === item.key)] === best
        );
      },
      'its key does not have the highest measure',
    );
  }
  return problems;
}
