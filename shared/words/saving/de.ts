import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  failed:
    'In diesem Browser ließ sich nichts speichern. Speichern Sie Ihren Plan und Ihr Messbuch stattdessen als Dateien.',
  setAside:
    'Ein Teil des hier Gespeicherten war nicht lesbar. Er wurde beiseitegelegt, wie er war: siehe „Beiseitegelegt“ auf der Seite „Anzeige“.',
  newerHere:
    'Ein neueres Paper Reef verwahrt jetzt die Becken dieses Browsers: Was in diesem Fenster geändert wird, bleibt nicht erhalten. Laden Sie es neu, um im neueren weiterzumachen.',
  keepsNothing:
    'Dieser Browser behält hier zwischen zwei Besuchen nichts. Speichern Sie Ihren Plan und Ihr Messbuch stattdessen als Dateien.',
  otherWindow: (tank) =>
    `Ein anderes Fenster hat dieselben Pläne geändert: Sie sind als Becken „${tank}“ erhalten.`,
  otherWindowTank: (tank) => `${tank}, anderes Fenster`,
  removedElsewhere: (tank) => `„${tank}“ wurde in einem anderen Fenster entfernt.`,
  removedAside: (tank) =>
    `Ein anderes Fenster hatte seither in „${tank}“ geschrieben: Es wurde beiseitegelegt, wie es war, siehe „Beiseitegelegt“ auf der Seite „Anzeige“.`,
  unnamedTank: 'Becken ohne Namen',
};
