import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  first: {
    title: 'Ein Becken wie Ihres, in drei Antworten',
    howMuch: 'Wie viel Wasser, ohne Steine?',
    whatLives: 'Was lebt darin?',
    whatBrings: 'Was bringt jetzt Alkalinität?',
    show: 'Auf die Werkbank damit',
    skip: 'Überspringen, ich kenne mich aus',
    why: 'Zeigen, warum die Alkalinität fällt',
    soft: 'neue oder weiche Korallen',
    mixed: 'gemischte Korallen',
    stony: 'dicht mit Steinkorallen',
    none: 'noch nichts',
    noneNext:
      'Wählen Sie unter „Die Nachfüllung“ Kalkwasser, und vergleichen Sie Versuch A mit dem heutigen Plan.',
    limewater: 'Kalkwasser in der Nachfüllung',
    limewaterNext:
      'Ziehen Sie in Versuch A an „Stärke der Mischung“; proben Sie danach bei den Störfällen eine hängende Pumpe.',
    pump: 'Dosierpumpen: Carbonat und Calcium',
    pumpNext:
      'Stellen Sie unter „Dosierpumpen“ Ihre Flaschen und Dosen ein; tragen Sie danach Ihre Tests ins Messbuch ein.',
    water: 'Wasserwechsel',
    waterNext: 'Probieren Sie in Versuch A eine andere Salzmischung oder einen größeren Wechsel.',
    tank: (volume) => `Mein Becken, ${volume}`,
    assumed: (volume, dweller) =>
      `${volume}, ${dweller}; Verdunstung, Verbrauch, Futter und Gasaustausch sind angenommen (übliche Praxis)`,
    untilMeasured: (evaporates, used, next) =>
      `${evaporates} am Tag verdunsten und ${used} am Tag werden verbraucht: Beides ist angenommen, bis Sie es messen. ${next}`,
  },
};
