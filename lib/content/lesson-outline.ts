import { figureNames } from './figure-names';
import { lessonComponentNames } from './lesson-names';

/** What a lesson's text is made of, in the order of reading: what the checks of a lesson look at. */
export type LessonPiece =
  | { kind: 'component'; name: string; attributes: Readonly<Record<string, string>>; text: string }
  | { kind: 'component-end'; name: string }
  | { kind: 'heading'; depth: number; id: string; text: string }
  | { kind: 'link'; url: string };

export type LessonOutline = {
  pieces: readonly LessonPiece[];
  /** The prose, for counting words. */
  prose: string;
  /** Paragraphs that formatting has torn in two, or numbers from their degree sign. */
  torn: readonly string[];
};

type Component = Extract<LessonPiece, { kind: 'component' }>;

/** The components of one name, in the order of reading. */
export const namedComponents = (outline: LessonOutline, name: string): Component[] =>
  outline.pieces.filter(
    (piece): piece is Component => piece.kind === 'component' && piece.name === name,
  );

/** A lesson that may not be shown, with the reason in words for its author. */
export class LessonRefused extends Error {
  override readonly name = 'LessonRefused';
}

/** The part of the syntax tree that is looked at (mdast with MDX's own nodes). */
type Node = {
  type: string;
  children?: Node[];
  name?: string | null;
  value?: string;
  url?: string;
  depth?: number;
  alt?: string | null;
  attributes?: { type: string; name?: string; value?: unknown }[];
  data?: { hProperties?: Record<string, unknown> };
  position?: { start: { line: number } };
};

/** Ends a sentence where a block ends, so that a heading does not run into the next paragraph. */
const blocks = new Set(['paragraph', 'heading', 'listItem', 'tableCell']);

/** A space written as `{' '}`, which formatting puts at the ends of lines: no code in it. */
const isSpace = (node: Node): boolean =>
  node.type === 'mdxTextExpression' && /^(['"]) \1$/.test(node.value ?? '');

function plainText(node: Node): string {
  // A line break in the source is a space in the paragraph.
  if (node.type === 'text' || node.type === 'inlineCode') {
    return (node.value ?? '').replaceAll(/\s+/g, ' ');
  }
  if (isSpace(node)) return ' ';
  const inner = (node.children ?? []).map(plainText).join('');
  return blocks.has(node.type) && !/[.!?:]\s*$/.test(inner) ? `${inner}.\n` : inner;
}

/** Short or unlike sentences on purpose: their paragraphs may end and begin as they like. */
const unlikeSentences = new Set(['listItem', 'tableCell', 'Figure', 'Step']);

const isSentenceEnd = /[.!?:”’)]$/;

/**
 * Whether formatting has torn a paragraph of running text in two: it ends in the space `{' '}` before
 * what was its own, ends like no sentence, or begins like none.
 */
function isTorn(paragraph: Node, within: readonly string[]): boolean {
  const last = paragraph.children?.at(-1);
  if (last !== undefined && isSpace(last)) return true;
  if (within.some((name) => unlikeSentences.has(name))) return false;
  const text = (paragraph.children ?? []).map(plainText).join('').trim();
  return !isSentenceEnd.test(text) || /^\p{Ll}/u.test(text);
}

/** A number of the engine with a space or a line break before its degree sign; °C has one by right. */
const degreesApart = (nodes: readonly Node[]): boolean =>
  nodes.some(
    (node, i) =>
      /^\s+°(?!C)/.test(node.value ?? '') &&
      node.type === 'text' &&
      nodes[i - 1]?.name === 'Computed',
  );

const headingId = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');

function attributesOf(node: Node): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const { type, name, value } of node.attributes ?? []) {
    if (type !== 'mdxJsxAttribute' || name === undefined || typeof value !== 'string') {
      refuse(node, `<${node.name ?? ''}> may only have attributes of the form name="text".`);
    }
    attributes[name] = value;
  }
  return attributes;
}

function refuse(node: Node, message: string): never {
  const line = node.position === undefined ? '' : ` (line ${node.position.start.line} of the text)`;
  throw new LessonRefused(`${message}${line}`);
}

const knownNames: readonly string[] = lessonComponentNames;
const knownFigures: readonly string[] = figureNames;

/**
 * A remark plugin that reads a lesson's outline and refuses what is not of the lesson's vocabulary:
 * raw HTML, expressions, imports, pictures from elsewhere. Headings get ids.
 */
export function readOutline(done: (outline: LessonOutline) => void) {
  return () => (tree: Node) => {
    const pieces: LessonPiece[] = [];
    const torn: string[] = [];

    const visit = (node: Node, within: readonly string[] = []) => {
      const visitInside = () =>
        node.children?.forEach((child) => visit(child, [...within, node.name ?? node.type]));
      switch (node.type) {
        case 'mdxJsxFlowElement':
        case 'mdxJsxTextElement': {
          const name = node.name ?? '';
          if (!knownNames.includes(name)) {
            refuse(node, `<${name}> is not in the vocabulary of a lesson.`);
          }
          const attributes = attributesOf(node);
          if (name === 'Figure') {
            if (!knownFigures.includes(attributes['name'] ?? '')) {
              refuse(node, `There is no figure named "${attributes['name'] ?? ''}".`);
            }
            if ((attributes['alternative'] ?? '').trim() === '') {
              refuse(node, 'A figure needs an alternative: what it shows, in words.');
            }
          }
          pieces.push({ kind: 'component', name, attributes, text: plainText(node) });
          visitInside();
          pieces.push({ kind: 'component-end', name });
          return;
        }
        case 'mdxjsEsm':
        case 'mdxFlowExpression':
        case 'mdxTextExpression':
          if (isSpace(node)) return;
          return refuse(node, 'A lesson holds no code: no imports, exports or {expressions}.');
        case 'html':
          return refuse(node, 'A lesson holds no raw HTML.');
        case 'image':
          return refuse(node, 'Pictures are figures: use <Figure>.');
        case 'heading': {
          const text = plainText(node).trim().replace(/\.$/, '');
          const id = headingId(text);
          node.data = { ...node.data, hProperties: { ...node.data?.hProperties, id } };
          pieces.push({ kind: 'heading', depth: node.depth ?? 0, id, text });
          break;
        }
        case 'paragraph':
          if (isTorn(node, within) || degreesApart(node.children ?? [])) {
            torn.push(plainText(node).trim());
          }
          break;
        case 'link':
          pieces.push({ kind: 'link', url: node.url ?? '' });
          break;
      }
      visitInside();
    };

    visit(tree);
    done({ pieces, prose: plainText(tree), torn });
  };
}
