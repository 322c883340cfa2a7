import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  cautions: {
    title: 'Bevor Sie etwas am Becken tun',
    now: 'Läuft gerade etwas schief? Erst Menschen, dann Tiere, dann Wasser. Eine Pumpe läuft durch: mit trockenen Händen den Stecker ziehen; ein Heber: den Schlauch anheben; nasser Boden: zuerst der Sicherungskasten; kein Strom: Wasser oder Luft bewegen. Dann messen. „Störfälle“ hat die erste Stunde für jeden Ausfall.',
    limewater:
      'Calciumhydroxid verursacht Hautreizungen und schwere Augenschäden und reizt die Atemwege (H315, H318, H335): Handschuhe und Schutzbrille; von Kindern fernhalten. Im Auge: sofort 15–20 Minuten unter fließendem Wasser spülen, Lider offen halten, Kontaktlinsen heraus, wenn es leicht geht, dann zum Arzt. Verschluckt: Mund ausspülen, kein Erbrechen herbeiführen, Giftnotruf oder Arzt. Pulver: auch Staubmaske. Nie Wasser auf Branntkalk geben.',
    dataSheet:
      'Befolgen Sie das Sicherheitsdatenblatt jedes Zusatzes und die örtlichen Vorschriften. Keine Säuren ins Becken.',
    stops:
      'Dosieren Sie klares Kalkwasser, keinen Schlamm, und nur so schnell, wie Wasser verdunstet. Sichern Sie eine Nachfüllung durch drei oder mehr voneinander unabhängige Sperren: Pegelschalter, zweiter Schalter, Laufzeitgrenze, kleiner Behälter (übliche Praxis).',
    mains:
      'Netzstrom neben Salzwasser: ein Fehlerstromschutzschalter und eine Tropfschlaufe an jedem Kabel.',
    others:
      'Soda und Calciumchlorid reizen die Augen (H319); Calciumchlorid wird in Wasser heiß. Natriumhydroxid verätzt Haut und Augen (H314) und greift Metalle an (H290): dieselbe erste Hilfe, und kein Mittel für Anfänger. Die zwei Teile eines Paars nie mischen und nie an derselben Stelle dosieren.',
    gas: 'CO₂-Gas kann ersticken: Über 5.000 ppm ist kein Platz zum Arbeiten, 40.000 ppm sind unmittelbar gefährlich. Angereicherte Luft nur mit Messgerät und Alarm.',
    test: 'Zuerst wissen, was im Wasser ist, und langsam ändern. Kranke Tiere: eine fachkundige Tierärztin oder einen fachkundigen Tierarzt für Wassertiere fragen.',
  },
  rests: {
    title: 'Worauf dies beruht',
    processes: (name) => `Vorgänge in ${name} und ihre Quellen`,
    chemistry: 'Quellen der Chemie',
    ph: 'Der pH-Wert wird auf der NBS-Skala gezeigt, wie übliche Sonden ihn anzeigen; eine wirkliche Sonde weicht um etwa 0,1 ab. Über 9,5 verlassen die Konstanten ihren Bereich, und es steht nur >9,5 da; Magnesiumhydroxid wird nicht nachgebildet.',
    perLitre:
      'dKH und mg/L gelten je Liter bei der Temperatur des Beckens. Der Salzgehalt folgt aus der Masse von Salz und Wasser; alles Gelöste zählt als Salz.',
    use: 'Ein in dKH am Tag eingegebener Verbrauch ist alles, was am ersten Tag aus dem Anfangsvolumen genommen wird, Futter und Nitrat eingeschlossen. Später nehmen Korallen mehr oder weniger, wenn die Sättigung (Ω) steigt oder fällt, und mehr, wenn sie wachsen. Kalk fällt von selbst nur aus, wenn Sie es einschalten (eine Veranschaulichung, keine Vorhersage).',
    alkalinity:
      'Die Alkalinität wird nie von Hand hingeschrieben: Sie wird aus den Ionen gezählt, die jeder Vorgang bewegt.',
    cycle:
      'Ein Versuch beginnt in seinem eingeschwungenen Tagesgang, wenn Sie nichts anderes wählen.',
    evaporation:
      'In Litern eingegebene Verdunstung ist Süßwasser. Die Nachfüllung folgt dem Pegel; was eine Dosierpumpe zugibt, wird deshalb nicht noch einmal nachgefüllt.',
  },
};
