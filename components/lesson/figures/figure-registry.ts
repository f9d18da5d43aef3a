import type { ComponentType, ReactNode } from 'react';
import type { LessonSlug } from '@/lib/course/lessons';
import type { FigureNameOf } from '@/lib/content/figure-names';
import type { FigureData } from './figure-data';

/** A lesson's figures as they start, drawn by the server: for paper, for no script, and at first. */
export type FigureStills<S extends LessonSlug> = Readonly<
  Record<FigureNameOf<S>, (data: FigureData) => ReactNode>
>;

/** The same as they move, each fetched when it is scrolled to. A figure may do without. */
export type LiveFigures<S extends LessonSlug> = Readonly<
  Partial<Record<FigureNameOf<S>, () => Promise<ComponentType<FigureData>>>>
>;
