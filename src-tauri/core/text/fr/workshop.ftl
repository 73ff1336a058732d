### Les données de l’atelier, ses unités, et ce qui en figure sur les papiers.

length-um = { $um } µm
length-thou = { $thou } thou
length-inch = { $inch } in
readings-joint = { " ; " }
odometer-converted = { $converted } (lu : { $read })

letterhead-phone = Téléphone { $phone }
note-ask-named = Demandez à { $workshop }.
note-ask-named-technician = Demandez à { $workshop }. Nom noté au contrôle : { $technician }.
note-ask-phone = Téléphone : { $phone }.
note-receipt-from = Note de : { $workshop }

## La décision du propriétaire quand il n’y a rien à réparer. Les trois sont notées de même sous chaque classement.
decision-repair-notice = Je veux qu’on regarde encore
decision-decide-later-notice = Je vais y réfléchir
decision-decline-notice = Je ne veux rien de plus
decision-repair-unrated = Finissez le contrôle, s’il vous plaît
decision-decide-later-unrated = Je vais y réfléchir
decision-decline-unrated = Je ne veux pas de contrôle
decision-short-repair = d’accord pour la suite
decision-short-decide-later = réfléchit encore
decision-short-decline = laissé tel quel

## Le constat.
finding-heading-scope = Étendue du travail sur le roulement
finding-heading-gauges = Lectures du comparateur
finding-not-checked = Pas contrôlé : { $steps }.
detail-gauge = Lu au comparateur : voir le tableau des lectures.
gauge-column-place = Où
gauge-column-readings = Lectures
gauge-column-mean = Moyenne au roulement
gauge-column-expanded = Incertitude élargie, 95 %
gauge-column-limit = Limite
gauge-column-decision = Décision
gauge-plus-minus = ± { $expanded }
gauge-expanded-none = pas connue d’après une seule lecture
gauge-limit-unknown = aucune connue

scope-before-teardown = La mesure après démontage décide lequel de ces travaux il faut. Tant que le roulement n’est pas sorti et que son logement n’est pas mesuré, personne ne peut le dire.
scope-bench = La mesure donne : { $verdict }
scope-bearings-only = Roulements seuls
scope-bearings-only-about = Des roulements neufs dans le logement tel qu’il est, s’il est rond, serré et sain.
scope-skim-and-sleeve = Logement repris et chemisé
scope-skim-and-sleeve-about = Le logement usé est réalésé et une chemise est emmanchée, s’il reste assez de paroi.
scope-replace-housing = Palier remplacé
scope-replace-housing-about = Un palier neuf et des roulements neufs, s’il est fissuré ou s’il reste trop peu de paroi.
scope-chosen = Résultat de la mesure
scope-ruled-out = Écarté
scope-open = Ouvert
scope-hours = { $from } à { $to } h
scope-hours-exact = { $hours } h
scope-hours-are = Les heures sont celles dont cet atelier a d’habitude besoin ; une voiture peut en demander plus ou moins.
scope-rate = Taux : { $rate } l’heure, tel que l’atelier l’a noté.
scope-no-quote = Ceci est une étendue de travail, jamais un devis.

paper-label-unprintable = « […] » remplace des lettres pour lesquelles ce papier n’a pas de police. L’enregistrement de la visite les garde telles qu’elles ont été saisies.

## L’écran.
ui-workshop = L’atelier
ui-workshop-about = Ce que vous notez figure désormais sur chaque papier. Ce qui reste vide est laissé de côté.
ui-workshop-name = Nom
ui-workshop-address = Adresse, ligne par ligne
ui-workshop-phone = Téléphone
ui-workshop-length = Longueurs
ui-workshop-length-none = Selon l’usage de la langue
ui-workshop-length-mm = Millimètres
ui-workshop-length-thou = Millièmes de pouce
ui-workshop-distance = Distances parcourues
ui-workshop-distance-none = Telles qu’elles ont été lues
ui-workshop-distance-km = Kilomètres
ui-workshop-distance-miles = Milles anglais
ui-workshop-work = Travail sur le roulement
ui-workshop-work-about = Heures que chaque travail vous prend d’habitude. Un constat les montre comme étendue de travail, jamais comme devis.
ui-workshop-from = Heures de
ui-workshop-to = Heures à
ui-workshop-rate = Taux horaire
ui-workshop-currency = Monnaie
ui-workshop-saved = Enregistré. Chaque papier le porte désormais.
ui-workshop-draft = Pas encore enregistré. Ce que vous avez écrit reste ici jusqu’à ce que vous l’enregistriez ou l’abandonniez.
ui-handover-papers = Les papiers aussi, pour un lecteur sans Steady
ui-handover-papers-language = Langue des papiers
ui-handover-as-made = Comme la dernière fois

error-workshop-too-long = Les données de l’atelier ne tiennent pas sur un papier
error-workshop-too-long-help = Nom et adresse tiennent 100 caractères par ligne, quatre lignes au plus ; le téléphone 60, la monnaie 12. Raccourcissez ce qui dépasse. Rien n’a été changé.
error-workshop-number = Les heures ou le taux ne peuvent pas être lus
error-workshop-number-help = Écrivez 2,5 ou 2.5, et les milliers sans signe, comme 1250. Les heures vont de la plus petite à la plus grande, jusqu’à 200. Rien n’a été changé.
error-workshop-unreadable = Le fichier de l’atelier ne peut pas être lu
error-workshop-unreadable-help = Vérifiez qu’il est entier et qu’il a la forme du fichier de demo-data/workshop. Rien n’a été changé.
