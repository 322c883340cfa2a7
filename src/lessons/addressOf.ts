import type { Lesson } from './lesson';

/** Where a lesson is, whole, as a class types or scans it. */
export const addressOf = ({ id }: Lesson): string => `${location.href.split('#')[0]}#lessons/${id}`;
