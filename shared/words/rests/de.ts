import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  cautions: {
    title: 'Bevor Sie etwas am Becken tun',
    now: 'Läuft gerade etwas schief? Mit trockenen Händen den Stecker der Nachfüllung ziehen, dann messen.',
    limewater:
      'Calciumhydroxid verursacht Hautreizungen und schwere Augenschäden und reizt die Atemwege (H315, H318, H335): Handschuhe und Schutzbrille; von Kindern fernhalten. Im Auge: viele Minuten mit Wasser spülen und sofort ärztliche Hilfe holen. Nie Wasser auf Branntkalk geben.',
    dataSheet:
      'Befolgen Sie das Sicherheitsdatenblatt jedes Zusatzes und die örtlichen Vorschriften. Keine Säuren ins Becken.',
    stops:
      'Dosieren Sie klares Kalkwasser, keinen Schlamm, und nur so schnell, wie Wasser verdunstet. Sichern Sie eine Nachfüllung durch drei oder mehr voneinander unabhängige Sperren: Pegelschalter, zweiter Schalter, Laufzeitgrenze, kleiner Behälter (übliche Praxis).',
    mains:
      'Netzstrom neben Salzwasser: ein Fehlerstromschutzschalter und eine Tropfschlaufe an jedem Kabel.',
    gas: 'CO₂-Gas kann in einem kleinen Raum ersticken.',
    test: 'Erst testen, dann dosieren, und langsam ändern. Kranke Tiere: eine fachkundige Tierärztin oder einen fachkundigen Tierarzt für Wassertiere fragen.',
  },
  rests: {
    title: 'Worauf dies beruht',
    processes: (name) => `Vorgänge in ${name} und ihre Quellen`,
    chemistry: 'Quellen der Chemie',
    ph: 'Der pH-Wert wird auf der NBS-Skala gezeigt, wie übliche Sonden ihn anzeigen; eine wirkliche Sonde weicht um etwa 0,1 ab. Über 9,5 verlassen die Konstanten ihren Bereich, und es steht nur >9,5 da; Magnesiumhydroxid wird nicht nachgebildet.',
    perLitre:
      'dKH und mg/L gelten je Liter bei der Temperatur des Beckens. Der Salzgehalt folgt aus der Masse von Salz und Wasser; alles Gelöste zählt als Salz.',
    use: 'Ein in dKH am Tag eingegebener Verbrauch ist das, was die Korallen am ersten Tag aus dem Anfangsvolumen nehmen. Später nehmen sie mehr oder weniger, wenn die Sättigung (Ω) steigt oder fällt, und mehr, wenn sie wachsen. Was Futter und sein Nitrat tun, kommt hinzu. Es ist der Gesamtverlust; Kalk fällt daher von selbst erst über Ω 10 aus, wenn Sie nicht mehr einschalten (eine Veranschaulichung, keine Vorhersage).',
    alkalinity:
      'Die Alkalinität wird nie von Hand hingeschrieben: Sie wird aus den Ionen gezählt, die jeder Vorgang bewegt.',
    cycle:
      'Ein Versuch beginnt in seinem eingeschwungenen Tagesgang, wenn Sie nichts anderes wählen.',
    evaporation:
      'In Litern eingegebene Verdunstung ist Süßwasser. Die Nachfüllung folgt dem Pegel; was eine Dosierpumpe zugibt, wird deshalb nicht noch einmal nachgefüllt.',
  },
};
