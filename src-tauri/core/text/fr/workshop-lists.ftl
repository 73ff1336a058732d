# Les bagues et les instruments de l’atelier

stock-sleeve = Bague de { $material }, { $outside } dehors, alésée à { $bore }
stock-open = { $sleeve } : on ne sait pas si elle convient. Calculez l’ajustement avec les températures et l’extérieur du palier.
stock-fits = { $sleeve } : ELLE CONVIENT à l’alésage tel qu’il est, qui peut mesurer { $least } à { $most }, si la paroi le permet.
stock-bore-to = { $sleeve } : alésez le palier à { $least } jusqu’à { $most } pour elle, si la paroi le permet.
stock-bore-too-wide = { $sleeve } : trop petite. L’alésage peut mesurer { $most } au plus, et il est plus large ou doit l’être.
stock-too-thin = { $sleeve } : trop mince une fois alésée pour le roulement.
stock-no-wall = { $sleeve } : trop grande, il ne resterait pas de paroi au palier.
stock-own-bore-too-wide = { $sleeve } : son propre alésage est trop large pour ce roulement.
stock-none-holds = { $sleeve } : aucun serrage ne tient à chaud tout en étant supporté à froid.
stock-wall-too-thin = { $sleeve } : trop grande, il resterait au palier moins de paroi qu’il n’en faut.
stock-housing-replaced = { $sleeve } : aucune bague n’y va, le palier est à remplacer.

ui-stock = Bagues en rayon
ui-stock-about = Les cotes que vous avez ou achetez. L’établi dit lesquelles conviendraient au palier du jour.
ui-stock-empty = L’atelier n’a noté aucune bague.
ui-stock-take = La prendre dans l’ajustement
ui-stock-outside = Diamètre extérieur, mm
ui-stock-bore = Alésage à l’achat, mm
ui-stock-more = Une bague de plus

ui-instruments = Instruments
ui-instruments-about = Ce avec quoi vous mesurez. Choisissez-le à l’établi, son pas et son erreur sont remplis ; si son étalonnage est échu, c’est dit.
ui-instrument-name = Nom ou numéro
ui-instrument-resolution = Plus petit pas, mm
ui-instrument-mpe = Erreur admissible, mm
ui-instrument-repeatability = Dispersion de lectures répétées, mm (peut rester vide)
ui-instrument-calibrated = Étalonné le
ui-instrument-due = Valable jusqu’au
ui-instrument-more = Un instrument de plus
ui-instrument-which = Instrument de l’atelier
ui-instrument-none = Un autre
ui-instrument-overdue = L’ÉTALONNAGE NE VAUT PAS AUJOURD’HUI (noté jusqu’au { $due }). Faites étalonner avant de décider d’après lui.
ui-instrument-no-date = AUCUN ÉTALONNAGE CONNU. Faites étalonner avant de décider d’après lui.

instrument-line-due = Relevé avec { $name }, étalonné le { $calibrated }, valable jusqu’au { $due }.
instrument-line-overdue = RELEVÉ AVEC { $name }, DONT L’ÉTALONNAGE ÉTAIT ÉCHU depuis le { $due } : son erreur peut dépasser ce que dit l’incertitude.
instrument-line-no-date = RELEVÉ AVEC { $name }, DONT AUCUN ÉTALONNAGE VALABLE N’EST CONNU : son erreur peut dépasser ce que dit l’incertitude.

error-workshop-sleeve = Une bague du stock est illisible
error-workshop-sleeve-help = Donnez sa matière, son diamètre extérieur et son alésage, plus petit, en millimètres, de 1 à 1 000 ; 40 bagues au plus. Rien n’a été changé.
error-workshop-instrument = Un instrument est illisible
error-workshop-instrument-help = Donnez à chacun un nom à lui, son pas et son erreur admissible en millimètres, au-dessus de 0 et jusqu’à 1 ; le jour de l’étalonnage précède le jour jusqu’auquel il vaut. 20 instruments au plus. Rien n’a été changé.
error-unknown-instrument = L’atelier n’a pas d’instrument de ce nom
error-unknown-instrument-help = Notez-le avec les données de l’atelier, ou donnez son pas et son erreur à la main.
