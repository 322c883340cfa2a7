import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  putRight: (fault) => `bemerkt und behoben: ${fault}`,
  passesAbove: (name, limit) => `${name}: steigt über ${limit}`,
  fallsBelow: (name, limit) => `${name}: fällt unter ${limit}`,
  backBelow: (name, limit) => `${name}: wieder unter ${limit}`,
  backAbove: (name, limit) => `${name}: wieder über ${limit}`,
  runsDry: (ph) => `Nachfüllbehälter leer, pH ${ph}`,
  runsOver: 'das Technikbecken läuft über, Wasser auf dem Boden',
  chalk: (dkh) => `Kalk fällt aus und nimmt ${dkh} dKH mit (Veranschaulichung)`,
  allInside: (ph) => `Alles bleibt innerhalb Ihrer Grenzen; der pH erreicht höchstens ${ph}.`,
  phInsideBut: (ph, sides) =>
    `Der pH erreicht höchstens ${ph}, innerhalb Ihrer Grenze; aber: ${sides}.`,
  goesAbove: (name, limit) => `${name} über ${limit}`,
  goesBelow: (name, limit) => `${name} unter ${limit}`,
  phBelowHarm: (ph, harm, high, span) =>
    `Der pH erreicht höchstens ${ph}; er bleibt unter ${harm} und liegt ${span} lang über Ihren ${high}.`,
  phBelowHarmNotBack: (ph, harm, high, span) =>
    `Der pH erreicht höchstens ${ph}; er bleibt unter ${harm}, liegt ${span} lang über Ihren ${high} und kehrt während des Störfalls nicht zurück.`,
  phAboveHarm: (ph, harm, harmSpan, high, span) =>
    `Der pH erreicht höchstens ${ph}; er liegt ${harmSpan} lang über ${harm} und ${span} lang über Ihren ${high}.`,
  phAboveHarmNotBack: (ph, harm, harmSpan, high, span) =>
    `Der pH erreicht höchstens ${ph}; er liegt ${harmSpan} lang über ${harm} und ${span} lang über Ihren ${high} und kehrt während des Störfalls nicht zurück.`,
};
