import type { boxTrouble as en } from '../en/box-trouble.ts';

/** What can be wrong with a box, in words for the archer. */
export const boxTrouble: Readonly<Record<keyof typeof en, string>> = {
  'boxTrouble.gone': 'Die Box ist nicht zu erreichen. Alles bleibt hier und geht dorthin, sobald es geht.',
  'boxTrouble.slow': 'Die Box hat nicht rechtzeitig geantwortet. Später wird es wieder versucht; alles bleibt hier.',
  'boxTrouble.full':
    'Beim Anbieter der Box ist kein Platz mehr. Nichts ist verloren: Alles bleibt hier. Bitte den Anbieter, Platz zu schaffen.',
  'boxTrouble.refused':
    'Der Anbieter der Box will ein Passwort oder lässt die App nicht hinein. Alles bleibt hier. Frag den Anbieter.',
  'boxTrouble.fault': 'Beim Anbieter der Box ist etwas gestört. Später wird es wieder versucht; alles bleibt hier.',
  'boxTrouble.noBox':
    'Unter der Adresse antwortet etwas, das keine Box ist, etwa eine Anmeldeseite. Alles bleibt hier. Prüfe die Adresse mit dem Anbieter.',
  'boxTrouble.noLeave':
    'Der Browser lässt die App nicht mehr in den Ordner. Drück auf „Jetzt abgleichen“, um es wieder zu erlauben.',
  'boxTrouble.missing':
    'Eine Datei von {title} war aus der Box verschwunden, bevor sie gelesen werden konnte. Später wird wieder nachgesehen.',
  'boxTrouble.enormous': 'Eine Datei von {title} in der Box ist zu groß für ein Tagebuch. Sie wurde nicht angerührt.',
  'boxTrouble.damaged':
    'Eine Datei von {title} in der Box ist abgeschnitten oder wurde verändert. Sie wurde nicht angerührt; jenes Gerät legt eine heile hinein, sobald es wieder Neues hat.',
  'boxTrouble.foreign':
    'Eine Datei von {title} in der Box ist mit einem anderen Geheimnis versiegelt oder gehört zu einer anderen Box. Sie wurde nicht angerührt.',
  'boxTrouble.swapped':
    'Eine Datei in der Box liegt unter dem Namen von {title}, ist aber nicht von dort. Sie wurde nicht angerührt.',
  'boxTrouble.replayed': 'Jemand hat eine alte Datei von {title} zurück in die Box gelegt. Dadurch kam nichts zurück.',
  'boxTrouble.newer':
    'Auf {title} läuft eine neuere Version der App. Aktualisiere die App hier, um das Neue zu lesen; bis dahin geht nichts verloren.',
  'boxTrouble.nameTaken':
    'Ein anderes Gerät hat unter dem Namen dieses Geräts in die Box geschrieben. Es wurde gelesen, und dieses Gerät macht unter neuem Namen weiter.',
  'boxTrouble.aDevice': 'einem anderen Gerät',
};
