import type { Component } from 'svelte';
import type { Bench } from '../bench/bench.svelte';
import type { Route } from '../address/route.svelte';
import type { TankShelf } from '../shelf/tankShelf.svelte';
import { say } from '../../shared/words/site';
import BenchPage from '../bench/BenchPage.svelte';

export type Page = Component<{ bench: Bench; route: Route; tanks: TankShelf }>;

interface PageEntry {
  /** Also the address's fragment. */
  readonly id: string;
  readonly title: string;
  /** Not in the headline: opened by a link alone. */
  readonly byLinkOnly?: true;
  /** The bench is there at once; the others are fetched when they are first opened. */
  readonly load: () => Page | Promise<Page>;
}

/** Every page, in the order of the headline; the first is the one that opens. */
export const pageList: readonly PageEntry[] = [
  { id: 'bench', title: say.pages.bench, load: () => BenchPage },
  {
    id: 'log',
    title: say.pages.log,
    load: () => import('../diary/LogPage.svelte').then((m) => m.default),
  },
  {
    id: 'drills',
    title: say.pages.drills,
    load: () => import('../drills/DrillsPage.svelte').then((m) => m.default),
  },
  {
    id: 'lessons',
    title: say.pages.lessons,
    load: () => import('../lessons/LessonsPage.svelte').then((m) => m.default),
  },
  {
    id: 'words',
    title: say.pages.words,
    load: () => import('../glossary/WordsPage.svelte').then((m) => m.default),
  },
  {
    id: 'display',
    title: say.pages.display,
    load: () => import('../display/DisplayPage.svelte').then((m) => m.default),
  },
  {
    id: 'tanks',
    title: say.pages.tanks,
    byLinkOnly: true,
    load: () => import('../shelf/TanksPage.svelte').then((m) => m.default),
  },
  {
    id: 'wall',
    title: say.pages.wall,
    byLinkOnly: true,
    load: () => import('../drills/WallPage.svelte').then((m) => m.default),
  },
  {
    id: 'sitter',
    title: say.pages.sitter,
    byLinkOnly: true,
    load: () => import('../diary/away/SitterPage.svelte').then((m) => m.default),
  },
  {
    id: 'plan',
    title: say.pages.plan,
    byLinkOnly: true,
    load: () => import('../link/SharedPage.svelte').then((m) => m.default),
  },
];

export const pageFor = (id: string): PageEntry =>
  pageList.find((page) => page.id === id) ?? pageList[0]!;
