<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
  <context>
    <name>core</name>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is in degrees; the surface needs a projected CRS in metres or feet, such as EPSG:25832.</source>
      <translation>'{crs}' ({name}) est en degrés ; la surface demande un SCR projeté en mètres ou en pieds, tel que EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is no projected CRS; the surface needs one in metres or feet.</source>
      <translation>'{crs}' ({name}) n'est pas un SCR projeté ; la surface en demande un en mètres ou en pieds.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is not in degrees; positions in degrees need a geographic CRS, such as EPSG:4326.</source>
      <translation>'{crs}' ({name}) n'est pas en degrés ; les positions en degrés demandent un SCR géographique, tel que EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is in {unit}; only metres, feet and US survey feet are read. Choose another CRS.</source>
      <translation>'{crs}' est en {unit} ; seuls les mètres, les pieds et les pieds US (survey) sont lus. Choisissez un autre SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is not understood as a CRS; give an EPSG code such as EPSG:25832, or WKT.</source>
      <translation>'{crs}' n'est pas reconnu comme SCR ; donnez un code EPSG tel que EPSG:25832, ou un WKT.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>'{name}' is to be left out, but is no matched control point.</source>
      <translation>'{name}' doit être laissé de côté, mais n'est pas un point d'appui apparié.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>'{word}' à côté d'un code de ligne n'est pas un mot de la convention de terrain ; ignoré. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns is empty; name the columns in file order.</source>
      <translation>--columns est vide ; nommez les colonnes dans l'ordre du fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns lacks {roles}; a point needs easting, northing and height (or latitude, longitude and height).</source>
      <translation>--columns : il manque {roles} ; un point demande une coordonnée est, une coordonnée nord et une altitude (ou latitude, longitude et hauteur).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is given twice; give it once.</source>
      <translation>--columns : '{word}' est donné deux fois ; donnez-le une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is no role{hint}; roles are {roles}. Use '-' to skip a column, '+{word}' to keep it as it is.</source>
      <translation>--columns : '{word}' n'est pas un rôle{hint} ; les rôles sont {roles}. Utilisez '-' pour sauter une colonne, '+{word}' pour la garder telle quelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is not role=column; a column is a header word or a number from 1.</source>
      <translation>--columns : '{word}' n'est pas de la forme role=column ; une colonne est un mot d'en-tête ou un numéro à partir de 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' mixes two ways; give either all as role=column or all in file order.</source>
      <translation>--columns : '{word}' mélange deux écritures ; donnez soit tout sous la forme role=column, soit tout dans l'ordre du fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>--depths must be rising numbers with commas between them, not {value}.</source>
      <translation>--depths doit être une suite de nombres croissants séparés par des virgules, et non {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>--geoid is empty; give metres, or a file with a grid of geoid separations.</source>
      <translation>--geoid est vide ; donnez des mètres, ou un fichier contenant une grille d'ondulations du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>1 : {run}</source>
      <translation>1 : {run}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>1.9600 × RMSE (NSSDA, 95 %)</source>
      <translation>1.9600 × RMSE (NSSDA, 95 %)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>95 % interval (mm)</source>
      <translation>Intervalle à 95 % (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>95 %: 1.96 times that</source>
      <translation>95 % : 1,96 fois cette valeur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>95 in 100 are below</source>
      <translation>95 sur 100 sont en dessous</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>95 in 100 records are nearer than</source>
      <translation>95 enregistrements sur 100 sont plus proches que</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>95th percentile of the absolute values</source>
      <translation>95e centile des valeurs absolues</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>A - A, along the line of the sections</source>
      <translation>A - A, le long de la ligne des profils</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>A bar along {name} for each of {count} rules with its verdicts.</source>
      <translation>Une barre le long de {name} pour chacune des {count} règles, avec ses verdicts.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.</source>
      <translation>Une taille de cellule de {cell} m donne {columns} x {rows} cellules sur cette surface, plus de {most} ; donnez une cellule plus grande.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>A combined factor of {factor} cannot be right; it is a number close to 1.</source>
      <translation>Un facteur combiné de {factor} ne peut pas être juste ; c'est un nombre proche de 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A contour interval of {interval:g} m asks for a height error of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Une équidistance de {interval:g} m demande une erreur d'altitude d'un tiers de celle-ci (ASPRS Positional Accuracy Standards, 2014, annexe B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} is too small to tell levels apart at heights near {high:.3f} m; give a larger interval.</source>
      <translation>Une équidistance de {interval} {unit} est trop petite pour distinguer les niveaux à des altitudes proches de {high:.3f} m ; donnez une équidistance plus grande.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} makes {count} levels from {low:.3f} m to {high:.3f} m, more than {most}; give a larger interval, or look for a wrong height.</source>
      <translation>Une équidistance de {interval} {unit} donne {count} niveaux de {low:.3f} m à {high:.3f} m, plus de {most} ; donnez une équidistance plus grande, ou cherchez une altitude fausse.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A cross-section cannot reach {left} to the left and {right} to the right. Give widths of 0 or more.</source>
      <translation>Un profil en travers ne peut pas s'étendre de {left} à gauche et de {right} à droite. Donnez des largeurs de 0 ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>A curve of {count} steps cannot be made; give 1 to {most}.</source>
      <translation>Une courbe de {count} pas est impossible ; donnez de 1 à {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>A fault in the program, not in your file: {reason}. Please report it with what --debug shows.</source>
      <translation>Un défaut du programme, non de votre fichier : {reason}. Veuillez le signaler avec ce que --debug affiche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>A file with another SHA-256 than here was changed afterwards; checksums.sha256 is the same list for programs that check it.</source>
      <translation>Un fichier dont le SHA-256 diffère de celui-ci a été modifié ensuite ; checksums.sha256 est la même liste pour les programmes qui la vérifient.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A fit in space needs both standard deviations, in plan and in height, or neither.</source>
      <translation>Un ajustement dans l'espace demande les deux écarts-types, en planimétrie et en altimétrie, ou aucun.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A four-parameter fit</source>
      <translation>Un ajustement à quatre paramètres</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid grid needs to know where the points are; say their CRS, or give a constant.</source>
      <translation>Une grille de géoïde doit savoir où sont les points ; indiquez leur SCR, ou donnez une constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid separation of '{value}' is no number; give metres.</source>
      <translation>Une ondulation du géoïde de '{value}' n'est pas un nombre ; donnez des mètres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>A grid knows the depth at cell middles only. Along rims, breaklines and the line of no cut nor fill a cell is counted wholly or not at all: {area:.1f} m² were compared by the grid, {exact:.1f} m² exactly.</source>
      <translation>Une grille ne connaît la profondeur qu'au centre des cellules. Le long des pourtours, des lignes de rupture et de la ligne de passage, une cellule est comptée entière ou pas du tout : {area:.1f} m² ont été comparés par la grille, {exact:.1f} m² exactement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A height error of {error:.3f} m cannot be had with heights good to {sigma:.3f} m: their noise alone gives {least:.3f} m. Ask for less, or observe each point longer.</source>
      <translation>Une erreur d'altitude de {error:.3f} m ne peut pas être obtenue avec des altitudes bonnes à {sigma:.3f} m : leur bruit donne à lui seul {least:.3f} m. Demandez moins, ou observez chaque point plus longtemps.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>A hollow counts as a pond when the noise of the heights, with a standard deviation of {sigma} mm, makes one like it anywhere in the survey with a probability below {chance} %, and it is at least {depth} deep. This takes errors as independent; what neighbours share, as one bad fix over a minute, can make a wider hollow.</source>
      <translation>Un creux compte comme mare lorsque le bruit des altitudes, d'un écart-type de {sigma} mm, en produit un semblable quelque part dans le levé avec une probabilité inférieure à {chance} %, et qu'il est profond d'au moins {depth}. Les erreurs sont supposées indépendantes ; ce que des voisins partagent, comme une mauvaise fixation pendant une minute, peut produire un creux plus large.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A plane for heights</source>
      <translation>Un plan pour les altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>A profile needs heights at two stations or more.</source>
      <translation>Un profil en long demande des altitudes à deux abscisses ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>A ring of the pad has {count} different corners; a ring needs three or more.</source>
      <translation>Un anneau de la plateforme a {count} sommets différents ; un anneau en demande trois ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>A scale of 1 : {scale} cannot be. Give a number above 0.</source>
      <translation>Une échelle de 1 : {scale} est impossible. Donnez un nombre supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>A set-out table needs the columns name, easting and northing; “{word}” is missing.</source>
      <translation>Un tableau d'implantation demande les colonnes name, easting et northing ; « {word} » manque.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A seven-parameter fit</source>
      <translation>Un ajustement à sept paramètres</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A shift of heights</source>
      <translation>Une translation des altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>A slope of {run} (metres out for each metre up) cannot be graded; give more than 0.</source>
      <translation>Un talus de {run} (mètres vers l'extérieur par mètre de hauteur) ne peut pas être terrassé ; donnez plus de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A standard deviation of {value} m is none; give one above 0.</source>
      <translation>Un écart-type de {value} m n'en est pas un ; donnez une valeur supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A window of {window} m with steps of {step} m does not fit a line of {length:.3f} m. Give a window above 0 and no longer than the line, and a step above 0.</source>
      <translation>Une fenêtre de {window} m avec des pas de {step} m ne convient pas à une ligne de {length:.3f} m. Donnez une fenêtre supérieure à 0 et pas plus longue que la ligne, et un pas supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Above the heights, exaggerated; below the grade, the straight line that fits the heights of {window} best, with the interval in which it lies with 95 %.</source>
      <translation>En haut les altitudes, exagérées ; en bas la pente longitudinale, la droite qui s'ajuste le mieux aux altitudes de {window}, avec l'intervalle où elle se trouve à 95 %.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Above the pit ({unit})</source>
      <translation>Au-dessus du point bas ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Accuracy</source>
      <translation>Précision</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} check points</source>
      <translation>Précision RMSE {rmse:.3f} m, moyenne {mean:+.3f} m par rapport à {count} points de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} own check shots; no test</source>
      <translation>Précision RMSE {rmse:.3f} m, moyenne {mean:+.3f} m par rapport à {count} visées de contrôle propres ; pas un test</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Accuracy statement: {file}</source>
      <translation>Déclaration de précision : {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Accuracy: FGDC-STD-007.3-1998 (NSSDA) and ASPRS Positional Accuracy Standards, edition 2 (2023). Empty circles: G. Toussaint (1983, “Computing largest empty circles with location constraints”).</source>
      <translation>Précision : FGDC-STD-007.3-1998 (NSSDA) et ASPRS Positional Accuracy Standards, édition 2 (2023). Cercles vides : G. Toussaint (1983, « Computing largest empty circles with location constraints »).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation>La précision VVA réelle s'établit à RMSEV = {rmse_cm:.1f} cm ({count} points de contrôle, 95e centile {percentile_cm:.1f} cm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After</source>
      <translation>Après</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After ({unit}²)</source>
      <translation>Après ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Against the limits</source>
      <translation>Par rapport aux limites</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>All check points on the surface are in vegetated ground; no class can be stated without open ground.</source>
      <translation>Tous les points de contrôle sur la surface sont en terrain végétalisé ; aucune classe ne peut être indiquée sans terrain dégagé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>All together: {lines} lines on {levels} levels, {length} {unit} long.</source>
      <translation>Au total : {lines} lignes sur {levels} niveaux, longues de {length} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Along the edges of the lane no low point is deeper than the noise.</source>
      <translation>Le long des bords de la voie, aucun creux n'est plus profond que le bruit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Along the line</source>
      <translation>Le long de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only {count} checkpoints in non-vegetated ground.</source>
      <translation>Bien que les normes exigent un minimum de {needed} points de contrôle, ce test a été réalisé avec seulement {count} points de contrôle en terrain non végétalisé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Apart in plan</source>
      <translation>Écart en plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Applies</source>
      <translation>S'applique</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area ({unit})</source>
      <translation>Aire ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Area ({unit}²)</source>
      <translation>Aire ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Area a bar of {width} {unit} ({area})</source>
      <translation>Aire par barre de {width} {unit} ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Area and volume by level; the dashed line is the level at which water leaves.</source>
      <translation>Aire et volume selon le niveau ; la ligne tiretée est le niveau auquel l'eau s'écoule.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area by depth: cut to the left of 0, fill to the right; exact for each bar.</source>
      <translation>Aire par profondeur : déblai à gauche de 0, remblai à droite ; exacte pour chaque barre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area in plan ({unit}²)</source>
      <translation>Aire en plan ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area on the slope ({unit}²)</source>
      <translation>Aire selon la pente ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Areas</source>
      <translation>Aires</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>As it stands in the file</source>
      <translation>Tel quel dans le fichier</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little to cover a site; choose a larger paper or another scale.</source>
      <translation>À 1 : {scale:g}, une feuille montre {width:.1f} m sur {height:.1f} m, dont {overlap:.1f} m de recouvrement : trop peu pour couvrir un site ; choisissez un papier plus grand ou une autre échelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a larger paper.</source>
      <translation>À 1 : {scale:g}, le site demanderait {count} feuilles ; {most} au plus sont faites. Choisissez une échelle plus petite ou un papier plus grand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} for heights the profile does not fit on {paper}: one sheet spans {range:.2f} m. Choose {fit} or a larger paper.</source>
      <translation>À l'échelle {scale} des altitudes, le profil en long ne tient pas sur {paper} : une feuille couvre {range:.2f} m. Choisissez {fit} ou un papier plus grand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} the sheets would be {count}; the most is {most}. Choose a smaller scale, such as {fit}.</source>
      <translation>À l'échelle {scale}, il y aurait {count} feuilles ; le maximum est {most}. Choisissez une échelle plus petite, telle que {fit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Automatic checks</source>
      <translation>Contrôles automatiques</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Automatic checks: noise from the scatter about cubics through neighbouring points; offsets of stretches of the walk by iteratively reweighted least squares over all places where passes meet or run side by side; intervals of sigmas by chi-square. Limits are this program's own choice.</source>
      <translation>Contrôles automatiques : bruit d'après la dispersion autour de cubiques passant par les points voisins ; décalages de tronçons du parcours par moindres carrés repondérés itérativement sur tous les endroits où des passages se rencontrent ou se longent ; intervalles des sigmas par khi-deux. Les limites sont le choix propre de ce programme.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>B - B, across it</source>
      <translation>B - B, perpendiculairement</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Balance   at {height:.3f} ± {sigma_95:.3f} {unit}, fill from one of cut {factor:g}</source>
      <translation>Équilibre à {height:.3f} ± {sigma_95:.3f} {unit}, remblai tiré d'une unité de déblai {factor:g}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Balance of cut and fill</source>
      <translation>Équilibre des déblais et remblais</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Base {height}</source>
      <translation>Base {height}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Basin     holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², spills at {level:.3f} {unit}</source>
      <translation>Bassin    contient {volume:.2f} ± {half:.2f} m³ (95 %) sur {area:.1f} m², déborde à {level:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before</source>
      <translation>Avant</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before ({unit}²)</source>
      <translation>Avant ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Beyond them lies what no receiver tells: heights are held against the walk itself, the passes beside it, places walked twice and coded lines, by the noise found in this survey. Steps that several passes saw at one line are ground: kerbs, walls, ditches.</source>
      <translation>Au-delà se trouve ce qu'aucun récepteur ne dit : les altitudes sont confrontées au parcours lui-même, aux passages voisins, aux endroits parcourus deux fois et aux lignes codées, selon le bruit trouvé dans ce levé. Les ressauts que plusieurs passages ont vus sur une même ligne sont du terrain : bordures, murs, fossés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Boundaries here are the limits of the surface, not legal boundaries of land.</source>
      <translation>Les limites sont ici celles de la surface, non des limites juridiques de propriété.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Buried services are not shown.</source>
      <translation>Les réseaux enterrés ne sont pas représentés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By depth: all the earth moved where it is so deep</source>
      <translation>Par profondeur : toutes les terres déplacées là où la profondeur est telle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By hand</source>
      <translation>À la main</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By hand {changed} points have another status than the checks gave them; {same} decisions agree with them.</source>
      <translation>À la main, {changed} points ont un autre statut que celui donné par les contrôles ; {same} décisions concordent avec eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are flagged or no longer flagged, the first in line {line}.</source>
      <translation>À la main, {count} points sont signalés ou ne le sont plus, le premier à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are in the surface that the checks rejected, the first in line {line} ({reasons}).</source>
      <translation>À la main, {count} points rejetés par les contrôles sont dans la surface, le premier à la ligne {line} ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are out of the surface that the checks let pass, the first in line {line}.</source>
      <translation>À la main, {count} points admis par les contrôles sont hors de la surface, le premier à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By it ({unit})</source>
      <translation>De combien ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By region</source>
      <translation>Par région</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By that rule the survey supports the interval of {interval} {unit}.</source>
      <translation>Selon cette règle, le levé justifie l'équidistance de {interval} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By the checks</source>
      <translation>Par les contrôles</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchment</source>
      <translation>Bassin versant</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments are bounded by lines of steepest descent and found exactly, so their areas add up to that of the surface. Areas and volumes of ponds are exact on the triangles.</source>
      <translation>Les bassins versants sont délimités par des lignes de plus grande pente et trouvés exactement, si bien que la somme de leurs aires est celle de la surface. Les aires et volumes des mares sont exacts sur les triangles.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Catchments before and after</source>
      <translation>Bassins versants avant et après</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>Catchments without a runoff coefficient have no peak flow: {names}. Give one for all or for each inlet.</source>
      <translation>Les bassins versants sans coefficient de ruissellement n'ont pas de débit de pointe : {names}. Donnez-en un pour tous ou pour chaque avaloir.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments, the largest first</source>
      <translation>Bassins versants, le plus grand d'abord</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments; {merged} outlets on the rim that drain less than {least} {unit}² each are counted with the rest of the rim, which has no name here.</source>
      <translation>Bassins versants ; {merged} exutoires sur le pourtour drainant chacun moins de {least} {unit}² sont comptés avec le reste du pourtour, qui n'a pas de nom ici.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} doubles back on itself at station {station} (E {easting:.3f} N {northing:.3f}), so that left and right are not defined there. Remove the vertex or split the line there.</source>
      <translation>L'axe {name} revient sur lui-même à l'abscisse {station} (E {easting:.3f} N {northing:.3f}), si bien que la gauche et la droite n'y sont pas définies. Supprimez le sommet ou coupez la ligne à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no length: all its {vertices} vertices are at one place. Draw the line again.</source>
      <translation>L'axe {name} n'a pas de longueur : ses {vertices} sommets sont tous au même endroit. Dessinez à nouveau la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no station {station}; its stations are {ranges}. Give one of those.</source>
      <translation>L'axe {name} n'a pas d'abscisse {station} ; ses abscisses sont {ranges}. Donnez l'une de celles-ci.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has station {station} more than once, in the numberings {parts}. Say which one is meant.</source>
      <translation>L'axe {name} a l'abscisse {station} plus d'une fois, dans les numérotations {parts}. Précisez laquelle est visée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} is nowhere on the surface {surface} (the line begins at E {easting:.1f} N {northing:.1f}, the surface reaches from E {west:.1f} N {south:.1f} to E {east:.1f} N {north:.1f}). Check that both are of one site and in one CRS.</source>
      <translation>L'axe {name} n'est nulle part sur la surface {surface} (la ligne commence à E {easting:.1f} N {northing:.1f}, la surface s'étend de E {west:.1f} N {south:.1f} à E {east:.1f} N {north:.1f}). Vérifiez que les deux sont du même site et dans un même SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself {count} times, first at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). A place there has two stations; the lower one is given.</source>
      <translation>L'axe {name} se recoupe {count} fois, d'abord aux abscisses {first} et {second} (E {easting:.3f} N {northing:.3f}). Un tel endroit a deux abscisses ; la plus basse est donnée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: station equation {number} (back {back} = ahead {ahead}) is not on the line beyond the one before; the numbering there runs from {low} to {high}. Correct the back station or the order.</source>
      <translation>Axe {name} : l'équation d'abscisse {number} (arrière {back} = avant {ahead}) n'est pas sur la ligne au-delà de la précédente ; la numérotation y va de {low} à {high}. Corrigez l'abscisse arrière ou l'ordre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: vertex {vertex} has no finite coordinates. Draw the line again or repair its layer.</source>
      <translation>Axe {name} : le sommet {vertex} n'a pas de coordonnées finies. Dessinez à nouveau la ligne ou réparez sa couche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out.</source>
      <translation>Axe {name} : {count} sommets répétés (à moins de 0,1 mm) ont été laissés de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Chance of noise (%)</source>
      <translation>Probabilité de bruit (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Change ({unit}²)</source>
      <translation>Changement ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Check on the control points before, during and after the work; set nothing out while they are off by more than the job's tolerance.</source>
      <translation>Contrôlez sur les points d'appui avant, pendant et après les travaux ; n'implantez rien tant que leur écart dépasse la tolérance du chantier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Check point</source>
      <translation>Point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Check shots kept out of the surface: {count}, first {point} (line {line}).</source>
      <translation>Visées de contrôle tenues hors de la surface : {count}, première {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report</source>
      <translation>Contrôles {count} constats, dans le rapport</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation>Contrôles {count} constats, dans le rapport ; les altitudes se répètent à {sigma:.1f} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Claimed (mm)</source>
      <translation>Annoncé (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Classes of slope</source>
      <translation>Classes de pente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Closed</source>
      <translation>Fermé</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Code {code} is not in the code table; taken as ground. Points: {count}, first {point} (line {line}).</source>
      <translation>Le code {code} n'est pas dans la table des codes ; pris comme terrain. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Colours: ColorBrewer 2.0, schemes safe for colour-blind readers.</source>
      <translation>Couleurs : ColorBrewer 2.0, palettes sûres pour les lecteurs daltoniens.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor {projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature {radius} m).</source>
      <translation>Facteur combiné {combined} à l'est {easting} m, nord {northing} m : facteur d'échelle de la projection {projection} x facteur d'altitude {height} (hauteur ellipsoïdale {h} m, {h_origin} ; rayon de courbure moyen {radius} m).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined}, as given by the user.</source>
      <translation>Facteur combiné {combined}, tel que donné par l'utilisateur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Compared with it</source>
      <translation>Comparé à elle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Contents</source>
      <translation>Sommaire</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/labels.py" />
      <source>Contour labels {height} m high every {spacing} m cannot be placed; give two numbers of metres above 0.</source>
      <translation>Des étiquettes de courbes de niveau hautes de {height} m tous les {spacing} m ne peuvent pas être placées ; donnez deux nombres de mètres supérieurs à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours</source>
      <translation>Courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Contours  {lines} lines on {levels} levels, every {interval:g} {unit}</source>
      <translation>Courbes   {lines} lignes sur {levels} niveaux, tous les {interval:g} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours are exact on that surface. Ground exactly at a level counts as above it.</source>
      <translation>Les courbes de niveau sont exactes sur cette surface. Le terrain situé exactement à un niveau compte comme au-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level</source>
      <translation>Courbes de niveau par niveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level; index contours only, as there are many levels</source>
      <translation>Courbes de niveau par niveau ; courbes maîtresses seulement, car les niveaux sont nombreux</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours every {interval} {unit}, index contours every {index} {unit}. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Courbes de niveau tous les {interval} {unit}, courbes maîtresses tous les {index} {unit}. Relief ombré depuis le nord-ouest, altitudes exagérées {times} fois pour l'ombrage seulement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours of the sheet: low-pass filter of G. Taubin (1995, “A signal processing approach to fair surface design”), for heights with the weights of U. Pinkall and K. Polthier (1993); lines are then drawn as Bézier curves inside corridors that do not meet.</source>
      <translation>Courbes de niveau de la feuille : filtre passe-bas de G. Taubin (1995, « A signal processing approach to fair surface design »), pour les altitudes avec les poids de U. Pinkall et K. Polthier (1993) ; les lignes sont ensuite tracées en courbes de Bézier à l'intérieur de couloirs qui ne se touchent pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Control point</source>
      <translation>Point d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm from it, in height {height_mm} mm.</source>
      <translation>Le point d'appui '{name}' a été levé {count} fois ; la moyenne est utilisée, le plus éloigné en plan en est à {plan_mm} mm, en altitude à {height_mm} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Coordinates and units</source>
      <translation>Coordonnées et unités</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Coordinates in {crs}; lengths and heights in {unit} (1 {unit} = {metres} m); {decimals} decimals. Cut and fill are design less existing ground: above 0 fill, below 0 cut.</source>
      <translation>Coordonnées en {crs} ; longueurs et altitudes en {unit} (1 {unit} = {metres} m) ; {decimals} décimales. Déblai et remblai sont le projet moins le terrain existant : au-dessus de 0 remblai, en dessous de 0 déblai.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Count</source>
      <translation>Nombre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Cover</source>
      <translation>Couverture du sol</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Coverage</source>
      <translation>Couverture</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; {count} places to walk again</source>
      <translation>Couverture tous les {along:.2f} m, passages écartés de {across:.1f} m ; {count} endroits à parcourir de nouveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crest, stations</source>
      <translation>Sommet, abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Cross-sections of {name}</source>
      <translation>Profils en travers de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall</source>
      <translation>Pente transversale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Crossfall (%)</source>
      <translation>Pente transversale (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Crossfall cannot be found from offset {low} m to {high} m. Give the lower one first.</source>
      <translation>La pente transversale ne peut pas être déterminée du déport {low} m à {high} m. Donnez d'abord le plus bas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall from {left} left to {right} right of the line, positive where the surface rises to the right, over {window}, with its 95 % interval.</source>
      <translation>Pente transversale de {left} à gauche à {right} à droite de la ligne, positive là où la surface monte vers la droite, sur {window}, avec son intervalle à 95 %.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall over the stations of {name}.</source>
      <translation>Pente transversale sur les abscisses de {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall towards the edges: does each half of the lane fall to its edge by {least} % for sure?</source>
      <translation>Pente transversale vers les bords : chaque moitié de la voie descend-elle à coup sûr vers son bord d'au moins {least} % ?</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Curves of the water's area and volume by its level, from the pit to the spill.</source>
      <translation>Courbes de l'aire et du volume de l'eau selon son niveau, du point bas au débordement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut ({unit})</source>
      <translation>Déblai ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Cut and fill between stations, and the running balance along the line.</source>
      <translation>Déblai et remblai entre abscisses, et le bilan cumulé le long de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>Cut and fill jump at the balanced height, where slopes run on over a brow or reach other ground: {rest:.1f} m³ are left over.</source>
      <translation>Le déblai et le remblai sautent à l'altitude équilibrée, là où les talus se prolongent au-delà d'une crête ou atteignent un autre terrain : il reste {rest:.1f} m³.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut area ({unit})</source>
      <translation>Aire de déblai ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut by material</source>
      <translation>Déblai par matériau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Cut, fill and what is left over against the height of the design.</source>
      <translation>Déblai, remblai et reste en fonction de l'altitude du projet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>DEM: the plane of the triangle under each cell's centre.</source>
      <translation>MNT : le plan du triangle sous le centre de chaque cellule.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Decisions by hand against the checks: {shown} of {count}</source>
      <translation>Décisions à la main contre les contrôles : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Decisions made by hand were read from {file}.</source>
      <translation>Les décisions prises à la main ont été lues dans {file}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Deeper by ({unit})</source>
      <translation>Plus profond de ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Depressions</source>
      <translation>Dépressions</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth</source>
      <translation>Profondeur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Depth (mm)</source>
      <translation>Profondeur (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth of cut (orange) and fill (purple), drawn from a grid of {cell} m. Numbers come from the triangles.</source>
      <translation>Profondeur de déblai (orange) et de remblai (violet), dessinée d'après une grille de {cell} m. Les nombres viennent des triangles.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Depth ± 1 sigma ({unit})</source>
      <translation>Profondeur ± 1 sigma ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Depth: cut below 0, fill above ({unit})</source>
      <translation>Profondeur : déblai en dessous de 0, remblai au-dessus ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference (%)</source>
      <translation>Différence (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference ({unit})</source>
      <translation>Différence ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Differences are those at all {count} vertices of the full surface, checked on the finished one. Rim and breaklines are kept as they are.</source>
      <translation>Les différences sont celles aux {count} sommets de la surface complète, vérifiées sur la surface achevée. Le pourtour et les lignes de rupture sont conservés tels quels.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Differences of height (mm)</source>
      <translation>Différences d'altitude (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Distance ({unit})</source>
      <translation>Distance ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Distance along the pass ({unit})</source>
      <translation>Distance le long du passage ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Distance to the point recorded before ({unit})</source>
      <translation>Distance au point enregistré auparavant ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Dots and intervals: the standard deviation of a height found for each of {shown} runs, from {low} to {high} mm, beside what the receiver claims; {off} claims lie outside the interval of their run.</source>
      <translation>Points et intervalles : l'écart-type d'une altitude trouvé pour chacune des {shown} séries, de {low} à {high} mm, à côté de ce qu'annonce le récepteur ; {off} annonces sont en dehors de l'intervalle de leur série.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Doubtful points along the walk</source>
      <translation>Points douteux le long du parcours</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drained to</source>
      <translation>Drainé vers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drains now to</source>
      <translation>S'écoule maintenant vers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Drains to</source>
      <translation>S'écoule vers</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>Drift over {value} m cannot be; give the metres within which points share it.</source>
      <translation>Une dérive sur {value} m est impossible ; donnez les mètres sur lesquels les points la partagent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Each window is judged by itself with at most 5 in 100 wrong; of many windows near the limit a few will be judged wrongly. Drift of the receiver counts only where it was given.</source>
      <translation>Chaque fenêtre est jugée pour elle-même, avec au plus 5 erreurs sur 100 ; parmi de nombreuses fenêtres proches de la limite, quelques-unes seront mal jugées. La dérive du récepteur ne compte que là où elle a été donnée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Earthwork of the grading</source>
      <translation>Terrassements de la plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_page.py" />
      <source>Earthwork: {existing} to {design}</source>
      <translation>Terrassement : {existing} vers {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>East, mm</source>
      <translation>Est, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Easting ({unit})</source>
      <translation>Coordonnée est ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Easting and northing are as in the file. Heights too: this program has not changed their datum and does not know it.</source>
      <translation>Les coordonnées est et nord sont comme dans le fichier. Les altitudes aussi : ce programme n'a pas changé leur référence et ne la connaît pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edit</source>
      <translation>Modification</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is outside the outermost points; no triangle can be added there.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : E {easting:.3f} N {northing:.3f} est hors des points extrêmes ; aucun triangle ne peut y être ajouté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is too far from the survey; a surface may measure 107 km.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : E {easting:.3f} N {northing:.3f} est trop loin du levé ; une surface peut mesurer 107 km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: at E {easting:.3f} N {northing:.3f} there is a point already, of height {height:.3f} m. Move its height instead.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : à E {easting:.3f} N {northing:.3f} il y a déjà un point, d'altitude {height:.3f} m. Déplacez plutôt son altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: it would leave no triangle of the surface.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : elle ne laisserait aucun triangle de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: its line stays at one point, E {easting:.3f} N {northing:.3f}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : sa ligne reste en un seul point, E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: its three corners are not the corners of one triangle, the first at E {easting:.3f} N {northing:.3f}. Force or swap edges first.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : ses trois sommets ne sont pas ceux d'un même triangle, le premier à E {easting:.3f} N {northing:.3f}. Forcez ou basculez d'abord des arêtes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: no edge joins E {easting:.3f} N {northing:.3f} and E {end_easting:.3f} N {end_northing:.3f}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : aucune arête ne joint E {easting:.3f} N {northing:.3f} et E {end_easting:.3f} N {end_northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: no point with a height lies within {reach:.3f} m of E {easting:.3f} N {northing:.3f}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : aucun point avec une altitude ne se trouve à moins de {reach:.3f} m de E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} belongs to a breakline, boundary, void or forced edge.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : l'arête à E {easting:.3f} N {northing:.3f} appartient à une ligne de rupture, une limite, un trou ou une arête forcée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} is on the rim; there are not two triangles to swap it in.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : l'arête à E {easting:.3f} N {northing:.3f} est sur le pourtour ; il n'y a pas deux triangles où la basculer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: the edge from E {easting:.3f} N {northing:.3f} would cross {label}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : l'arête depuis E {easting:.3f} N {northing:.3f} croiserait {label}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle at E {easting:.3f} N {northing:.3f}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : la surface n'a pas de triangle à E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle with its centroid in the polygon at E {easting:.3f} N {northing:.3f}.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : la surface n'a pas de triangle dont le centroïde soit dans le polygone à E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has the triangle at E {easting:.3f} N {northing:.3f} already.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : la surface a déjà le triangle à E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the two triangles at E {easting:.3f} N {northing:.3f} form no convex quadrilateral, so there is no other diagonal.</source>
      <translation>La modification {number} ({kind}) ne s'applique pas : les deux triangles à E {easting:.3f} N {northing:.3f} ne forment pas un quadrilatère convexe, il n'y a donc pas d'autre diagonale.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edited.py" />
      <source>Edit {number} ({kind}): the added point at E {easting:.3f} N {northing:.3f} is no part of the surface; it is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>Modification {number} ({kind}) : le point ajouté à E {easting:.3f} N {northing:.3f} ne fait pas partie de la surface ; il est hors de la limite ou du pourtour rogné, ou dans un trou.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Edits     {applied} of {count} applied</source>
      <translation>Modifs    {applied} sur {count} appliquées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edits by hand from {file}: {applied} of {count} applied</source>
      <translation>Modifications à la main depuis {file} : {applied} sur {count} appliquées</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.</source>
      <translation>Des hauteurs ellipsoïdales sont demandées, mais {crs} compte les altitudes depuis un autre niveau ; donnez un SCR sans altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Ellipsoidal heights changed to orthometric ones: height minus geoid separation.</source>
      <translation>Hauteurs ellipsoïdales changées en altitudes orthométriques : hauteur moins ondulation du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>End areas take the area to change evenly between sections. Where it grows faster or slower than that they count too much or too little; the prismoidal correction for cut is {cut:.1f} m³, for fill {fill:.1f} m³.</source>
      <translation>La méthode des aires extrêmes suppose que l'aire change régulièrement entre les profils. Là où elle croît plus vite ou plus lentement, elle compte trop ou trop peu ; la correction prismoïdale est de {cut:.1f} m³ pour le déblai, de {fill:.1f} m³ pour le remblai.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Every check point, largest differences first</source>
      <translation>Chaque point de contrôle, les plus grandes différences d'abord</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Every line of the file</source>
      <translation>Chaque ligne du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Exact, same ground ({unit})</source>
      <translation>Exact, même terrain ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Falls (%)</source>
      <translation>Descend (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811.</source>
      <translation>Pieds : 0,3048 m (international) et 1200/3937 m (US survey), NIST SP 811.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Field codes were not read: the surface has no lines to hold to.</source>
      <translation>Les codes de terrain n'ont pas été lus : la surface n'a pas de lignes à respecter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>File</source>
      <translation>Fichier</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>File and line</source>
      <translation>Fichier et ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>File: {file}</source>
      <translation>Fichier : {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files</source>
      <translation>Fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files handed over</source>
      <translation>Fichiers remis</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill ({unit})</source>
      <translation>Remblai ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill area ({unit})</source>
      <translation>Aire de remblai ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Filled to where it spills, {level} {rise}, the basin holds {volume} ± {half} {unit} (95 %) on {area} {area_unit}, {depth} {rise} deep at its pit.</source>
      <translation>Rempli jusqu'au débordement, {level} {rise}, le bassin contient {volume} ± {half} {unit} (95 %) sur {area} {area_unit}, avec {depth} {rise} de profondeur en son point bas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  {count} places to look at, in the report</source>
      <translation>Constats  {count} endroits à examiner, dans le rapport</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Findings by kind, the greatest value first: {shown} of {count}</source>
      <translation>Constats par genre, la plus grande valeur d'abord : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>First file, line</source>
      <translation>Premier fichier, ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>First line</source>
      <translation>Première ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Fits</source>
      <translation>Ajustements</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Flagged</source>
      <translation>Signalé</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>For a height error of {error:.3f} m with heights good to {sigma:.3f} m on ground that bends {curvature:.4f} 1/m, passes may be {spacing:.1f} m apart: error² = 2/3 sigma² + (bend × spacing² / (2 √30))² (reasoned here, no standard).</source>
      <translation>Pour une erreur d'altitude de {error:.3f} m avec des altitudes bonnes à {sigma:.3f} m sur un terrain de courbure {curvature:.4f} 1/m, les passages peuvent être écartés de {spacing:.1f} m : erreur² = 2/3 sigma² + (courbure × espacement² / (2 √30))² (raisonné ici, pas une norme).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>For machine guidance: load it, then check at several points of known height, by a person who is not on the machine's path.</source>
      <translation>Pour le guidage d'engins : chargez-le, puis vérifiez en plusieurs points d'altitude connue, par une personne qui n'est pas sur la trajectoire de l'engin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Forms narrower than {narrow:.1f} m (kerbs, ditches, banks) fall between passes: walk their edges as coded lines.</source>
      <translation>Les formes plus étroites que {narrow:.1f} m (bordures, fossés, talus) tombent entre les passages : parcourez leurs arêtes comme lignes codées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Found (mm)</source>
      <translation>Trouvé (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>From E {easting:.3f} N {northing:.3f} water runs off the surface at once: there is no basin. Give a place inside the basin, or a surface that takes in its whole rim.</source>
      <translation>Depuis E {easting:.3f} N {northing:.3f}, l'eau quitte aussitôt la surface : il n'y a pas de bassin. Donnez un endroit à l'intérieur du bassin, ou une surface qui comprend tout son pourtour.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>From station ({unit})</source>
      <translation>Depuis l'abscisse ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>From {existing} to {design}: cut {cut} ± {cut_doubt} {unit}, fill {fill} ± {fill_doubt} {unit}, net {net} ± {net_doubt} {unit} (95 %), over {area} {area_unit} that both have.</source>
      <translation>De {existing} à {design} : déblai {cut} ± {cut_doubt} {unit}, remblai {fill} ± {fill_doubt} {unit}, net {net} ± {net_doubt} {unit} (95 %), sur {area} {area_unit} que les deux ont en commun.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and {lines} contour lines every {interval} {height_unit}.</source>
      <translation>À partir de {points} points de {file}, dont {used} utilisés, une surface de {triangles} triangles sur {area} {unit}², et {lines} courbes de niveau tous les {interval} {height_unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. Accept it by its name if that will do: '{name}'.</source>
      <translation>De {source} à {target}, PROJ n'a ici qu'une opération approximative, qui peut être fausse de plusieurs mètres. Acceptez-la par son nom si cela suffit : '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: '{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: '{name}'.</source>
      <translation>De {source} à {target}, PROJ n'a ici qu'une opération approximative, qui peut être fausse de plusieurs mètres : '{best}' demande {grids}, non installé ici. Installez le fichier, ou acceptez l'opération approximative par son nom : '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} every operation needs a file not installed here: {grids}. Install it.</source>
      <translation>De {source} à {target}, toute opération demande un fichier non installé ici : {grids}. Installez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} the best operation needs {grids}, not installed here: '{best}' (accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used (accuracy {accuracy}): '{name}'.</source>
      <translation>De {source} à {target}, la meilleure opération demande {grids}, non installé ici : '{best}' (précision {best_accuracy}). Installez le fichier, ou acceptez par son nom l'opération utilisable (précision {accuracy}) : '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation as the receiver sent it with each point: {least_m} to {most_m} m, mean {mean_m} m; from which model is not known.</source>
      <translation>Ondulation du géoïde telle que transmise par le récepteur avec chaque point : {least_m} à {most_m} m, moyenne {mean_m} m ; le modèle dont elle provient n'est pas connu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation interpolated from the grid {grid}: {least_m} to {most_m} m, mean {mean_m} m, over the site. The accuracy of the grid is not known to PROJ.</source>
      <translation>Ondulation du géoïde interpolée dans la grille {grid} : {least_m} à {most_m} m, moyenne {mean_m} m, sur le site. La précision de la grille n'est pas connue de PROJ.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation {value_m} m for the whole site, a constant ({origin}); its slope is left out.</source>
      <translation>Ondulation du géoïde {value_m} m pour tout le site, une constante ({origin}) ; sa pente est négligée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Give one of: the contour interval, the height error or the pass spacing wanted.</source>
      <translation>Donnez l'un de : l'équidistance, l'erreur d'altitude ou l'espacement des passages voulu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grade (%)</source>
      <translation>Pente longitudinale (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades and vertical curves fitted; residuals {spread} mm (robust), at most {worst} mm</source>
      <translation>Pentes et raccordements verticaux ajustés ; résidus {spread} mm (robuste), au plus {worst} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades meet at (station, height)</source>
      <translation>Rencontre des pentes (abscisse, altitude)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Grading</source>
      <translation>Terrassement</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Grading   pads: {count}; cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² taken</source>
      <translation>Terrass.  plateformes : {count} ; déblai {cut:.1f} ± {cut_95:.1f} m³, remblai {fill:.1f} ± {fill_95:.1f} m³ (95 %), emprise {area:.0f} m²</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_page.py" />
      <source>Grading: {name}</source>
      <translation>Terrassement : {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. Heights are untouched.</source>
      <translation>Coordonnées en projection changées en coordonnées terrain : distances à l'origine (est {easting} m, nord {northing} m) divisées par le facteur combiné, puis {shift_e} m ajoutés aux coordonnées est et {shift_n} m aux coordonnées nord. Les altitudes sont inchangées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground and grid need the CRS of the grid; give it as --crs, not a local grid.</source>
      <translation>Terrain et projection demandent le SCR de la projection ; donnez-le comme --crs, pas un repère local.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined factor. Heights are untouched.</source>
      <translation>Coordonnées terrain changées en coordonnées en projection : {shift_e} m retranchés des coordonnées est et {shift_n} m des coordonnées nord, puis distances à l'origine (est {easting} m, nord {northing} m) multipliées par le facteur combiné. Les altitudes sont inchangées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground coordinates need the origin about which they were made; give its easting and northing as --ground-origin.</source>
      <translation>Les coordonnées terrain demandent l'origine autour de laquelle elles ont été faites ; donnez ses coordonnées est et nord comme --ground-origin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Terrain dont l'eau s'écoule ailleurs</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauled</source>
      <translation>Transporté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauls along the line</source>
      <translation>Transports le long de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Have buried services located before anything is dug or driven in; they are not in this table.</source>
      <translation>Faites repérer les réseaux enterrés avant de creuser ou de planter quoi que ce soit ; ils ne sont pas dans ce tableau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height</source>
      <translation>Altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Height ({unit})</source>
      <translation>Altitude ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Height and grade over the stations of {name}.</source>
      <translation>Altitude et pente longitudinale sur les abscisses de {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height guessed ({unit})</source>
      <translation>Altitude estimée ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Height of the surface less that of the check point, in millimetres; those outside have no figure.</source>
      <translation>Altitude de la surface moins celle du point de contrôle, en millimètres ; ceux situés en dehors n'ont pas de valeur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass at {shown} places, with used, flagged and rejected points.</source>
      <translation>Altitude selon la distance le long du passage à {shown} endroits, avec points utilisés, signalés et rejetés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass: {shown} of {count} places with flagged or rejected points, each kind before a second of its kind, the longest first.</source>
      <translation>Altitude selon la distance le long du passage : {shown} sur {count} endroits avec des points signalés ou rejetés, chaque genre avant un second de son genre, le plus long d'abord.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Height, mm</source>
      <translation>Altitude, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Altitude : décalée de {shift} m au milieu de {count} points d'appui, avec un plan qui monte de {east} mm par kilomètre vers l'est et de {north} mm vers le nord ; redondance {freedom}, écart-type d'une altitude {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Altitude : décalée de {shift} m, d'après {count} points d'appui ; redondance {freedom}, écart-type d'une altitude {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are ellipsoidal and are taken over so; a geoid separation makes heights above the geoid of them.</source>
      <translation>Les altitudes sont ellipsoïdales et reprises ainsi ; une ondulation du géoïde en fait des altitudes au-dessus du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are orthometric as sent and are taken over so.</source>
      <translation>Les altitudes sont orthométriques telles que transmises et reprises ainsi.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Heights are taken over as they are.</source>
      <translation>Les altitudes sont reprises telles quelles.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are taken over as they are; only positions in plan are transformed.</source>
      <translation>Les altitudes sont reprises telles quelles ; seules les positions en plan sont transformées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are transformed too, by the same operation.</source>
      <translation>Les altitudes sont transformées aussi, par la même opération.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Heights of the used points.</source>
      <translation>Altitudes des points utilisés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here all ponds are full: water runs on over them to the rim or an inlet.</source>
      <translation>Ici toutes les mares sont pleines : l'eau les traverse jusqu'au pourtour ou à un avaloir.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here ponds keep their water, and hollows that noise explains let it pass as if they were full.</source>
      <translation>Ici les mares gardent leur eau, et les creux que le bruit explique la laissent passer comme s'ils étaient pleins.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here water stays in every pit, those of noise too.</source>
      <translation>Ici l'eau reste dans chaque point bas, y compris ceux dus au bruit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Highest ({unit})</source>
      <translation>Plus haut ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Histogram of the area by depth of cut and fill.</source>
      <translation>Histogramme de l'aire par profondeur de déblai et de remblai.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Histogram of the distance between points recorded one after another; median {middle} {unit}.</source>
      <translation>Histogramme de la distance entre points enregistrés à la suite ; médiane {middle} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Histogram of the heights of the used points, from {low} to {high} {unit}.</source>
      <translation>Histogramme des altitudes des points utilisés, de {low} à {high} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Holds</source>
      <translation>Contient</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Holds more by ({unit}³)</source>
      <translation>Contient de plus ({unit}³)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Hollow outline: what is left is the alpha shape of Edelsbrunner, Kirkpatrick and Seidel (1983).</source>
      <translation>Contour concave : ce qui reste est l'alpha-forme d'Edelsbrunner, Kirkpatrick et Seidel (1983).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own error included).</source>
      <translation>Précision de position horizontale de {count} repères trouvés dans les deux : RMSEH = {rmse_cm:.1f} cm (erreur propre des points de contrôle comprise).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights of each run repeat where it met others, against the receiver's claim: {shown} of {count} runs. Grey: the whole survey.</source>
      <translation>Comment les altitudes de chaque série se répètent là où elle en a rencontré d'autres, par rapport à l'annonce du récepteur : {shown} sur {count} séries. Gris : tout le levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights repeat</source>
      <translation>Répétition des altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How the file was read</source>
      <translation>Comment le fichier a été lu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>How this was found:</source>
      <translation>Comment cela a été trouvé :</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How {file} was read</source>
      <translation>Comment {file} a été lu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>In words</source>
      <translation>En toutes lettres</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Index</source>
      <translation>Maîtresse</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>Index contours are set to every {index_every} contours; give a whole number from 1 up.</source>
      <translation>Les courbes maîtresses sont réglées toutes les {index_every} courbes ; donnez un nombre entier à partir de 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Indications</source>
      <translation>Indices</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>Inlets that take no water, because they are off the surface or another one is nearer: {names}.</source>
      <translation>Avaloirs qui ne reçoivent pas d'eau, car ils sont hors de la surface ou un autre est plus proche : {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against {count} check shots of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation>Contrôle interne, pas un test selon une norme : par rapport à {count} visées de contrôle du même récepteur, RMSEz {rmse:.3f} m, moyenne {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Interval and noise: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), annex B, RMSE of heights = interval / 3.</source>
      <translation>Équidistance et bruit : ASPRS Positional Accuracy Standards for Digital Geospatial Data, édition 1 (2014), annexe B, RMSE des altitudes = équidistance / 3.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}, and {second}.</source>
      <translation>Il se pourrait aussi que {cause}, et {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}.</source>
      <translation>Il se pourrait aussi que {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Its height ({unit})</source>
      <translation>Son altitude ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Its own sigma (mm)</source>
      <translation>Son sigma propre (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K (m/%)</source>
      <translation>K (m/%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K ({unit}/%)</source>
      <translation>K ({unit}/%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of crests</source>
      <translation>K des sommets</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of sags</source>
      <translation>K des creux</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>K {k} {unit}/%</source>
      <translation>K {k} {unit}/%</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Kind</source>
      <translation>Genre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Larger by ({unit}²)</source>
      <translation>Plus grande de ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Least redundancy</source>
      <translation>Redondance minimale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length ({unit})</source>
      <translation>Longueur ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Length in plan ({unit})</source>
      <translation>Longueur en plan ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of each verdict ({unit})</source>
      <translation>Longueur de chaque verdict ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of the water ({unit})</source>
      <translation>Longueur de l'eau ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Lengths in plan, and area</source>
      <translation>Longueurs en plan, et aire</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Level ({unit})</source>
      <translation>Niveau ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of {count} triangles lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation>Plage horizontale de {value:.1f} m² à E {easting:.3f} N {northing:.3f} : tous les sommets de {count} triangles sont sur une même ligne d'altitude {height:.3f} m. Si le terrain n'y est pas horizontal, ajoutez un point coté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}, and {second}.</source>
      <translation>Cause probable : {cause}, et {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}.</source>
      <translation>Cause probable : {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Limit</source>
      <translation>Limite</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Limits and cautions</source>
      <translation>Limites et précautions</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Line</source>
      <translation>Ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Line {first}: {reason}</source>
      <translation>Ligne {first} : {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lines</source>
      <translation>Lignes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Lines     {lines} from field codes, {edges} edges of the surface held</source>
      <translation>Lignes    {lines} d'après les codes de terrain, {edges} arêtes de la surface respectées</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at {count} places; they were joined there. Largest difference of heights {spread:.3f} m.</source>
      <translation>Les lignes se croisent à {count} endroits ; elles y ont été jointes. Plus grande différence d'altitude {spread:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes</source>
      <translation>Lignes d'après les codes de terrain</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/run_figures.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lines of the file</source>
      <translation>Lignes du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines that are</source>
      <translation>Lignes qui sont</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} (line {line}).</source>
      <translation>Lignes jamais terminées ; elles s'arrêtent à leur dernier point. Lignes : {count}, première {label} à {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines the surface holds to</source>
      <translation>Lignes que la surface respecte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Lines {first} to {last}: {reason}</source>
      <translation>Lignes {first} à {last} : {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Local codes and licensed practice decide on drainage, and on where water may be led: turning it onto a neighbour's ground is a legal matter in most places.</source>
      <translation>Les règlements locaux et les professionnels agréés décident du drainage et du lieu où l'eau peut être menée : la détourner sur le terrain d'un voisin est presque partout une question de droit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Local codes, the contract and a licensed professional decide; this report does not.</source>
      <translation>Les règlements locaux, le contrat et un professionnel agréé décident ; pas ce rapport.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them.</source>
      <translation>Repérez les réseaux enterrés avant que quiconque ne creuse : aucun levé de la surface ne les montre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them. Setting out and machine guidance need independent checks.</source>
      <translation>Repérez les réseaux enterrés avant que quiconque ne creuse : aucun levé de la surface ne les montre. L'implantation et le guidage d'engins demandent des contrôles indépendants.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Low points along the edges, where water stands</source>
      <translation>Creux le long des bords, où l'eau stagne</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Low points are found along the line alone: water may leave sideways, over a lowered kerb or into an inlet. The deepest place of a noisy profile is a little too deep; depths below 2 standard deviations are not told.</source>
      <translation>Les creux sont cherchés le long de la seule ligne : l'eau peut s'échapper latéralement, par une bordure abaissée ou un avaloir. L'endroit le plus profond d'un profil bruité est un peu trop profond ; les profondeurs inférieures à 2 écarts-types ne sont pas indiquées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lowest ({unit})</source>
      <translation>Plus bas ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Map of cut and fill by depth, with {count} lines of no cut and no fill and the rims of both surfaces.</source>
      <translation>Carte des déblais et remblais par profondeur, avec {count} lignes de passage et les pourtours des deux surfaces.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the slopes in {count} classes, the steeper the darker, with rim and breaklines.</source>
      <translation>Carte des pentes en {count} classes, d'autant plus foncées que plus raides, avec pourtour et lignes de rupture.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark.</source>
      <translation>Carte des points du levé : {used} utilisés, {flagged} signalés et {rejected} rejetés, chacun avec sa marque.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Map of the used points with {circles} empty circles and {places} places to walk again.</source>
      <translation>Carte des points utilisés avec {circles} cercles vides et {places} endroits à parcourir de nouveau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the {count} places to look at over the shaded surface, by kind and number.</source>
      <translation>Carte des {count} endroits à examiner sur la surface ombrée, par genre et numéro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} catchments with channels and ridges.</source>
      <translation>Carte de {count} bassins versants avec talwegs et crêtes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Map of {count} check points over the shaded surface with their differences.</source>
      <translation>Carte de {count} points de contrôle sur la surface ombrée, avec leurs différences.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Map of {count} contour lines every {interval} {unit} over the shaded surface, with their heights, spot heights, rim and breaklines.</source>
      <translation>Carte de {count} courbes de niveau tous les {interval} {unit} sur la surface ombrée, avec leurs altitudes, les points cotés, le pourtour et les lignes de rupture.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} ponds by depth with pits, spill points and where they spill to.</source>
      <translation>Carte de {count} mares par profondeur, avec les points bas, les points de débordement et leur destination.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Map of {count} ponds that are new, changed or gone.</source>
      <translation>Carte de {count} mares nouvelles, modifiées ou disparues.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {paths} paths of water, channels, ponds and inlets over the shaded surface.</source>
      <translation>Carte de {paths} chemins d'eau, des talwegs, mares et avaloirs sur la surface ombrée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mass diagram: the lower line rises in cut and falls in fill; between places where it is 0 the earth balances.</source>
      <translation>Épure de Lalanne : la ligne du bas monte en déblai et descend en remblai ; entre les endroits où elle vaut 0, les terres s'équilibrent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Material ({unit} of cut)</source>
      <translation>Matériau ({unit} de déblai)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean cut ({unit})</source>
      <translation>Déblai moyen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean depth ({unit})</source>
      <translation>Profondeur moyenne ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Mean fall to the left (%)</source>
      <translation>Descente moyenne vers la gauche (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean fill ({unit})</source>
      <translation>Remblai moyen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mean haul ({unit})</source>
      <translation>Transport moyen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Mean, used ({unit})</source>
      <translation>Moyenne, utilisée ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Median</source>
      <translation>Médiane</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Method</source>
      <translation>Méthode</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Method and sources</source>
      <translation>Méthode et sources</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Middle height ({unit})</source>
      <translation>Altitude moyenne ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Much of the ground is no deeper than the noise of the points: noise alone makes about {excess:.1f} m³ of cut and as much fill. The net volume is not touched by it.</source>
      <translation>Une grande partie du terrain n'est pas plus profonde que le bruit des points : le bruit seul produit environ {excess:.1f} m³ de déblai et autant de remblai. Le volume net n'en est pas affecté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Name</source>
      <translation>Nom</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS.</source>
      <translation>Ni des colonnes échangées, ni une autre unité, un autre fuseau ou une autre fausse origine ne les y amène ; vérifiez le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Net ({unit})</source>
      <translation>Net ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none.</source>
      <translation>Aucun SCR n'est donné ; utilisez --crs avec un code EPSG tel que EPSG:25832, ou 'local' pour aucun.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>No check point states its own height error, so none is added; edition 2 asks for it. Give a column sigma_v.</source>
      <translation>Aucun point de contrôle n'indique sa propre erreur d'altitude, aucune n'est donc ajoutée ; l'édition 2 le demande. Donnez une colonne sigma_v.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>No contour interval can be vouched for: neither check points nor repeats nor stated errors are known.</source>
      <translation>Aucune équidistance ne peut être garantie : ni points de contrôle, ni répétitions, ni erreurs annoncées ne sont connus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>No crest was fitted, so nothing is said of sight.</source>
      <translation>Aucun sommet n'a été ajusté, rien n'est donc dit de la visibilité.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>No decisions were made by hand.</source>
      <translation>Aucune décision n'a été prise à la main.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>No ground drains nowhere: all water comes to the rim or to an inlet.</source>
      <translation>Aucun terrain n'est sans écoulement : toute l'eau arrive au pourtour ou à un avaloir.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>No ground has its water go elsewhere.</source>
      <translation>Aucun terrain ne voit son eau s'écouler ailleurs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>No height between {low:.1f} m and {high:.1f} m balances cut and fill with a surplus of {surplus:.1f} m³. Check the surplus.</source>
      <translation>Aucune altitude entre {low:.1f} m et {high:.1f} m n'équilibre déblai et remblai avec un excédent de {surplus:.1f} m³. Vérifiez l'excédent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>No level meets the surface; choose a smaller interval or another base.</source>
      <translation>Aucun niveau ne rencontre la surface ; choisissez une équidistance plus petite ou une autre base.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>No line was rejected.</source>
      <translation>Aucune ligne n'a été rejetée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No place needs to be walked again.</source>
      <translation>Aucun endroit n'est à parcourir de nouveau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out.</source>
      <translation>Aucun point n'est hors de la zone d'utilisation de son SCR, '{name}' n'est donc pas appliqué ; omettez --correct.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No point was flagged or rejected for anything but its code.</source>
      <translation>Aucun point n'a été signalé ou rejeté pour autre chose que son code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No two used points have the same place.</source>
      <translation>Deux points utilisés n'ont jamais le même emplacement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No.</source>
      <translation>N°</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Noise moves a contour sideways by the noise of the height over the slope: at the median slope of {slope} % a standard deviation of {shift} {unit}; on flatter ground more.</source>
      <translation>Le bruit déplace une courbe de niveau latéralement du bruit de l'altitude divisé par la pente : à la pente médiane de {slope} %, un écart-type de {shift} {unit} ; davantage sur un terrain plus plat.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Noise of the used points as the receiver claims it</source>
      <translation>Bruit des points utilisés tel que l'annonce le récepteur</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>None of the {count} cross-sections is on the surface {surface}. Check line and CRS.</source>
      <translation>Aucun des {count} profils en travers n'est sur la surface {surface}. Vérifiez la ligne et le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>None of the {count} points lies at a vertex of the surface, so they cannot tell its noise. Give the points that the surface was built from.</source>
      <translation>Aucun des {count} points n'est sur un sommet de la surface, ils ne peuvent donc pas en dire le bruit. Donnez les points à partir desquels la surface a été construite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>None of these is a proof.</source>
      <translation>Rien de cela n'est une preuve.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>North, mm</source>
      <translation>Nord, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Northing ({unit})</source>
      <translation>Coordonnée nord ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Not compared ({unit})</source>
      <translation>Non comparé ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Not compared: {existing:.1f} m² that only {existing_name} covers, {design:.1f} m² that only {design_name} covers.</source>
      <translation>Non comparé : {existing:.1f} m² que seul {existing_name} couvre, {design:.1f} m² que seul {design_name} couvre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Not for construction or setting out without independent checks on the ground.</source>
      <translation>Ni pour la construction ni pour l'implantation sans contrôles indépendants sur le terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Not for construction or setting out without independent checks; see the limits and cautions at the end.</source>
      <translation>Ni pour la construction ni pour l'implantation sans contrôles indépendants ; voir les limites et précautions à la fin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Not for construction, traffic or setting out without independent checks.</source>
      <translation>Ni pour la construction, ni pour la circulation, ni pour l'implantation sans contrôles indépendants.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is 1.9600 × RMSEz = {accuracy:.3f} m.</source>
      <translation>Non testé selon FGDC-STD-007.3-1998 : elle demande {needed} points de contrôle et il y en a {count}. Ce qu'ils montrent est 1.9600 × RMSEz = {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Note</source>
      <translation>Remarque</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing measured within ({unit})</source>
      <translation>Rien de mesuré à moins de ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing was deleted: every point is in points.csv with its status and reasons. Where you know better, decide by hand with --decisions.</source>
      <translation>Rien n'a été supprimé : chaque point est dans points.csv avec son statut et ses raisons. Là où vous savez mieux, décidez à la main avec --decisions.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation>Rien n'a été enregistré sur jusqu'à {value:.1f} m à E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²) ; ailleurs les passages sont écartés de {passes:.1f} m et les points de {spacing:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation>Rien n'a été enregistré sur jusqu'à {value:.1f} m à E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²) ; ailleurs les passages sont écartés de {passes:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>Noticed on the way:</source>
      <translation>Remarqué en chemin :</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of it drains nowhere ({unit}²)</source>
      <translation>Dont sans écoulement ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.</source>
      <translation>De cela, {bend:.3f} m viennent du terrain entre des passages écartés de {spacing:.1f} m (estimé ici d'après les courbures vues le long des passages, sans norme) ; les formes plus étroites qu'environ {narrow:.0f} m ne sont pas dans les données.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of {count} places on the surface the water of {rim} leaves over the rim, of {inlets} comes to an inlet, and of {stay} stays in a pond or pit.</source>
      <translation>Sur {count} endroits de la surface, l'eau de {rim} sort par le pourtour, celle de {inlets} arrive à un avaloir, et celle de {stay} reste dans une mare ou un point bas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Offset</source>
      <translation>Déport</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Offset, right of the line above 0 ({unit})</source>
      <translation>Déport, au-dessus de 0 à droite de la ligne ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>On the user's word the coordinates were read otherwise: {cause}.</source>
      <translation>Sur l'indication de l'utilisateur, les coordonnées ont été lues autrement : {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Orthometric heights changed to ellipsoidal ones: height plus geoid separation.</source>
      <translation>Altitudes orthométriques changées en hauteurs ellipsoïdales : altitude plus ondulation du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Outcome</source>
      <translation>Résultat</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to {worst_mm} mm.</source>
      <translation>Sur le site, le facteur va de {least} à {most} ; avec un seul facteur, une ligne de 100 m est fausse de {worst_mm} mm au plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>PDOP, at most</source>
      <translation>PDOP, au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>PROJ knows no way from {source} to {target}; choose another CRS.</source>
      <translation>PROJ ne connaît aucun chemin de {source} à {target} ; choisissez un autre SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Pad</source>
      <translation>Plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Part of</source>
      <translation>Partie de</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Passes {spacing:.2f} m apart would be {count} on this area; ask for less or plan parts of it.</source>
      <translation>Des passages écartés de {spacing:.2f} m seraient au nombre de {count} sur cette zone ; demandez moins ou planifiez-en des parties.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flow ({unit})</source>
      <translation>Débit de pointe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>Peak flows by the rational method (Kuichling 1889) are an indication: they hold as far as the runoff coefficients, the intensity and its duration do that were given, and do not replace a drainage design.</source>
      <translation>Les débits de pointe par la méthode rationnelle (Kuichling 1889) sont indicatifs : ils valent ce que valent les coefficients de ruissellement, l'intensité et sa durée qui ont été donnés, et ne remplacent pas un projet d'assainissement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flows by the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889), with an intensity of {intensity} {unit}. They hold as far as the coefficients, the intensity and its duration do, which were given, not found here; they are an indication.</source>
      <translation>Débits de pointe par la méthode rationnelle, Q = C i A (E. Kuichling, « The relation between the rainfall and the discharge of sewers in populous districts », Transactions of the American Society of Civil Engineers 20, 1889), avec une intensité de {intensity} {unit}. Ils valent ce que valent les coefficients, l'intensité et sa durée, qui ont été donnés, non trouvés ici ; ils sont indicatifs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Place     {statement}</source>
      <translation>Lieu      {statement}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Places</source>
      <translation>Endroits</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Places met</source>
      <translation>Endroits rencontrés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once (equal to 0.1 mm in plan): {count}. Rule: the surface takes the mean height.</source>
      <translation>Endroits enregistrés plus d'une fois (identiques à 0,1 mm en plan) : {count}. Règle : la surface prend l'altitude moyenne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once, largest differences first: {shown} of {count}</source>
      <translation>Endroits enregistrés plus d'une fois, les plus grandes différences d'abord : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at</source>
      <translation>Endroits à examiner</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at, numbered as in the table.</source>
      <translation>Endroits à examiner, numérotés comme dans le tableau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places to walk again, in walking order: {shown} of {count}</source>
      <translation>Endroits à parcourir de nouveau, dans l'ordre de marche : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places with flagged or rejected points: {shown} of {count}</source>
      <translation>Endroits avec des points signalés ou rejetés : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan</source>
      <translation>Plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole numbers exactly. Heights are never rounded. Where rounding could decide, bounds of J. R. Shewchuk (1997, “Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates”) tell when whole numbers must.</source>
      <translation>Les coordonnées en plan sont des dixièmes de millimètre entiers ; le choix des points formant des triangles se décide exactement sur ces nombres entiers. Les altitudes ne sont jamais arrondies. Là où l'arrondi pourrait décider, les bornes de J. R. Shewchuk (1997, « Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates ») disent quand les nombres entiers sont nécessaires.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design over the shaded ground, with slopes and daylight lines.</source>
      <translation>Plan du projet sur le terrain ombré, avec talus et lignes d'entrée en terre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design: arrows and ticks point downhill; slopes are told as 1 up or down in so many out, falls of the platform in per cent.</source>
      <translation>Plan du projet : les flèches et les barbules pointent vers l'aval ; les talus sont donnés comme 1 en hauteur pour tant en largeur, les pentes de la plateforme en pour cent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Plan : ajustement à quatre paramètres sur {count} points d'appui ; rotation de {turn} degrés (sens antihoraire ; écart-type {turn_sd} secondes d'arc), échelle {scale} ({ppm} ppm, écart-type {scale_sd} ppm), puis translation de {shift_e} m vers l'est et {shift_n} m vers le nord au milieu des points. Redondance {freedom}, écart-type d'une coordonnée {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points</source>
      <translation>Points</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Points    {points} from {lines} lines ({rejects} lines rejected); {used} used, {flagged} flagged, {rejected} rejected</source>
      <translation>Points    {points} sur {lines} lignes ({rejects} lignes rejetées) ; {used} utilisés, {flagged} signalés, {rejected} rejetés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Points a bar of {width} {unit}</source>
      <translation>Points par barre de {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points and decisions</source>
      <translation>Points et décisions</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Points kept out of the surface because their code is not ground: {count}, first {point} (line {line}).</source>
      <translation>Points tenus hors de la surface parce que leur code n'est pas du terrain : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Points on a local grid cannot be transformed; say their CRS, or fit them to control points.</source>
      <translation>Les points d'un repère local ne peuvent pas être transformés ; indiquez leur SCR, ou ajustez-les sur des points d'appui.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points rejected</source>
      <translation>Points rejetés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points still used</source>
      <translation>Points encore utilisés</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Points to set out: {count}, control points: {control}.</source>
      <translation>Points à implanter : {count}, points d'appui : {control}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points with a value</source>
      <translation>Points avec une valeur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Pond</source>
      <translation>Mare</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>Ponds</source>
      <translation>Mares</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds after the change, those that are gone, and ground whose water goes elsewhere, over the changed surface.</source>
      <translation>Mares après le changement, celles qui ont disparu, et terrain dont l'eau s'écoule ailleurs, sur la surface modifiée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds before and after, the largest change first: {shown} of {count}</source>
      <translation>Mares avant et après, le plus grand changement d'abord : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds that noise does not explain: {count}, of {pits} pits. Full, they hold {volume} {unit}³ under {area} {unit}² of water.</source>
      <translation>Mares que le bruit n'explique pas : {count}, sur {pits} points bas. Pleines, elles contiennent {volume} {unit}³ sous {area} {unit}² d'eau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds when full, by depth, with the way of the overflow.</source>
      <translation>Mares pleines, par profondeur, avec le chemin du trop-plein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds, the deepest first: {shown} of {count}</source>
      <translation>Mares, la plus profonde d'abord : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: {accuracy}.</source>
      <translation>Positions transformées de {source} à {target} par l'opération PROJ '{name}' ; précision indiquée par PROJ : {accuracy}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Profile and grades</source>
      <translation>Profil en long et pentes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Profile of {name}</source>
      <translation>Profil en long de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Quantity</source>
      <translation>Grandeur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSE</source>
      <translation>RMSE</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSEV with that error in quadrature (mm)</source>
      <translation>RMSEV avec cette erreur ajoutée quadratiquement (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reason</source>
      <translation>Raison</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Reasons</source>
      <translation>Raisons</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reasons (a point can have several)</source>
      <translation>Raisons (un point peut en avoir plusieurs)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Reasons given</source>
      <translation>Raisons données</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass.</source>
      <translation>Enregistré tous les {along:.2f} m le long des passages, {across:.1f} m d'un passage à l'autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Region</source>
      <translation>Région</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/partition.py" />
      <source>Region {name} has a ring of {count} corners with coordinates; a ring needs three.</source>
      <translation>La région {name} a un anneau de {count} sommets avec coordonnées ; un anneau en demande trois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Regions overlap over {area:.1f} m² ({names}): each of them counts that ground, the total counts it once.</source>
      <translation>Des régions se recouvrent sur {area:.1f} m² ({names}) : chacune compte ce terrain, le total le compte une fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Rejected</source>
      <translation>Rejeté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Rejected lines</source>
      <translation>Lignes rejetées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Remark</source>
      <translation>Remarque</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   {count}, all of them in the report</source>
      <translation>Remarques {count}, toutes dans le rapport</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Repeated records with line codes, left out of the lines together with their words. Points: {count}, first {point} (line {line}).</source>
      <translation>Enregistrements répétés avec codes de ligne, laissés hors des lignes avec leurs mots. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Residuals at the control points: fitted minus control</source>
      <translation>Résidus aux points d'appui : ajusté moins appui</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area encloses nothing: {count} corners; draw a polygon of three corners or more.</source>
      <translation>L'anneau {number} de la zone n'enferme rien : {count} sommets ; dessinez un polygone de trois sommets ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area has a corner without finite coordinates; draw it again.</source>
      <translation>L'anneau {number} de la zone a un sommet sans coordonnées finies ; dessinez-le à nouveau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/road.py" />
      <source>Road      {name}, {length:.1f} {unit}; stretches by the limits: {passed} pass, {failed} fail, {close} too close to tell</source>
      <translation>Route     {name}, {length:.1f} {unit} ; tronçons selon les limites : {passed} conformes, {failed} non conformes, {close} trop proches pour juger</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Road: {name}</source>
      <translation>Route : {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Rule</source>
      <translation>Règle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the height of the line that comes first.</source>
      <translation>Règle : l'altitude de la ligne qui vient en premier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights, however much they differ.</source>
      <translation>Règle : la moyenne des deux altitudes, quelle que soit leur différence.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights; a larger difference than the tolerance would have been refused.</source>
      <translation>Règle : la moyenne des deux altitudes ; une différence supérieure à la tolérance aurait été refusée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Run by run, where a run met others at {least} places or more: {shown} of {count} runs</source>
      <translation>Série par série, là où une série en a rencontré d'autres à {least} endroits ou plus : {shown} sur {count} séries</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Runoff coefficient</source>
      <translation>Coefficient de ruissellement</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Same place, different heights: the largest differences</source>
      <translation>Même endroit, altitudes différentes : les plus grandes différences</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart ({ppm} ppm).</source>
      <translation>Ligne d'exemple de {start} à {end} : {grid_m} m en projection, {ground_m} m sur le terrain, écart de {difference_mm} mm ({ppm} ppm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second file, line</source>
      <translation>Second fichier, ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Second line</source>
      <translation>Seconde ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second minus first</source>
      <translation>Second moins premier</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Section {name}. Heights are exact all along, at every edge of both surfaces.</source>
      <translation>Profil {name}. Les altitudes sont exactes tout du long, à chaque arête des deux surfaces.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/sections.py" />
      <source>Sections of {width} m to each side cannot be drawn; give a width above 0.</source>
      <translation>Des profils de {width} m de chaque côté ne peuvent pas être dessinés ; donnez une largeur supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Ajustement à sept paramètres dans l'espace sur {count} points d'appui ; rotation de {turn} degrés autour de l'axe (est {x}, nord {y}, haut {z}), échelle {scale} ({ppm} ppm). Redondance {freedom}, écart-type d'une coordonnée {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Share of the plan (%)</source>
      <translation>Part du plan (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Share of the site (%)</source>
      <translation>Part du site (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Sheet     contours shifted by at most {shifted:.3f} m, {labels} labels for 1 : {scale:g}, {spots} spots</source>
      <translation>Feuille   courbes de niveau décalées de {shifted:.3f} m au plus, {labels} étiquettes pour 1 : {scale:g}, {spots} points cotés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/paper.py" />
      <source>Sheet {page} of {pages}</source>
      <translation>Feuille {page} sur {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Shift of the design ({unit})</source>
      <translation>Décalage du projet ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sight on crests by your table of speeds and least K</source>
      <translation>Visibilité aux sommets selon votre table de vitesses et de K minimaux</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Sight on crests is an indication only: it compares the K of a fitted curve with your table. It knows nothing of bends, walls, hedges, or the eye and object heights that your table assumes.</source>
      <translation>La visibilité aux sommets n'est qu'indicative : elle compare le K d'une courbe ajustée à votre table. Elle ne sait rien des virages, des murs, des haies, ni des hauteurs d'œil et d'obstacle que votre table suppose.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Signs: cut is ground to be taken away (existing above design), fill ground to be placed (design above existing), both positive; net is fill less cut, above 0 where earth must be brought in. Volumes are as the ground lies, without shrink or swell, unless a table says otherwise.</source>
      <translation>Signes : le déblai est le terrain à enlever (existant au-dessus du projet), le remblai le terrain à mettre en place (projet au-dessus de l'existant), tous deux positifs ; le net est le remblai moins le déblai, au-dessus de 0 là où il faut apporter des terres. Les volumes sont en place, sans tassement ni foisonnement, sauf indication contraire d'un tableau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sill at station</source>
      <translation>Seuil à l'abscisse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Size (bytes)</source>
      <translation>Taille (octets)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size (mm)</source>
      <translation>Taille (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size / its sigma</source>
      <translation>Taille / son sigma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope</source>
      <translation>Pente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope of the triangles; a slope on a limit belongs to the flatter class.</source>
      <translation>Pente des triangles ; une pente égale à une limite appartient à la classe la plus plate.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Slopes of cut, fill</source>
      <translation>Talus de déblai, de remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Plus petite équidistance que les données justifient : {interval:g} {unit} (RMSEz {rmse:.3f} m d'après {basis} ; RMSEz = équidistance / 3, ASPRS Positional Accuracy Standards, 2014, annexe B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Source of the limit</source>
      <translation>Source de la limite</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Space</source>
      <translation>Espace</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end.</source>
      <translation>Espacement le long des passages. {count} pas plus longs, jusqu'à {longest} {unit}, sont au-delà de l'extrémité droite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Spacing and gaps</source>
      <translation>Espacement et lacunes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Speed reached for sure</source>
      <translation>Vitesse atteinte à coup sûr</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the plane of its {count:.0f} neighbours, {ratio:.0f} times the scatter there.</source>
      <translation>Pic à E {easting:.3f} N {northing:.3f} : {value:+.3f} m hors du plan de ses {count:.0f} voisins, {ratio:.0f} fois la dispersion à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike on a line at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the straight between its neighbours on the line, {ratio:.0f} times the scatter of lines.</source>
      <translation>Pic sur une ligne à E {easting:.3f} N {northing:.3f} : {value:+.3f} m hors de la droite entre ses voisins sur la ligne, {ratio:.0f} fois la dispersion des lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spikes: points off the plane through their neighbours by several times the scatter of the survey, estimated from the median of absolute residuals (Rousseeuw and Croux 1993). The limits of all findings are this program's own choice, from no standard.</source>
      <translation>Pics : points hors du plan de leurs voisins de plusieurs fois la dispersion du levé, estimée par la médiane des résidus absolus (Rousseeuw et Croux 1993). Les limites de tous les constats sont le choix propre de ce programme, d'aucune norme.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Spills to</source>
      <translation>Déborde vers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spot heights: summits, pits and saddles by T. Banchoff (1967, “Critical points and curvature for embedded polyhedra”); shown is what stands out by an interval or more.</source>
      <translation>Points cotés : sommets, points bas et cols d'après T. Banchoff (1967, « Critical points and curvature for embedded polyhedra ») ; est montré ce qui ressort d'une équidistance ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Stage, area and volume</source>
      <translation>Niveau, aire et volume</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Standard deviation ({unit})</source>
      <translation>Écart-type ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>Standard deviation of a height (mm)</source>
      <translation>Écart-type d'une altitude (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Standard deviation of a height, found in this survey (mm)</source>
      <translation>Écart-type d'une altitude, trouvé dans ce levé (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {own} mm, each with an error of its own; no drift.</source>
      <translation>Les écarts-types viennent d'altitudes bonnes à {own} mm, chacune avec sa propre erreur ; sans dérive.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {total} mm: {own} mm of each point's own and {drift} mm that drift within {time} s, common to points recorded together.</source>
      <translation>Les écarts-types viennent d'altitudes bonnes à {total} mm : {own} mm propres à chaque point et {drift} mm qui dérivent en {time} s, communs aux points enregistrés ensemble.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Standard deviations of what it holds</source>
      <translation>Écarts-types de ce qu'il contient</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Station</source>
      <translation>Abscisse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Station ({unit})</source>
      <translation>Abscisse ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Station {station}</source>
      <translation>Abscisse {station}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stations</source>
      <translation>Abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>Stations every {step} m cannot be set along {length:.1f} m; give a step above 0.</source>
      <translation>Des abscisses tous les {step} m ne peuvent pas être placées sur {length:.1f} m ; donnez un pas supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Status</source>
      <translation>Statut</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Steps a bar of {width} {unit}</source>
      <translation>Pas par barre de {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>Stopped; no file is half written.</source>
      <translation>Arrêté ; aucun fichier n'est écrit à moitié.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Storage of a basin: {name}</source>
      <translation>Stockage d'un bassin : {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Storage of the basin</source>
      <translation>Stockage du bassin</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stretches, each with its value nearest to the limit or farthest beyond it ± one standard deviation: {shown} of {count}</source>
      <translation>Tronçons, chacun avec sa valeur la plus proche de la limite ou la plus au-delà ± un écart-type : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Surface</source>
      <translation>Surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}</source>
      <translation>Surface   {triangles} triangles, {area:.1f} m², altitudes {low:.3f} à {high:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface ({unit})</source>
      <translation>Surface ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check (mm)</source>
      <translation>Surface moins contrôle (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check point</source>
      <translation>Surface moins point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}” has no visible faces; its points ({points}) and lines ({lines}) are read. Build the surface from them.</source>
      <translation>La surface « {name} » n'a pas de faces visibles ; ses points ({points}) et ses lignes ({lines}) sont lus. Construisez la surface à partir d'eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces are marked invisible and are left out.</source>
      <translation>Surface « {name} » : {count} faces sont marquées invisibles et laissées de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces without area in plan (upright or none at all) are left out, the first in line {line}.</source>
      <translation>Surface « {name} » : {count} faces sans aire en plan (verticales ou nulles) sont laissées de côté, la première à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} of {total} segments of its breaklines and boundaries are no edges of its faces; they come as lines only.</source>
      <translation>Surface « {name} » : {count} des {total} segments de ses lignes de rupture et limites ne sont pas des arêtes de ses faces ; ils viennent seulement comme lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Survey report: {file}</source>
      <translation>Rapport de levé : {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Tested {accuracy:.3f} metres vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check points, RMSEz {rmse:.3f} m).</source>
      <translation>Testé : précision verticale de {accuracy:.3f} mètres au niveau de confiance de 95 % (FGDC-STD-007.3-1998 ; {count} points de contrôle, RMSEz {rmse:.3f} m).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>That would be {count} points to set out, more than {most}; choose a wider spacing.</source>
      <translation>Cela ferait {count} points à implanter, plus de {most} ; choisissez un espacement plus large.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/grid.py" />
      <source>The DEM of {columns} x {rows} cells is a text of about {size:.0f} MB; a larger cell makes it smaller.</source>
      <translation>Le MNT de {columns} x {rows} cellules est un texte d'environ {size:.0f} Mo ; une cellule plus grande le réduit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The arc tolerance {value} m cannot be used. Give at least {least} m.</source>
      <translation>La tolérance d'arc de {value} m ne peut pas être utilisée. Donnez au moins {least} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The base of the contour levels is {base} {unit}; give a number near the heights.</source>
      <translation>La base des niveaux de courbes est {base} {unit} ; donnez un nombre proche des altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The basin spills at the edge of the surface (E {easting:.3f} N {northing:.3f}); its true brim may be elsewhere. Survey beyond it.</source>
      <translation>Le bassin déborde au bord de la surface (E {easting:.3f} N {northing:.3f}) ; son vrai bord peut être ailleurs. Levez au-delà.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>The cell size is {cell} m; give a number above 0.</source>
      <translation>La taille de cellule est {cell} m ; donnez un nombre supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline has {count} different places; it needs two or more.</source>
      <translation>L'axe a {count} emplacements différents ; il lui en faut deux ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The centreline is in {line} but the surface in {surface}. Reproject the line's layer to the surface's CRS.</source>
      <translation>L'axe est en {line} mais la surface en {surface}. Reprojetez la couche de la ligne dans le SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline turns back on itself at E {easting:.3f} N {northing:.3f}; redraw it.</source>
      <translation>L'axe revient sur lui-même à E {easting:.3f} N {northing:.3f} ; redessinez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA suggests 20 % or more), and {near} are nearer to another one than a tenth of the site's diagonal ({distance:.0f} m).</source>
      <translation>Les points de contrôle sont répartis inégalement : le quart le plus vide du site en contient {least:.0f} % (NSSDA suggère 20 % ou plus), et {near} sont plus près d'un autre que le dixième de la diagonale du site ({distance:.0f} m).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points' own error is {sigma_cm:.1f} cm; for the {class_cm:g}-cm class they should be good to {needed_cm:.1f} cm.</source>
      <translation>L'erreur propre des points de contrôle est de {sigma_cm:.1f} cm ; pour la classe de {class_cm:g} cm, ils devraient être bons à {needed_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The check shots were taken with the receiver of the survey: an error they share (base station, pole height, geoid) does not show. Points from an independent, better source are needed for a statement by a standard.</source>
      <translation>Les visées de contrôle ont été prises avec le récepteur du levé : une erreur qu'elles partagent (station de base, hauteur de canne, géoïde) ne se voit pas. Des points d'une source indépendante et meilleure sont nécessaires pour une déclaration selon une norme.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The checks found nothing.</source>
      <translation>Les contrôles n'ont rien trouvé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The claim</source>
      <translation>L'annonce</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The coded point of line {line} stands {size:+.3f} m off its line on either side.</source>
      <translation>Le point codé de la ligne {line} s'écarte de {size:+.3f} m de sa ligne de part et d'autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>The column “{word}” is asked for twice.</source>
      <translation>La colonne « {word} » est demandée deux fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The columns for line number and words do not fit the number of codes; not joined. Points: {count}, first {point} (line {line}).</source>
      <translation>Les colonnes de numéro de ligne et de mots ne correspondent pas au nombre de codes ; non jointes. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The contour interval is {interval} {unit}; give a number above 0.</source>
      <translation>L'équidistance est {interval} {unit} ; donnez un nombre supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The contours are no better than the survey: where nobody walked, the surface is a straight guess between the points around.</source>
      <translation>Les courbes de niveau ne sont pas meilleures que le levé : là où personne n'a marché, la surface est une simple interpolation droite entre les points alentour.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of {count} check points is not stated; they count as non-vegetated.</source>
      <translation>La couverture du sol de {count} points de contrôle n'est pas indiquée ; ils comptent comme non végétalisés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>The cross-section at station {station} does not fit on {paper} at {scale} (it is {width:.1f} m wide and {height:.1f} m high). Choose {fit} or a larger paper.</source>
      <translation>Le profil en travers à l'abscisse {station} ne tient pas sur {paper} à {scale} (il est large de {width:.1f} m et haut de {height:.1f} m). Choisissez {fit} ou un papier plus grand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/depths.py" />
      <source>The depth limits {limits} (metres) must be above 0 and rise; mend their list.</source>
      <translation>Les limites de profondeur {limits} (mètres) doivent être supérieures à 0 et croissantes ; corrigez leur liste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The depth of topsoil (m)</source>
      <translation>L'épaisseur de terre végétale (m)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The drift of heights is {value} m; give a standard deviation of 0 or more.</source>
      <translation>La dérive des altitudes est {value} m ; donnez un écart-type de 0 ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>The drift of {drift:g} m is larger than the standard deviation of a height, {sigma:g} m, of which it is a part. Give a smaller drift or a larger standard deviation.</source>
      <translation>La dérive de {drift:g} m est plus grande que l'écart-type d'une altitude, {sigma:g} m, dont elle fait partie. Donnez une dérive plus petite ou un écart-type plus grand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to compacted volume</source>
      <translation>Le facteur du volume en place au volume compacté</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to loose volume</source>
      <translation>Le facteur du volume en place au volume foisonné</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>The factor from cut to fill is {factor}; give a number above 0 (1 where volumes do not change).</source>
      <translation>Le facteur du déblai au remblai est {factor} ; donnez un nombre supérieur à 0 (1 là où les volumes ne changent pas).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The file gives no standard deviations, so this report cannot say how uncertain a single height is. Independent check shots can.</source>
      <translation>Le fichier ne donne pas d'écarts-types, ce rapport ne peut donc pas dire l'incertitude d'une altitude isolée. Des visées de contrôle indépendantes le peuvent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The files of the survey</source>
      <translation>Les fichiers du levé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>The height at which cut times the factor equals fill and the surplus asked for. Its ± (95 %) is the doubt of the volumes over the area that a metre of height moves; the factor's own doubt is not in it, and is often larger.</source>
      <translation>L'altitude à laquelle le déblai multiplié par le facteur égale le remblai et l'excédent demandé. Son ± (95 %) est l'incertitude des volumes divisée par l'aire qu'un mètre d'altitude déplace ; l'incertitude propre du facteur n'y est pas, et elle est souvent plus grande.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The height offset between both surfaces has {value} m; give a standard deviation of 0 or more.</source>
      <translation>Le décalage d'altitude entre les deux surfaces a {value} m ; donnez un écart-type de 0 ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/soften.py" />
      <source>The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up.</source>
      <translation>La tolérance d'altitude pour le tracé des courbes de niveau est {tolerance} m ; donnez un nombre de mètres à partir de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change distances by 5 mm in a kilometre.</source>
      <translation>Les altitudes ont été prises comme ellipsoïdales sans ondulation du géoïde ; 30 m d'ondulation changeraient les distances de 5 mm par kilomètre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The interval of cross-sections is {interval}; give a length above 0 that makes at most {most} of them.</source>
      <translation>L'intervalle des profils en travers est {interval} ; donnez une longueur supérieure à 0 qui en produise {most} au plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The interval of {interval} {unit} is finer than the survey can support. Choose a larger one.</source>
      <translation>L'équidistance de {interval} {unit} est plus fine que ce que le levé peut justifier. Choisissez-en une plus grande.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/smooth.py" />
      <source>The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up.</source>
      <translation>Le plus grand décalage pour lisser les courbes de niveau est {max_shift} m ; donnez un nombre de mètres à partir de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The level or plane has a value that is no number ({values}); give numbers.</source>
      <translation>Le niveau ou le plan a une valeur qui n'est pas un nombre ({values}) ; donnez des nombres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <location filename="../plugin/core/surface/findings.py" />
      <source>The limit {option} is {value}; give a number above 0.</source>
      <translation>La limite {option} est {value} ; donnez un nombre supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The limits were compared with their sources only as the table says; check them against your copy. Exceptions in the sources, such as landings, lengths and crossings, are not checked here.</source>
      <translation>Les limites n'ont été comparées à leurs sources que comme le dit le tableau ; vérifiez-les sur votre exemplaire. Les exceptions des sources, telles que paliers, longueurs et traversées, ne sont pas vérifiées ici.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The load of a truck (m³ loose)</source>
      <translation>La charge d'un camion (m³ foisonnés)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the contours of the sheet: heights were moved by at most {moved} (allowed: {calm}) and then lines by at most {shifted} m in plan (allowed: {smooth} m). No line crosses another or a breakline. They are for drawing only; lengths, areas and the table below are of the exact contours.</source>
      <translation>La carte montre les courbes de niveau de la feuille : les altitudes ont été déplacées de {moved} au plus (permis : {calm}), puis les lignes de {shifted} m au plus en plan (permis : {smooth} m). Aucune ligne n'en croise une autre ni une ligne de rupture. Elles ne servent qu'au dessin ; longueurs, aires et le tableau ci-dessous sont ceux des courbes exactes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the exact contours, which are not smoothed.</source>
      <translation>La carte montre les courbes de niveau exactes, qui ne sont pas lissées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” is that of a control point and of a point to set out; choose another prefix.</source>
      <translation>Le nom « {name} » est celui d'un point d'appui et d'un point à implanter ; choisissez un autre préfixe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” would stand for {count} points ({names} names in all are used more than once); a data collector would mix them up. Choose another prefix or another name field.</source>
      <translation>Le nom « {name} » désignerait {count} points (en tout {names} noms sont utilisés plus d'une fois) ; un carnet de terrain les confondrait. Choisissez un autre préfixe ou un autre champ de nom.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or accept another one.</source>
      <translation>L'opération acceptée par son nom, '{accepted}', demande {grids}, non installé ici. Installez le fichier, ou acceptez-en une autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>The outline of the pad crosses or touches itself or a hole; draw it as rings without loops, holes inside.</source>
      <translation>Le contour de la plateforme se croise ou se touche, ou touche un trou ; dessinez-le en anneaux sans boucles, trous à l'intérieur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} cannot be used ({reason}). Write a regular expression with a group named code.</source>
      <translation>Le motif {pattern} ne peut pas être utilisé ({reason}). Écrivez une expression régulière avec un groupe nommé code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} has no group named code. Write (?P&lt;code&gt;...) around the code.</source>
      <translation>Le motif {pattern} n'a pas de groupe nommé code. Écrivez (?P&lt;code&gt;...) autour du code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The place of the basin, E {easting:.3f} N {northing:.3f}, is outside the surface. Give one inside.</source>
      <translation>Le lieu du bassin, E {easting:.3f} N {northing:.3f}, est hors de la surface. Donnez-en un à l'intérieur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The platform is wholly outside the existing surface. Check its place and the CRS.</source>
      <translation>La plateforme est entièrement hors de la surface existante. Vérifiez son emplacement et le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_beside.py" />
      <source>The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off its height.</source>
      <translation>Le point à E {easting:.3f} N {northing:.3f} est à {distance:.3f} m d'une ligne de rupture et à {value:+.3f} m de son altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked (--no-check): what the receiver got wrong is in the surface.</source>
      <translation>Les points n'ont pas été vérifiés (--no-check) : ce que le récepteur a mal mesuré est dans la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked, so nothing is said of how heights repeat.</source>
      <translation>Les points n'ont pas été vérifiés, rien n'est donc dit de la répétition des altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>The prismoidal formula is exact where the ground between sections is ruled; what is left comes from ground that changes between the sections, and from bends ({overlap:.1f} m² of the strip lie in several sections).</source>
      <translation>La formule prismoïdale est exacte là où le terrain entre les profils est réglé ; le reste vient du terrain qui change entre les profils, et des courbes ({overlap:.1f} m² de la bande sont dans plusieurs profils).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The profile is too short to fit grades and vertical curves to.</source>
      <translation>Le profil en long est trop court pour y ajuster des pentes et des raccordements verticaux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The profile must give heights at rising stations that cover the centreline from 0 to {length:.2f} m; it covers {low:.2f} to {high:.2f} m.</source>
      <translation>Le profil en long doit donner des altitudes à des abscisses croissantes couvrant l'axe de 0 à {length:.2f} m ; il couvre de {low:.2f} à {high:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims less noise than there is: do not rely on its claims.</source>
      <translation>Le récepteur annonce moins de bruit qu'il n'y en a : ne vous fiez pas à ses annonces.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims more noise than was found: its claims are on the safe side.</source>
      <translation>Le récepteur annonce plus de bruit qu'il n'en a été trouvé : ses annonces sont du côté de la sécurité.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims nothing to compare with.</source>
      <translation>Le récepteur n'annonce rien à quoi comparer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The rules, where their limits come from, and how they apply</source>
      <translation>Les règles, l'origine de leurs limites et leur application</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The same by other methods</source>
      <translation>La même chose par d'autres méthodes</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The scale of a local grid is not known; say the CRS of the points to compute it.</source>
      <translation>L'échelle d'un repère local n'est pas connue ; indiquez le SCR des points pour la calculer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The sentences follow the standards in meaning; compare their wording with your copy before you sign them.</source>
      <translation>Les phrases suivent le sens des normes ; comparez leur formulation à votre exemplaire avant de les signer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The share of cut that cannot be used</source>
      <translation>La part de déblai inutilisable</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/slopes.py" />
      <source>The slope limits {limits} (percent) must rise and be 0 or more; mend their list.</source>
      <translation>Les limites de pente {limits} (pour cent) doivent être croissantes et de 0 ou plus ; corrigez leur liste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slope of the edge near E {easting:.3f} N {northing:.3f} would run across the platform itself, and slopes of several grades were asked for. Give this outline one slope, or grade its arms as platforms of their own.</source>
      <translation>Le talus du bord près de E {easting:.3f} N {northing:.3f} traverserait la plateforme elle-même, et des talus de plusieurs pentes ont été demandés. Donnez à ce contour un seul talus, ou terrassez ses bras comme des plateformes distinctes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The slopes do not meet the ground along {length:.1f} m, since the surface ends there, first near E {easting:.3f} N {northing:.3f}. Volumes stop at its rim; survey farther out or use steeper slopes.</source>
      <translation>Les talus ne rejoignent pas le terrain sur {length:.1f} m, car la surface s'y termine, d'abord près de E {easting:.3f} N {northing:.3f}. Les volumes s'arrêtent à son pourtour ; levez plus loin ou prenez des talus plus raides.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slopes of two edges differ near E {easting:.3f} N {northing:.3f}, where the edges meet at an angle too flat for the slopes to meet. Let the slope change at a sharper corner.</source>
      <translation>Les talus de deux bords diffèrent près de E {easting:.3f} N {northing:.3f}, où les bords se rencontrent sous un angle trop plat pour que les talus se rejoignent. Faites changer le talus à un angle plus vif.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The spacing is held at {spacing:.1f} m: {widest:.1f} m by the formula would miss forms a surveyor is expected to show.</source>
      <translation>L'espacement est maintenu à {spacing:.1f} m : {widest:.1f} m selon la formule manquerait des formes qu'un géomètre est censé montrer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The spacing must be above 0 m, not {spacing} m; mend it.</source>
      <translation>L'espacement doit être supérieur à 0 m, et non {spacing} m ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The stations of the profile must rise; station {station:.2f} m does not.</source>
      <translation>Les abscisses du profil en long doivent croître ; l'abscisse {station:.2f} m ne le fait pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The strip folds over itself: a bend of the centreline is tighter than the strip is wide there. Ease the bend or narrow the section.</source>
      <translation>La bande se replie sur elle-même : une courbe de l'axe est plus serrée que la bande n'y est large. Adoucissez la courbe ou rétrécissez le profil.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface (TIN)</source>
      <translation>La surface (TIN)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check points of {file}.</source>
      <translation>La surface par rapport aux points de contrôle de {file}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check shots in {file}, which did not shape it.</source>
      <translation>La surface par rapport aux visées de contrôle dans {file}, qui n'ont pas servi à la former.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it (constrained Delaunay triangulation), with no points added along them but where lines cross. Tiles of points are triangulated by Qhull, joined, and corrected by Lawson's flips until every edge is right. Between points the surface is plane.</source>
      <translation>La surface est la triangulation de Delaunay des points utilisés ; les lignes qu'elle doit respecter en sont des arêtes (triangulation de Delaunay contrainte), sans points ajoutés le long d'elles sauf aux croisements de lignes. Des tuiles de points sont triangulées par Qhull, jointes, puis corrigées par les basculements de Lawson jusqu'à ce que chaque arête soit juste. Entre les points, la surface est plane.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.</source>
      <translation>La surface est en moyenne à {mean:+.3f} m des points de contrôle (p = {p:.2g}), soit {share:.0f} % de la RMSE. Cherchez-en la cause (hauteur de canne, géoïde, coordonnées de la base) avant d'utiliser 1.9600 × RMSE.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface was searched for level spots, gaps in lines, ground where nothing was recorded, spikes, and points beside lines at another height: none were found.</source>
      <translation>La surface a été examinée à la recherche de plages horizontales, de lacunes dans les lignes, de terrain où rien n'a été enregistré, de pics, et de points à côté de lignes d'une autre altitude : rien n'a été trouvé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The survey points by what became of them.</source>
      <translation>Les points du levé selon ce qu'ils sont devenus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The thinned surface</source>
      <translation>La surface allégée</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The three points of the plane lie on one straight line; give others.</source>
      <translation>Les trois points du plan sont sur une même droite ; donnez-en d'autres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has no heights; it was laid on the surface ({count} vertices).</source>
      <translation>La ligne de pied ou de pourtour n'a pas d'altitudes ; elle a été posée sur la surface ({count} sommets).</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has {count} different corners; a ring needs three or more.</source>
      <translation>La ligne de pied ou de pourtour a {count} sommets différents ; un anneau en demande trois ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line itself lies from {low:.3f} m below to {high:.3f} m above the base taken.</source>
      <translation>La ligne de pied ou de pourtour elle-même va de {low:.3f} m en dessous à {high:.3f} m au-dessus de la base prise.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line leaves the surface for {length:.2f} m, first near E {easting:.3f} N {northing:.3f}, and has no heights of its own there. Draw it on the surface or give it heights.</source>
      <translation>La ligne de pied ou de pourtour quitte la surface sur {length:.2f} m, d'abord près de E {easting:.3f} N {northing:.3f}, et n'y a pas d'altitudes propres. Dessinez-la sur la surface ou donnez-lui des altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The typical section needs widths above 0 on both sides and a ditch of depth above 0.</source>
      <translation>Le profil type demande des largeurs supérieures à 0 des deux côtés et un fossé de profondeur supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The unit of the heights was left as it was read.</source>
      <translation>L'unité des altitudes a été laissée telle que lue.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The vertical class wanted is {value} cm; give a number above 0.</source>
      <translation>La classe verticale voulue est {value} cm ; donnez un nombre supérieur à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The vertical curve of {length:.2f} m at station {station:.2f} m runs into its neighbour or past the end of the profile; shorten it.</source>
      <translation>Le raccordement vertical de {length:.2f} m à l'abscisse {station:.2f} m empiète sur son voisin ou dépasse la fin du profil en long ; raccourcissez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/thin.py" />
      <source>The vertical tolerance is {tolerance} m; give a number of 0 or more.</source>
      <translation>La tolérance verticale est {tolerance} m ; donnez un nombre de 0 ou plus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The volumes of this page are exact for the two surfaces: every triangle of the one is cut along those of the other. Other methods take samples, so they differ:</source>
      <translation>Les volumes de cette page sont exacts pour les deux surfaces : chaque triangle de l'une est coupé le long de ceux de l'autre. D'autres méthodes échantillonnent, elles diffèrent donc :</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; {count} circles are wider than {limit:.1f} m.</source>
      <translation>Le plus large cercle sans point mesuré a un rayon de {radius:.1f} m, à E {easting:.3f} N {northing:.3f} ; {count} cercles sont plus larges que {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word for {meaning} is '{word}'; it must be one word without spaces or separator.</source>
      <translation>Le mot pour {meaning} est '{word}' ; ce doit être un seul mot sans espaces ni séparateur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The word for {word} stands on a point without a line code; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>Le mot pour {word} est sur un point sans code de ligne ; ignoré. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word {word} means both {first} and {second}. Give each its own word.</source>
      <translation>Le mot {word} signifie à la fois {first} et {second}. Donnez à chacun son propre mot.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The words '{words}' must be four, with commas between: for begin, end, close and arc, in this order. Leave one empty where the field has none.</source>
      <translation>Les mots '{words}' doivent être quatre, séparés par des virgules : pour début, fin, fermeture et arc, dans cet ordre. Laissez vide celui que le terrain n'a pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Their reasons</source>
      <translation>Leurs raisons</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>There are no check points on the surface, so nothing here tests it. Measure at least 30 points with an independent, better method and give them with --check-points.</source>
      <translation>Il n'y a pas de points de contrôle sur la surface, rien ici ne la teste donc. Mesurez au moins 30 points par une méthode indépendante et meilleure et donnez-les avec --check-points.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>There are no points to set out in what was given.</source>
      <translation>Il n'y a pas de points à implanter dans ce qui a été donné.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>There is no area to walk; give a polygon.</source>
      <translation>Il n'y a pas de zone à parcourir ; donnez un polygone.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>There is no pad to grade; give a polygon.</source>
      <translation>Il n'y a pas de plateforme à terrasser ; donnez un polygone.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>There is no pond on either surface.</source>
      <translation>Il n'y a de mare sur aucune des deux surfaces.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>There is no pond: noise explains every one of the {pits} pits, or they are shallower than asked.</source>
      <translation>Il n'y a pas de mare : le bruit explique chacun des {pits} points bas, ou ils sont moins profonds que demandé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>There is no survey file to merge; give at least one.</source>
      <translation>Il n'y a pas de fichier de levé à fusionner ; donnez-en au moins un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>There is no survey to read; give at least one file.</source>
      <translation>Il n'y a pas de levé à lire ; donnez au moins un fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>Il n'y a pas de parcours assez long pour dire comment les altitudes se répètent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>There is not enough memory for this survey; split the file.</source>
      <translation>La mémoire ne suffit pas pour ce levé ; divisez le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. Only independent check shots measure the accuracy of the surface.</source>
      <translation>Ce sont des annonces, non des tests : les erreurs de canne, d'inclinaison, de référence et les décalages du récepteur n'y sont pas. Seules des visées de contrôle indépendantes mesurent la précision de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>These are coordinates of the grid: a distance measured on the ground differs from theirs by the combined factor of the site.</source>
      <translation>Ce sont des coordonnées en projection : une distance mesurée sur le terrain diffère de la leur du facteur combiné du site.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Thinned   {kept} of {vertices} vertices, at most {off:.3f} m off in height</source>
      <translation>Allégée   {kept} sommets sur {vertices}, écart d'altitude de {off:.3f} m au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Thinning: greedy insertion by M. Garland and P. S. Heckbert (1995, “Fast Polygonal Approximation of Terrains and Height Fields”), many points a round.</source>
      <translation>Allègement : insertion gloutonne de M. Garland et P. S. Heckbert (1995, « Fast Polygonal Approximation of Terrains and Height Fields »), plusieurs points par tour.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>This Python has no package {package}; install {packages}, or run the Python that QGIS uses.</source>
      <translation>Ce Python n'a pas le paquet {package} ; installez {packages}, ou lancez le Python qu'utilise QGIS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested and does not meet the {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class of the ASPRS Positional Accuracy Standards, Edition 2 (2023). Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Ce jeu de données a été testé et ne satisfait pas à la classe de précision de position verticale RMSEV de {class_cm:g} cm des ASPRS Positional Accuracy Standards, édition 2 (2023). La précision NVA réelle s'établit à RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested to meet ASPRS Positional Accuracy Standards for Digital Geospatial Data, Edition 2 (2023) for a {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class. Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Ce jeu de données a été testé et satisfait aux ASPRS Positional Accuracy Standards for Digital Geospatial Data, édition 2 (2023), pour une classe de précision de position verticale RMSEV de {class_cm:g} cm. La précision NVA réelle s'établit à RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>This is a computation, not a certificate: a licensed professional decides what may be stated for a contract.</source>
      <translation>Ceci est un calcul, non un certificat : un professionnel agréé décide de ce qui peut être déclaré pour un contrat.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>This is a computation, not a payment certificate: quantities for payment are measured as the contract says, by whom it says. It defers to the contract, local codes and licensed practice.</source>
      <translation>Ceci est un calcul, non un décompte : les quantités à payer sont mesurées comme le dit le contrat, par qui il le dit. Il s'efface devant le contrat, les règlements locaux et les professionnels agréés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>This is a study of grades and quantities, not a design for construction: levels, drainage, retaining works and the grades that local codes and accessibility rules ask for are the work of a licensed professional.</source>
      <translation>Ceci est une étude de pentes et de quantités, non un projet d'exécution : niveaux, drainage, ouvrages de soutènement et pentes exigées par les règlements locaux et les règles d'accessibilité sont l'affaire d'un professionnel agréé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>This is an indication from a survey, not an approval. Whether a road, walk or ramp meets its limits is decided by the codes that apply where it lies and by a licensed professional.</source>
      <translation>Ceci est une indication issue d'un levé, non une approbation. Si une route, un trottoir ou une rampe respecte ses limites, les règlements applicables sur place et un professionnel agréé en décident.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>This is how far the heights of this survey scatter about their common error, on even ground. Errors that all visits share (base station, geoid, pole height) do not show here; check points show them.</source>
      <translation>C'est la dispersion des altitudes de ce levé autour de leur erreur commune, sur un terrain régulier. Les erreurs que toutes les visites partagent (station de base, géoïde, hauteur de canne) ne se voient pas ici ; les points de contrôle les montrent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>This is no survey of boundaries. Marks of property, and set-out that others build on, are for a licensed professional under local rules, who also checks the design against the issued drawings.</source>
      <translation>Ceci n'est pas un bornage. Les repères de propriété, et les implantations sur lesquelles d'autres construisent, relèvent d'un professionnel agréé selon les règles locales, qui vérifie aussi le projet d'après les plans émis.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>This is the shape of the ground only: it knows nothing of inflow, outlets, seepage or freeboard. A licensed engineer designs and approves storage by the rules of the place.</source>
      <translation>Ce n'est que la forme du terrain : elle ne sait rien des apports, des exutoires, de l'infiltration ni de la revanche. Un ingénieur agréé conçoit et approuve le stockage selon les règles du lieu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>This operation is not the best one known; the user accepted it by its name.</source>
      <translation>Cette opération n'est pas la meilleure connue ; l'utilisateur l'a acceptée par son nom.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>This shows where water runs on the surface as surveyed. It is no drainage design: pipes, infiltration, ground beyond the survey and what was not measured are not in it.</source>
      <translation>Ceci montre où l'eau s'écoule sur la surface telle que levée. Ce n'est pas un projet d'assainissement : conduites, infiltration, terrain au-delà du levé et ce qui n'a pas été mesuré n'y sont pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>To be known with it:</source>
      <translation>À savoir avec cela :</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>To have it read so, repeat with --correct {name}.</source>
      <translation>Pour qu'il soit lu ainsi, recommencez avec --correct {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>To station ({unit})</source>
      <translation>Jusqu'à l'abscisse ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Too few places were visited twice to say how far heights wander. Walk a few passes across the others.</source>
      <translation>Trop peu d'endroits ont été visités deux fois pour dire de combien les altitudes dérivent. Parcourez quelques passages en travers des autres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Used</source>
      <translation>Utilisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Value</source>
      <translation>Valeur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdict</source>
      <translation>Verdict</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdicts at 95 % along the line, by the number of the rule. A stretch passes or fails when the whole interval of its slope does; else it is too close to tell, and more or better points are needed.</source>
      <translation>Verdicts à 95 % le long de la ligne, par numéro de règle. Un tronçon est conforme ou non conforme lorsque tout l'intervalle de sa pente l'est ; sinon il est trop proche pour juger, et il faut des points plus nombreux ou meilleurs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Vertical section {name}: existing ground and design.</source>
      <translation>Coupe verticale {name} : terrain existant et projet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Vertices</source>
      <translation>Sommets</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volume    {existing} to {design}: cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³, net {net:.1f} ± {net_95:.1f} m³ (95 %)</source>
      <translation>Volume    {existing} vers {design} : déblai {cut:.1f} ± {cut_95:.1f} m³, remblai {fill:.1f} ± {fill_95:.1f} m³, net {net:.1f} ± {net_95:.1f} m³ (95 %)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volume ({unit})</source>
      <translation>Volume ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Volume ({unit}³)</source>
      <translation>Volume ({unit}³)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Volume, compacted ({unit})</source>
      <translation>Volume, compacté ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volumes</source>
      <translation>Volumes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Volumes as the design is raised or lowered, slopes graded anew at each height.</source>
      <translation>Volumes lorsque le projet est relevé ou abaissé, talus retaillés à chaque altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volumes: {existing} to {design}</source>
      <translation>Volumes : {existing} vers {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <source>Water     ponds: {ponds}, {volume:.1f} m³ when full; catchments: {catchments}; {nowhere:.0f} of {area:.0f} m² drain nowhere</source>
      <translation>Eau       mares : {ponds}, {volume:.1f} m³ une fois pleines ; bassins versants : {catchments} ; {nowhere:.0f} m² sur {area:.0f} sans écoulement</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Water level ({unit})</source>
      <translation>Niveau d'eau ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Water runs</source>
      <translation>L'eau coule</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Water takes the steepest way down on the triangles themselves, not on a grid: along the gradient across a triangle, along an edge into which both its triangles fall, and on level ground the shortest way along edges to where it goes down (after S. Yu, M. van Kreveld and J. Snoeyink, “Drainage queries in TINs: from local to global and back again”, 1996).</source>
      <translation>L'eau prend le chemin le plus raide sur les triangles eux-mêmes, non sur une grille : selon le gradient à travers un triangle, le long d'une arête vers laquelle ses deux triangles descendent, et sur terrain horizontal par le plus court chemin le long des arêtes vers l'endroit où cela descend (d'après S. Yu, M. van Kreveld et J. Snoeyink, « Drainage queries in TINs: from local to global and back again », 1996).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ways of water from places {spacing} {unit} apart; channels where more than {channel} {unit}² drain. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Chemins de l'eau depuis des endroits espacés de {spacing} {unit} ; talwegs là où plus de {channel} {unit}² s'écoulent. Relief ombré depuis le nord-ouest, altitudes exagérées {times} fois pour l'ombrage seulement.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What</source>
      <translation>Quoi</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What a surveyor would look at again before handing this surface on. Each may be right: the ground decides, and nothing was changed.</source>
      <translation>Ce qu'un géomètre examinerait de nouveau avant de remettre cette surface. Chaque cas peut être juste : le terrain décide, et rien n'a été changé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>What became of the points</source>
      <translation>Ce que les points sont devenus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What came in</source>
      <translation>Ce qui est entré</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth</source>
      <translation>Ce qui est fait des terres</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth, once the topsoil is off</source>
      <translation>Ce qui est fait des terres, une fois la terre végétale décapée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>What is graded</source>
      <translation>Ce qui est terrassé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What single points are held to: the set “{name}”</source>
      <translation>Ce à quoi les points isolés sont tenus : le jeu « {name} »</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>What the change does to the water</source>
      <translation>Ce que le changement fait à l'eau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the checks found, in the order of recording: {shown} of {count}</source>
      <translation>Ce que les contrôles ont trouvé, dans l'ordre d'enregistrement : {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>What the class rests on</source>
      <translation>Sur quoi repose la classe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What the doubt rests on</source>
      <translation>Sur quoi repose l'incertitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the receiver claims agrees with what was found.</source>
      <translation>Ce que le récepteur annonce concorde avec ce qui a été trouvé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What was done to the coordinates of the file, in this order:</source>
      <translation>Ce qui a été fait aux coordonnées du fichier, dans cet ordre :</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What was found</source>
      <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Where both surfaces reach, full ponds hold {before} {unit}³ before and {after} {unit}³ after the change. Of each whole surface {kept} {unit}² drained nowhere before, {keeps} {unit}² do after.</source>
      <translation>Là où les deux surfaces s'étendent, les mares pleines contiennent {before} {unit}³ avant et {after} {unit}³ après le changement. De chaque surface entière, {kept} {unit}² étaient sans écoulement avant, {keeps} {unit}² le sont après.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Where lines cross and were joined; {shown} of {count}</source>
      <translation>Où des lignes se croisent et ont été jointes ; {shown} sur {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Where the doubt comes from</source>
      <translation>D'où vient l'incertitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Where the ground was measured, and where not. Circles hold no measured point and are wider than {limit} m in radius; triangles are marked from an edge of {edge} m.</source>
      <translation>Où le terrain a été mesuré, et où non. Les cercles ne contiennent aucun point mesuré et ont un rayon supérieur à {limit} m ; les triangles sont marqués à partir d'une arête de {edge} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Where the surface lies</source>
      <translation>Où se trouve la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <location filename="../plugin/core/report/water_page.py" />
      <source>Where the water runs</source>
      <translation>Où l'eau coule</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Whether slopes stand, in the end and while they are dug, is not checked here: it depends on soil, water and loads. Slope stability and excavation safety need licensed practice and the local codes.</source>
      <translation>La tenue des talus, à la fin et pendant leur terrassement, n'est pas vérifiée ici : elle dépend du sol, de l'eau et des charges. La stabilité des talus et la sécurité des fouilles demandent des professionnels agréés et les règlements locaux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Why the columns were taken so:</source>
      <translation>Pourquoi les colonnes ont été prises ainsi :</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Window</source>
      <translation>Fenêtre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a triangle has a standard deviation of {middle} from noise alone. What the ground does between points comes on top.</source>
      <translation>Avec le bruit annoncé de {sigma} (écart-type médian d'une altitude), l'altitude au milieu d'un triangle a un écart-type de {middle} dû au seul bruit. Ce que fait le terrain entre les points s'y ajoute.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Written to {folder}:</source>
      <translation>Écrit dans {folder} :</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a ditch needs a depth above 0.</source>
      <translation>un fossé demande une profondeur supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>a drawing of faces, lines, contours and points (DXF)</source>
      <translation>un dessin de faces, lignes, courbes de niveau et points (DXF)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>a grid file</source>
      <translation>un fichier de grille</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/earthwork/comparison.py" />
      <location filename="../plugin/core/points/merge.py" />
      <source>a local grid</source>
      <translation>un repère local</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a part needs a width above 0.</source>
      <translation>un élément demande une largeur supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a pond</source>
      <translation>une mare</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>a pond or pit</source>
      <translation>une mare ou un point bas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a quote is opened and not closed, or closed too early</source>
      <translation>un guillemet est ouvert et non fermé, ou fermé trop tôt</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a side has one ditch at most; remove this row.</source>
      <translation>un côté a un fossé au plus ; supprimez cette ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a single pit</source>
      <translation>un seul point bas</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a slope needs a run above 0.</source>
      <translation>un talus demande une longueur horizontale supérieure à 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>age of the correction, at most</source>
      <translation>âge de la correction, au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>agrees</source>
      <translation>concorde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>all</source>
      <translation>tous</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>all of the ground compared</source>
      <translation>tout le terrain comparé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>all of the ground with the pads in it as a mesh</source>
      <translation>tout le terrain avec les plateformes, en maillage</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>always</source>
      <translation>toujours</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an inlet</source>
      <translation>un avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an outlet on the rim</source>
      <translation>un exutoire sur le pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>and perhaps</source>
      <translation>et peut-être</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>applied</source>
      <translation>appliqué</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>area in plan</source>
      <translation>aire en plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <location filename="../plugin/core/georeference/heights.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>as given</source>
      <translation>tel que donné</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>average end areas every {step:g} m</source>
      <translation>moyenne des aires extrêmes tous les {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>back</source>
      <translation>arrière</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balance point</source>
      <translation>point d'équilibre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced height</source>
      <translation>altitude équilibrée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balanced height ± 95 %</source>
      <translation>altitude équilibrée ± 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced shift of the design</source>
      <translation>décalage équilibré du projet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>blank lines</source>
      <translation>lignes vides</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, as it lies in the ground</source>
      <translation>emprunt, en place</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, loose on trucks</source>
      <translation>emprunt, foisonné sur camions</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>boundaries</source>
      <translation>limites</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>breakline</source>
      <translation>ligne de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines</source>
      <translation>lignes de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>building the surface</source>
      <translation>construction de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>by edge</source>
      <translation>par arête</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>channel</source>
      <translation>talweg</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points</source>
      <translation>points de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points' own error (mm)</source>
      <translation>erreur propre des points de contrôle (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>check shot</source>
      <translation>visée de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>check shot, kept out to test the surface</source>
      <translation>visée de contrôle, tenue à l'écart pour tester la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>checking the points</source>
      <translation>vérification des points</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>claimed by the receiver</source>
      <translation>annoncé par le récepteur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>claimed by the receiver, root mean square</source>
      <translation>annoncé par le récepteur, moyenne quadratique</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {columns} may be the height, but its header word '{word}' is not known</source>
      <translation>la colonne {columns} peut être l'altitude, mais son mot d'en-tête '{word}' n'est pas connu</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the code: a few texts repeat</source>
      <translation>la colonne {column} est le code : quelques textes se répètent</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {column} is the height: no other column can be</source>
      <translation>la colonne {column} est l'altitude : aucune autre colonne ne peut l'être</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: all texts differ</source>
      <translation>la colonne {column} est le nom : tous les textes diffèrent</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: whole numbers that only grow</source>
      <translation>la colonne {column} est le nom : des nombres entiers toujours croissants</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>column {column} is {role}: its angles have the letters {letters}</source>
      <translation>la colonne {column} est {role} : ses angles portent les lettres {letters}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/reading.py" />
      <source>column {column} is {role}: its header word is '{word}'</source>
      <translation>la colonne {column} est {role} : son mot d'en-tête est '{word}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>columns read</source>
      <translation>colonnes lues</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside</source>
      <translation>les colonnes {first} et {second} ont toutes deux l'en-tête {role} ; la première est lue comme telle, l'autre est gardée à côté</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use of the CRS ({area})</source>
      <translation>les colonnes {first} et {second} sont {first_role} et {second_role} : aucune autre lecture ne tombe dans la zone d'utilisation du SCR ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} look like degrees but may be lengths</source>
      <translation>les colonnes {first} et {second} ressemblent à des degrés mais peuvent être des longueurs</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} make a compact cloud</source>
      <translation>les colonnes {first} et {second} forment un nuage compact</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} may be easting and northing or the other way round</source>
      <translation>les colonnes {first} et {second} peuvent être est et nord ou l'inverse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comma</source>
      <translation>virgule</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comment lines</source>
      <translation>lignes de commentaire</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>comparing surfaces</source>
      <translation>comparaison des surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>contour</source>
      <translation>courbe de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>contour lines with level, index and depression; exact</source>
      <translation>courbes de niveau avec niveau, maîtresse et dépression ; exactes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>coordinate system</source>
      <translation>système de coordonnées</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them</source>
      <translation>les coordonnées sont en {unit} : les points se suivent à {step}, comme les enregistre un mobile à pied</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: read so they land in the area of use of the CRS, else not</source>
      <translation>les coordonnées sont en {unit} : lues ainsi elles tombent dans la zone d'utilisation du SCR, sinon non</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>corners mitred</source>
      <translation>angles à onglet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>correction too old</source>
      <translation>correction trop ancienne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the design only, not compared</source>
      <translation>couvert par le projet seulement, non comparé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the existing surface only, not compared</source>
      <translation>couvert par la surface existante seulement, non comparé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crest</source>
      <translation>sommet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crossfall</source>
      <translation>pente transversale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut</source>
      <translation>déblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut over {low} {unit}</source>
      <translation>déblai de plus de {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut placed as fill</source>
      <translation>déblai mis en remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut that this fill takes</source>
      <translation>déblai que ce remblai prend</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>cut there</source>
      <translation>déblai à cet endroit</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>cut {cut} {unit}²   fill {fill} {unit}²</source>
      <translation>déblai {cut} {unit}²   remblai {fill} {unit}²</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut {low} to {high} {unit}</source>
      <translation>déblai {low} à {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut, as it lies in the ground</source>
      <translation>déblai, en place</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>decided by hand</source>
      <translation>décidé à la main</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decimal mark</source>
      <translation>séparateur décimal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>deeper</source>
      <translation>plus profond</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>degrees of freedom</source>
      <translation>degrés de liberté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>delimiter</source>
      <translation>séparateur</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>design</source>
      <translation>projet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>drains nowhere until full</source>
      <translation>sans écoulement jusqu'à être plein</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>drift: what neighbouring points share</source>
      <translation>dérive : ce que des points voisins partagent</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>easting and northing are exchanged</source>
      <translation>les coordonnées est et nord sont échangées</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so they are of another CRS or exchanged</source>
      <translation>les coordonnées est et nord ne se situent pas là où le font la longitude et la latitude dans ce SCR, mais à {distance_km} km, elles sont donc d'un autre SCR ou échangées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>easting of the surface</source>
      <translation>coordonnée est de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edge swapped</source>
      <translation>arête basculée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges and breaks of the pads and their slopes, by kind</source>
      <translation>arêtes et lignes de rupture des plateformes et de leurs talus, par genre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges forced</source>
      <translation>arêtes forcées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by boundaries</source>
      <translation>arêtes tenues par des limites</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by breaklines</source>
      <translation>arêtes tenues par des lignes de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by voids</source>
      <translation>arêtes tenues par des trous</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>ellipsoidal</source>
      <translation>ellipsoïdale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>empty circle</source>
      <translation>cercle vide</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point with its status and reasons</source>
      <translation>chaque point avec son statut et ses raisons</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>exact</source>
      <translation>exact</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>existing ground</source>
      <translation>terrain existant</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>factors: loose {loose}, compacted {compacted}, unusable share {unusable} %</source>
      <translation>facteurs : foisonné {loose}, compacté {compacted}, part inutilisable {unusable} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>fail</source>
      <translation>non conforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill</source>
      <translation>remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill from one of cut</source>
      <translation>remblai tiré d'une unité de déblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill over {low} {unit}</source>
      <translation>remblai de plus de {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill there</source>
      <translation>remblai à cet endroit</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill {low} to {high} {unit}</source>
      <translation>remblai {low} à {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill, compacted</source>
      <translation>remblai, compacté</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>filling the basin</source>
      <translation>remplissage du bassin</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>finest class met (cm)</source>
      <translation>classe la plus fine satisfaite (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>finishing contours for the sheet</source>
      <translation>finition des courbes de niveau pour la feuille</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>fixes accepted (numbers of NMEA 0183 GGA)</source>
      <translation>fixations acceptées (numéros de NMEA 0183 GGA)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>flagged, still used</source>
      <translation>signalé, encore utilisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>flatter than {limit} %</source>
      <translation>plus plat que {limit} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>following the water</source>
      <translation>suivi de l'eau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>format</source>
      <translation>format</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>forward</source>
      <translation>avant</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>found, with its 95 % interval</source>
      <translation>trouvé, avec son intervalle à 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from pass to pass</source>
      <translation>d'un passage à l'autre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from record to record, median</source>
      <translation>d'un enregistrement à l'autre, médiane</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>gap in a line</source>
      <translation>lacune dans une ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>gone</source>
      <translation>disparue</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>grade</source>
      <translation>pente longitudinale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>grades and vertical curves fitted</source>
      <translation>pentes et raccordements verticaux ajustés</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>grading pads</source>
      <translation>terrassement des plateformes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>grid north</source>
      <translation>nord de la projection</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>grid of {cell:g} m</source>
      <translation>grille de {cell:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points as designed</source>
      <translation>terrain entre les points tel que projeté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points judged from the surface's own roughness</source>
      <translation>terrain entre les points jugé d'après la rugosité propre de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground compared</source>
      <translation>terrain comparé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>ground taken by the design, in plan</source>
      <translation>emprise du projet sur le terrain, en plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>ground that several sections count, in bends</source>
      <translation>terrain que plusieurs profils comptent, dans les courbes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>header lines</source>
      <translation>lignes d'en-tête</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height doubtful: look at it</source>
      <translation>altitude douteuse : à examiner</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height less certain than allowed</source>
      <translation>altitude moins sûre que permis</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>height of a point changed</source>
      <translation>altitude d'un point changée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height of the surface</source>
      <translation>altitude de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>height offset between the surfaces, standard deviation</source>
      <translation>décalage d'altitude entre les surfaces, écart-type</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights of the surface on a grid (DEM) of {columns} x {rows} cells</source>
      <translation>altitudes de la surface sur une grille (MNT) de {columns} x {rows} cellules</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>heights {scale}</source>
      <translation>altitudes {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights, grades and crossfalls at the stations of the road</source>
      <translation>altitudes, pentes longitudinales et transversales aux abscisses de la route</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>holding the surface to its lines</source>
      <translation>ajustement de la surface à ses lignes</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>independent check points</source>
      <translation>points de contrôle indépendants</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>index contour</source>
      <translation>courbe maîtresse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>inlet</source>
      <translation>avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; coordinates are read in {unit}, the unit of the CRS</source>
      <translation>le pied international et le pied US (survey) ne peuvent pas être distingués par les valeurs, ils diffèrent de 2 mm par kilomètre ; les coordonnées sont lues en {unit}, l'unité du SCR</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>its 95 % interval</source>
      <translation>son intervalle à 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its coordinate system</source>
      <translation>son système de coordonnées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its cross-sections to scale</source>
      <translation>ses profils en travers à l'échelle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its profile to scale</source>
      <translation>son profil en long à l'échelle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its stretches against the limits, with verdicts</source>
      <translation>ses tronçons selon les limites, avec verdicts</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>jump at loss or regain of the fix</source>
      <translation>saut à la perte ou à la reprise de la fixation</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>labels of the index contours, for a sheet at 1 : {scale}</source>
      <translation>étiquettes des courbes maîtresses, pour une feuille au 1 : {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands in the area of use of the CRS ({area})</source>
      <translation>tombe dans la zone d'utilisation du SCR ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands outside the area of use of the CRS ({area})</source>
      <translation>tombe hors de la zone d'utilisation du SCR ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>largest difference found</source>
      <translation>plus grande différence trouvée</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>left</source>
      <translation>gauche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>left at the end (below 0: to be brought in)</source>
      <translation>reste à la fin (en dessous de 0 : à apporter)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>left over: cut × factor less fill less surplus</source>
      <translation>reste : déblai × facteur moins remblai moins excédent</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>lengths {scale}</source>
      <translation>longueurs {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>level</source>
      <translation>niveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>level in place of the surface that is missing</source>
      <translation>niveau à la place de la surface manquante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>level spot</source>
      <translation>plage horizontale</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>limit {limit}</source>
      <translation>limite {limit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>line of the sections</source>
      <translation>ligne des profils</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines where the slopes of the pads meet the ground</source>
      <translation>lignes où les talus des plateformes rejoignent le terrain</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>loads of {load} {unit}: waste, borrow</source>
      <translation>charges de {load} {unit} : évacuation, emprunt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>local grid, metres</source>
      <translation>repère local, mètres</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>long triangle</source>
      <translation>triangle long</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking along the road</source>
      <translation>examen le long de la route</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking at accuracy and coverage</source>
      <translation>examen de la précision et de la couverture</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking the surface over</source>
      <translation>examen de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>mean (bias)</source>
      <translation>moyenne (biais)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points</source>
      <translation>moyenne des points</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points plus geoid separation</source>
      <translation>moyenne des points plus ondulation du géoïde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>median</source>
      <translation>médiane</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>median slope, by area</source>
      <translation>pente médiane, par aire</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>median {value} {unit}</source>
      <translation>médiane {value} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>moved beyond the ends of the line, not in the diagram</source>
      <translation>déplacé au-delà des extrémités de la ligne, hors du diagramme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>net (fill less cut)</source>
      <translation>net (remblai moins déblai)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>new</source>
      <translation>nouvelle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>new at every point, along the passes</source>
      <translation>nouveau à chaque point, le long des passages</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>no</source>
      <translation>non</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>no column can be the height</source>
      <translation>aucune colonne ne peut être l'altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>no cut, no fill</source>
      <translation>ni déblai, ni remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>no fixed ambiguities</source>
      <translation>ambiguïtés non fixées</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>no geoid separation was sent, so the ellipsoidal height is unknown</source>
      <translation>aucune ondulation du géoïde n'a été transmise, la hauteur ellipsoïdale est donc inconnue</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>no grid of a kind it knows</source>
      <translation>pas une grille d'un genre connu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>no surface</source>
      <translation>pas de surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>no surface here</source>
      <translation>pas de surface ici</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>noise of a point's height {sigma} mm, drift {drift} mm within {length} m, {ground}</source>
      <translation>bruit de l'altitude d'un point {sigma} mm, dérive {drift} mm sur {length} m, {ground}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>non-vegetated</source>
      <translation>non végétalisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>none over the limit</source>
      <translation>aucun au-delà de la limite</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>normalised median absolute deviation</source>
      <translation>écart absolu médian normalisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>northing of the surface</source>
      <translation>coordonnée nord de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>not UTF-8</source>
      <translation>pas de l'UTF-8</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>not applied</source>
      <translation>non appliqué</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>not known (a layer's surface is missing)</source>
      <translation>inconnue (il manque une surface de couche)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>not on the ground, by its code</source>
      <translation>pas sur le terrain, d'après son code</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>nothing recorded</source>
      <translation>rien d'enregistré</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says for sure whether coordinates are in {units}</source>
      <translation>rien ne dit avec certitude si les coordonnées sont en {units}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>nothing says for sure which columns are which</source>
      <translation>rien ne dit avec certitude quelles colonnes sont lesquelles</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is</source>
      <translation>rien ne dit dans quelle unité sont les coordonnées ; elles sont lues en {unit}, comme un repère local</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are</source>
      <translation>rien ne dit si les altitudes sont ellipsoïdales ou au-dessus d'un géoïde ; elles sont prises telles quelles</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>observations, at least</source>
      <translation>observations, au moins</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>of a kind that nothing says</source>
      <translation>d'un genre que rien n'indique</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it not fit for fill</source>
      <translation>dont impropre au remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it unchanged</source>
      <translation>dont inchangé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>off the line it is coded for</source>
      <translation>hors de la ligne pour laquelle il est codé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>offsets and heights of its cross-sections</source>
      <translation>déports et altitudes de ses profils en travers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>on {paper}, printed at 100 %</source>
      <translation>sur {paper}, imprimé à 100 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>one height, both together</source>
      <translation>une altitude, les deux ensemble</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>orthometric</source>
      <translation>orthométrique</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>other sentences of a receiver log</source>
      <translation>autres trames d'un journal de récepteur</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>outside the interval</source>
      <translation>hors de l'intervalle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>outside the regions</source>
      <translation>hors des régions</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>outside the surface</source>
      <translation>hors de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>over {low} %</source>
      <translation>plus de {low} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>over {width} {unit} of {whole}</source>
      <translation>sur {width} {unit} de {whole}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>pass</source>
      <translation>conforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>path of water</source>
      <translation>chemin d'eau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pit</source>
      <translation>point bas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places of the surface to look at</source>
      <translation>endroits de la surface à examiner</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places to walk again, for the data collector</source>
      <translation>endroits à parcourir de nouveau, pour le carnet de terrain</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>places visited twice</source>
      <translation>endroits visités deux fois</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>plan less certain than allowed</source>
      <translation>plan moins sûr que permis</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>platform</source>
      <translation>plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform break</source>
      <translation>ligne de rupture de plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform edge</source>
      <translation>bord de plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>point</source>
      <translation>point</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>point added</source>
      <translation>point ajouté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>point beside a line</source>
      <translation>point à côté d'une ligne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>points</source>
      <translation>points</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>points follow each other at {step} in columns {first} and {second}</source>
      <translation>les points se suivent à {step} dans les colonnes {first} et {second}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points kept out</source>
      <translation>points tenus à l'écart</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points that shape it</source>
      <translation>points qui la forment</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole lifted or its height wrong</source>
      <translation>canne soulevée ou hauteur de canne fausse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole tilted</source>
      <translation>canne inclinée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond</source>
      <translation>mare</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond after the change</source>
      <translation>mare après le changement</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond gone</source>
      <translation>mare disparue</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>prismoidal formula every {step:g} m</source>
      <translation>formule prismoïdale tous les {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>radius of the widest empty circle</source>
      <translation>rayon du plus large cercle vide</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>random: noise of single points</source>
      <translation>aléatoire : bruit des points isolés</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>reading points</source>
      <translation>lecture des points</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>receiver log, NMEA 0183</source>
      <translation>journal de récepteur, NMEA 0183</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>recorded while standing still</source>
      <translation>enregistré à l'arrêt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>region</source>
      <translation>région</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>rejected</source>
      <translation>rejeté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>rejected lines</source>
      <translation>lignes rejetées</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>rejected lines with their reasons</source>
      <translation>lignes rejetées avec leurs raisons</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>repeated ground</source>
      <translation>terrain répété</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>repeats another point</source>
      <translation>répète un autre point</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>ridge</source>
      <translation>crête</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>right</source>
      <translation>droite</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the design</source>
      <translation>pourtour du projet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the existing surface</source>
      <translation>pourtour de la surface existante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>rim of the surface</source>
      <translation>pourtour de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: longest edge allowed</source>
      <translation>pourtour : plus longue arête permise</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: the same in distances of the passes</source>
      <translation>pourtour : de même en écarts des passages</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest angle allowed opposite an outer edge</source>
      <translation>pourtour : plus grand angle permis opposé à une arête extérieure</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest circumcircle allowed (radius)</source>
      <translation>pourtour : plus large cercle circonscrit permis (rayon)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>root mean square of all differences</source>
      <translation>moyenne quadratique de toutes les différences</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>rule does not apply</source>
      <translation>la règle ne s'applique pas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>running balance: usable cut less fill</source>
      <translation>bilan cumulé : déblai utilisable moins remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>saddle</source>
      <translation>col</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>sag</source>
      <translation>creux</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>satellites badly spread (PDOP)</source>
      <translation>satellites mal répartis (PDOP)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>scale {scale}</source>
      <translation>échelle {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>section line</source>
      <translation>ligne de coupe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>seen in the way of rising stations; offsets and heights in {unit}</source>
      <translation>vu dans le sens des abscisses croissantes ; déports et altitudes en {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>semicolon</source>
      <translation>point-virgule</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>several columns may be the height: {columns}</source>
      <translation>plusieurs colonnes peuvent être l'altitude : {columns}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>shallower</source>
      <translation>moins profonde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>share in the SW, SE, NW and NE quarter (%)</source>
      <translation>part dans le quart SO, SE, NO et NE (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>share of the site in triangles with a long edge</source>
      <translation>part du site en triangles à longue arête</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>shift from the first height</source>
      <translation>décalage depuis la première altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>six digits before the mark, then seven, as eastings and northings often</source>
      <translation>six chiffres avant le séparateur, puis sept, comme souvent les coordonnées est et nord</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>slope break</source>
      <translation>rupture de pente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>slope by window, with its 95 % interval</source>
      <translation>pente par fenêtre, avec son intervalle à 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of cut</source>
      <translation>talus de déblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of fill</source>
      <translation>talus de remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>smallest and largest</source>
      <translation>plus petit et plus grand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>spaces</source>
      <translation>espaces</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>spike</source>
      <translation>pic</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>spill level: noise of its height, times the area</source>
      <translation>niveau de débordement : bruit de son altitude, fois l'aire</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>spill point and way of the overflow</source>
      <translation>point de débordement et chemin du trop-plein</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>spills at {level}</source>
      <translation>déborde à {level}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>spot heights at summits, pits and saddles</source>
      <translation>points cotés aux sommets, points bas et cols</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>standard deviation</source>
      <translation>écart-type</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation in plan</source>
      <translation>écart-type en plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation in plan, at most</source>
      <translation>écart-type en plan, au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation of a height</source>
      <translation>écart-type d'une altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation of the height, at most</source>
      <translation>écart-type de l'altitude, au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>station {station:.1f} m</source>
      <translation>abscisse {station:.1f} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>steep end</source>
      <translation>extrémité raide</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>summit</source>
      <translation>sommet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface above the check point</source>
      <translation>surface au-dessus du point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface below the check point</source>
      <translation>surface au-dessous du point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>surface from the used points</source>
      <translation>surface d'après les points utilisés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>surface model: ground between the points</source>
      <translation>modèle de surface : terrain entre les points</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>surface, its lines and the points used, in LandXML 1.2</source>
      <translation>surface, ses lignes et les points utilisés, en LandXML 1.2</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>surplus asked for</source>
      <translation>excédent demandé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>systematic: height offset between the surfaces</source>
      <translation>systématique : décalage d'altitude entre les surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>tab</source>
      <translation>tabulation</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>text encoding</source>
      <translation>encodage du texte</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the checksum is {found}, but the characters give {right}: damaged on its way</source>
      <translation>la somme de contrôle est {found}, mais les caractères donnent {right} : endommagé en chemin</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the coordinate system of the mesh</source>
      <translation>le système de coordonnées du maillage</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are in {unit}, not in {assumed}</source>
      <translation>les coordonnées sont en {unit}, non en {assumed}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another system: {crs}</source>
      <translation>les coordonnées sont d'un autre système : {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another zone: {crs}</source>
      <translation>les coordonnées sont d'un autre fuseau : {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of the other hemisphere: {crs}</source>
      <translation>les coordonnées sont de l'autre hémisphère : {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the easting is usually written first</source>
      <translation>la coordonnée est s'écrit d'ordinaire en premier</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the eastings have a zone number, {prefix}, before them</source>
      <translation>les coordonnées est sont précédées d'un numéro de fuseau, {prefix}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the false origin is left out of the coordinates (east {easting} m, north {northing} m)</source>
      <translation>la fausse origine est omise des coordonnées (est {easting} m, nord {northing} m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>the feature has no place or no height</source>
      <translation>l'entité n'a pas d'emplacement ou pas d'altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the file ends within the line, in column {count} of {width}</source>
      <translation>le fichier se termine au milieu de la ligne, à la colonne {count} sur {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the graded pads with their slopes as a mesh</source>
      <translation>les plateformes terrassées avec leurs talus, en maillage</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it</source>
      <translation>l'en-tête nomme les colonnes {first} et {second} comme {first_role} et {second_role}, mais lus ainsi les points sont hors de la zone d'utilisation du SCR ({area}), et échangés ou lus autrement, à l'intérieur</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the header says that coordinates are in {unit}</source>
      <translation>l'en-tête dit que les coordonnées sont en {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place</source>
      <translation>la lettre O dans la colonne {column} peut être est (Ost) ou ouest (Ouest, Oeste) ; écrivez E ou W à sa place</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns instead of {width}</source>
      <translation>la ligne a {count} colonnes au lieu de {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns; {role} is column {column}</source>
      <translation>la ligne a {count} colonnes ; {role} est la colonne {column}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the line is no NMEA sentence</source>
      <translation>la ligne n'est pas une trame NMEA</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings contain the 10,000,000 m added in the southern hemisphere</source>
      <translation>les coordonnées nord contiennent les 10 000 000 m ajoutés dans l'hémisphère sud</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings lack the 10,000,000 m added in the southern hemisphere</source>
      <translation>il manque aux coordonnées nord les 10 000 000 m ajoutés dans l'hémisphère sud</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS</source>
      <translation>les points sont hors de la zone d'utilisation du SCR quelle que soit l'unité ; ils sont lus en {unit}, l'unité du SCR</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver had no position</source>
      <translation>le récepteur n'avait pas de position</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver sent a position without a height</source>
      <translation>le récepteur a transmis une position sans altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rest of the rim</source>
      <translation>le reste du pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rim</source>
      <translation>le pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the same epoch as line {line}, which is used</source>
      <translation>la même époque que la ligne {line}, qui est utilisée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the same finished for the sheet; for drawing only</source>
      <translation>les mêmes finies pour la feuille ; pour le dessin seulement</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the same zone is meant, with the eastings written as in {crs}</source>
      <translation>le même fuseau est visé, avec les coordonnées est écrites comme en {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the sentence has no checksum</source>
      <translation>la trame n'a pas de somme de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>the slope is the same left and right; write both, once.</source>
      <translation>le talus est le même à gauche et à droite ; écrivez both, une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface as a mesh</source>
      <translation>la surface en maillage</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted</source>
      <translation>le levé dépasse réellement la limite du fuseau ; transformez-le en {crs} si c'est celui qui est voulu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the thinned surface as a mesh</source>
      <translation>la surface allégée en maillage</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are latitude and longitude in degrees; read them as such</source>
      <translation>les valeurs sont la latitude et la longitude en degrés ; lisez-les ainsi</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are longitude and latitude in degrees; read them as such</source>
      <translation>les valeurs sont la longitude et la latitude en degrés ; lisez-les ainsi</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>the values of column {column} are such as {role} has</source>
      <translation>les valeurs de la colonne {column} sont telles que celles de {role}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>the whole survey, with its 95 % interval</source>
      <translation>tout le levé, avec son intervalle à 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the zone number {prefix} before the eastings is missing</source>
      <translation>il manque le numéro de fuseau {prefix} devant les coordonnées est</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>thinning the surface</source>
      <translation>allègement de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>tilt, at most</source>
      <translation>inclinaison, au plus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to both edges</source>
      <translation>vers les deux bords</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to neither edge</source>
      <translation>vers aucun bord</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the left edge</source>
      <translation>vers le bord gauche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right (%)</source>
      <translation>vers la droite (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right edge</source>
      <translation>vers le bord droit</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>toe of fill</source>
      <translation>pied de remblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>together</source>
      <translation>ensemble</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>together (root of the sum of squares)</source>
      <translation>ensemble (racine de la somme des carrés)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>together, the lines of the file</source>
      <translation>ensemble, les lignes du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>tolerance in height</source>
      <translation>tolérance en altitude</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>too close to tell</source>
      <translation>trop proche pour juger</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>too few observations</source>
      <translation>trop peu d'observations</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>top of cut</source>
      <translation>crête de déblai</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>topsoil, {depth} {unit} off {area} {area_unit}</source>
      <translation>terre végétale, {depth} {unit} sur {area} {area_unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>tracing contours</source>
      <translation>tracé des courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle added</source>
      <translation>triangle ajouté</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle removed</source>
      <translation>triangle retiré</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles</source>
      <translation>triangles</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles in a polygon dropped</source>
      <translation>triangles d'un polygone retirés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles outside the boundary or in voids</source>
      <translation>triangles hors de la limite ou dans des trous</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles taken off the rim</source>
      <translation>triangles ôtés du pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>true RMSE, 95 % confidence</source>
      <translation>RMSE vraie, confiance de 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>unchanged</source>
      <translation>inchangée</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>undecided</source>
      <translation>indécis</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of heights</source>
      <translation>unité des altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of plan coordinates</source>
      <translation>unité des coordonnées en plan</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <location filename="../plugin/core/georeference/operations.py" />
      <source>unknown</source>
      <translation>inconnu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>used</source>
      <translation>utilisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>used point</source>
      <translation>point utilisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>vegetated</source>
      <translation>végétalisé</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices</source>
      <translation>sommets</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices kept</source>
      <translation>sommets conservés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>voids</source>
      <translation>trous</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>walk again</source>
      <translation>à parcourir de nouveau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>wandering, from one visit to another</source>
      <translation>dérive, d'une visite à l'autre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, as it lies in the ground</source>
      <translation>évacuation, en place</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, loose on trucks</source>
      <translation>évacuation, foisonnée sur camions</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>water goes elsewhere</source>
      <translation>l'eau s'écoule ailleurs</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>way down, longer where steeper</source>
      <translation>vers l'aval, plus longue là où c'est plus raide</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>what the checks found: points, size, reasons, place</source>
      <translation>ce que les contrôles ont trouvé : points, taille, raisons, lieu</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>what the receiver states</source>
      <translation>ce que le récepteur indique</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>where it spills</source>
      <translation>où elle déborde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>whole site</source>
      <translation>tout le site</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>whole surface</source>
      <translation>surface entière</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>widths {along}   heights {up}</source>
      <translation>largeurs {along}   altitudes {up}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing files</source>
      <translation>écriture des fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing the report</source>
      <translation>écriture du rapport</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>yes</source>
      <translation>oui</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>{area:.1f} m² of the platform are outside the existing surface; no volume is counted there.</source>
      <translation>{area:.1f} m² de la plateforme sont hors de la surface existante ; aucun volume n'y est compté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{area} {unit}², {share} % of the site, drain nowhere: their water stays in a pond or pit until that is full.</source>
      <translation>{area} {unit}², {share} % du site, sont sans écoulement : leur eau reste dans une mare ou un point bas jusqu'à ce qu'il soit plein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{back} back = {ahead} ahead</source>
      <translation>{back} arrière = {ahead} avant</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} areas of at least {least} {unit}², together {area} {unit}², fall less than {limit} % in the mean over {window} {unit}.</source>
      <translation>{count} zones d'au moins {least} {unit}², ensemble {area} {unit}², descendent de moins de {limit} % en moyenne sur {window} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{count} catchments are larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation>{count} bassins versants dépassent 80 ha ; la méthode rationnelle n'est pas couramment utilisée pour de telles superficies.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{count} check points have the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' where it is not.</source>
      <translation>{count} points de contrôle ont la couverture 'grass', prise pour de l'herbe courte, donc pour un terrain non végétalisé ; écrivez 'tall grass' là où ce n'est pas le cas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} check points state no height error of their own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation>{count} points de contrôle n'indiquent pas d'erreur d'altitude propre ; elle compte pour {sigma:.3f} m, comme pour les autres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{count} control point(s) were not surveyed, and are not used: {names}.</source>
      <translation>{count} point(s) d'appui n'ont pas été levés et ne sont pas utilisés : {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} heights are too few to fit grades and vertical curves to; at least {least} are needed. Take a shorter spacing or a longer part of the line.</source>
      <translation>{count} altitudes sont trop peu pour y ajuster des pentes et des raccordements verticaux ; il en faut au moins {least}. Prenez un espacement plus court ou une partie plus longue de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{count} more rejected lines are in the table of rejects.</source>
      <translation>{count} autres lignes rejetées sont dans le tableau des rejets.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} of {all} check points lie outside the surface and were not used: {names}.</source>
      <translation>{count} points de contrôle sur {all} sont hors de la surface et n'ont pas été utilisés : {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in line {line}.</source>
      <translation>{count} points sur {total} ne sont nulle part sur Terre en {crs} (sa zone d'utilisation : {area}) ; le premier est à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; the first is in line {line}.</source>
      <translation>{count} points sur {total} sont hors de la zone d'utilisation de {crs} ({area}), le plus éloigné de {distance_km} km ; le premier est à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{count} of {total} points lie outside the area the operation is made for ({area}).</source>
      <translation>{count} points sur {total} sont hors de la zone pour laquelle l'opération est faite ({area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} pairs of cross-sections cross each other in tight bends, first those at stations {first} and {second}, {offset:.2f} m to the {side}. Ground beyond the crossings is counted twice: make the sections narrower there or fewer.</source>
      <translation>{count} paires de profils en travers se croisent dans des courbes serrées, d'abord ceux aux abscisses {first} et {second}, à {offset:.2f} m côté {side}. Le terrain au-delà des croisements est compté deux fois : rendez-y les profils plus étroits ou moins nombreux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} pairs of points of {first} and {second} lie within {distance_m} m and differ in height by more than {height_m} m, on average by {mean_m} m, at most by {most_m} m.</source>
      <translation>{count} paires de points de {first} et {second} sont à moins de {distance_m} m et diffèrent en altitude de plus de {height_m} m, en moyenne de {mean_m} m, au plus de {most_m} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one.</source>
      <translation>{count} endroits à parcourir de nouveau ; avec eux, aucun endroit n'est à plus de {limit:.1f} m d'un endroit mesuré.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} point names occur in more than one file, such as '{name}'; all points are kept.</source>
      <translation>{count} noms de points figurent dans plus d'un fichier, tels que '{name}' ; tous les points sont gardés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the design surface: they have no design height.</source>
      <translation>{count} points sont hors de la surface du projet : ils n'ont pas d'altitude de projet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the existing surface: cut and fill are not known there.</source>
      <translation>{count} points sont hors de la surface existante : déblai et remblai n'y sont pas connus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} are beyond the tolerances '{set}'.</source>
      <translation>{count} points de la ligne {line} à {last} dépassent les tolérances '{set}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} lie {size:+.3f} m off the ground around them: pole lifted or of another height.</source>
      <translation>{count} points de la ligne {line} à {last} sont à {size:+.3f} m du terrain alentour : canne soulevée ou d'une autre hauteur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation>{count} points de la ligne {line} à {last} sont peut-être décalés de {size:+.3f} m, ou le terrain y fait un ressaut : examinez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} repeat earlier ones.</source>
      <translation>{count} points de la ligne {line} à {last} en répètent d'antérieurs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} were stored in one place; their mean stands for them, spread {size:.3f} m in height.</source>
      <translation>{count} points de la ligne {line} à {last} ont été enregistrés au même endroit ; leur moyenne les représente, dispersion {size:.3f} m en altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last}, next to a loss of the fix, lie {size:+.3f} m off the ground around them: ambiguities fixed wrongly.</source>
      <translation>{count} points de la ligne {line} à {last}, à côté d'une perte de fixation, sont à {size:+.3f} m du terrain alentour : ambiguïtés mal fixées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points have no name; choose another name field or number them.</source>
      <translation>{count} points n'ont pas de nom ; choisissez un autre champ de nom ou numérotez-les.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{count} points share a name with another, such as “{name}”; all are kept.</source>
      <translation>{count} points partagent leur nom avec un autre, par exemple « {name} » ; tous sont gardés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>{count} ponds lie where only one of the surfaces reaches and are not compared.</source>
      <translation>{count} mares se trouvent là où une seule des surfaces s'étend et ne sont pas comparées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation>{count} positions ont été enregistrées plus d'une fois (identiques à 0,1 mm) ; la surface prend l'altitude moyenne. Plus grande différence {spread:.3f} m, à E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} smaller ones</source>
      <translation>{count} plus petits</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} statuses were set by hand against the automatic checks, the first in line {line}.</source>
      <translation>{count} statuts ont été fixés à la main contre les contrôles automatiques, le premier à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>{count} thin triangles along the rim, {area:.1f} m² in all, span up to {value:.1f} m, the longest at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation>{count} triangles effilés le long du pourtour, {area:.1f} m² en tout, s'étendent jusqu'à {value:.1f} m, le plus long à E {easting:.3f} N {northing:.3f}. Donnez une limite, ou faites rogner le pourtour.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} vertices are outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>{count} sommets sont hors de la limite ou du pourtour rogné, ou dans un trou.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0), and no value stands in. Give the standard deviation of a height of this survey.</source>
      <translation>{count} sommets de la surface n'ont pas d'écart-type d'altitude (ou un inférieur à 0), et aucune valeur ne le remplace. Donnez l'écart-type d'une altitude de ce levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0). Give the standard deviation of a height of this survey.</source>
      <translation>{count} sommets de la surface n'ont pas d'écart-type d'altitude (ou un inférieur à 0). Donnez l'écart-type d'une altitude de ce levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{crossings} crossings of passes will tell the noise of the survey to about {percent:.0f} % (95 %, independent differences).</source>
      <translation>{crossings} croisements de passages donneront le bruit du levé à environ {percent:.0f} % près (95 %, différences indépendantes).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{crs} does not say where it may be used; whether the points lie there is not checked.</source>
      <translation>{crs} ne dit pas où il peut être utilisé ; il n'est pas vérifié si les points s'y trouvent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their geometric mean is used; distances depend on direction.</source>
      <translation>{crs} n'est pas conforme : l'échelle y est {along_meridian} vers le nord et {along_parallel} vers l'est. Leur moyenne géométrique est utilisée ; les distances dépendent de la direction.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs}: easting {easting} m, northing {northing} m is no place on the Earth; mend it.</source>
      <translation>{crs} : est {easting} m, nord {northing} m n'est pas un lieu sur Terre ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes ({axes}) make a mirrored plan; choose the variant of this CRS with axes to east and north.</source>
      <translation>{crs} : ses axes ({axes}) donnent un plan en miroir ; choisissez la variante de ce SCR aux axes vers l'est et le nord.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are.</source>
      <translation>{crs} : ses axes vont vers {first} et {second} ; les colonnes easting et northing les contiennent tels quels.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common inside the regions given: there is nothing to compare. Check the regions and their coordinate system.</source>
      <translation>{existing} et {design} n'ont pas de terrain commun dans les régions données : il n'y a rien à comparer. Vérifiez les régions et leur système de coordonnées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common: there is nothing to compare. Check that both are of one place.</source>
      <translation>{existing} et {design} n'ont pas de terrain commun : il n'y a rien à comparer. Vérifiez que les deux sont du même lieu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} is in {existing_crs}, {design} in {design_crs}: volumes need both in one coordinate system. Bring one of them into that of the other first.</source>
      <translation>{existing} est en {existing_crs}, {design} en {design_crs} : les volumes demandent les deux dans un même système de coordonnées. Amenez d'abord l'un dans celui de l'autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>{field} cannot be read: '{value}'</source>
      <translation>{field} ne peut pas être lu : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other.</source>
      <translation>{file} est en {crs}, le levé dans un repère local : rien ne dit comment ils se situent l'un par rapport à l'autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file} is in {unit}, its CRS {crs} in {other}: read as it says. If that is a slip of who wrote it, places are up to {shift:.3f} m off; ask, and choose the unit if so.</source>
      <translation>{file} est en {unit}, son SCR {crs} en {other} : lu comme il le dit. Si c'est une erreur de qui l'a écrit, les lieux sont décalés de {shift:.3f} m au plus ; demandez, et choisissez l'unité si c'est le cas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: control point '{name}' stands in line {first} already; keep one.</source>
      <translation>{file} ligne {line} : le point d'appui '{name}' figure déjà à la ligne {first} ; n'en gardez qu'un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line names the columns name, easting, northing and, where known, runoff.</source>
      <translation>{file} ligne {line} : il manque la colonne '{column}' ; la première ligne nomme les colonnes name, easting, northing et, si connu, runoff.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns name, easting, northing and, where known, height.</source>
      <translation>{file} ligne {line} : il manque la colonne '{column}' ; la première ligne d'un fichier de points d'appui nomme les colonnes name, easting, northing et, si connu, height.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the point has no name; give it one.</source>
      <translation>{file} ligne {line} : le point n'a pas de nom ; donnez-lui en un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: this is no text; save it as CSV.</source>
      <translation>{file} ligne {line} : ce n'est pas du texte ; enregistrez-le en CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: {column} '{found}' is no number; mend it.</source>
      <translation>{file} ligne {line} : {column} '{found}' n'est pas un nombre ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: {count} point(s) lie outside the geoid grid {grid}, the first in this line; give a grid that covers the site, or a constant.</source>
      <translation>{file} ligne {line} : {count} point(s) sont hors de la grille de géoïde {grid}, le premier à cette ligne ; donnez une grille qui couvre le site, ou une constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: {count} position(s) cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation>{file} ligne {line} : {count} position(s) ne peuvent pas être transformées de {source} à {target} ; vérifiez le SCR et les coordonnées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {kind} is no polygon of coordinates; give polygons only.</source>
      <translation>{file}, entité {number} : {kind} n'est pas un polygone de coordonnées ; donnez seulement des polygones.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {name} is “{value}”, which is no number; mend it.</source>
      <translation>{file}, entité {number} : {name} est « {value} », qui n'est pas un nombre ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file.</source>
      <translation>{file}, ligne 1 : ce n'est pas un maillage 2DM, qui commence par MESH2D ; choisissez un autre fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, column {column}: no valid JSON ({reason}). Mend the file.</source>
      <translation>{file}, ligne {line}, colonne {column} : pas du JSON valide ({reason}). Corrigez le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: the kind in "edit" is {value}; it must be one of {known}.</source>
      <translation>{file}, ligne {line}, modification {number} : le genre dans "edit" est {value} ; il doit être l'un de {known}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {field} must be {wanted}, not {value}.</source>
      <translation>{file}, ligne {line}, modification {number} : {field} doit être {wanted}, non {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} has no field {field}. Remove it or correct its name.</source>
      <translation>{file}, ligne {line}, modification {number} : {kind} n'a pas de champ {field}. Supprimez-le ou corrigez son nom.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} needs {fields}, exactly one of them.</source>
      <translation>{file}, ligne {line}, modification {number} : {kind} demande {fields}, exactement l'un d'eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: "edits" must be a list of edits, and nothing may stand beside it.</source>
      <translation>{file}, ligne {line} : "edits" doit être une liste de modifications, et rien ne peut se trouver à côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' is none of the files of this survey ({sources}); the decision has no effect.</source>
      <translation>{file}, ligne {line} : '{source}' n'est aucun des fichiers de ce levé ({sources}) ; la décision est sans effet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' may be any of {sources}; write the name as it stands there.</source>
      <translation>{file}, ligne {line} : '{source}' peut être n'importe lequel de {sources} ; écrivez le nom tel qu'il y figure.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ...</source>
      <translation>{file}, ligne {line} : '{word}' n'est pas un numéro de ligne d'un levé ; utilisez 1, 2, ...</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'.</source>
      <translation>{file}, ligne {line} : '{word}' n'est pas une raison ; utilisez {words}, plusieurs jointes par '+'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no status; use {words}.</source>
      <translation>{file}, ligne {line} : '{word}' n'est pas un statut ; utilisez {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; holds a coordinate that is no number or no place on Earth; mend it.</source>
      <translation>{file}, ligne {line} : &lt;{element}&gt; contient une coordonnée qui n'est pas un nombre ou pas un lieu sur Terre ; corrigez-la.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; lacks its {attribute}; have the file written anew.</source>
      <translation>{file}, ligne {line} : il manque à &lt;{element}&gt; son {attribute} ; faites réécrire le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; needs {needed} numbers (northing before easting) but holds “{found}”; mend it.</source>
      <translation>{file}, ligne {line} : &lt;{element}&gt; demande {needed} nombres (nord avant est) mais contient « {found} » ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; refers to the point “{found}”, which the file does not hold just once.</source>
      <translation>{file}, ligne {line} : &lt;{element}&gt; renvoie au point « {found} », que le fichier ne contient pas exactement une fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: LandXML of version “{found}” is not read; have it written as LandXML 1.2.</source>
      <translation>{file}, ligne {line} : LandXML de version « {found} » n'est pas lu ; faites-le écrire en LandXML 1.2.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a curve of alignment “{name}” does not fit: its ends lie {start:.3f} m and {end:.3f} m from its centre.</source>
      <translation>{file}, ligne {line} : une courbe du tracé « {name} » ne convient pas : ses extrémités sont à {start:.3f} m et {end:.3f} m de son centre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has the corner {number}, but there is no such point; the file is damaged, have it written anew.</source>
      <translation>{file}, ligne {line} : une face de la surface « {name} » a le sommet {number}, mais ce point n'existe pas ; le fichier est endommagé, faites-le réécrire.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has {count} corners; only triangles are read, have the surface written as a TIN.</source>
      <translation>{file}, ligne {line} : une face de la surface « {name} » a {count} sommets ; seuls les triangles sont lus, faites écrire la surface en TIN.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” lies on the same side of an edge as another; the surface overlaps itself, have it written anew.</source>
      <translation>{file}, ligne {line} : une face de la surface « {name} » est du même côté d'une arête qu'une autre ; la surface se recouvre elle-même, faites-la réécrire.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: a quote is not closed; mend the line.</source>
      <translation>{file}, ligne {line} : un guillemet n'est pas fermé ; corrigez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a spiral of alignment “{name}” ends {gap:.3f} m beside the place that the file gives.</source>
      <translation>{file}, ligne {line} : une clothoïde du tracé « {name} » se termine à {gap:.3f} m de l'endroit que donne le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first.</source>
      <translation>{file}, ligne {line} : une cellule {record} n'est pas un triangle ; divisez d'abord les cellules en triangles (E3T).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a gap of {gap:.3f} m before this element; its elements must follow each other.</source>
      <translation>{file}, ligne {line} : le tracé « {name} » a une lacune de {gap:.3f} m avant cet élément ; ses éléments doivent se suivre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a spiral ({kind}) that is not read; it is left out as a whole.</source>
      <translation>{file}, ligne {line} : le tracé « {name} » a une spirale ({kind}) qui n'est pas lue ; il est omis en entier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has no lines or curves; it is left out.</source>
      <translation>{file}, ligne {line} : le tracé « {name} » n'a ni droites ni courbes ; il est omis.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: applies is {value}. Write "always", "grade &gt; 1:20" or "grade &lt;= 1:20".</source>
      <translation>{file}, ligne {line} : applies est {value}. Écrivez "always", "grade &gt; 1:20" ou "grade &lt;= 1:20".</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: close is {close} for code {code}. Write yes, no or nothing.</source>
      <translation>{file}, ligne {line} : close est {close} pour le code {code}. Écrivez yes, no ou rien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} already stands in line {first}. Keep one of them (case does not matter).</source>
      <translation>{file}, ligne {line} : le code {code} figure déjà à la ligne {first}. N'en gardez qu'un (la casse n'importe pas).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} is a {kind} and always closes. Leave close empty or write yes.</source>
      <translation>{file}, ligne {line} : le code {code} est un {kind} et se ferme toujours. Laissez close vide ou écrivez yes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} makes no line, so it cannot close. Leave close empty or change the kind.</source>
      <translation>{file}, ligne {line} : le code {code} ne forme pas de ligne, il ne peut donc pas se fermer. Laissez close vide ou changez le genre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read as {role}, as --columns says.</source>
      <translation>{file}, ligne {line} : la colonne {column} a l'en-tête '{word}' mais est lue comme {role}, comme le dit --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read in {unit}; check the unit.</source>
      <translation>{file}, ligne {line} : la colonne {column} a l'en-tête '{word}' mais est lue en {unit} ; vérifiez l'unité.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs code, kind and layer; close is optional.</source>
      <translation>{file}, ligne {line} : il manque la colonne {column}. L'en-tête demande code, kind et layer ; close est facultatif.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs {columns}.</source>
      <translation>{file}, ligne {line} : il manque la colonne {column}. L'en-tête demande {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close.</source>
      <translation>{file}, ligne {line} : la colonne {column} est inconnue ou double. Les colonnes sont code, kind, layer et close.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are {columns}.</source>
      <translation>{file}, ligne {line} : la colonne {column} est inconnue ou double. Les colonnes sont {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: column {column} is unknown, missing or twice. The columns are {columns}.</source>
      <translation>{file}, ligne {line} : la colonne {column} est inconnue, manquante ou double. Les colonnes sont {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, cannot be read in any line; check --columns.</source>
      <translation>{file}, ligne {line} : la colonne {column}, lue comme {role}, ne peut être lue à aucune ligne ; vérifiez --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, holds no number in any line (here '{value}'); check --columns and --decimal (read with delimiter {delimiter}, decimal mark '{decimal}').</source>
      <translation>{file}, ligne {line} : la colonne {column}, lue comme {role}, ne contient de nombre à aucune ligne (ici '{value}') ; vérifiez --columns et --decimal (lu avec le séparateur {delimiter}, séparateur décimal '{decimal}').</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: columns {first} and {second} are both headed {role}; give --columns, such as name,easting,northing,height,code.</source>
      <translation>{file}, ligne {line} : les colonnes {first} et {second} ont toutes deux l'en-tête {role} ; donnez --columns, par exemple name,easting,northing,height,code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: elements within elements, over {most} deep; this is no sound LandXML.</source>
      <translation>{file}, ligne {line} : éléments imbriqués sur plus de {most} niveaux ; ce n'est pas un LandXML correct.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: give either at_least or at_most, one of them and not both.</source>
      <translation>{file}, ligne {line} : donnez soit at_least soit at_most, l'un d'eux et non les deux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}.</source>
      <translation>{file}, ligne {line} : le genre {kind} du code {code} est inconnu. Utilisez l'un de {kinds}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: lengths are in {unit} but elevations are said to be in “{found}”; programs read this either way. Ask for it, and choose the unit of the heights.</source>
      <translation>{file}, ligne {line} : les longueurs sont en {unit} mais les altitudes sont dites en « {found} » ; les programmes lisent cela de l'une ou l'autre façon. Renseignez-vous, et choisissez l'unité des altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: line {survey_line} of {source} holds no point; the decision has no effect.</source>
      <translation>{file}, ligne {line} : la ligne {survey_line} de {source} ne contient pas de point ; la décision est sans effet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: more cells than columns. Put quotes around text that contains the separator.</source>
      <translation>{file}, ligne {line} : plus de cellules que de colonnes. Mettez entre guillemets le texte qui contient le séparateur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: more cells than columns. Use one separator all through.</source>
      <translation>{file}, ligne {line} : plus de cellules que de colonnes. Utilisez partout un seul séparateur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}.</source>
      <translation>{file}, ligne {line} : aucune colonne n'a l'en-tête '{word}', que nomme --columns ; l'en-tête contient {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter.</source>
      <translation>{file}, ligne {line} : pas trois colonnes avec le séparateur {tried} ('{start}') ; donnez --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} is not in the file; it may have been cut short, write it anew.</source>
      <translation>{file}, ligne {line} : le nœud {node} n'est pas dans le fichier ; il a pu être tronqué, réécrivez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} was given before; number each node once.</source>
      <translation>{file}, ligne {line} : le nœud {node} a déjà été donné ; numérotez chaque nœud une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: none of the {count} data lines is a point with delimiter {delimiter} and decimal mark '{decimal}' (here: {reason}); check --columns, --delimiter and --decimal.</source>
      <translation>{file}, ligne {line} : aucune des {count} lignes de données n'est un point avec le séparateur {delimiter} et le séparateur décimal '{decimal}' (ici : {reason}) ; vérifiez --columns, --delimiter et --decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: point {number} of surface “{name}” was given before; keep one.</source>
      <translation>{file}, ligne {line} : le point {number} de la surface « {name} » a déjà été donné ; n'en gardez qu'un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: quantity {value} is unknown. Use one of {known}.</source>
      <translation>{file}, ligne {line} : la grandeur {value} est inconnue. Utilisez l'une de {known}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: side is “{value}”; write left, right or both.</source>
      <translation>{file}, ligne {line} : side est « {value} » ; écrivez left, right ou both.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: surface “{name}” is {width:.0f} km wide; a surface may measure 107 km.</source>
      <translation>{file}, ligne {line} : la surface « {name} » est large de {width:.0f} km ; une surface peut mesurer 107 km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect.</source>
      <translation>{file}, ligne {line} : la ligne de levé {survey_line} ne contient pas de point ; la décision est sans effet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is a point in several files ({sources}); say which file is meant in a column 'source' of the decisions.</source>
      <translation>{file}, ligne {line} : la ligne de levé {survey_line} est un point dans plusieurs fichiers ({sources}) ; dites quel fichier est visé dans une colonne 'source' des décisions.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one.</source>
      <translation>{file}, ligne {line} : la ligne de levé {survey_line} est déjà décidée à la ligne {before} ; n'en gardez qu'une.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the CRS “{found}” is not understood or not one in metres or feet; choose the CRS.</source>
      <translation>{file}, ligne {line} : le SCR « {found} » n'est pas reconnu ou n'est pas en mètres ou en pieds ; choisissez le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: the code is empty. Fill it in or remove the row.</source>
      <translation>{file}, ligne {line} : le code est vide. Remplissez-le ou supprimez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file declares a document type or entities, which LandXML does not need and which can do harm; it is not read. Have it written anew without them.</source>
      <translation>{file}, ligne {line} : le fichier déclare un type de document ou des entités, dont LandXML n'a pas besoin et qui peuvent nuire ; il n'est pas lu. Faites-le réécrire sans elles.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file is no LandXML but holds &lt;{found}&gt;; choose another file.</source>
      <translation>{file}, ligne {line} : le fichier n'est pas du LandXML mais contient &lt;{found}&gt; ; choisissez un autre fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma a decimal comma? Give --delimiter and --decimal, or mend the header.</source>
      <translation>{file}, ligne {line} : l'en-tête a {header} colonnes mais la plupart des lignes en ont {count} ; la virgule est-elle une virgule décimale ? Donnez --delimiter et --decimal, ou corrigez l'en-tête.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: the header lacks {column}; it needs line, status and reason.</source>
      <translation>{file}, ligne {line} : il manque {column} à l'en-tête ; il lui faut line, status et reason.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the profile “{name}” has a vertical curve &lt;{element}&gt;, which is not read; it is left out.</source>
      <translation>{file}, ligne {line} : le profil en long « {name} » a un raccordement vertical &lt;{element}&gt;, qui n'est pas lu ; il est omis.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the stations of profile “{name}” do not rise, or its curves overlap; mend it.</source>
      <translation>{file}, ligne {line} : les abscisses du profil en long « {name} » ne croissent pas, ou ses raccordements se recouvrent ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle has no area in plan; remove it.</source>
      <translation>{file}, ligne {line} : le triangle n'a pas d'aire en plan ; supprimez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle lies on the same side of an edge as another; remove one of them.</source>
      <translation>{file}, ligne {line} : le triangle est du même côté d'une arête qu'un autre ; supprimez l'un d'eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the units are said a second time, and otherwise; keep one.</source>
      <translation>{file}, ligne {line} : les unités sont indiquées une seconde fois, et autrement ; n'en gardez qu'une.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: there is a header but no data line; export the survey again.</source>
      <translation>{file}, ligne {line} : il y a un en-tête mais aucune ligne de données ; exportez de nouveau le levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file.</source>
      <translation>{file}, ligne {line} : ce n'est pas du GeoJSON ({reason}) ; donnez un fichier GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}, line {line}: this is no JSON ({reason}); mend the line.</source>
      <translation>{file}, ligne {line} : ce n'est pas du JSON ({reason}) ; corrigez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: this is no whole XML ({reason}); the file is damaged or cut short, have it written anew.</source>
      <translation>{file}, ligne {line} : ce n'est pas un XML complet ({reason}) ; le fichier est endommagé ou tronqué, faites-le réécrire.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: this is not a list of edits; "format" must be "{format}".</source>
      <translation>{file}, ligne {line} : ce n'est pas une liste de modifications ; "format" doit être "{format}".</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: this is not a text table. Save it as CSV.</source>
      <translation>{file}, ligne {line} : ce n'est pas un tableau texte. Enregistrez-le en CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: this is not a text table. Save the code table as CSV.</source>
      <translation>{file}, ligne {line} : ce n'est pas un tableau texte. Enregistrez la table des codes en CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: this is not a text table. Save the table of limits as CSV.</source>
      <translation>{file}, ligne {line} : ce n'est pas un tableau texte. Enregistrez la table des limites en CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}, line {line}: this point has no plan position (easting or northing is not a number), nor have {others} others. Reject such points.</source>
      <translation>{file}, ligne {line} : ce point n'a pas de position en plan (est ou nord n'est pas un nombre), de même que {others} autres. Rejetez de tels points.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: version {version} of the list of edits is not known here (known: up to {known}). Update the plugin.</source>
      <translation>{file}, ligne {line} : la version {version} de la liste de modifications n'est pas connue ici (connues : jusqu'à {known}). Mettez l'extension à jour.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: window is {value}. Write metres above 0.</source>
      <translation>{file}, ligne {line} : window est {value}. Écrivez des mètres au-dessus de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: {attribute}=“{found}” of &lt;{element}&gt; cannot be; mend it.</source>
      <translation>{file}, ligne {line} : {attribute}=« {found} » de &lt;{element}&gt; est impossible ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is empty. Fill it in.</source>
      <translation>{file}, ligne {line} : {column} est vide. Remplissez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a number above 0 with a decimal point.</source>
      <translation>{file}, ligne {line} : {column} est {value}. Écrivez un nombre supérieur à 0 avec un point décimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a ratio such as 1:20, a percentage such as 5%, or a number, not negative.</source>
      <translation>{file}, ligne {line} : {column} est {value}. Écrivez un rapport tel que 1:20, un pourcentage tel que 5%, ou un nombre, non négatif.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: {column} is “{value}”, which is no number here. Mend the cell.</source>
      <translation>{file}, ligne {line} : {column} est « {value} », qui n'est pas un nombre ici. Corrigez la cellule.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter and as decimal mark? Give --delimiter or --decimal, or name every column.</source>
      <translation>{file}, ligne {line} : {count} colonnes et pas de point décimal dans une coordonnée : la virgule comme séparateur et comme séparateur décimal ? Donnez --delimiter ou --decimal, ou nommez chaque colonne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: {count} points are of survey line {survey_line}, and it cannot be told which is meant; decide on them in the layer, or import the points again.</source>
      <translation>{file}, ligne {line} : {count} points sont de la ligne de levé {survey_line}, et on ne peut dire lequel est visé ; décidez-en dans la couche, ou importez de nouveau les points.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {name} already stands in line {first}. Rename or remove one of them.</source>
      <translation>{file}, ligne {line} : {name} figure déjà à la ligne {first}. Renommez ou supprimez l'un d'eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: {reason}</source>
      <translation>{file}, ligne {line} : {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: {role} is column {column}, but the lines have {count} columns with delimiter {delimiter}; check --delimiter and --columns.</source>
      <translation>{file}, ligne {line} : {role} est la colonne {column}, mais les lignes ont {count} colonnes avec le séparateur {delimiter} ; vérifiez --delimiter et --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: “{found}” is no {system} unit of length of LandXML (such as {known}); mend it, or choose the unit.</source>
      <translation>{file}, ligne {line} : « {found} » n'est pas une unité de longueur {system} de LandXML (telle que {known}) ; corrigez-la, ou choisissez l'unité.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line.</source>
      <translation>{file}, ligne {line} : « {found} » n'est pas un enregistrement {record} complet ; réécrivez le maillage ou corrigez cette ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{decimal}' cannot be a decimal mark; use '.' or ','.</source>
      <translation>{file} : '{decimal}' ne peut pas être un séparateur décimal ; utilisez '.' ou ','.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space or one sign such as '|'.</source>
      <translation>{file} : '{delimiter}' ne peut pas être un séparateur ; utilisez la virgule, le point-virgule, la tabulation, l'espace ou un signe tel que '|'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.</source>
      <translation>{file} : '{name}' n'est pas une cause qui expliquerait où se trouvent les points ; les causes trouvées sont : {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' needs the file to be read or transformed otherwise: name the columns latitude and longitude in --columns, or give the CRS of the file as --source-crs and the one wanted as --crs.</source>
      <translation>{file} : '{name}' demande que le fichier soit lu ou transformé autrement : nommez les colonnes latitude et longitude dans --columns, ou donnez le SCR du fichier comme --source-crs et celui voulu comme --crs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: --columns names column {column} ({role}), but no line has more than {count} columns; check --columns and --delimiter.</source>
      <translation>{file} : --columns nomme la colonne {column} ({role}), mais aucune ligne n'a plus de {count} colonnes ; vérifiez --columns et --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot open a grid whose path contains {sign}; move or rename the file.</source>
      <translation>{file} : PROJ ne peut pas ouvrir une grille dont le chemin contient {sign} ; déplacez ou renommez le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot read this as a grid of geoid separations ({reason}); give a GTX or GeoTIFF grid, or a constant.</source>
      <translation>{file} : PROJ ne peut pas lire cela comme une grille d'ondulations du géoïde ({reason}) ; donnez une grille GTX ou GeoTIFF, ou une constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: a list of tolerance sets is expected, each with a name; write [ and ] around them.</source>
      <translation>{file} : une liste de jeux de tolérances est attendue, chacun avec un nom ; mettez-les entre [ et ].</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: all {count} points lie on one straight line, which spans no surface. Check the column mapping (the same column for easting and northing?) or add points beside the line.</source>
      <translation>{file} : les {count} points sont tous sur une même droite, qui ne porte pas de surface. Vérifiez la correspondance des colonnes (la même colonne pour est et nord ?) ou ajoutez des points à côté de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/checksums.py" />
      <source>{file}: cannot be read ({reason}), so it cannot be listed among the files handed over.</source>
      <translation>{file} : ne peut pas être lu ({reason}), il ne peut donc pas être listé parmi les fichiers remis.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: cannot be read ({reason}); check its permissions and whether it is in use.</source>
      <translation>{file} : ne peut pas être lu ({reason}) ; vérifiez ses droits et s'il est en cours d'utilisation.</translation>
    </message>
    <message>
      <location filename="../plugin/core/files.py" />
      <source>{file}: cannot be written ({reason}); check the folder, its permissions and the space left.</source>
      <translation>{file} : ne peut pas être écrit ({reason}) ; vérifiez le dossier, ses droits et l'espace restant.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} contains a space or the separator '{separator}', so it can never be found. Rename it.</source>
      <translation>{file} : le code {code} contient une espace ou le séparateur '{separator}', il ne peut donc jamais être trouvé. Renommez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} is also the word for {meaning}. Change one of them.</source>
      <translation>{file} : le code {code} est aussi le mot pour {meaning}. Changez l'un d'eux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file} : les colonnes {first} et {second} sont la longitude et la latitude en degrés, mais des coordonnées planes sont nécessaires ici ; transformez-les d'abord dans un SCR projeté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation>{file} : la couverture '{word}' de {count} points de contrôle n'est pas un mot connu (premier à la ligne {line}) ; ils comptent comme non végétalisés. Écrivez hard, bare, short grass, ou tall grass, crops, brush, forest.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again.</source>
      <translation>{file} : n'a pas de lignes de données, seulement {comments} lignes de commentaire et {blanks} lignes vides ; exportez de nouveau le levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has no header line, but --columns names the header word '{word}'; use column numbers.</source>
      <translation>{file} : n'a pas de ligne d'en-tête, mais --columns nomme le mot d'en-tête '{word}' ; utilisez des numéros de colonne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has over {most} columns with delimiter {delimiter}; check --delimiter.</source>
      <translation>{file} : a plus de {most} colonnes avec le séparateur {delimiter} ; vérifiez --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are above mean sea level as the receiver sent them.</source>
      <translation>{file} : les altitudes sont au-dessus du niveau moyen de la mer, telles que le récepteur les a transmises.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are ellipsoidal: height above mean sea level plus geoid separation.</source>
      <translation>{file} : les altitudes sont ellipsoïdales : altitude au-dessus du niveau moyen de la mer plus ondulation du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: holds positions in degrees and {first} in lengths, or the other way round; transform the degrees before they are merged.</source>
      <translation>{file} : contient des positions en degrés et {first} en longueurs, ou l'inverse ; transformez les degrés avant de les fusionner.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a binary file, not text; export the survey as delimited text (CSV).</source>
      <translation>{file} : est un fichier binaire, non du texte ; exportez le levé en texte délimité (CSV).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a folder; give the survey file inside it.</source>
      <translation>{file} : est un dossier ; donnez le fichier de levé qu'il contient.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/survey.py" />
      <source>{file}: is a receiver log with latitudes and longitudes, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file} : est un journal de récepteur avec latitudes et longitudes, mais des coordonnées planes sont nécessaires ici ; transformez-les d'abord dans un SCR projeté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is empty; export the survey again.</source>
      <translation>{file} : est vide ; exportez de nouveau le levé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is given twice; give each file once.</source>
      <translation>{file} : est donné deux fois ; donnez chaque fichier une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is in {crs}, but {first} is in {first_crs}; transform one of them before they are merged.</source>
      <translation>{file} : est en {crs}, mais {first} est en {first_crs} ; transformez l'un d'eux avant de les fusionner.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not UTF-8 text; it was read as {encoding}. Check accented letters.</source>
      <translation>{file} : n'est pas du texte UTF-8 ; il a été lu en {encoding}. Vérifiez les lettres accentuées.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not {encoding} text ({reason}); give the encoding it was written in.</source>
      <translation>{file} : n'est pas du texte {encoding} ({reason}) ; donnez l'encodage dans lequel il a été écrit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: it cannot be read ({reason}); give a GeoJSON file.</source>
      <translation>{file} : il ne peut pas être lu ({reason}) ; donnez un fichier GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: its EPSG code means {epsg}, its WKT {wkt}; the code is taken. Choose the CRS if that is wrong.</source>
      <translation>{file} : son code EPSG signifie {epsg}, son WKT {wkt} ; le code est retenu. Choisissez le SCR si c'est faux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its columns hold eastings and northings, but {crs}, given as --source-crs, is in degrees; give the projected CRS they are in, or name the columns latitude and longitude in --columns.</source>
      <translation>{file} : ses colonnes contiennent des coordonnées est et nord, mais {crs}, donné comme --source-crs, est en degrés ; donnez le SCR projeté où elles sont, ou nommez les colonnes latitude et longitude dans --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: its coordinate system “{crs}” is not understood here; write it anew.</source>
      <translation>{file} : son système de coordonnées « {crs} » n'est pas reconnu ici ; réécrivez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs.</source>
      <translation>{file} : ses coordonnées ne peuvent pas être transformées dans un repère local ; donnez un SCR projeté comme --crs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said, though the file itself says {found}.</source>
      <translation>{file} : ses altitudes sont prises comme {heights}, comme indiqué, bien que le fichier lui-même dise {found}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said.</source>
      <translation>{file} : ses altitudes sont prises comme {heights}, comme indiqué.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are {heights} already, so the geoid separation would be counted twice; leave --geoid out, or say with --heights-are what they are.</source>
      <translation>{file} : ses altitudes sont déjà {heights}, l'ondulation du géoïde serait donc comptée deux fois ; omettez --geoid, ou dites avec --heights-are ce qu'elles sont.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: its heights are {heights}, those of {first} {first_heights}; bring them to one kind first.</source>
      <translation>{file} : ses altitudes sont {heights}, celles de {first} {first_heights} ; ramenez-les d'abord à un même genre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its positions are in degrees, but {crs}, given as --source-crs, is projected; give a geographic CRS, such as EPSG:4326.</source>
      <translation>{file} : ses positions sont en degrés, mais {crs}, donné comme --source-crs, est projeté ; donnez un SCR géographique, tel que EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are in degrees; give the projected CRS they are wanted in, not a local grid.</source>
      <translation>{file} : ses positions sont en degrés ; donnez le SCR projeté où elles sont voulues, non un repère local.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are taken as {source}, as receivers send them; a correction service may work in another datum, which the file does not tell.</source>
      <translation>{file} : ses positions sont prises comme {source}, comme les récepteurs les transmettent ; un service de correction peut travailler dans une autre référence, ce que le fichier ne dit pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting them at their crossings makes new ones. Remove one of them.</source>
      <translation>{file} : des lignes sont si proches près de E {easting:.3f} N {northing:.3f} que les couper à leurs croisements en crée de nouveaux. Supprimez l'une d'elles.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01.</source>
      <translation>{file} : aucune trame RMC ou ZDA ne donne de date ; les heures sont celles du jour, comme au 1970-01-01.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{file}: no point is left to compute a scale from.</source>
      <translation>{file} : il ne reste aucun point pour calculer une échelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.</source>
      <translation>{file} : aucun point levé n'a le nom d'un point d'appui (tel que '{name}') ; les noms doivent être écrits de la même façon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: no tolerance set is called '{name}'; there are {names}.</source>
      <translation>{file} : aucun jeu de tolérances ne s'appelle '{name}' ; il y a {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. Check the boundary's place and the maximum rim edge.</source>
      <translation>{file} : il ne reste aucun triangle dans la limite et hors des trous avec des arêtes de pourtour jusqu'à la limite. Vérifiez l'emplacement de la limite et l'arête de pourtour maximale.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum.</source>
      <translation>{file} : aucune de ses {lines} lignes n'est une trame NMEA 0183 avec une somme de contrôle juste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.</source>
      <translation>{file} : aucune de ses {sentences} trames NMEA ne donne de position ; enregistrez des trames GGA ou GNS avec une solution.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: none of the {count} check points lies on the surface (the first is line {line}); check their coordinate system, units and the order of easting and northing.</source>
      <translation>{file} : aucun des {count} points de contrôle n'est sur la surface (le premier est à la ligne {line}) ; vérifiez leur système de coordonnées, leurs unités et l'ordre est et nord.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: not all of its coordinates can be brought from {source} to {target}; write it anew in the CRS of the survey (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file} : toutes les coordonnées ne peuvent pas être amenées de {source} à {target} ; réécrivez le fichier dans le SCR du levé (dans QGIS : Exporter, Sauvegarder les entités sous, avec ce SCR et l'option RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); give --columns, such as {options}.</source>
      <translation>{file} : rien ne dit avec certitude quelles colonnes sont est, nord et altitude (première ligne : {words}) ; donnez --columns, par exemple {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>{file}: nothing says how high {name} is; give --pad-level, a height or “balance”, or a property level.</source>
      <translation>{file} : rien ne dit à quelle altitude est {name} ; donnez --pad-level, une altitude ou “balance”, ou une propriété level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local for a local grid in metres.</source>
      <translation>{file} : rien ne dit quel système de coordonnées c'est ; donnez son code, comme dans --crs EPSG:25832, ou --crs local pour un repère local en mètres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: read as {columns} with delimiter {delimiter}.</source>
      <translation>{file} : lu comme {columns} avec le séparateur {delimiter}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': '{key}' is no tolerance; use {keys}.</source>
      <translation>{file} : jeu '{name}' : '{key}' n'est pas une tolérance ; utilisez {keys}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': {key} is {value}; it must be {wanted}.</source>
      <translation>{file} : jeu '{name}' : {key} est {value} ; ce doit être {wanted}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1.</source>
      <translation>{file} : l'encodage de texte '{encoding}' n'est pas connu ; utilisez utf-8, utf-16 ou latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the LandXML file cannot be read ({reason}); check the path.</source>
      <translation>{file} : le fichier LandXML ne peut pas être lu ({reason}) ; vérifiez le chemin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file} : la table des codes ne peut pas être lue ({reason}). Vérifiez le chemin et le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table has no codes. Give a header code,kind,layer,close and rows.</source>
      <translation>{file} : la table des codes n'a pas de codes. Donnez un en-tête code,kind,layer,close et des lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: the comma cannot be delimiter and decimal mark both, unless fields are quoted; give another --delimiter or --decimal.</source>
      <translation>{file} : la virgule ne peut pas être à la fois séparateur et séparateur décimal, sauf si les champs sont entre guillemets ; donnez un autre --delimiter ou --decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: the control file cannot be read ({reason}); check path and encoding (UTF-8).</source>
      <translation>{file} : le fichier de points d'appui ne peut pas être lu ({reason}) ; vérifiez le chemin et l'encodage (UTF-8).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: the coordinates look like degrees, and the file names no other system. Save the line in the survey's CRS (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file} : les coordonnées ressemblent à des degrés, et le fichier ne nomme aucun autre système. Enregistrez la ligne dans le SCR du levé (dans QGIS : Exporter, Sauvegarder les entités sous, avec ce SCR et l'option RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}: the edits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file} : les modifications ne peuvent pas être lues ({reason}). Vérifiez le chemin et le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the file does not say its unit of length (element Units); ask for it and choose it here.</source>
      <translation>{file} : le fichier n'indique pas son unité de longueur (élément Units) ; renseignez-vous et choisissez-la ici.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/write.py" />
      <source>{file}: the folder cannot be made ({reason}); choose another one for --out.</source>
      <translation>{file} : le dossier ne peut pas être créé ({reason}) ; choisissez-en un autre pour --out.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets are in {found}, the surface in {wanted}; reproject them or give them as CSV.</source>
      <translation>{file} : les avaloirs sont en {found}, la surface en {wanted} ; reprojetez-les ou donnez-les en CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets cannot be read ({reason}); check the path.</source>
      <translation>{file} : les avaloirs ne peuvent pas être lus ({reason}) ; vérifiez le chemin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: the mesh file cannot be read ({reason}); check the path.</source>
      <translation>{file} : le fichier de maillage ne peut pas être lu ({reason}) ; vérifiez le chemin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: the mesh has no triangles; choose another file or write it anew.</source>
      <translation>{file} : le maillage n'a pas de triangles ; choisissez un autre fichier ou réécrivez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. Check the column mapping, the units and single points far off.</source>
      <translation>{file} : les points sont éloignés de {distance_km:.0f} km au plus ; une surface peut mesurer 107 km. Vérifiez la correspondance des colonnes, les unités et les points isolés très éloignés.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the runoff coefficient of inlet '{name}' is {found}; it is above 0 and at most 1.</source>
      <translation>{file} : le coefficient de ruissellement de l'avaloir '{name}' est {found} ; il est supérieur à 0 et au plus 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code table that is shipped) and use field codes.</source>
      <translation>{file} : le levé ne contient pas de visées de contrôle ; donnez un fichier de points de contrôle, ou codez des visées de contrôle (CK dans la table des codes fournie) et utilisez les codes de terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file} : le tableau ne peut pas être lu ({reason}). Vérifiez le chemin et le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table has no rows. Give a header with the columns {columns}, and rows.</source>
      <translation>{file} : le tableau n'a pas de lignes. Donnez un en-tête avec les colonnes {columns}, et des lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table has no rows. Give a header with {columns} and at least one row.</source>
      <translation>{file} : le tableau n'a pas de lignes. Donnez un en-tête avec {columns} et au moins une ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table of limits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file} : la table des limites ne peut pas être lue ({reason}). Vérifiez le chemin et le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances cannot be read ({reason}); check the path and the file.</source>
      <translation>{file} : les tolérances ne peuvent pas être lues ({reason}) ; vérifiez le chemin et le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}: there are no polygons in it; give a file of polygons.</source>
      <translation>{file} : il ne contient pas de polygones ; donnez un fichier de polygones.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: there are no surfaces, points or alignments in this file that could be read; choose another.</source>
      <translation>{file} : ce fichier ne contient ni surfaces, ni points, ni tracés lisibles ; choisissez-en un autre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there are {count} lines in it ({names}). Give a file with one; join the parts of a line first.</source>
      <translation>{file} : il contient {count} lignes ({names}). Donnez un fichier qui en contient une ; joignez d'abord les parties d'une ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: there is no column {column} for the linework. Columns kept: {columns}.</source>
      <translation>{file} : il n'y a pas de colonne {column} pour les lignes de terrain. Colonnes gardées : {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: there is no control point in this file.</source>
      <translation>{file} : il n'y a pas de point d'appui dans ce fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: there is no inlet in this file.</source>
      <translation>{file} : il n'y a pas d'avaloir dans ce fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there is no line in it. Give a file with one LineString.</source>
      <translation>{file} : il ne contient pas de ligne. Donnez un fichier avec une LineString.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: there is no such file; check the path.</source>
      <translation>{file} : ce fichier n'existe pas ; vérifiez le chemin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: this is no GeoJSON of points or lines ({reason}); export the layer of inlets as GeoJSON.</source>
      <translation>{file} : ce n'est pas un GeoJSON de points ou de lignes ({reason}) ; exportez la couche des avaloirs en GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: two sets are called '{name}'; rename one.</source>
      <translation>{file} : deux jeux s'appellent '{name}' ; renommez-en un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: {count} crossings of lines with different heights, the first at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation>{file} : {count} croisements de lignes d'altitudes différentes, le premier à E {easting:.3f} N {northing:.3f} : {first} à {first_height:.3f} m et {second} à {second_height:.3f} m. Corrigez les lignes, ou choisissez une règle pour les croisements (mean, first).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}: {count} decisions name no file of the survey, the first in line {line}; each is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation>{file} : {count} décisions ne nomment pas de fichier du levé, la première à la ligne {line} ; chacune est prise pour le seul point de sa ligne. Une colonne 'source' dit quel fichier est visé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.</source>
      <translation>{file} : {count} lignes ne sont pas des points, la première est la ligne {line} ; les rejets donnent chaque ligne avec sa raison.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown.</source>
      <translation>{file} : {count} positions sur {total} n'ont pas de trame GST ; leur précision est inconnue.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} points have fewer columns than the rest, the first in line {line}; what is missing counts as unknown.</source>
      <translation>{file} : {count} points ont moins de colonnes que les autres, le premier à la ligne {line} ; ce qui manque compte comme inconnu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {count} usable points at different places; a surface needs at least three.</source>
      <translation>{file} : {count} points utilisables à des endroits différents ; une surface en demande au moins trois.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}.</source>
      <translation>{file} : {count} valeurs de {role} ne peuvent pas être lues et comptent comme inconnues, la première à la ligne {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: {found} {record} records found but {expected} announced; the file is cut short, write it anew.</source>
      <translation>{file} : {found} enregistrements {record} trouvés mais {expected} annoncés ; le fichier est tronqué, réécrivez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {label}, vertex {vertex}, has no plan position (easting or northing is not a number). Mend the line.</source>
      <translation>{file} : {label}, sommet {vertex}, n'a pas de position en plan (est ou nord n'est pas un nombre). Corrigez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {note}.</source>
      <translation>{file} : {note}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}.</source>
      <translation>{file} : {question}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}; type one of: {options}.</source>
      <translation>{file} : {question} ; saisissez l'un de : {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>{file}: {said}</source>
      <translation>{file} : {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: {wanted} heights are wanted and those of the file are {heights}; give the geoid separation as --geoid.</source>
      <translation>{file} : des altitudes {wanted} sont voulues et celles du fichier sont {heights} ; donnez l'ondulation du géoïde comme --geoid.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: {what} has no list of coordinates as GeoJSON asks for. Save the layer again.</source>
      <translation>{file} : {what} n'a pas la liste de coordonnées que demande GeoJSON. Enregistrez de nouveau la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is one line, join it there.</source>
      <translation>{first} se termine et {second} commence {value:.2f} m plus loin à E {easting:.3f} N {northing:.3f}, et {count} triangles franchissent la lacune. Si c'est une seule ligne, joignez-la à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is a ring, close it.</source>
      <translation>{first} s'arrête {value:.2f} m avant son propre début à E {easting:.3f} N {northing:.3f}, et {count} triangles franchissent la lacune. Si c'est un anneau, fermez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station equation. Write back = ahead, such as 1+200 = 1+250; part several by semicolons.</source>
      <translation>{given} n'est pas une équation d'abscisse. Écrivez arrière = avant, par exemple 1+200 = 1+250 ; séparez-en plusieurs par des points-virgules.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station. Write it such as 1+234.50 or 1234.5; part several by semicolons.</source>
      <translation>{given} n'est pas une abscisse. Écrivez-la comme 1+234.50 ou 1234.5 ; séparez-en plusieurs par des points-virgules.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).</source>
      <translation>{label} était encore en cours lorsque {point} (ligne {line}) l'a recommencée ; l'ancienne ligne se termine à {last} (ligne {last_line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: a part has {places} place(s) and needs {needed}; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label} : une partie a {places} endroit(s) et en demande {needed} ; laissée de côté. Près de {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label} : un anneau demande trois endroits et en a {places} ; laissé de côté. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a height at every vertex, and {count} have none. Give heights, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label} : une face verticale demande une altitude à chaque sommet, et {count} n'en ont pas. Donnez des altitudes, d'abord à {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a line of two places or more. Mend or remove the line.</source>
      <translation>{label} : une face verticale demande une ligne de deux endroits ou plus. Corrigez ou supprimez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: all points of the ring lie on one straight line; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label} : tous les points de l'anneau sont sur une même droite ; laissé de côté. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label} : tous les sommets d'un anneau sont sur une même droite ; laissé de côté. Près de {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: fewer than three places, so it stays open. It ends at {point} (line {line}).</source>
      <translation>{label} : moins de trois endroits, elle reste donc ouverte. Elle se termine à {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: it has no vertices; left out.</source>
      <translation>{label} : n'a pas de sommets ; laissée de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a circle between each two; straight.</source>
      <translation>{label} : aucun arc ne passe par {point} (ligne {line}) et les points voisins avec au plus un demi-cercle entre chaque paire ; droite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no point of it can be used; no line. It began at {point} (line {line}).</source>
      <translation>{label} : aucun de ses points ne peut être utilisé ; pas de ligne. Elle commençait à {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: only one place, {point} (line {line}); no line, the point stays a ground point.</source>
      <translation>{label} : un seul endroit, {point} (ligne {line}) ; pas de ligne, le point reste un point de terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points at the place of the one before them left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label} : points situés au même endroit que le précédent laissés hors de la ligne. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label} : points sans position complète laissés hors de la ligne. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: rejected points left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label} : points rejetés laissés hors de la ligne. Points : {count}, premier {point} (ligne {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second line: {count}, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label} : segments trop courts ou angles trop étroits pour l'écart {offset} m, laissés hors de la seconde ligne : {count}, premier à {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; the first one is used there.</source>
      <translation>{label} : l'arc à {point} (ligne {line}) et un arc voisin diffèrent entre leurs points ; le premier y est utilisé.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the face height {value} m cannot be used. Give a height other than 0.</source>
      <translation>{label} : la hauteur de face {value} m ne peut pas être utilisée. Donnez une hauteur autre que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it.</source>
      <translation>{label} : la ligne revient sur elle-même à {x:.3f}, {y:.3f} ; la seconde ligne la contourne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there.</source>
      <translation>{label} : le milieu d'un arc, {point} (ligne {line}), ne peut pas être utilisé ; pas d'arc à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the offset {value} m of the face cannot be used. Give at least {least} m.</source>
      <translation>{label} : l'écart {value} m de la face ne peut pas être utilisé. Donnez au moins {least} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: the ring was open and is closed by a straight edge of {gap:.3f} m from {x:.3f}, {y:.3f}.</source>
      <translation>{label} : l'anneau était ouvert et est fermé par une arête droite de {gap:.3f} m depuis {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the two lines of the face cross or touch near {x:.3f}, {y:.3f}. Use a smaller offset there or draw the line anew.</source>
      <translation>{label} : les deux lignes de la face se croisent ou se touchent près de {x:.3f}, {y:.3f}. Utilisez-y un écart plus petit ou redessinez la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: there is no room for a second line {offset} m beside it. Use a smaller offset or the other side.</source>
      <translation>{label} : il n'y a pas de place pour une seconde ligne à {offset} m d'elle. Utilisez un écart plus petit ou l'autre côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: vertices dropped because they repeat the place before them: {count}.</source>
      <translation>{label} : sommets omis parce qu'ils répètent l'endroit précédent : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: {count} of its vertices have no usable coordinates; the part is left out.</source>
      <translation>{label} : {count} de ses sommets n'ont pas de coordonnées utilisables ; la partie est laissée de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight.</source>
      <translation>{label} : {point} (ligne {line}) est marqué comme milieu d'un arc mais est une extrémité de la ligne ; droite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label}: {point} (line {line}) starts a new line without a word for it, after the line of that number had ended.</source>
      <translation>{label} : {point} (ligne {line}) commence une nouvelle ligne sans mot pour cela, après la fin de la ligne de ce numéro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} or its slopes take {area:.1f} m² of the platform of {earlier}. Move the pads apart, or plan a wall.</source>
      <translation>{later} ou ses talus prennent {area:.1f} m² de la plateforme de {earlier}. Écartez les plateformes, ou prévoyez un mur.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} reaches into the grading of {earlier} ({area:.1f} m²): it is graded into the ground as the other leaves it, so some earth is counted with both. The total is that of the finished ground.</source>
      <translation>{later} empiète sur le terrassement de {earlier} ({area:.1f} m²) : elle est terrassée dans le terrain tel que l'autre le laisse, une part des terres est donc comptée avec les deux. Le total est celui du terrain fini.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{length:.1f} m of centreline {name} are outside the surface {surface} (stretches: {count}, the first from station {first} to {last}); nothing is said about them.</source>
      <translation>{length:.1f} m de l'axe {name} sont hors de la surface {surface} (tronçons : {count}, le premier de l'abscisse {first} à {last}) ; rien n'en est dit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>{lines} ({count} places)</source>
      <translation>{lines} ({count} endroits)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>{low} to {high} %</source>
      <translation>{low} à {high} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{low} to {high} {unit}</source>
      <translation>{low} à {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} is not determined by these control points ({names}): they lie together or on one line. Add one.</source>
      <translation>{model} n'est pas déterminé par ces points d'appui ({names}) : ils sont groupés ou alignés. Ajoutez-en un.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} needs {needed} control points or more; {count} can be used: {names}.</source>
      <translation>{model} demande {needed} points d'appui ou plus ; {count} sont utilisables : {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>{name}   (heights {times} times)</source>
      <translation>{name}   (altitudes {times} fois)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>{name} is {length} long, from station {begin} to {end}, seen in the way of rising stations.</source>
      <translation>{name} est long de {length}, de l'abscisse {begin} à {end}, vu dans le sens des abscisses croissantes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{name} is {value}: a runoff coefficient is above 0 and at most 1, an intensity is above 0. Correct it.</source>
      <translation>{name} est {value} : un coefficient de ruissellement est supérieur à 0 et au plus 1, une intensité est supérieure à 0. Corrigez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/ponds.py" />
      <source>{name} is {value}: ponds need a standard deviation and a least depth of 0 m or more, and a chance between 0 and 1. Correct it.</source>
      <translation>{name} est {value} : les mares demandent un écart-type et une profondeur minimale de 0 m ou plus, et une probabilité entre 0 et 1. Corrigez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/level_ground.py" />
      <source>{name} is {value}: the slope limit and the window for flat areas must be finite and not negative. Correct it.</source>
      <translation>{name} est {value} : la limite de pente et la fenêtre des zones plates doivent être finies et non négatives. Corrigez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>{name} is {value}; give a number {least} or more, up to {most}.</source>
      <translation>{name} est {value} ; donnez un nombre de {least} ou plus, jusqu'à {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>{name} is {value}; it must be a number from 0 up. Correct it.</source>
      <translation>{name} est {value} ; ce doit être un nombre à partir de 0. Corrigez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{name}: {said}</source>
      <translation>{name} : {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>{off}, at E {easting} N {northing}</source>
      <translation>{off}, à E {easting} N {northing}</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/road.py" />
      <source>{option} is about a road, whose line is given with --line; give that too.</source>
      <translation>{option} concerne une route, dont la ligne est donnée avec --line ; donnez aussi celle-ci.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for grading; give the polygon with --pad too.</source>
      <translation>{option} concerne le terrassement ; donnez aussi le polygone avec --pad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for peak flows; give the intensity with --rain too.</source>
      <translation>{option} concerne les débits de pointe ; donnez aussi l'intensité avec --rain.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing.</source>
      <translation>{option} concerne la feuille, qui est faite avec --smooth ; donnez aussi celle-ci, 0 pour ne rien lisser.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>{option} is for volumes; say from or to what: --against, --since or --volume-level.</source>
      <translation>{option} concerne les volumes ; dites depuis quoi ou vers quoi : --against, --since ou --volume-level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for where the water runs; ask for that with --water too.</source>
      <translation>{option} concerne l'écoulement de l'eau ; demandez-le aussi avec --water.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number above zero, not {value}.</source>
      <translation>{option} doit être un nombre supérieur à zéro, non {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number from zero up, not {value}.</source>
      <translation>{option} doit être un nombre à partir de zéro, non {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number, not {value}.</source>
      <translation>{option} doit être un nombre, non {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>{option} must be two numbers such as 500000,5700000, not '{value}'.</source>
      <translation>{option} doit être deux nombres tels que 500000,5700000, non '{value}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{option} of the walking plan is {value}; give a number in its range.</source>
      <translation>{option} du plan de marche est {value} ; donnez un nombre dans sa plage.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and fit again without it.</source>
      <translation>{part} : le point d'appui '{suspects}' ne convient pas (à {off_mm} mm de l'endroit où les autres le placent) ; vérifiez-le, et ajustez de nouveau sans lui.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part} : aucun point d'appui ne se distingue ; plus grand résidu {largest_mm} mm, à '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no redundancy; the fit is exact, and an error in a point would not show.</source>
      <translation>{part} : pas de redondance ; l'ajustement est exact, et une erreur sur un point ne se verrait pas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: one of these control points does not fit, and it cannot be told which: {suspects}.</source>
      <translation>{part} : l'un de ces points d'appui ne convient pas, et on ne peut dire lequel : {suspects}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points do not fit within the standard deviation given, and with so few it cannot be told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part} : les points d'appui ne s'ajustent pas dans l'écart-type donné, et avec si peu de points on ne peut dire lequel est faux ; plus grand résidu {largest_mm} mm, à '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points fit within the standard deviation given; were one wrong, it could not be told which.</source>
      <translation>{part} : les points d'appui s'ajustent dans l'écart-type donné ; si l'un était faux, on ne pourrait dire lequel.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or several points may be wrong.</source>
      <translation>{part} : ensemble, les résidus sont plus grands que ne le permet l'écart-type donné ; il est peut-être trop petit, ou plusieurs points sont peut-être faux.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest {largest_mm} mm, at '{worst}'), and use more control points.</source>
      <translation>{part} : avec ces points d'appui, on ne peut dire lequel ne convient pas ; jugez les résidus (le plus grand {largest_mm} mm, à '{worst}'), et utilisez plus de points d'appui.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>{reason}, and more</source>
      <translation>{reason}, et d'autres</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
      <source>{reason}; see --help.</source>
      <translation>{reason} ; voir --help.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) has no value: '{value}'</source>
      <translation>{role} (colonne {column}) n'a pas de valeur : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is empty</source>
      <translation>{role} (colonne {column}) est vide</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no angle in degrees: '{value}'</source>
      <translation>{role} (colonne {column}) n'est pas un angle en degrés : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no finite number: '{value}'</source>
      <translation>{role} (colonne {column}) n'est pas un nombre fini : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is not a number: '{value}'</source>
      <translation>{role} (colonne {column}) n'est pas un nombre : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is too large for a coordinate: '{value}'</source>
      <translation>{role} (colonne {column}) est trop grand pour une coordonnée : '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m.</source>
      <translation>{share:.1f} % du site ({area:.0f} m²) est dans des triangles ayant une arête de plus de {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: row {row} was changed by hand but has no line of the survey file; import the points again, so that the decision can be kept.</source>
      <translation>{source} : la ligne {row} a été changée à la main mais n'a pas de ligne du fichier de levé ; importez de nouveau les points, pour que la décision puisse être gardée.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} has '{word}' in column {column}; use one of {words}.</source>
      <translation>{source} : le point de la ligne {line} a '{word}' dans la colonne {column} ; utilisez l'un de {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} was changed in two rows (the second is row {row}); keep one of them.</source>
      <translation>{source} : le point de la ligne {line} a été changé dans deux lignes (la seconde est la ligne {row}) ; n'en gardez qu'une.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{surface} ({unit})</source>
      <translation>{surface} ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 %</source>
      <translation>± 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 % (%)</source>
      <translation>± 95 % (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 % ({unit})</source>
      <translation>± 95 % ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>“{word}” is no column of a set-out table; choose among {known}.</source>
      <translation>« {word} » n'est pas une colonne d'un tableau d'implantation ; choisissez parmi {known}.</translation>
    </message>
  </context>
  <context>
    <name>hummock</name>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>&amp;Unit of easting and northing:</source>
      <translation>&amp;Unité des coordonnées est et nord :</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>, and </source>
      <translation>, et </translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>0 fits one grade to the whole line.</source>
      <translation>0 ajuste une seule pente à toute la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design, which is exact; for a second survey the noise of its points.</source>
      <translation>0 pour un projet, qui est exact ; pour un second levé, le bruit de ses points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design.</source>
      <translation>0 pour un projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 for level pads.</source>
      <translation>0 pour des plateformes horizontales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for a level.</source>
      <translation>0 est le nord, 90 l'est, 180 le sud, 270 l'ouest ; sans objet pour un niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for level pads.</source>
      <translation>0 est le nord, 90 l'est, 180 le sud, 270 l'ouest ; sans objet pour des plateformes horizontales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>0.02 is usual for a fixed solution on a pole that is walked.</source>
      <translation>0.02 est usuel pour une solution fixe sur une canne portée en marchant.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>0.5 m is 1 mm on paper at 1 : 500.</source>
      <translation>0.5 m font 1 mm sur le papier au 1 : 500.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>100 is 1 : 100. Long lines take several sheets.</source>
      <translation>100 signifie 1 : 100. Les longues lignes prennent plusieurs feuilles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>1250 for 1+250.</source>
      <translation>1250 pour 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>2DM meshes (*.2dm)</source>
      <translation>Maillages 2DM (*.2dm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>2DM meshes, such as the surface of rock; the layer's name is the material's.</source>
      <translation>Maillages 2DM, par exemple la surface du rocher ; le nom de la couche est celui du matériau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>&lt;p&gt;A projection changes lengths, and so does the height above the ellipsoid. The combined factor (grid distance over ground distance) is computed at the origin: projection scale factor times height factor. Distances from the origin are divided by it to get ground coordinates, and multiplied to get back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; one factor for the whole site; how much it varies over the site is told, and what that makes of a line of 100 m. A sample line is shown with both of its distances. Heights stay as they are. The mean height of the points is used for the height factor, plus the geoid separation if you give it.&lt;/p&gt;&lt;p&gt;Ground coordinates belong to no CRS: the layer has none. Add a shift so that nobody takes them for grid coordinates, and note origin, factor and shift: the way back needs the same ones.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without the geoid separation the height is wrong by it, which makes some 5 mm in a kilometre for 30 m. Ground coordinates need the origin about which they were made; with another one everything is shifted by the factor's share of the distance between the two.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Une projection change les longueurs, et la hauteur au-dessus de l'ellipsoïde aussi. Le facteur combiné (distance en projection sur distance au sol) est calculé à l'origine : facteur d'échelle de la projection fois facteur d'altitude. Les distances à l'origine sont divisées par lui pour obtenir des coordonnées terrain, et multipliées pour revenir.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un seul facteur pour tout le site ; sa variation sur le site est indiquée, ainsi que ce qu'elle fait d'une ligne de 100 m. Une ligne d'exemple est montrée avec ses deux distances. Les altitudes restent telles quelles. L'altitude moyenne des points sert au facteur d'altitude, plus l'ondulation du géoïde si vous la donnez.&lt;/p&gt;&lt;p&gt;Les coordonnées terrain n'appartiennent à aucun SCR : la couche n'en a pas. Ajoutez un décalage pour que personne ne les prenne pour des coordonnées en projection, et notez origine, facteur et décalage : le retour demande les mêmes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; sans l'ondulation du géoïde, la hauteur est fausse d'autant, ce qui fait quelque 5 mm par kilomètre pour 30 m. Les coordonnées terrain demandent l'origine autour de laquelle elles ont été faites ; avec une autre, tout est décalé de la part du facteur sur la distance entre les deux.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>&lt;p&gt;Asks the surface at each point and adds columns: &lt;b&gt;tin_height&lt;/b&gt;, the height on the surface in the unit of its CRS; &lt;b&gt;slope_pct&lt;/b&gt; and &lt;b&gt;slope_deg&lt;/b&gt;, the slope of the triangle; &lt;b&gt;aspect_deg&lt;/b&gt;, the way down in degrees clockwise from grid north; &lt;b&gt;triangle&lt;/b&gt;, its number. Points with heights of their own also get &lt;b&gt;over_tin&lt;/b&gt;: their height less the surface's, in the same unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Points in another CRS are asked at their place in the surface's CRS and stay as they are; their heights are taken to be in the surface's unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;On an edge&lt;/b&gt; the triangle of lower number answers. A level triangle has no aspect.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points off the surface get empty columns and are counted in the log. Between the survey's points the height is interpolated: it is no measurement.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Interroge la surface à chaque point et ajoute des colonnes : &lt;b&gt;tin_height&lt;/b&gt;, l'altitude sur la surface dans l'unité de son SCR ; &lt;b&gt;slope_pct&lt;/b&gt; et &lt;b&gt;slope_deg&lt;/b&gt;, la pente du triangle ; &lt;b&gt;aspect_deg&lt;/b&gt;, la direction de descente en degrés dans le sens horaire depuis le nord de la projection ; &lt;b&gt;triangle&lt;/b&gt;, son numéro. Les points ayant leurs propres altitudes reçoivent aussi &lt;b&gt;over_tin&lt;/b&gt; : leur altitude moins celle de la surface, dans la même unité.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les points d'un autre SCR sont interrogés à leur place dans le SCR de la surface et restent tels quels ; leurs altitudes sont supposées dans l'unité de la surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sur une arête&lt;/b&gt;, le triangle de plus petit numéro répond. Un triangle horizontal n'a pas d'exposition.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les points hors de la surface reçoivent des colonnes vides et sont comptés dans le journal. Entre les points du levé, l'altitude est interpolée : ce n'est pas une mesure.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>&lt;p&gt;Brings a survey in local or assumed coordinates into the CRS of known control points: in plan by a turn, a scale and two shifts (four parameters), in height by a shift or a tilted plane; or in space by seven parameters. The fit is by least squares.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the points of the survey carry the names of the control points that they were measured at, written alike. The coordinates of the survey layer are taken as they are in the unit you give, whatever CRS the layer says. Several measurements of one control point are averaged.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The residuals&lt;/b&gt; are fitted minus control, in millimetres. Redundancy numbers say how far an error in a point would show in its residual (0: not at all). A point that does not fit is named by a statistical test; fit again without it and see whether the rest agrees.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; two points in plan, or three in height with a plane, fit exactly and check nothing; with one point more an error shows but not whose it is. Control points on one line do not hold a plane. A scale far from 1 means a wrong unit, or ground distances against grid coordinates.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Amène un levé en coordonnées locales ou arbitraires dans le SCR de points d'appui connus : en plan par une rotation, une échelle et deux translations (quatre paramètres), en altitude par une translation ou un plan incliné ; ou dans l'espace par sept paramètres. L'ajustement se fait par moindres carrés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; les points du levé portent les noms des points d'appui sur lesquels ils ont été mesurés, écrits de la même façon. Les coordonnées de la couche du levé sont prises telles quelles dans l'unité que vous donnez, quel que soit le SCR qu'indique la couche. Plusieurs mesures d'un même point d'appui sont moyennées.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Les résidus&lt;/b&gt; sont l'ajusté moins l'appui, en millimètres. Les nombres de redondance disent dans quelle mesure une erreur sur un point apparaîtrait dans son résidu (0 : pas du tout). Un point qui ne convient pas est désigné par un test statistique ; ajustez de nouveau sans lui et voyez si le reste concorde.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; deux points en plan, ou trois en altitude avec un plan, s'ajustent exactement et ne contrôlent rien ; avec un point de plus, une erreur se voit mais pas à qui elle est. Des points d'appui alignés ne tiennent pas un plan. Une échelle éloignée de 1 signifie une mauvaise unité, ou des distances au sol face à des coordonnées en projection.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>&lt;p&gt;Compares a surface with check points and says what that shows: bias, RMSE, the 95 % accuracy of the NSSDA (FGDC-STD-007.3-1998), and the vertical class of the ASPRS Positional Accuracy Standards, edition 2 (2023), with the check points' own error in it. Where there are fewer check points than a standard asks for, it says so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and check points that did not shape it: a point layer, or a CSV file with the columns name, easting, northing, height and, where known, sigma_h, sigma_v and cover, in the CRS of the surface and its units. With neither, the check shots among the survey's points are taken (rejected as check_shot): those are of the same receiver, so the result is an internal check and no test by a standard.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cover:&lt;/b&gt; words such as hard, bare, short grass count as non-vegetated; tall grass, crops, brush, forest as vegetated. The two are reported apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Plan:&lt;/b&gt; with the survey's points, marks of the same name in both tell the accuracy in plan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points from the same base station, pole or geoid share its errors and hide them. The sentences follow the standards in meaning; compare them with your copy before you sign. A licensed professional decides what may be stated for a contract.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Compare une surface à des points de contrôle et dit ce que cela montre : biais, RMSE, la précision à 95 % de la NSSDA (FGDC-STD-007.3-1998), et la classe verticale des ASPRS Positional Accuracy Standards, édition 2 (2023), erreur propre des points de contrôle comprise. Là où il y a moins de points de contrôle qu'une norme n'en demande, cela est dit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit, et des points de contrôle qui n'ont pas servi à le former : une couche de points, ou un fichier CSV avec les colonnes name, easting, northing, height et, si connues, sigma_h, sigma_v et cover, dans le SCR de la surface et ses unités. Sans l'un ni l'autre, les visées de contrôle parmi les points du levé sont prises (rejetées comme check_shot) : elles viennent du même récepteur, le résultat est donc un contrôle interne et non un test selon une norme.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Couverture du sol :&lt;/b&gt; des mots tels que hard, bare, short grass comptent comme non végétalisés ; tall grass, crops, brush, forest comme végétalisés. Les deux sont rapportés séparément.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Plan :&lt;/b&gt; avec les points du levé, les repères de même nom dans les deux disent la précision en plan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des points de la même station de base, de la même canne ou du même géoïde en partagent les erreurs et les cachent. Les phrases suivent le sens des normes ; comparez-les à votre exemplaire avant de signer. Un professionnel agréé décide de ce qui peut être déclaré pour un contrat.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>&lt;p&gt;Compares the grades and crossfalls along a line with a table of limits. A stretch passes or fails only when the whole interval in which its true slope lies with 95 % is on that side of the limit; else it is too close to tell, and more or better points are needed. The layer shows each rule as a band of its own beside the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS, such as a centreline or the middle of a walk. Crossfall is taken between two offsets; keep them inside kerbs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table of limits&lt;/b&gt; is a CSV file with the columns rule, quantity (grade, crossfall, crest_k, sag_k), at_least or at_most (1:20, 5% or 0.05; K in metres), window (m), applies, source, checked, note. Without one the table that comes with Hummock is used; each of its limits names the published source. Compare them with your copy, and with the code that applies where you build.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indications&lt;/b&gt;, none of them a proof: to which edge the crossfall leads water; low points along both edges where water stands, deeper than the noise; and with a table of speeds (columns speed and least_k, m/%), the speed that each fitted crest suits.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; of many windows near a limit a few are judged wrongly. What lies off the surface is not judged. Whether a road, walk or ramp complies is a matter of local codes and of licensed practice, not of this check.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Compare les pentes longitudinales et transversales le long d'une ligne à une table de limites. Un tronçon n'est conforme ou non conforme que lorsque tout l'intervalle où se trouve sa vraie pente à 95 % est de ce côté de la limite ; sinon il est trop proche pour juger, et il faut des points plus nombreux ou meilleurs. La couche montre chaque règle comme une bande propre à côté de la ligne.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit et une ligne dans son SCR, telle qu'un axe ou le milieu d'un trottoir. La pente transversale est prise entre deux déports ; gardez-les entre les bordures.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La table des limites&lt;/b&gt; est un fichier CSV avec les colonnes rule, quantity (grade, crossfall, crest_k, sag_k), at_least ou at_most (1:20, 5% ou 0.05 ; K en mètres), window (m), applies, source, checked, note. Sans elle, la table livrée avec Hummock est utilisée ; chacune de ses limites nomme la source publiée. Comparez-les à votre exemplaire, et au règlement applicable là où vous construisez.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indices&lt;/b&gt;, dont aucun n'est une preuve : vers quel bord la pente transversale mène l'eau ; les creux le long des deux bords où l'eau stagne, plus profonds que le bruit ; et avec une table de vitesses (colonnes speed et least_k, m/%), la vitesse à laquelle convient chaque sommet ajusté.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; parmi de nombreuses fenêtres proches d'une limite, quelques-unes sont mal jugées. Ce qui est hors de la surface n'est pas jugé. La conformité d'une route, d'un trottoir ou d'une rampe relève des règlements locaux et des professionnels agréés, non de cette vérification.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>&lt;p&gt;Computes cut, fill, net, areas and mean depths between two surfaces, or from a surface to a level, in each polygon of a layer: parcels, phases of work, materials on the ground. The polygons' edges cut the triangles exactly, so that the regions and what is outside add up to the whole; where polygons overlap, each counts the ground and the log names them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes in one CRS with one height datum. The polygons are brought into that CRS. &lt;b&gt;Materials:&lt;/b&gt; surfaces of the tops of layers below the ground, such as rock, from above to below; cut is then parted by them. Where a layer's surface is missing the material is “not known”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the polygons with their numbers (± columns are half of the 95 % interval), tables by quantity with the parts of the doubt, by depth class, by material, depth polygons of the whole, and a report. How sure the numbers are: see “Volume between two surfaces”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; intervals of regions do not add up: a height offset moves all of them together, noise does not. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Parcels drawn here are no legal boundaries. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcule déblai, remblai, net, aires et profondeurs moyennes entre deux surfaces, ou d'une surface à un niveau, dans chaque polygone d'une couche : parcelles, phases de travaux, matériaux sur le terrain. Les bords des polygones coupent les triangles exactement, si bien que la somme des régions et de ce qui est en dehors donne le tout ; là où des polygones se recouvrent, chacun compte le terrain et le journal les nomme.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; des maillages 2DM dans un même SCR avec une même référence d'altitude. Les polygones sont amenés dans ce SCR. &lt;b&gt;Matériaux :&lt;/b&gt; surfaces des toits de couches sous le terrain, telles que le rocher, de haut en bas ; le déblai est alors réparti entre elles. Là où la surface d'une couche manque, le matériau est « inconnu ».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sorties :&lt;/b&gt; les polygones avec leurs nombres (les colonnes ± sont la moitié de l'intervalle à 95 %), des tables par grandeur avec les parts de l'incertitude, par classe de profondeur, par matériau, des polygones de profondeur de l'ensemble, et un rapport. Fiabilité des nombres : voir « Volume entre deux surfaces ».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les intervalles des régions ne s'additionnent pas : un décalage d'altitude les déplace toutes ensemble, le bruit non. Ceci n'est pas un décompte : le contrat, les règlements locaux et les professionnels agréés disent ce qui est mesuré. Les parcelles dessinées ici ne sont pas des limites juridiques. Repérez les réseaux enterrés avant que quiconque ne creuse.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>&lt;p&gt;Computes the earth between an existing surface (or an earlier survey) and a design (or a later survey). Every triangle of the one is cut along those of the other, so that the volume is exact for the two surfaces: it depends on no cell size and no stations. &lt;b&gt;Cut&lt;/b&gt; is where the existing surface is above the design, &lt;b&gt;fill&lt;/b&gt; where it is below, both positive; net is fill less cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS and with one height datum. Only ground that both cover is compared, and only inside the polygons if a layer of them is given; what is left out is told in square metres. A level in place of the missing surface counts the rest as well.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; each volume comes with its 95 % interval and four standard deviations: random (noise of single points), drift (shared by neighbours), systematic (a height offset between the surfaces, times the area) and surface model (ground between the points). They rest on what you say of the points; the log and the report name it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tables:&lt;/b&gt; volumes with half_95, low_95 and high_95; random, drift, systematic and model are standard deviations, all in m³. &lt;b&gt;Polygons:&lt;/b&gt; kind, from_m and to_m (depth), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; an offset of 1 cm between two surveys is 100 m³ on a hectare: check a few points that did not move. Where nothing is deeper than the noise, cut and fill are both too large. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcule les terres entre une surface existante (ou un levé antérieur) et un projet (ou un levé ultérieur). Chaque triangle de l'une est coupé le long de ceux de l'autre, si bien que le volume est exact pour les deux surfaces : il ne dépend ni d'une taille de cellule ni d'abscisses. Le &lt;b&gt;déblai&lt;/b&gt; est là où la surface existante est au-dessus du projet, le &lt;b&gt;remblai&lt;/b&gt; là où elle est en dessous, tous deux positifs ; le net est le remblai moins le déblai.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; deux maillages 2DM dans un même SCR et avec une même référence d'altitude. Seul le terrain que les deux couvrent est comparé, et seulement dans les polygones si une couche en est donnée ; ce qui est laissé de côté est indiqué en mètres carrés. Un niveau à la place de la surface manquante compte aussi le reste.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Fiabilité :&lt;/b&gt; chaque volume vient avec son intervalle à 95 % et quatre écarts-types : aléatoire (bruit des points isolés), dérive (partagée par les voisins), systématique (un décalage d'altitude entre les surfaces, fois l'aire) et modèle de surface (terrain entre les points). Ils reposent sur ce que vous dites des points ; le journal et le rapport le nomment.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tables :&lt;/b&gt; volumes avec half_95, low_95 et high_95 ; random, drift, systematic et model sont des écarts-types, le tout en m³. &lt;b&gt;Polygones :&lt;/b&gt; kind, from_m et to_m (profondeur), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un décalage de 1 cm entre deux levés fait 100 m³ par hectare : vérifiez quelques points qui n'ont pas bougé. Là où rien n'est plus profond que le bruit, déblai et remblai sont tous deux trop grands. Ceci n'est pas un décompte : le contrat, les règlements locaux et les professionnels agréés disent ce qui est mesuré. Repérez les réseaux enterrés avant que quiconque ne creuse.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>&lt;p&gt;Computes what must be cut (ground above) and filled (ground below) to make the surface one plane: a &lt;b&gt;level&lt;/b&gt;; a &lt;b&gt;sloping plane&lt;/b&gt;, given by its height at a place, how steeply it falls and which way; or the plane through &lt;b&gt;three points&lt;/b&gt;. Exact, triangle by triangle, without side slopes; for a pad with slopes to the ground see “Grade a pad”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Polygons limit the ground. Heights are in the unit of the CRS, the direction is an azimuth: degrees clockwise from grid north.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; see “Volume between two surfaces”; the plane itself is exact, and the height offset is that between the survey and the datum of the level.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a polygon the whole surface is levelled, rim and all. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcule ce qu'il faut déblayer (terrain au-dessus) et remblayer (terrain en dessous) pour faire de la surface un seul plan : un &lt;b&gt;niveau&lt;/b&gt; ; un &lt;b&gt;plan incliné&lt;/b&gt;, donné par son altitude en un lieu, sa pente et sa direction ; ou le plan passant par &lt;b&gt;trois points&lt;/b&gt;. Exact, triangle par triangle, sans talus latéraux ; pour une plateforme avec des talus jusqu'au terrain, voir « Terrasser une plateforme ».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Des polygones limitent le terrain. Les altitudes sont dans l'unité du SCR, la direction est un azimut : degrés dans le sens horaire depuis le nord de la projection.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Fiabilité :&lt;/b&gt; voir « Volume entre deux surfaces » ; le plan lui-même est exact, et le décalage d'altitude est celui entre le levé et la référence du niveau.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; sans polygone, toute la surface est nivelée, pourtour compris. Ceci n'est pas un décompte : le contrat, les règlements locaux et les professionnels agréés disent ce qui est mesuré. Repérez les réseaux enterrés avant que quiconque ne creuse.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>&lt;p&gt;Cuts a surface, and a second one if you like, at right angles to a line: at whole multiples of an interval, at stations you name, at the line's ends and at its vertices. At a vertex the section halves the angle. You get the sections as lines with heights, their points with offset (right positive) and height, the areas of cut and fill, and sheets in PDF at true scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them and one line, all in one CRS. Heights are those of the triangles, with a point wherever a section crosses an edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Areas:&lt;/b&gt; cut is where the second surface is below the first, fill where it is above; exact between the surfaces as they are. Their standard deviations follow from the noise of the heights. Where both surfaces are within the noise of each other, cut and fill both come out too large; fill less cut does not.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; in tight bends wide sections cross and ground beyond counts twice, which is said. A section partly off a surface has areas only over the width covered, which a column tells. Quantities for payment are a matter of the contract and of licensed practice. Locate buried services before any excavation.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Coupe une surface, et une seconde si vous le souhaitez, à angle droit d'une ligne : aux multiples entiers d'un intervalle, aux abscisses que vous nommez, aux extrémités de la ligne et à ses sommets. À un sommet, le profil partage l'angle en deux. Vous obtenez les profils comme lignes avec altitudes, leurs points avec déport (positif à droite) et altitude, les aires de déblai et de remblai, et des feuilles en PDF à l'échelle exacte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; des maillages 2DM tels que « Construire la surface » les écrit et une ligne, tous dans un même SCR. Les altitudes sont celles des triangles, avec un point partout où un profil croise une arête.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Aires :&lt;/b&gt; le déblai est là où la seconde surface est en dessous de la première, le remblai là où elle est au-dessus ; exact entre les surfaces telles quelles. Leurs écarts-types découlent du bruit des altitudes. Là où les deux surfaces diffèrent de moins que le bruit, déblai et remblai sont tous deux trop grands ; remblai moins déblai ne l'est pas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; dans les courbes serrées, les profils larges se croisent et le terrain au-delà compte deux fois, ce qui est signalé. Un profil en partie hors d'une surface n'a d'aires que sur la largeur couverte, qu'une colonne indique. Les quantités à payer relèvent du contrat et des professionnels agréés. Repérez les réseaux enterrés avant toute fouille.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>&lt;p&gt;Divides a line into windows and gives for each the grade along it and the crossfall across it, with the standard deviation that the noise of the points makes. Both layers are coloured by class of slope, steeper darker and wider.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. A grade is positive where the surface rises with the stations, a crossfall where it rises to the right. A grade is the straight line that fits the heights in the window best. A crossfall is that of sections half a metre apart, from one offset to the other, which all have one slope in the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (from 0, the flattest, by the size of the slope), label. Twice the standard deviation is the doubt at 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; crossfall over a kerb or a ditch is no crossfall: keep the offsets in the lane. Drift tilts a crossfall and counts only if you give it. A window that the surface does not cover has no slope. For limits use “Check a line against limits”.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Divise une ligne en fenêtres et donne pour chacune la pente longitudinale et la pente transversale, avec l'écart-type que produit le bruit des points. Les deux couches sont colorées par classe de pente, plus foncées et plus larges là où c'est plus raide.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit et une ligne dans son SCR. Une pente longitudinale est positive là où la surface monte avec les abscisses, une pente transversale là où elle monte vers la droite. La pente longitudinale est la droite qui s'ajuste le mieux aux altitudes de la fenêtre. La pente transversale est celle de profils espacés d'un demi-mètre, d'un déport à l'autre, qui ont tous une même pente dans la fenêtre.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (à partir de 0, la plus plate, selon la grandeur de la pente), label. Deux fois l'écart-type est l'incertitude à 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; une pente transversale par-dessus une bordure ou un fossé n'en est pas une : gardez les déports dans la voie. La dérive incline une pente transversale et ne compte que si vous la donnez. Une fenêtre que la surface ne couvre pas n'a pas de pente. Pour des limites, utilisez « Contrôler une ligne par rapport à des limites ».&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>&lt;p&gt;Divides the surface along lines of steepest descent by where its water goes: to an inlet, a pond, an outlet on the rim where a channel leaves, or over the rest of the rim. The areas add up to that of the surface. With it come the channels and, between their grounds, the ridges.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Inlets are points or lines; for the catchments of points on a line give the line and the length of its stretches: each has its own catchment.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; name (the inlet's; P1, P2 … ponds by depth; O1, O2 … outlets and H1, H2 … pits by area), drains_to (inlet, pond, outlet, rim, pit), area_m2 in plan and share_pct of the surface, nowhere_m2 and nowhere_pct, the part of it whose water stays in a pond until that is full, and out_x and out_y, where it goes, in the CRS. Channels have area_m2, the ground that drains through their end.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; ground beyond the rim was not measured, so its water is missing. The catchments of a noisy survey are no finer than its points; the noise given keeps pits of noise from dividing them. An inlet takes all that comes near it: whether it can swallow that is not asked.&lt;/p&gt;&lt;p&gt;Catchments are no drainage design: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Divise la surface selon les lignes de plus grande pente d'après la destination de son eau : un avaloir, une mare, un exutoire sur le pourtour où sort un talweg, ou le reste du pourtour. La somme des aires est celle de la surface. S'y ajoutent les talwegs et, entre leurs terrains, les crêtes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les avaloirs sont des points ou des lignes ; pour les bassins versants de points d'une ligne, donnez la ligne et la longueur de ses tronçons : chacun a son propre bassin versant.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; name (celui de l'avaloir ; P1, P2 … mares par profondeur ; O1, O2 … exutoires et H1, H2 … points bas par aire), drains_to (inlet, pond, outlet, rim, pit), area_m2 en plan et share_pct de la surface, nowhere_m2 et nowhere_pct, la part dont l'eau reste dans une mare jusqu'à ce qu'elle soit pleine, et out_x et out_y, l'endroit où elle va, dans le SCR. Les talwegs ont area_m2, le terrain qui s'écoule par leur extrémité.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; le terrain au-delà du pourtour n'a pas été mesuré, son eau manque donc. Les bassins versants d'un levé bruité ne sont pas plus fins que ses points ; le bruit donné empêche les points bas dus au bruit de les diviser. Un avaloir prend tout ce qui arrive près de lui : s'il peut l'absorber n'est pas demandé.&lt;/p&gt;&lt;p&gt;Des bassins versants ne sont pas un projet d'assainissement : les règlements locaux et les professionnels agréés décident.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>&lt;p&gt;Does the same on two surfaces, such as the ground and a design, and says what differs: ponds that are new, gone, deeper or shallower, ground whose water goes elsewhere, and paths before and after from the same places.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS that cover much the same ground, and the same inlets on both. A pond is the same one where the pit of one lies under the water of the other. All places of the rim are taken for one, and so are all ponds, when it is asked whether water goes elsewhere.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; of ponds: change (new, gone, deeper, shallower, unchanged), before and after (their numbers on each surface), and the change in depth_m, area_m2 and volume_m3; of moved ground: from_what, to_what, area_m2; of paths: when (before, after) and those of “Paths of water”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where only one surface reaches, nothing is compared; a design that ends in the middle of the site has its rim there. Put the design into the ground first. The noise given holds for both surfaces: a design has none of its own.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design. Water turned onto a neighbour's ground is a legal matter in most places: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Fait de même sur deux surfaces, telles que le terrain et un projet, et dit ce qui diffère : mares nouvelles, disparues, plus profondes ou moins profondes, terrain dont l'eau s'écoule ailleurs, et chemins avant et après depuis les mêmes endroits.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; deux maillages 2DM dans un même SCR qui couvrent à peu près le même terrain, et les mêmes avaloirs sur les deux. Une mare est la même là où le point bas de l'une est sous l'eau de l'autre. Tous les endroits du pourtour comptent pour un seul, et toutes les mares de même, lorsqu'il s'agit de savoir si l'eau s'écoule ailleurs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; des mares : change (new, gone, deeper, shallower, unchanged), before et after (leurs numéros sur chaque surface), et le changement de depth_m, area_m2 et volume_m3 ; du terrain détourné : from_what, to_what, area_m2 ; des chemins : when (before, after) et celles de « Chemins de l'eau ».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; là où une seule surface s'étend, rien n'est comparé ; un projet qui se termine au milieu du site y a son pourtour. Intégrez d'abord le projet dans le terrain. Le bruit donné vaut pour les deux surfaces : un projet n'en a pas.&lt;/p&gt;&lt;p&gt;Ceci est une indication et non un projet d'assainissement. Détourner l'eau sur le terrain d'un voisin est presque partout une question de droit : les règlements locaux et les professionnels agréés décident.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>&lt;p&gt;Draws contours as a plan shows them: noise calmed, corners rounded, labels that read uphill on the straight places of the lines, and spot heights at summits, pits and saddles.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and the scale at which the plan will be printed: labels keep their size on the ground, so that they fit at that scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Calming&lt;/b&gt; moves no height by more than the tolerance you state; vertices on breaklines and on the rim stay. &lt;b&gt;Smoothing&lt;/b&gt; moves no place of a line by more than the distance you state; lines never cross each other or a breakline, rings stay closed, and each survey point stays on its side. The log says how much of both was used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For half-foot contours&lt;/b&gt; choose interval 0.5, feet, and an index contour every 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; these lines are for drawing. Take numbers, volumes and hand-over from the surface, or from “Contours of a surface”. Labels for another scale are too large or too small: run it again for that scale. Short or crowded lines get no label.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dessine les courbes de niveau comme un plan les montre : bruit calmé, angles arrondis, étiquettes lisibles vers l'amont aux endroits droits des lignes, et points cotés aux sommets, points bas et cols.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit, et l'échelle à laquelle le plan sera imprimé : les étiquettes gardent leur taille sur le terrain, si bien qu'elles conviennent à cette échelle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le calmage&lt;/b&gt; ne déplace aucune altitude de plus que la tolérance que vous indiquez ; les sommets des lignes de rupture et du pourtour restent. &lt;b&gt;Le lissage&lt;/b&gt; ne déplace aucun endroit d'une ligne de plus que la distance que vous indiquez ; les lignes ne se croisent jamais ni ne croisent une ligne de rupture, les anneaux restent fermés, et chaque point du levé reste de son côté. Le journal dit combien de chacun a été utilisé.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Pour des courbes tous les demi-pieds&lt;/b&gt;, choisissez l'équidistance 0.5, les pieds, et une courbe maîtresse toutes les 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; ces lignes servent au dessin. Prenez nombres, volumes et remise dans la surface, ou dans « Courbes de niveau d'une surface ». Des étiquettes pour une autre échelle sont trop grandes ou trop petites : relancez pour cette échelle. Les lignes courtes ou serrées ne reçoivent pas d'étiquette.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>&lt;p&gt;Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. Interval and base are in the unit you choose, which need not be that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; level in the chosen unit and in metres, index (drawn heavier), depression (a ring with the lower ground inside) and closed. Each line also carries its level as height.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours finer than the points allow show noise, not ground: with heights good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not smoothed: their corners are where they cross the edges of triangles.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Trace les lignes d'égale altitude sur les triangles d'une surface, à base + k × équidistance pour k entier. Chaque ligne est aussi longue que possible : un anneau fermé, ou d'un pourtour à l'autre. Le terrain le plus haut est à gauche de la ligne.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit, avec des altitudes dans l'unité de son SCR. L'équidistance et la base sont dans l'unité que vous choisissez, qui n'est pas forcément celle du SCR.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; le niveau dans l'unité choisie et en mètres, index (dessinée plus épaisse), depression (un anneau avec le terrain plus bas à l'intérieur) et closed. Chaque ligne porte aussi son niveau comme altitude.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des courbes plus fines que ne le permettent les points montrent du bruit, non du terrain : avec des altitudes bonnes à 15 mm, réfléchissez à deux fois avant une équidistance inférieure à 5 cm. Un terrain plat donne des lignes déchiquetées. Les courbes ne sont pas lissées : leurs angles sont là où elles croisent les arêtes des triangles.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>&lt;p&gt;Draws the topographic plan of a surface: contours with labels, spot heights that do not touch each other, your lines and parcels, grid marks with coordinates, north arrow, scale bar, legend, and what a reader must know: CRS, height datum, accuracy, contour interval, date. Where the site does not fit on one sheet at the scale, several are made, with a key map on each.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You get&lt;/b&gt; a PDF with lines and text as vectors and its fonts inside, a GeoPackage with the layers and their styles, and a print layout in the project to change by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Title and author come from the project’s properties (Project › Properties › Metadata) where you leave them empty here. The height datum is that of a compound CRS; for another CRS say it, else the plan says that it is not stated.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Accuracy:&lt;/b&gt; with check points the plan carries the sentences of the accuracy statement; otherwise it says that the heights were not tested.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours on the plan are calmed and smoothed within the limits you state; take numbers from the surface. Layers with transparency or blending turn the map into an image in the PDF. A second run for the same files replaces the layers and the layout of the first; duplicate a layout that you want to keep. Parcels on a plan are no boundary survey, buried services are not shown, and a plan is not for setting out without independent checks: local codes and licensed practice decide who may sign it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dessine le plan topographique d'une surface : courbes de niveau avec étiquettes, points cotés qui ne se touchent pas, vos lignes et parcelles, croix de quadrillage avec coordonnées, flèche du nord, barre d'échelle, légende, et ce qu'un lecteur doit savoir : SCR, référence d'altitude, précision, équidistance, date. Là où le site ne tient pas sur une feuille à l'échelle, plusieurs sont faites, avec un plan d'assemblage sur chacune.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vous obtenez&lt;/b&gt; un PDF avec lignes et textes en vecteurs et ses polices incluses, un GeoPackage avec les couches et leurs styles, et une mise en page dans le projet à modifier à la main.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Titre et auteur viennent des propriétés du projet (Projet › Propriétés › Métadonnées) là où vous les laissez vides ici. La référence d'altitude est celle d'un SCR composé ; pour un autre SCR, indiquez-la, sinon le plan dit qu'elle n'est pas indiquée.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Précision :&lt;/b&gt; avec des points de contrôle, le plan porte les phrases de l'déclaration de précision ; sinon il dit que les altitudes n'ont pas été testées.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les courbes du plan sont calmées et lissées dans les limites que vous indiquez ; prenez les nombres dans la surface. Des couches avec transparence ou fusion transforment la carte en image dans le PDF. Une seconde exécution pour les mêmes fichiers remplace les couches et la mise en page de la première ; dupliquez une mise en page que vous voulez garder. Les parcelles d'un plan ne sont pas un bornage, les réseaux enterrés ne sont pas représentés, et un plan ne sert pas à l'implantation sans contrôles indépendants : les règlements locaux et les professionnels agréés décident de qui peut le signer.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>&lt;p&gt;Fills every hollow of the surface to its brim and says which of them count: a hollow that the noise of the heights explains is no pond. Ponds that join as they rise are parts of a larger one.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, heights with independent normal errors of the standard deviation given, and ground that lets no water in. Water leaves over the rim of the surface and through inlets.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; pond (P1 is the deepest) and parent, the pond it is a part of; depth_m at the pit with sigma_m, its standard deviation from those of pit and spill point; chance_pct, the probability that noise alone makes such a hollow anywhere in the survey; area_m2 and volume_m3, exact on the triangles; level, the height of the full pond in the unit of the CRS; points, how many of the survey are under water; spills_to, a pond, an inlet or the rim.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; errors that neighbours share, as from one bad fix over a minute, make wider hollows than this allows for: set a least depth. At the rim of a survey a pond can run out over ground that nobody measured. Gullies and soakaways drain ponds only when they are given.&lt;/p&gt;&lt;p&gt;Ponds are an indication from the surface as surveyed, no drainage design: infiltration, pipes and local codes are matters of licensed practice.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Remplit chaque creux de la surface jusqu'au bord et dit lesquels comptent : un creux que le bruit des altitudes explique n'est pas une mare. Des mares qui se rejoignent en montant font partie d'une plus grande.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit, des altitudes aux erreurs normales indépendantes de l'écart-type donné, et un terrain qui ne laisse pas entrer l'eau. L'eau sort par le pourtour de la surface et par les avaloirs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; pond (P1 est la plus profonde) et parent, la mare dont elle fait partie ; depth_m au point bas avec sigma_m, son écart-type d'après ceux du point bas et du point de débordement ; chance_pct, la probabilité que le bruit seul produise un tel creux quelque part dans le levé ; area_m2 et volume_m3, exacts sur les triangles ; level, l'altitude de la mare pleine dans l'unité du SCR ; points, combien de ceux du levé sont sous l'eau ; spills_to, une mare, un avaloir ou le pourtour.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des erreurs que des voisins partagent, comme lors d'une mauvaise fixation pendant une minute, produisent des creux plus larges que ce qui est admis ici : fixez une profondeur minimale. Au pourtour d'un levé, une mare peut s'écouler sur un terrain que personne n'a mesuré. Avaloirs et puits d'infiltration ne vident les mares que lorsqu'ils sont donnés.&lt;/p&gt;&lt;p&gt;Les mares sont une indication tirée de la surface telle que levée, non un projet d'assainissement : infiltration, conduites et règlements locaux relèvent des professionnels agréés.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>&lt;p&gt;Finds the height at which cut, times the fill that one cubic metre of it makes, equals fill and a stated surplus: the level of a pad, one shift of several pads, or the shift of a strip's whole profile. Slopes are graded anew at each height. Give pads &lt;i&gt;or&lt;/i&gt; a centreline.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Result:&lt;/b&gt; the height with its 95 % interval, volumes there, and a table and figure of cut, fill and what is left over against height: flat curves mean that a little height moves much earth, and the other way round. To make the design itself use “Grade a pad” or “Grade a strip along a line” with the balance switched on.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what those assume. The interval comes from the doubt of the volumes; the factor from cut to fill is taken as given, though it is often the less certain of the two.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where no height balances, as with a surplus larger than there is earth, it says so. Where slopes run over a brow the volume jumps; what is left over is told. Quantities for payment, slopes that stand and safety need the contract, licensed practice and the local codes.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Trouve l'altitude à laquelle le déblai, multiplié par le remblai qu'en fait un mètre cube, égale le remblai et un excédent indiqué : le niveau d'une plateforme, un décalage unique de plusieurs plateformes, ou le décalage de tout le profil en long d'une bande. Les talus sont retaillés à chaque altitude. Donnez des plateformes &lt;i&gt;ou&lt;/i&gt; un axe.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Résultat :&lt;/b&gt; l'altitude avec son intervalle à 95 %, les volumes à cette altitude, et une table et une figure de déblai, remblai et reste selon l'altitude : des courbes plates signifient qu'un peu d'altitude déplace beaucoup de terres, et inversement. Pour faire le projet lui-même, utilisez « Terrasser une plateforme » ou « Terrasser une bande le long d'une ligne » avec l'équilibre activé.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; celles de ces outils. L'intervalle vient de l'incertitude des volumes ; le facteur du déblai au remblai est pris tel que donné, bien qu'il soit souvent le moins certain des deux.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; là où aucune altitude n'équilibre, comme avec un excédent plus grand que les terres disponibles, cela est dit. Là où des talus passent une crête, le volume saute ; ce qui reste est indiqué. Quantités à payer, tenue des talus et sécurité demandent le contrat, des professionnels agréés et les règlements locaux.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>&lt;p&gt;Finds the pit of a basin and the lowest place where water leaves it, and computes area and volume of the water at even levels between them, exactly. Pits inside join as the water rises.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it that takes in the basin's whole rim. A void in the surface, and its edge, let water out. Without a place the basin is that of the lowest place of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the curve as a table (level in the unit of the CRS, the rest metric), the water at the spill level by depth, pit and spill as points, and a report with the curve.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points, ground between them, and the noise of the one height at which the basin spills, which counts over the whole water.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a wrong point on the rim sets the spill: look at it. This is the shape of the ground only, without inflow, outlets, seepage or freeboard; a licensed engineer designs storage.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Trouve le point bas d'un bassin et l'endroit le plus bas par où l'eau en sort, et calcule exactement l'aire et le volume de l'eau à des niveaux réguliers entre les deux. Les points bas intérieurs se rejoignent à mesure que l'eau monte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit et qui comprend tout le pourtour du bassin. Un trou dans la surface, et son bord, laissent sortir l'eau. Sans lieu donné, le bassin est celui du point le plus bas de la surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sorties :&lt;/b&gt; la courbe en table (niveau dans l'unité du SCR, le reste métrique), l'eau au niveau de débordement par profondeur, point bas et débordement comme points, et un rapport avec la courbe.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Fiabilité :&lt;/b&gt; bruit des points, terrain entre eux, et bruit de la seule altitude à laquelle le bassin déborde, qui compte sur toute l'eau.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un point faux sur le pourtour fixe le débordement : examinez-le. Ce n'est que la forme du terrain, sans apports, exutoires, infiltration ni revanche ; un ingénieur agréé conçoit le stockage.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>&lt;p&gt;Fits straight grades joined by parabolas to the heights along a line: where they begin and end, where two grades meet, and K, the length of curve for each percent that the grade changes. Grades, K and the heights that depart from the fit come with their standard deviations or residuals.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. Heights are taken at equal distances; those far off, at a cover or a kerb crossed, count little. As many curves are used as the heights are worth by the Bayesian information criterion.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Layers:&lt;/b&gt; grades and curves along the line; the points where grades meet, at the height where they do, which is not on the ground; and the residuals, surface less fit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; take about the distance of the survey's points for the spacing of heights: closer ones repeat the same points, and standard deviations come out too small. A short curve between points far apart cannot be told from a kink. This describes what is there; a design is the work of a licensed professional.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Ajuste aux altitudes le long d'une ligne des pentes droites raccordées par des paraboles : où elles commencent et finissent, où deux pentes se rencontrent, et K, la longueur de courbe pour chaque pour cent de changement de pente. Pentes, K et altitudes qui s'écartent de l'ajustement viennent avec leurs écarts-types ou résidus.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit et une ligne dans son SCR. Les altitudes sont prises à distances égales ; celles qui s'écartent beaucoup, sur un tampon ou une bordure franchie, comptent peu. Le nombre de courbes est celui que justifient les altitudes selon le critère d'information bayésien.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Couches :&lt;/b&gt; pentes et courbes le long de la ligne ; les points de rencontre des pentes, à l'altitude où elles se rencontrent, qui n'est pas sur le terrain ; et les résidus, surface moins ajustement.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; prenez à peu près la distance des points du levé comme espacement des altitudes : des altitudes plus serrées répètent les mêmes points, et les écarts-types sont trop petits. Une courbe courte entre points éloignés ne peut pas être distinguée d'une cassure. Ceci décrit ce qui existe ; un projet est l'affaire d'un professionnel agréé.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>&lt;p&gt;Follows water from places down the surface itself: across each triangle the steepest way, along a channel where two triangles fall into their edge, to a pit, an inlet or the rim. Level ground drains by the shortest way along its edges to where it goes down.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Paths start at points, along lines and inside areas at the spacing given, or all over the surface where no layer is. In another CRS they are brought into that of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; feature (of the starts), end (pit, pond, rim, inlet, or undecided where heights are equal to rounding), ends_in (the pond or inlet), length_m in plan, drop_m, and slope_pct, the mean of the path.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; noise makes pits: with its standard deviation given, paths pass hollows that noise explains, straight from the pit over the brim. Ponds are numbered from the deepest, P1, as in “Pits and ponds” with the same settings. What is not measured, such as a kerb between two passes or a pipe under a road, leads no water here.&lt;/p&gt;&lt;p&gt;Paths show where water runs on the surface as surveyed. They are no drainage design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Suit l'eau depuis des endroits vers l'aval sur la surface elle-même : à travers chaque triangle par le chemin le plus raide, le long d'un talweg là où deux triangles descendent vers leur arête, jusqu'à un point bas, un avaloir ou le pourtour. Un terrain horizontal s'écoule par le plus court chemin le long de ses arêtes vers l'endroit où il descend.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les chemins partent de points, le long de lignes et dans des zones à l'espacement donné, ou partout sur la surface là où il n'y a pas de couche. Ceux d'un autre SCR sont amenés dans celui de la surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; feature (des départs), end (pit, pond, rim, inlet, ou undecided là où les altitudes sont égales à l'arrondi près), ends_in (la mare ou l'avaloir), length_m en plan, drop_m, et slope_pct, la moyenne du chemin.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; le bruit crée des points bas : avec son écart-type donné, les chemins franchissent les creux que le bruit explique, tout droit du point bas par-dessus le bord. Les mares sont numérotées à partir de la plus profonde, P1, comme dans « Points bas et mares » avec les mêmes réglages. Ce qui n'est pas mesuré, tel qu'une bordure entre deux passages ou une conduite sous une route, n'y mène pas d'eau.&lt;/p&gt;&lt;p&gt;Les chemins montrent où l'eau s'écoule sur la surface telle que levée. Ils ne sont pas un projet d'assainissement.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>&lt;p&gt;Given an area and what you want of the survey, a contour interval or a height error, it proposes how far apart to walk, draws the lines in walking order, and tells the number of points, distance and time.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a rover that stores a point by itself at the step given. The height error between passes is reasoned from the noise of one height and from how the ground bends; no standard says it. A contour interval asks for an RMSE of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lines:&lt;/b&gt; the perimeter first, then passes to and fro, then a few passes across: where those cross the others, the survey tells its own noise. Columns: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. To take them along save the layer as GPX or for your data collector (Export &gt; Save Features As).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; kerbs, ditches and banks narrower than two passes are missed: walk their edges as coded lines. The plan knows no fences, water, traffic or cattle. Links lead along the outline, but between parts of an area that do not touch they are straight.&lt;/p&gt;</source>
      <translation>&lt;p&gt;À partir d'une zone et de ce que vous attendez du levé, une équidistance ou une erreur d'altitude, propose l'écartement des passages, dessine les lignes dans l'ordre de marche, et indique le nombre de points, la distance et le temps.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un mobile qui enregistre de lui-même un point au pas donné. L'erreur d'altitude entre les passages est raisonnée d'après le bruit d'une altitude et la courbure du terrain ; aucune norme ne la dit. Une équidistance demande une RMSE d'un tiers de celle-ci (ASPRS Positional Accuracy Standards, 2014, annexe B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lignes :&lt;/b&gt; d'abord le périmètre, puis les passages en aller et retour, puis quelques passages en travers : là où ceux-ci croisent les autres, le levé dit son propre bruit. Colonnes : order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. Pour les emporter, enregistrez la couche en GPX ou pour votre carnet de terrain (Exporter &gt; Sauvegarder les entités sous).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les bordures, fossés et talus plus étroits que deux passages sont manqués : parcourez leurs arêtes comme lignes codées. Le plan ne connaît ni clôtures, ni eau, ni circulation, ni bétail. Les liaisons suivent le contour, mais entre des parties d'une zone qui ne se touchent pas elles sont droites.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>&lt;p&gt;Gives every point a &lt;b&gt;status&lt;/b&gt;: used, flagged (used, but look at it) or rejected (kept out of the surface), with every &lt;b&gt;reason&lt;/b&gt;. Nothing is deleted. The map tip of a point tells its reasons.&lt;/p&gt;&lt;p&gt;Single points are held to a &lt;b&gt;tolerance set&lt;/b&gt;: fixes, standard deviations, tilt, PDOP, age of the correction, observations. Heights are held against the walk, the passes beside it, places walked twice and coded lines: a pole lifted, dropped or of another height, a fix regained wrongly, points stored while standing still (one point with their mean stays), lines stored twice. How much noise is usual is found in the survey itself. Steps that several passes saw at one line are ground: kerbs, walls, ditches.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You decide:&lt;/b&gt; change the field status of a point in the output, and run this on that output again, or build the surface from it. Your decision stays: check_status and check_reason keep what the checks said, and the log reports where you overruled them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; points in the order of recording, such as the output of “Import survey points”, in a projected CRS. Statuses that points bring along without check_status count as decisions by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How heights repeat:&lt;/b&gt; where passes cross or run side by side, the log gives the standard deviation of a height found there, with its degrees of freedom, and what the receiver claims.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what no other pass and no line has seen can be a fault or a form of the ground: such points are flagged. Errors shared by the whole survey (base station, geoid, pole height) cannot show here: use check points. The tolerances are common practice, no standard.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Donne à chaque point un &lt;b&gt;statut&lt;/b&gt; : used (utilisé), flagged (signalé : utilisé, mais à examiner) ou rejected (rejeté : tenu hors de la surface), avec chaque &lt;b&gt;raison&lt;/b&gt;. Rien n'est supprimé. L'info-bulle d'un point dit ses raisons.&lt;/p&gt;&lt;p&gt;Les points isolés sont tenus à un &lt;b&gt;jeu de tolérances&lt;/b&gt; : fixations, écarts-types, inclinaison, PDOP, âge de la correction, observations. Les altitudes sont confrontées au parcours, aux passages voisins, aux endroits parcourus deux fois et aux lignes codées : une canne soulevée, abaissée ou d'une autre hauteur, une fixation mal reprise, des points enregistrés à l'arrêt (un point reste, avec leur moyenne), des lignes enregistrées deux fois. Le bruit habituel est trouvé dans le levé lui-même. Les ressauts que plusieurs passages ont vus sur une même ligne sont du terrain : bordures, murs, fossés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vous décidez :&lt;/b&gt; changez le champ status d'un point dans la sortie, et relancez sur cette sortie, ou construisez la surface à partir d'elle. Votre décision reste : check_status et check_reason gardent ce que disaient les contrôles, et le journal rapporte où vous avez passé outre.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; des points dans l'ordre d'enregistrement, tels que la sortie de « Importer les points du levé », dans un SCR projeté. Les statuts que les points apportent sans check_status comptent comme décisions à la main.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Répétition des altitudes :&lt;/b&gt; là où des passages se croisent ou se longent, le journal donne l'écart-type d'une altitude qui y est trouvé, avec ses degrés de liberté, et ce qu'annonce le récepteur.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; ce qu'aucun autre passage ni aucune ligne n'a vu peut être une faute ou une forme du terrain : de tels points sont signalés. Les erreurs partagées par tout le levé (station de base, géoïde, hauteur de canne) ne peuvent pas apparaître ici : utilisez des points de contrôle. Les tolérances sont de pratique courante, non une norme.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>&lt;p&gt;Grades each polygon to a level or a sloping plane, and from its edges slopes of cut up and slopes of fill down until they meet the ground (daylight). The result is an exact surface: the design, and the finished ground with it in.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Levels are heights in the unit of the CRS, at the middle of a pad's bounding box; slopes are 1 up or down in n out, square to the edge. Holes keep their ground but for the slopes into them. Several pads are graded one after another; where one reaches into another, that is said.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Slopes of single edges:&lt;/b&gt; lines along them, with the fields cut_run and fill_run. They can differ where edges meet at a corner sharp enough for the slopes to meet, on outlines whose slopes do not run back across the pad; else they are refused.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance:&lt;/b&gt; the height at which cut, times the fill one cubic metre of it makes, equals fill and a stated surplus, to a tenth of a millimetre, and how sure it is. For several pads: one shift of all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; volumes come with their 95 % interval from what you say of the points; see “Volume between two surfaces”. The page compares them with a grid, average end areas and the prismoidal formula.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where the survey ends before the slopes meet the ground it says so, and volumes stop there. This is no design for construction: whether slopes stand, drainage, walls, and safety while digging need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Terrasse chaque polygone à un niveau ou à un plan incliné, et depuis ses bords des talus de déblai vers le haut et des talus de remblai vers le bas jusqu'à rejoindre le terrain (entrée en terre). Le résultat est une surface exacte : le projet, et le terrain fini qui le contient.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les niveaux sont des altitudes dans l'unité du SCR, au milieu de l'emprise rectangulaire d'une plateforme ; les talus sont de 1 en hauteur pour n en largeur, perpendiculairement au bord. Les trous gardent leur terrain sauf les talus qui y descendent. Plusieurs plateformes sont terrassées l'une après l'autre ; là où l'une empiète sur une autre, cela est dit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Talus de bords particuliers :&lt;/b&gt; des lignes le long de ceux-ci, avec les champs cut_run et fill_run. Ils peuvent différer là où des bords se rencontrent à un angle assez vif pour que les talus se rejoignent, sur des contours dont les talus ne retraversent pas la plateforme ; sinon ils sont refusés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Équilibre :&lt;/b&gt; l'altitude à laquelle le déblai, multiplié par le remblai qu'en fait un mètre cube, égale le remblai et un excédent indiqué, au dixième de millimètre, et sa fiabilité. Pour plusieurs plateformes : un décalage unique de toutes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Fiabilité :&lt;/b&gt; les volumes viennent avec leur intervalle à 95 % d'après ce que vous dites des points ; voir « Volume entre deux surfaces ». La page les compare à une grille, aux aires extrêmes moyennes et à la formule prismoïdale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; là où le levé se termine avant que les talus ne rejoignent le terrain, cela est dit, et les volumes s'y arrêtent. Ceci n'est pas un projet d'exécution : tenue des talus, drainage, murs et sécurité des fouilles demandent des professionnels agréés et les règlements locaux. Repérez les réseaux enterrés avant que quiconque ne creuse.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>&lt;p&gt;Joins the triangles whose slope is below a limit to areas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The slope is that of the mean gradient, by area, of the triangles within the window around each one. The limit is yours: local codes and the kind of paving decide what is too flat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; number (1 is the largest), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles of a survey with points every half metre are as steep as its noise, some percent: with a window of 0 flat ground goes unseen. A wide window averages a ridge or a channel to level ground.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Réunit en zones les triangles dont la pente est inférieure à une limite.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. La pente est celle du gradient moyen, pondéré par l'aire, des triangles de la fenêtre autour de chacun. La limite est la vôtre : les règlements locaux et le genre de revêtement décident de ce qui est trop plat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; number (1 est la plus grande), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les triangles isolés d'un levé avec des points tous les demi-mètres sont aussi raides que son bruit, quelques pour cent : avec une fenêtre de 0, un terrain plat passe inaperçu. Une fenêtre large réduit par moyenne une crête ou un talweg à un terrain horizontal.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>&lt;p&gt;Lays a typical section along a line: lanes and shoulders with their crossfalls, ditches where the ground is above, and slopes to daylight. Heights of the centreline come from the Z of the line or from a table of stations and heights, with vertical curves (parabolas) where the table gives their length.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Tables are in metres. Between stations the strip is straight; bends are made of chords, so set a short distance of stations there. Both sides have the same slopes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Mass diagram:&lt;/b&gt; exact cut and fill from station to station, usable cut less fill summed along the line, and how far earth is hauled between places where they balance: in the layer and on the page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance&lt;/b&gt; shifts the whole profile. &lt;b&gt;How sure&lt;/b&gt; the volumes are rests on what you say of the points; the page compares them with average end areas and the prismoidal formula along the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a bend tighter than the strip is wide there folds it over, which is refused. Ends without slopes stand as steep faces. This is no design for construction: alignment, sight, drainage, slopes that stand and traffic need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Pose un profil type le long d'une ligne : voies et accotements avec leurs pentes transversales, fossés là où le terrain est au-dessus, et talus jusqu'à l'entrée en terre. Les altitudes de l'axe viennent du Z de la ligne ou d'une table d'abscisses et d'altitudes, avec des raccordements verticaux (paraboles) là où la table donne leur longueur.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les tables sont en mètres. Entre les abscisses la bande est droite ; les courbes sont faites de cordes, prenez-y donc une courte distance entre abscisses. Les deux côtés ont les mêmes talus.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Épure de Lalanne :&lt;/b&gt; déblai et remblai exacts d'abscisse en abscisse, déblai utilisable moins remblai cumulé le long de la ligne, et la distance de transport des terres entre les endroits où elles s'équilibrent : dans la couche et sur la page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;L'équilibre&lt;/b&gt; décale tout le profil en long. &lt;b&gt;La fiabilité&lt;/b&gt; des volumes repose sur ce que vous dites des points ; la page les compare aux aires extrêmes moyennes et à la formule prismoïdale le long de la ligne.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; une courbe plus serrée que la bande n'y est large la replie, ce qui est refusé. Des extrémités sans talus restent des faces raides. Ceci n'est pas un projet d'exécution : tracé, visibilité, drainage, tenue des talus et circulation demandent des professionnels agréés et les règlements locaux. Repérez les réseaux enterrés avant que quiconque ne creuse.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>&lt;p&gt;Lays lines on a surface. They keep their place and their vertices in plan and get a new vertex wherever they cross an edge of a triangle: heights are those of the surface all along the line, not only at its vertices.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Lines in another CRS are brought into the surface's; curves become chords. Heights that the lines have are not used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; part, the number of the piece of its line; start_m, its distance from the line's beginning, and plan_m and slope_m, its length in plan and on the ground, in metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what lies off the surface, over voids too, is left out: the line falls into several pieces. Each gap is a row of the second output. A line all off the surface gives none.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Pose des lignes sur une surface. Elles gardent leur emplacement et leurs sommets en plan et reçoivent un nouveau sommet partout où elles croisent une arête d'un triangle : les altitudes sont celles de la surface tout le long de la ligne, pas seulement à ses sommets.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Les lignes d'un autre SCR sont amenées dans celui de la surface ; les courbes deviennent des cordes. Les altitudes propres des lignes ne sont pas utilisées.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes ajoutées :&lt;/b&gt; part, le numéro du morceau de sa ligne ; start_m, sa distance au début de la ligne, et plan_m et slope_m, sa longueur en plan et sur le terrain, en mètres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; ce qui est hors de la surface, au-dessus des trous aussi, est laissé de côté : la ligne se divise en plusieurs morceaux. Chaque lacune est une ligne de la seconde sortie. Une ligne entièrement hors de la surface n'en donne aucun.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>&lt;p&gt;Looks a surface over and marks each place that a surveyor would ask about: &lt;b&gt;level spots&lt;/b&gt;, whose corners all lie on one level line; &lt;b&gt;gaps&lt;/b&gt; in breaklines that triangles bridge; &lt;b&gt;long triangles&lt;/b&gt;, over ground that nobody walked; &lt;b&gt;spikes&lt;/b&gt;, points far above or below their neighbours; &lt;b&gt;points beside a line&lt;/b&gt; at another height than its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Give the survey's points, and the “Lines of the surface” with their labels, too: gaps are only found among lines, and file lines are only named for points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; kind, value and unit (an area, a width, a length or a height), text, and lines, the lines of the survey file behind the place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a finding is a question, no verdict: a wall is a spike to this search. A surface without findings can still be wrong, where nothing was measured or all of it is off. The limits are our own choice for points stored every half metre; no standard sets them.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Examine une surface et marque chaque endroit sur lequel un géomètre s'interrogerait : &lt;b&gt;plages horizontales&lt;/b&gt;, dont tous les sommets sont sur une même ligne de niveau ; &lt;b&gt;lacunes&lt;/b&gt; dans des lignes de rupture que des triangles franchissent ; &lt;b&gt;triangles longs&lt;/b&gt;, sur un terrain où personne n'a marché ; &lt;b&gt;pics&lt;/b&gt;, points bien au-dessus ou au-dessous de leurs voisins ; &lt;b&gt;points à côté d'une ligne&lt;/b&gt; à une autre altitude que son arête.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit. Donnez aussi les points du levé, et les « Lignes de la surface » avec leurs étiquettes : les lacunes ne sont trouvées que parmi les lignes, et les lignes du fichier ne sont nommées que pour les points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; kind, value et unit (une aire, une largeur, une longueur ou une altitude), text, et lines, les lignes du fichier de levé à l'origine de l'endroit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un constat est une question, non un verdict : un mur est un pic pour cette recherche. Une surface sans constats peut tout de même être fausse, là où rien n'a été mesuré ou si elle est tout entière décalée. Les limites sont notre propre choix pour des points enregistrés tous les demi-mètres ; aucune norme ne les fixe.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>&lt;p&gt;Makes a lighter surface: vertices are dropped as long as every one of them stays within the tolerance of the new surface. The rim, breaklines and their heights are kept.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and a tolerance in metres whatever the CRS. The result is a 2DM file with its CRS beside it as .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What was reached&lt;/b&gt; is measured on the finished surface at every vertex of the given one and stands in the log and the results: the largest difference with its place, and the root of the mean square.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between the vertices, where an old edge crosses a new one, the surfaces may be farther apart than the tolerance. A tolerance below the noise of the heights drops little. Volumes of a thinned surface differ: compute them from the full one.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Fait une surface plus légère : des sommets sont omis tant que chacun d'eux reste dans la tolérance de la nouvelle surface. Le pourtour, les lignes de rupture et leurs altitudes sont conservés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que « Construire la surface » l'écrit, et une tolérance en mètres quel que soit le SCR. Le résultat est un fichier 2DM avec son SCR à côté en .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui est atteint&lt;/b&gt; est mesuré sur la surface achevée à chaque sommet de la surface donnée et figure dans le journal et les résultats : la plus grande différence avec son lieu, et la moyenne quadratique.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; entre les sommets, là où une ancienne arête en croise une nouvelle, les surfaces peuvent être plus écartées que la tolérance. Une tolérance inférieure au bruit des altitudes n'omet que peu. Les volumes d'une surface allégée diffèrent : calculez-les à partir de la complète.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>&lt;p&gt;Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary and voids become edges exactly; no points are added along lines with heights.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that plan and heights are in the unit of the points' CRS. Lines come from the field codes of the points, in recording order, and from layers. A line without heights takes them from the surface around it and keeps its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Points at the same place&lt;/b&gt; (equal to 0.1 mm) count once, with their mean height, and are reported.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Kerbs and walls&lt;/b&gt; are drawn as one line with heights and the height of the face; each becomes two breaklines a small offset apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Edits&lt;/b&gt; by hand come from layers that you draw and from a file; they are replayed in their order at each run, and those that no longer apply are reported. Keep the file of edits that is written beside the survey, and give it to the next run instead of the layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; lines that cross at different heights are refused unless you choose a rule. Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: their ground was not surveyed. A boundary drawn around nothing leaves no triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The mesh&lt;/b&gt; is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Fait un réseau de triangles irréguliers (TIN) des points qui ne sont pas rejetés. Lignes de rupture, limite et trous deviennent exactement des arêtes ; aucun point n'est ajouté le long de lignes avec altitudes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; plan et altitudes sont dans l'unité du SCR des points. Les lignes viennent des codes de terrain des points, dans l'ordre d'enregistrement, et de couches. Une ligne sans altitudes les prend de la surface alentour et garde son arête.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Les points au même endroit&lt;/b&gt; (identiques à 0,1 mm) comptent une fois, avec leur altitude moyenne, et sont rapportés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Bordures et murs&lt;/b&gt; se dessinent comme une ligne avec altitudes et la hauteur de la face ; chacun devient deux lignes de rupture à un petit écart l'une de l'autre.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Les modifications&lt;/b&gt; à la main viennent de couches que vous dessinez et d'un fichier ; elles sont rejouées dans leur ordre à chaque exécution, et celles qui ne s'appliquent plus sont rapportées. Gardez le fichier de modifications écrit à côté du levé, et donnez-le à l'exécution suivante au lieu des couches.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des lignes qui se croisent à des altitudes différentes sont refusées sauf si vous choisissez une règle. Sans limite ni plus longue arête de pourtour, de longs triangles plats franchissent les rentrants du contour du site : leur terrain n'a pas été levé. Une limite dessinée autour de rien ne laisse aucun triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le maillage&lt;/b&gt; est un fichier 2DM, altitudes dans l'unité du SCR. Le format ne peut pas contenir le SCR, qui figure donc dans un fichier .prj de même nom à côté ; lorsque vous ajoutez le maillage à la main, donnez le SCR à QGIS.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>&lt;p&gt;Makes points to set out from a layer: its points, the corners of its lines and polygons, a grid over its polygons, or offsets along its lines. Each gets a design height, the height of the existing ground, and cut or fill: the design less the ground, above 0 fill, below 0 cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh of the existing ground as “Build the surface” writes it, places in its CRS, and a design that whoever answers for it has released.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Design heights&lt;/b&gt; come from a field, or else from the Z of the layer where that is ticked, or else from a design surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Doubt:&lt;/b&gt; the standard deviation of cut and fill has two parts: the noise of the surveyed heights, carried through the triangle, and the doubt of set-out in plan times the slope of the ground. The design counts as exact, and ground between the survey's points may differ by more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table&lt;/b&gt; has the columns you name, in that order, in the unit you choose; the control points stand at its end with the code CONTROL. Names are unique, capitals or not: clashes are refused. Notes and cautions stand at its head and in a text beside it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; grid coordinates used as distances on the ground: check the combined factor. A data collector in another foot, another datum or another height system. An outdated design.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; check on control before, during and after the work. Have buried services located before anything is dug or driven in. This is no survey of boundaries: property marks, and set-out that others build on, are for a licensed professional under local rules. For machine guidance check at known points, away from the machine's path.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Fait des points à implanter à partir d'une couche : ses points, les sommets de ses lignes et polygones, un quadrillage sur ses polygones, ou des déports le long de ses lignes. Chacun reçoit une altitude de projet, l'altitude du terrain existant, et le déblai ou remblai : le projet moins le terrain, au-dessus de 0 remblai, en dessous de 0 déblai.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM du terrain existant tel que « Construire la surface » l'écrit, des emplacements dans son SCR, et un projet émis par celui qui en répond.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Les altitudes de projet&lt;/b&gt; viennent d'un champ, ou sinon du Z de la couche là où c'est coché, ou sinon d'une surface de projet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Incertitude :&lt;/b&gt; l'écart-type du déblai et remblai a deux parts : le bruit des altitudes levées, propagé à travers le triangle, et l'incertitude de l'implantation en plan fois la pente du terrain. Le projet compte comme exact, et le terrain entre les points du levé peut différer davantage.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le tableau&lt;/b&gt; a les colonnes que vous nommez, dans cet ordre, dans l'unité que vous choisissez ; les points d'appui figurent à la fin avec le code CONTROL. Les noms sont uniques, sans égard à la casse : les doublons sont refusés. Remarques et précautions figurent en tête et dans un texte à côté.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des coordonnées en projection utilisées comme distances sur le terrain : vérifiez le facteur combiné. Un carnet de terrain dans un autre pied, une autre référence ou un autre système d'altitude. Un projet périmé.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Précaution :&lt;/b&gt; contrôlez sur les points d'appui avant, pendant et après les travaux. Faites repérer les réseaux enterrés avant de creuser ou de planter quoi que ce soit. Ceci n'est pas un bornage : les repères de propriété, et les implantations sur lesquelles d'autres construisent, relèvent d'un professionnel agréé selon les règles locales. Pour le guidage d'engins, vérifiez en des points connus, hors de la trajectoire de l'engin.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>&lt;p&gt;Multiplies the area of each catchment by its runoff coefficient and the intensity of the rain: the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; rain of constant intensity for as long as water takes from the farthest place to the outlet; find that intensity for the duration and the frequency that your code asks for. Catchments are polygons, as “Catchments” makes them. The runoff coefficient comes from polygons of ground cover, weighted by area, else from a field of the catchments, else it is one number for all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; runoff, the coefficient; area and area_unit; intensity and intensity_unit; flow and flow_unit (l/s, or ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the method is for small areas of one kind; beyond some 80 ha (200 acres) it is commonly not used. It knows no storage: a pond upstream makes the true peak smaller. Water from beyond the surveyed ground is not counted. The flow over “the rest of the rim” is that of many places, not of one.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design: coefficients, intensities and methods are set by local codes, and a licensed professional answers for a design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Multiplie l'aire de chaque bassin versant par son coefficient de ruissellement et l'intensité de la pluie : la méthode rationnelle, Q = C i A (E. Kuichling, « The relation between the rainfall and the discharge of sewers in populous districts », Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; une pluie d'intensité constante aussi longtemps que l'eau met à aller de l'endroit le plus éloigné à l'exutoire ; cherchez cette intensité pour la durée et la fréquence que demande votre règlement. Les bassins versants sont des polygones, tels que les produit « Bassins versants ». Le coefficient de ruissellement vient de polygones de couverture du sol, pondéré par l'aire, sinon d'un champ des bassins versants, sinon c'est un seul nombre pour tous.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes ajoutées :&lt;/b&gt; runoff, le coefficient ; area et area_unit ; intensity et intensity_unit ; flow et flow_unit (l/s, ou ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; la méthode vaut pour de petites aires homogènes ; au-delà de quelque 80 ha (200 acres), elle n'est généralement plus employée. Elle ne connaît pas le stockage : une mare en amont réduit le débit de pointe réel. L'eau venant d'au-delà du terrain levé n'est pas comptée. Le débit par « le reste du pourtour » est celui de nombreux endroits, pas d'un seul.&lt;/p&gt;&lt;p&gt;Ceci est une indication et non un projet d'assainissement : coefficients, intensités et méthodes sont fixés par les règlements locaux, et un professionnel agréé répond d'un projet.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>&lt;p&gt;Puts a point with the direction and the slope of the way down at the places of a square grid. The style turns an arrow by the direction and sizes it by the slope.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The direction is the mean gradient, by area, of the triangles around: within the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; direction, degrees clockwise from grid north, and slope_pct, the fall over run in percent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles between points half a metre apart are as steep as their noise, some percent; with a window of 0 the arrows show that. A wide window hides kerbs and ditches. On level ground there is no arrow.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Place aux nœuds d'une grille carrée un point avec la direction et la pente de la descente. Le style oriente une flèche selon la direction et en règle la taille selon la pente.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface ». La direction est le gradient moyen, pondéré par l'aire, des triangles alentour : dans la fenêtre.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; direction, degrés dans le sens horaire depuis le nord de la projection, et slope_pct, la chute sur la distance en pour cent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; des triangles isolés entre des points distants d'un demi-mètre sont aussi raides que leur bruit, quelques pour cent ; avec une fenêtre de 0, c'est ce que montrent les flèches. Une fenêtre large masque bordures et fossés. Sur un terrain horizontal, il n'y a pas de flèche.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>&lt;p&gt;Puts each triangle of a surface into a class by its slope and joins the triangles of a class to areas. A slope equal to a limit belongs to the class below it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Slopes are rise over run in percent, the steepest way down each triangle. Limits are written such as 1; 2; 5; 8.33; 20; 50: 5 is 1 in 20, 8.33 is 1 in 12. They are no standard: set those of your site.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; class (from 0, the flattest), from_pct and to_pct (empty for the last class), label, plan_m2 and slope_m2, the area in plan and on the slope, in square metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between points half a metre apart that are good to 15 mm the slope is only good to some 4 percent: noise speckles the map of nearly level ground. Thin the surface first, or judge larger areas. This map does not replace a check against the rules that apply to your site.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Range chaque triangle d'une surface dans une classe selon sa pente et réunit les triangles d'une classe en aires. Une pente égale à une limite appartient à la classe inférieure.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface ». Les pentes sont le dénivelé sur la distance en pour cent, selon la ligne de plus grande pente de chaque triangle. Les limites s'écrivent par exemple 1; 2; 5; 8.33; 20; 50 : 5 est 1 sur 20, 8.33 est 1 sur 12. Elles ne sont pas une norme : fixez celles de votre site.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; class (à partir de 0, la plus plate), from_pct et to_pct (vide pour la dernière classe), label, plan_m2 et slope_m2, l'aire en plan et selon la pente, en mètres carrés.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; entre des points distants d'un demi-mètre et bons à 15 mm, la pente n'est bonne qu'à quelque 4 pour cent : le bruit mouchette la carte d'un terrain presque horizontal. Allégez d'abord la surface, ou jugez sur de plus grandes aires. Cette carte ne remplace pas un contrôle selon les règles applicables à votre site.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>&lt;p&gt;Reads the open standard LandXML 1.2 (and 1.0, 1.1): each surface becomes a 2DM mesh that all tools for surfaces take; points, source lines and alignments become layers. Units and CRS are those the file says; what you choose here wins.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; surfaces of triangles. Faces marked invisible are holes. Curves of alignments become chords that lie within 1 mm of them; heights of their lines are those of the first profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a file that is damaged, cut short, without units, with a corner that is missing or faces that overlap is refused, with the line and the reason: nothing of it is loaded. Files that declare entities or a document type are refused too: LandXML needs none. Faces without area in plan (walls) and spirals other than clothoids are left out and said. A file in one kind of feet with a CRS in the other is told: ask which is meant.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; a design from elsewhere is no better than its source: compare it with the ground and with its drawings before you set out from it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lit le standard ouvert LandXML 1.2 (et 1.0, 1.1) : chaque surface devient un maillage 2DM que prennent tous les outils de surface ; les points, lignes source et tracés deviennent des couches. Les unités et le SCR sont ceux qu'indique le fichier ; ce que vous choisissez ici l'emporte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; des surfaces de triangles. Les faces marquées invisibles sont des trous. Les courbes des tracés deviennent des cordes à moins de 1 mm d'elles ; les altitudes de leurs lignes sont celles du premier profil en long.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un fichier endommagé, tronqué, sans unités, avec un sommet manquant ou des faces qui se recouvrent est refusé, avec la ligne et le motif : rien n'en est chargé. Les fichiers qui déclarent des entités ou un type de document sont refusés aussi : LandXML n'en a pas besoin. Les faces sans aire en plan (murs) et les spirales autres que des clothoïdes sont laissées de côté et mentionnées. Un fichier dans un type de pieds avec un SCR dans l'autre est signalé : demandez lequel est visé.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Attention :&lt;/b&gt; un projet venu d'ailleurs ne vaut pas mieux que sa source : comparez-le au terrain et à ses plans avant d'implanter d'après lui.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>&lt;p&gt;Reads the survey file, checks it, builds the surface and its contours, and writes one report of it all: what came in and what was rejected and why, coordinates, how far the survey can be trusted, the surface, the contours, water, volumes, a road’s grades and a pad’s earthwork where you ask for them, and the files handed over, each with its SHA-256. HTML and PDF say the same.&lt;/p&gt;&lt;p&gt;It starts from the &lt;b&gt;file&lt;/b&gt;, so that each number can be traced to a line of it. Decisions that you took in QGIS come in by their file: “Survey desk” keeps it for you. A layer in place of the file comes with the statuses that its points have.&lt;/p&gt;&lt;p&gt;&lt;b&gt;More files&lt;/b&gt;, such as a plan or a drawing, are listed with the others and their SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what “Import survey points”, “Check the survey” and “Build the surface” assume, with their usual options. Where the file needs more to be read, say the columns and units here.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the report tells of this run, not of layers you changed by hand since. It is no certificate: licensed practice and local codes decide what a survey may be used for.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lit le fichier de levé, le contrôle, construit la surface et ses courbes de niveau, et écrit un seul rapport sur le tout : ce qui est entré, ce qui a été rejeté et pourquoi, les coordonnées, la confiance que mérite le levé, la surface, les courbes de niveau, l'eau, les volumes, les pentes d'une route et les terrassements d'une plateforme si vous les demandez, et les fichiers remis, chacun avec son SHA-256. HTML et PDF disent la même chose.&lt;/p&gt;&lt;p&gt;Il part du &lt;b&gt;fichier&lt;/b&gt;, afin que chaque nombre puisse être rattaché à une de ses lignes. Les décisions que vous avez prises dans QGIS entrent par leur fichier : « Bureau du levé » le tient pour vous. Une couche à la place du fichier vient avec les statuts de ses points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;D'autres fichiers&lt;/b&gt;, comme un plan ou un dessin, sont énumérés avec les autres et leur SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; celles de « Importer les points du levé », « Contrôler le levé » et « Construire la surface », avec leurs options usuelles. Si la lecture du fichier en demande davantage, indiquez ici les colonnes et les unités.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; le rapport rend compte de cette exécution, pas des couches que vous avez modifiées à la main depuis. Il n'est pas un certificat : la pratique agréée et les règlements locaux décident de l'usage possible d'un levé.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>&lt;p&gt;Reads what a rover wrote, delimited text (comma, semicolon, tab or blanks; point or comma as decimal sign; with or without a header; eastings and northings, or latitudes and longitudes) or a receiver log (NMEA 0183), into a layer of points with heights. Several files of one site become one layer that keeps the source of each point. A layer of points that is loaded already can take the place of a file, alone or merged with files and other layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns&lt;/b&gt; are recognised from header words in four languages, from the values, and from the area in which the CRS may be used. What stays open is asked, not guessed: “Preview” shows the first lines, the role of each column, the lines that would be rejected, and where the points would land.&lt;/p&gt;&lt;p&gt;Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line is in the second output with its reason.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the coordinates are in the CRS wanted unless another one is given for the file; then they are transformed by one operation that is named with its accuracy. Degrees without a CRS are taken as WGS 84. Heights are taken as they are unless a geoid separation is given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The status&lt;/b&gt; of a point is used, flagged or rejected. Only rejected points stay out of the surface. You can change it in the layer; later steps read it there. Plan and height are read from the geometry, so the columns easting, northing and height only inform.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; easting and northing can be swapped, and a wrong unit makes a surface of the right form and the wrong size. Points outside the area of use of the CRS are reported with the likely cause; nothing is corrected without your word. A ballpark operation, or one that lacks its grid file, is refused until you accept it by its name.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lit ce qu'un mobile a écrit, du texte délimité (virgule, point-virgule, tabulation ou espaces ; point ou virgule comme séparateur décimal ; avec ou sans en-tête ; coordonnées est et nord, ou latitudes et longitudes) ou un journal de récepteur (NMEA 0183), dans une couche de points avec altitudes. Plusieurs fichiers d'un même site deviennent une seule couche qui garde la source de chaque point. Une couche de points déjà chargée peut prendre la place d'un fichier, seule ou réunie à des fichiers et à d'autres couches.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Les colonnes&lt;/b&gt; sont reconnues d'après des mots d'en-tête en quatre langues, d'après les valeurs, et d'après la zone d'usage du SCR. Ce qui reste à préciser est demandé, pas deviné : « Aperçu » affiche les premières lignes, le rôle de chaque colonne, les lignes qui seraient rejetées, et l'endroit où tomberaient les points.&lt;/p&gt;&lt;p&gt;Points, lignes rejetées, commentaires et lignes vides totalisent les lignes du fichier ; chaque ligne rejetée figure dans la seconde sortie avec son motif.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; les coordonnées sont dans le SCR voulu, sauf si un autre est donné pour le fichier ; elles sont alors transformées par une seule opération, nommée avec sa précision. Des degrés sans SCR sont pris comme WGS 84. Les altitudes sont prises telles quelles sauf si une ondulation du géoïde est donnée.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le statut&lt;/b&gt; d'un point est used, flagged ou rejected. Seuls les points rejetés restent hors de la surface. Vous pouvez le changer dans la couche ; les étapes suivantes l'y lisent. Le plan et l'altitude sont lus dans la géométrie, si bien que les colonnes easting, northing et height ne sont qu'informatives.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; l'est et le nord peuvent être inversés, et une mauvaise unité produit une surface de la bonne forme et de la mauvaise taille. Les points hors de la zone d'usage du SCR sont signalés avec la cause probable ; rien n'est corrigé sans votre accord. Une opération approximative, ou à laquelle manque son fichier de grille, est refusée tant que vous ne l'acceptez pas par son nom.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>&lt;p&gt;Samples a surface at the centres of square cells, whose edges lie at whole multiples of the cell size. &lt;b&gt;Exact&lt;/b&gt;: the height on the triangle. &lt;b&gt;Smooth&lt;/b&gt;: a Clough-Tocher interpolant through the same vertices, sharp at breaklines: it is for drawing only, such as a hillshade, never for numbers; its largest difference from the surface is in the log.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Cells without the surface under their centre have no data (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; is a GeoTIFF of 32-bit numbers (rounded to 0.02 mm below 512 m, 0.3 mm below 8192 m), compressed without loss and tiled, with the CRS; the band names method and unit of the heights, which is that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a raster cannot hold a kerb: what is narrower than two cells is blurred. Take volumes and contours from the surface itself. Small cells make large files.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Échantillonne une surface au centre de cellules carrées, dont les côtés se trouvent aux multiples entiers de la taille de cellule. &lt;b&gt;Exact&lt;/b&gt; : l'altitude sur le triangle. &lt;b&gt;Lissé&lt;/b&gt; : un interpolant de Clough-Tocher par les mêmes sommets, vif aux lignes de rupture : il sert au dessin seulement, par exemple à un ombrage, jamais aux nombres ; sa plus grande différence avec la surface est dans le journal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface ». Les cellules sans surface sous leur centre n'ont pas de donnée (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le fichier&lt;/b&gt; est un GeoTIFF de nombres sur 32 bits (arrondis à 0.02 mm en dessous de 512 m, 0.3 mm en dessous de 8192 m), compressé sans perte et tuilé, avec le SCR ; la bande nomme la méthode et l'unité des altitudes, qui est celle du SCR.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un raster ne peut pas contenir une bordure : ce qui est plus étroit que deux cellules est estompé. Tirez volumes et courbes de niveau de la surface elle-même. De petites cellules font de gros fichiers.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>&lt;p&gt;Spans a base inside each closed line (the toe of a stockpile, the rim of a pit) and computes what of the surface stands above it and what is missing below it, exactly. Bases: &lt;b&gt;triangles through the line&lt;/b&gt;, which follow uneven ground around; the &lt;b&gt;best-fit plane&lt;/b&gt; of the line, for a pad built even; a &lt;b&gt;level&lt;/b&gt; at its lowest or highest place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and lines drawn at the toe or rim itself, in a polygon or line layer, one feature each. A line is laid on the surface to get its heights, or keeps its own Z where you say so. Breaklines along toe and crest make the surface right.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; above_m3 and below_m3 with their ± (half of the 95 % interval), areas, the base's lowest and highest height, not_measured_m2 (ground inside the line without surface).&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points and of the base's line, ground between the points, and, for a line with its own heights, a height offset times the area.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the base under a heap is a guess, unless the ground was surveyed before it was heaped: then use “Volume between two surfaces”. A toe drawn too wide counts ground, too narrow leaves out the foot. This is no payment certificate; for tonnage measure the density.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Tend une base à l'intérieur de chaque ligne fermée (le pied d'un stock, le bord d'une fosse) et calcule exactement ce qui, de la surface, se trouve au-dessus et ce qui manque en dessous. Bases : &lt;b&gt;triangles à travers la ligne&lt;/b&gt;, qui suivent un terrain inégal alentour ; le &lt;b&gt;plan le mieux ajusté&lt;/b&gt; à la ligne, pour une aire construite régulière ; un &lt;b&gt;niveau&lt;/b&gt; à son point le plus bas ou le plus haut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface », et des lignes dessinées au pied ou au bord même, dans une couche de polygones ou de lignes, une entité chacune. Une ligne est posée sur la surface pour obtenir ses altitudes, ou garde son propre Z si vous l'indiquez. Des lignes de rupture au pied et en crête rendent la surface juste.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes :&lt;/b&gt; above_m3 et below_m3 avec leurs ± (moitié de l'intervalle à 95 %), les aires, l'altitude la plus basse et la plus haute de la base, not_measured_m2 (terrain à l'intérieur de la ligne sans surface).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Certitude :&lt;/b&gt; bruit des points et de la ligne de base, terrain entre les points et, pour une ligne avec ses propres altitudes, un décalage d'altitude multiplié par l'aire.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; la base sous un tas est une supposition, sauf si le terrain a été levé avant la mise en tas : utilisez alors « Volume entre deux surfaces ». Un pied dessiné trop large compte du terrain, trop étroit il laisse le bas de côté. Ceci n'est pas un décompte de paiement ; pour un tonnage, mesurez la masse volumique.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>&lt;p&gt;Takes the heights of one or several surfaces along a line: as points at stations, as lines in a plane of their own, and as a sheet in PDF at true scale, with stations, heights, differences and grades below the profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them, all in one CRS, and one line in that CRS. Heights are those of the triangles all along, not of a grid. A grade is the straight line that fits the heights in its window best; its standard deviation follows from the noise of the points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns of the stations:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct, and for further surfaces height_2, diff_2 and so on. Save them as CSV by giving the output a file name that ends in .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The profile in its plane&lt;/b&gt; is no place on a map: to the right the distance along the line, up the height, exaggerated, both in the unit chosen. It has the CRS of the surface only so that files can hold it; look at it in a map view of its own.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; stretches off a surface are left out and said. Standard deviations know the noise of the heights you give, not errors in plan, nor ground that was not walked. Not for construction or setting out without independent checks.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Prend les altitudes d'une ou plusieurs surfaces le long d'une ligne : en points aux abscisses, en lignes dans leur propre plan, et en feuille PDF à l'échelle exacte, avec abscisses, altitudes, différences et pentes sous le profil en long.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; des maillages 2DM tels que les écrit « Construire la surface », tous dans un même SCR, et une ligne dans ce SCR. Les altitudes sont celles des triangles tout du long, pas celles d'une grille. Une pente est la droite qui s'ajuste le mieux aux altitudes de sa fenêtre ; son écart-type découle du bruit des points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Colonnes des abscisses :&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct, et pour d'autres surfaces height_2, diff_2 et ainsi de suite. Enregistrez-les en CSV en donnant à la sortie un nom de fichier qui se termine par .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le profil en long dans son plan&lt;/b&gt; n'est pas un lieu sur une carte : vers la droite la distance le long de la ligne, vers le haut l'altitude, exagérée, toutes deux dans l'unité choisie. Il n'a le SCR de la surface que pour que des fichiers puissent le contenir ; regardez-le dans une vue cartographique à part.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; les tronçons hors d'une surface sont laissés de côté et mentionnés. Les écarts-types connaissent le bruit des altitudes que vous donnez, pas les erreurs en plan, ni le terrain qui n'a pas été parcouru. Ne pas utiliser pour la construction ou l'implantation sans contrôles indépendants.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>&lt;p&gt;Tells how densely a site was recorded and where not: the largest &lt;b&gt;circles without a measured point&lt;/b&gt;, the &lt;b&gt;long triangles&lt;/b&gt;, their share of the site, and &lt;b&gt;places to walk again&lt;/b&gt; in walking order. With those places measured no ground is farther from a point than the limit. The log also names the smallest contour interval that the data support.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and the points that it was built from, in the order of recording and in the CRS of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For the data collector:&lt;/b&gt; the places can also be written as CSV (name, easting, northing, height, in the units of the CRS) and as GPX way points in WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Interval:&lt;/b&gt; three times the RMSE of the heights (ASPRS Positional Accuracy Standards, 2014, annex B). The RMSE is reasoned from what the receiver states and how the ground bends between passes; check points tell more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a limit an edge is long from about twice the distance of the passes: our own choice, no standard. A mesh does not hold which edges are lines, so a long straight breakline counts as a long edge. Ground under a building stays empty unless the surface was built with a void there.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Indique avec quelle densité un site a été enregistré et où il ne l'a pas été : les plus grands &lt;b&gt;cercles sans point mesuré&lt;/b&gt;, les &lt;b&gt;triangles longs&lt;/b&gt;, leur part du site, et les &lt;b&gt;endroits à parcourir de nouveau&lt;/b&gt; dans l'ordre de marche. Une fois ces endroits mesurés, aucun terrain n'est plus loin d'un point que la limite. Le journal nomme aussi la plus petite équidistance que les données justifient.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface » et les points à partir desquels il a été construit, dans l'ordre d'enregistrement et dans le SCR de la surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Pour le carnet de terrain :&lt;/b&gt; les endroits peuvent aussi être écrits en CSV (name, easting, northing, height, dans les unités du SCR) et en points de cheminement GPX en WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Équidistance :&lt;/b&gt; trois fois la RMSE des altitudes (ASPRS Positional Accuracy Standards, 2014, annexe B). La RMSE est estimée d'après ce que le récepteur annonce et la façon dont le terrain se courbe entre les passages ; des points de contrôle en disent plus.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; sans limite donnée, un côté est long à partir d'environ deux fois l'écartement des passages : notre propre choix, pas une norme. Un maillage ne retient pas quels côtés sont des lignes, si bien qu'une longue ligne de rupture droite compte comme un côté long. Le terrain sous un bâtiment reste vide sauf si la surface y a été construite avec un trou.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>&lt;p&gt;Writes one or several surfaces in the open standard LandXML 1.2: points and faces, and as source data the breaklines and the boundary. Points of a layer, and lines with stations and the ground's profile, can go into the same file.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; says its units and CRS; numbers are northing before easting, as the standard has it, plan with 4 decimals and heights with 6, all in the unit of the CRS's plan. Read again it is the same surface to the last decimal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Breaklines, boundary and voids are those the surface was held to, unless layers are given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; some programs ignore the faces and triangulate the source data anew: their surface differs where lines or the boundary are missing, so leave the rim in. Some ignore the CRS: tell it beside the file. In feet make sure which foot the receiver takes: international and US survey feet are 2 parts in a million apart, a metre or more at state-plane coordinates.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; before construction or machine guidance compare heights at points measured independently; what may be used for it is for the responsible licensed professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Écrit une ou plusieurs surfaces dans le standard ouvert LandXML 1.2 : points et faces, et comme données source les lignes de rupture et la limite. Les points d'une couche, et des lignes avec abscisses et le profil en long du terrain, peuvent entrer dans le même fichier.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Le fichier&lt;/b&gt; indique ses unités et son SCR ; les nombres y sont le nord avant l'est, comme le veut le standard, le plan avec 4 décimales et les altitudes avec 6, tous dans l'unité planimétrique du SCR. Relu, c'est la même surface jusqu'à la dernière décimale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface ». Lignes de rupture, limite et trous sont ceux que la surface devait respecter, sauf si des couches sont données.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; certains programmes ignorent les faces et triangulent à nouveau les données source : leur surface diffère là où manquent des lignes ou la limite, laissez donc le pourtour dedans. Certains ignorent le SCR : indiquez-le à côté du fichier. En pieds, assurez-vous du pied que prend le destinataire : le pied international et le pied de géomètre américain diffèrent de 2 millionièmes, soit un mètre ou plus aux coordonnées state-plane.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Attention :&lt;/b&gt; avant une construction ou un guidage d'engins, comparez les altitudes en des points mesurés indépendamment ; ce qui peut y servir relève du professionnel agréé responsable et des règles locales.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>&lt;p&gt;Writes one surface with its lines, contours and points into the files that others load, all from the same numbers, with a list of their SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: faces, breaklines, boundary, points; see “Surface to LandXML”.&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (release 12): 3D faces, contours and lines as 3D polylines, points with names and heights; layers by kind or by level. It has no CRS; unit and CRS stand in a comment.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: points (rejected ones too, marked), contours, lines, triangles and further layers, each with its style.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: heights on a grid, compressed and tiled, with CRS, unit and no data outside.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mesh&lt;/b&gt;: 2DM with its CRS in a .prj file.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and points in its CRS. A surface without a boundary is given its rim as one in LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a drawing read in another unit: millimetres are usual elsewhere. A grid cannot hold a kerb: volumes and levels come from faces. Files of the same names in the folder are replaced, each when it is whole; a run that is cancelled leaves the others as they were.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; say with the files when they were made, from which survey, and how accurate they are. They are no licence to build or dig: that is for the responsible professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Écrit une surface avec ses lignes, courbes de niveau et points dans les fichiers que d'autres chargent, tous d'après les mêmes nombres, avec une liste de leurs SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt; : faces, lignes de rupture, limite, points ; voir « Surface vers LandXML ».&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (version 12) : faces 3D, courbes de niveau et lignes en polylignes 3D, points avec noms et altitudes ; calques par type ou par niveau. Il n'a pas de SCR ; l'unité et le SCR figurent dans un commentaire.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt; : points (les rejetés aussi, marqués), courbes de niveau, lignes, triangles et autres couches, chacun avec son style.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt; : altitudes sur une grille, compressé et tuilé, avec SCR, unité et sans donnée à l'extérieur.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Maillage&lt;/b&gt; : 2DM avec son SCR dans un fichier .prj.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;Hypothèses :&lt;/b&gt; un maillage 2DM tel que l'écrit « Construire la surface », et des points dans son SCR. Une surface sans limite reçoit son pourtour comme limite en LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ce qui peut mal tourner :&lt;/b&gt; un dessin lu dans une autre unité : le millimètre est d'usage ailleurs. Une grille ne peut pas contenir une bordure : volumes et niveaux viennent des faces. Les fichiers de mêmes noms dans le dossier sont remplacés, chacun une fois complet ; une exécution annulée laisse les autres tels qu'ils étaient.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Attention :&lt;/b&gt; indiquez avec les fichiers quand ils ont été produits, d'après quel levé, et avec quelle précision. Ils n'autorisent ni à construire ni à creuser : cela relève du professionnel responsable et des règles locales.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, or taken from the mesh layer.</source>
      <translation>Un fichier 2DM ne peut pas contenir son SCR. Si aucun n'est donné ici, il est lu dans le fichier .prj à côté du maillage, ou pris de la couche de maillage.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>A feature for each class of depth that occurs, with its exact area and volume.</source>
      <translation>Une entité par classe de profondeur présente, avec son aire et son volume exacts.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>A feature for each class that occurs, from the flattest to the steepest.</source>
      <translation>Une entité par classe présente, de la plus plate à la plus raide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>A feature for each connected area, the largest first.</source>
      <translation>Une entité par aire d'un seul tenant, la plus grande d'abord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A feature for each finding, at all of its points, the size in metres.</source>
      <translation>Une entité par constat, à tous ses points, la taille en mètres.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>A feature for each, the largest first.</source>
      <translation>Une entité pour chacun, le plus grand d'abord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A file of edits as this algorithm writes it; they come before those of the layers.</source>
      <translation>Un fichier de modifications tel que l'écrit cet algorithme ; elles passent avant celles des couches.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A grid file of geoid separations; it must cover the whole site.</source>
      <translation>Un fichier de grille d'ondulations du géoïde ; il doit couvrir tout le site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>A height; empty where a design is given.</source>
      <translation>Une altitude ; vide si un projet est donné.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A hollow counts as a pond only where noise alone makes one like it anywhere in the survey with a smaller probability than this. 100: every hollow counts.</source>
      <translation>Un creux ne compte comme mare que si le bruit seul en produit un semblable n'importe où dans le levé avec une probabilité inférieure à celle-ci. 100 : chaque creux compte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>A hollow outline found from the points: triangles are taken off the rim while the circle through their corners is wider. About 1.5 times the distance of the passes follows the bays of a site.</source>
      <translation>Un contour concave déterminé d'après les points : des triangles sont retirés du pourtour tant que le cercle passant par leurs sommets est plus grand. Environ 1.5 fois l'écartement des passages suit les échancrures d'un site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>A layer is given twice; give each layer once.</source>
      <translation>Une couche est donnée deux fois ; donnez chaque couche une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>A layer of exactly three points with Z, in the CRS of the surface.</source>
      <translation>Une couche d'exactement trois points avec Z, dans le SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>A layer with one line, or with one selected. Stations count from its first vertex.</source>
      <translation>Une couche avec une ligne, ou une seule sélectionnée. Les abscisses comptent à partir de son premier sommet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>A line for each start with a way down, in the direction of the water.</source>
      <translation>Une ligne pour chaque départ avec une descente, dans le sens de l'eau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A line for each surface, for a map view of its own or a print layout.</source>
      <translation>Une ligne par surface, pour une vue cartographique à part ou une mise en page.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A list of sets, each with a name; “Tolerances as a file to edit” writes one.</source>
      <translation>Une liste de jeux, chacun avec un nom ; « Tolérances sous forme de fichier à modifier » en écrit une.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>A local grid: where it lies is not known.</source>
      <translation>Une grille locale : sa position n'est pas connue.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>A map and a table of the ponds, with the method, its source and its limits.</source>
      <translation>Une carte et un tableau des mares, avec la méthode, sa source et ses limites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>A mesh (2DM) for each surface, named after it, with its CRS beside it as .prj.</source>
      <translation>Un maillage (2DM) par surface, nommé d'après elle, avec son SCR à côté en .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A mesh does not hold it. “Check the survey” finds it from the survey itself (how heights repeat); 0.015 m is usual for RTK in the open. 0: every hollow counts.</source>
      <translation>Un maillage ne le contient pas. « Contrôler le levé » le détermine d'après le levé lui-même (comment les altitudes se répètent) ; 0.015 m est usuel en RTK à ciel ouvert. 0 : chaque creux compte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A mesh layer or a mesh file, as “Build the surface” writes it.</source>
      <translation>Une couche de maillage ou un fichier de maillage, tel que l'écrit « Construire la surface ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>A pad whose field is empty takes the value given for all.</source>
      <translation>Une plateforme dont le champ est vide prend la valeur donnée pour toutes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>A page for each sheet.</source>
      <translation>Une page par feuille.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>A place in the basin (empty: the lowest of the surface)</source>
      <translation>Un endroit dans le bassin (vide : le plus bas de la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A point at each station with heights, grade and their standard deviations.</source>
      <translation>Un point à chaque abscisse avec altitudes, pente et leurs écarts-types.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>A point for each arrow.</source>
      <translation>Un point par flèche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>A point for each curve, with the height where its grades would meet.</source>
      <translation>Un point par raccordement, avec l'altitude où ses pentes se rencontreraient.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A point for each edit: whether it applied, and if not, why.</source>
      <translation>Un point par modification : si elle a été appliquée, et sinon, pourquoi.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A point for each finding, on the surface.</source>
      <translation>Un point par constat, sur la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>A point is stored every (m)</source>
      <translation>Un point est enregistré tous les (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>A projected CRS, or a compound one with heights.</source>
      <translation>Un SCR projeté, ou composé avec altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A projected CRS, or a compound one with heights; usually the one that the rover was set to. The file does not say it.</source>
      <translation>Un SCR projeté, ou composé avec altitudes ; généralement celui sur lequel le mobile était réglé. Le fichier ne l'indique pas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>A projected CRS, which the fitted points get. Empty: that of the control layer.</source>
      <translation>Un SCR projeté, que reçoivent les points ajustés. Vide : celui de la couche des points d'appui.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A receiver log can give both; other files need a geoid separation to change them.</source>
      <translation>Un journal de récepteur peut donner les deux ; pour d'autres fichiers, la conversion exige une ondulation du géoïde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>A road, path or bank from a typical section at given heights, with its haul.</source>
      <translation>Une route, un chemin ou une digue d'après un profil type à des altitudes données, avec son mouvement des terres.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at each bend.</source>
      <translation>Un profil à chaque changement de direction.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at the beginning and at the end.</source>
      <translation>Un profil au début et à la fin.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A spike is off its neighbours by more than this, and far more than they scatter.</source>
      <translation>Un pic s'écarte de ses voisins de plus que cette valeur, et de bien plus que leur dispersion.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>A surface has one height at a place, so faces lean by this much.</source>
      <translation>Une surface n'a qu'une altitude à un endroit, les fronts sont donc inclinés d'autant.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of lines of the file to use, flag or reject: columns line, status and reason; of several files also source, the name of the file as in the field source of the points.</source>
      <translation>Une table des lignes du fichier à utiliser, signaler ou rejeter : colonnes line, status et reason ; pour plusieurs fichiers aussi source, le nom du fichier tel que dans le champ source des points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>A table of the ground that drains to each inlet, the rim and hollows, in m².</source>
      <translation>Un tableau du terrain qui s'écoule vers chaque avaloir, le pourtour et les creux, en m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of the lines that are no points: line number, reason and text.</source>
      <translation>Une table des lignes qui ne sont pas des points : numéro de ligne, motif et texte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>A table of the stretches off the surface: feature, start and end along the line and length (m), and their places in the CRS.</source>
      <translation>Une table des tronçons hors de la surface : entité, début et fin le long de la ligne et longueur (m), et leurs positions dans le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, boundary, void, not_ground or check.</source>
      <translation>Une table avec les colonnes code, kind, layer et close. La colonne kind indique ce que signifie un code : ground, breakline, boundary, void, not_ground ou check.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A table, a row for each section; only with a second surface.</source>
      <translation>Une table, une ligne par profil ; seulement avec une seconde surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>About 4 walking; what you drive with a vehicle.</source>
      <translation>Environ 4 à pied ; votre vitesse de conduite avec un véhicule.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>About so far from one label to the next; a line shorter than that has one at most.</source>
      <translation>À peu près cette distance d'une étiquette à la suivante ; une ligne plus courte en a une au plus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>About the distance of the survey's points along the line.</source>
      <translation>À peu près la distance des points du levé le long de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>About the spacing of the survey's points shows all that they know.</source>
      <translation>À peu près l'écartement des points du levé montre tout ce qu'ils savent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1.</source>
      <translation>Au-dessus de 0 et au plus 1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1: the share of the rain that runs off.</source>
      <translation>Au-dessus de 0 et au plus 1 : la part de la pluie qui ruisselle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Above the bases, all together (m³)</source>
      <translation>Au-dessus des bases, au total (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Accept “{name}”</source>
      <translation>Accepter « {name} »</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy at 95 % by NSSDA (m)</source>
      <translation>Précision à 95 % selon NSSDA (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy statement</source>
      <translation>Déclaration de précision</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Add the meshes to the map when done</source>
      <translation>Ajouter les maillages à la carte une fois terminé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Add the surface to the map when done</source>
      <translation>Ajouter la surface à la carte une fois terminé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Add the surfaces to the map when done</source>
      <translation>Ajouter les surfaces à la carte une fois terminé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to ground coordinates, taken off on the way back.</source>
      <translation>Ajouté aux coordonnées terrain, retiré au retour.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to the mean height of the points to get the ellipsoidal height.</source>
      <translation>Ajoutée à l'altitude moyenne des points pour obtenir la hauteur ellipsoïdale.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Adds how far the ground departs from the straight lines between points, judged from the surface's own roughness. Switch it off where the existing surface is a design.</source>
      <translation>Ajoute l'écart du terrain aux lignes droites entre les points, estimé d'après la rugosité de la surface elle-même. Désactivez-le si la surface existante est un projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Adds the surface's height, slope, aspect and triangle to points.</source>
      <translation>Ajoute à des points l'altitude, la pente, l'exposition et le triangle de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Add…</source>
      <translation>Ajouter…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments</source>
      <translation>Tracés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments read</source>
      <translation>Tracés lus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Alignments written</source>
      <translation>Tracés écrits</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>All edits of this run in their order, for the next one, those that did not apply too.</source>
      <translation>Toutes les modifications de cette exécution dans leur ordre, pour la suivante, y compris celles qui n'ont pas été appliquées.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>All points of the survey in the CRS of the control.</source>
      <translation>Tous les points du levé dans le SCR des points d'appui.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>All points with their attributes; without a CRS where they are on the ground.</source>
      <translation>Tous les points avec leurs attributs ; sans SCR s'ils sont sur le terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>All points, with status, reason, check_status and check_reason.</source>
      <translation>Tous les points, avec status, reason, check_status et check_reason.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>All water that comes to a triangle no farther than this from the inlet. 0: the triangles it is in or touches. Between points far apart a triangle is large.</source>
      <translation>Toute l'eau qui arrive à un triangle situé au plus à cette distance de l'avaloir. 0 : les triangles où il se trouve ou qu'il touche. Entre des points éloignés, un triangle est grand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Along its first feature the volume is also told by average end areas and by the prismoidal formula, in the HTML report.</source>
      <translation>Le long de sa première entité, le volume est aussi donné par la moyenne des aires extrêmes et par la formule prismoïdale, dans le rapport HTML.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Also as PDF</source>
      <translation>Aussi en PDF</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Also at the corners of lines</source>
      <translation>Aussi aux sommets des lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the ends of the line</source>
      <translation>Aussi aux extrémités de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the vertices of the line</source>
      <translation>Aussi aux sommets de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>An indication of the peak flow of catchments, Q = C i A.</source>
      <translation>Une indication du débit de pointe de bassins versants, Q = C i A.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: to which edge the lane leads water.</source>
      <translation>Une indication : vers quel bord la voie conduit l'eau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: where water stands along the two offsets.</source>
      <translation>Une indication : où l'eau stagne le long des deux déports.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Any lines, such as a centreline or the edges of parcels.</source>
      <translation>Des lignes quelconques, par exemple un axe ou les bords de parcelles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Any points; a multipoint counts as its points.</source>
      <translation>Des points quelconques ; un multipoint compte comme ses points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Applied</source>
      <translation>Appliquée</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Area</source>
      <translation>Aire</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Area (m²)</source>
      <translation>Aire (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area and volume of the water in a basin by its level, from the pit to the spill.</source>
      <translation>Aire et volume de l'eau d'un bassin selon son niveau, du point bas au débordement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area at the spill level (m²)</source>
      <translation>Aire au niveau de débordement (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area compared (m²)</source>
      <translation>Aire comparée (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of cut (m²)</source>
      <translation>Aire de déblai (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of fill (m²)</source>
      <translation>Aire de remblai (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area of the surface (m²)</source>
      <translation>Aire de la surface (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area that drains nowhere until ponds are full (m²)</source>
      <translation>Aire qui ne s'écoule nulle part avant que les mares soient pleines (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Area under water when all are full (m²)</source>
      <translation>Aire sous l'eau lorsque toutes sont pleines (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than a limit</source>
      <translation>Aires plus plates qu'une limite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than {limit:g} %: {count}, together {area:.1f} m², {share:.1f} % of the surface.</source>
      <translation>Aires plus plates que {limit:g} % : {count}, ensemble {area:.1f} m², {share:.1f} % de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Areas of cut and fill</source>
      <translation>Aires de déblai et de remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows down the slope at a stated spacing, larger where it is steeper.</source>
      <translation>Flèches dans le sens de la pente à un écartement donné, plus grandes là où elle est plus raide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows of flow</source>
      <translation>Flèches d'écoulement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows: {count}, {spacing:g} m apart.</source>
      <translation>Flèches : {count}, écartées de {spacing:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>As in 1.5 or 1,5.</source>
      <translation>Comme dans 1.5 ou 1,5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in the check of a road against limits.</source>
      <translation>Comme dans le contrôle d'une route par rapport à des limites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in “Import survey points”.</source>
      <translation>Comme dans « Importer les points du levé ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>As left.</source>
      <translation>Comme à gauche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>As left. One side may be negative for a walk that lies all on the other.</source>
      <translation>Comme à gauche. Un côté peut être négatif pour un trottoir situé entièrement de l'autre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>As polygons with slope and area; they make it large.</source>
      <translation>En polygones avec pente et aire ; ils le rendent volumineux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>As the data collector takes it.</source>
      <translation>Comme le carnet de terrain l'accepte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>As you look along the line from its first vertex.</source>
      <translation>En regardant le long de la ligne depuis son premier sommet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As “Check the survey” does.</source>
      <translation>Comme le fait « Contrôler le levé ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>At the middle of each pad's bounding box. Where cut and fill are to balance: a first guess.</source>
      <translation>Au milieu de l'emprise rectangulaire de chaque plateforme. Si déblai et remblai doivent s'équilibrer : une première estimation.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>At their design heights, coloured by cut and fill.</source>
      <translation>À leurs altitudes projet, colorés selon déblai et remblai.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>At this scale labels have the size and spacing they need.</source>
      <translation>À cette échelle, les étiquettes ont la taille et l'espacement qu'il leur faut.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Balanced height (in the unit of the CRS)</source>
      <translation>Altitude équilibrée (dans l'unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Base</source>
      <translation>Base</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Base (in the unit above)</source>
      <translation>Base (dans l'unité ci-dessus)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Bearing of the grid (degrees)</source>
      <translation>Gisement de la grille (degrés)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Before numbers and stations</source>
      <translation>Devant les numéros et abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Before or after</source>
      <translation>Avant ou après</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Below the bases, all together (m³)</source>
      <translation>En dessous des bases, au total (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Besides whole stations and the ends.</source>
      <translation>En plus des abscisses rondes et des extrémités.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Between cells</source>
      <translation>Entre les cellules</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Between several codes on one point</source>
      <translation>Entre plusieurs codes sur un même point</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Between them the strip runs straight; corners of the line have stations of their own.</source>
      <translation>Entre elles la bande est droite ; les sommets de la ligne ont leurs propres abscisses.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Boundary</source>
      <translation>Limite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Boundary (empty: that of the surface)</source>
      <translation>Limite (vide : celle de la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Breakline</source>
      <translation>Ligne de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Breaklines (empty: those of the surface)</source>
      <translation>Lignes de rupture (vide : celles de la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries</source>
      <translation>Lignes de rupture et limites</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries read</source>
      <translation>Lignes de rupture et limites lues</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Breaklines of the design</source>
      <translation>Lignes de rupture du projet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines without heights</source>
      <translation>Lignes de rupture sans altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines, boundary and voids from code and line number of the points.</source>
      <translation>Lignes de rupture, limite et trous d'après le code et le numéro de ligne des points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Breaklines, boundary and voids, such as the layer that “Build the surface” writes.</source>
      <translation>Lignes de rupture, limite et trous, par exemple la couche qu'écrit « Construire la surface ».</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Build the surface</source>
      <translation>Construire la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>By class of depth.</source>
      <translation>Par classe de profondeur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>By hand; the checks said:</source>
      <translation>À la main ; les contrôles indiquaient :</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS</source>
      <translation>SCR</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>CRS (empty: as the file says)</source>
      <translation>SCR (vide : comme l'indique le fichier)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>CRS of the control points</source>
      <translation>SCR des points d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS of the coordinates in the file</source>
      <translation>SCR des coordonnées du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>CRS of the coordinates in the file, if another</source>
      <translation>SCR des coordonnées du fichier, s'il diffère</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>CRS of the grid (empty: that of the points)</source>
      <translation>SCR de la projection (vide : celui des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>CRS of the points wanted</source>
      <translation>SCR des points voulus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>CRS of the surface (empty: as stored with it)</source>
      <translation>SCR de la surface (vide : tel qu'enregistré avec elle)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>CSV files (*.csv)</source>
      <translation>Fichiers CSV (*.csv)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Calm noise: move heights by up to (m; 0: not at all)</source>
      <translation>Calmer le bruit : déplacer les altitudes d'au plus (m ; 0 : pas du tout)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Cancel</source>
      <translation>Annuler</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/gui/running.py" />
      <source>Cancelled.</source>
      <translation>Annulé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Cancelled: there is no result.</source>
      <translation>Annulé : il n'y a pas de résultat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Catchment</source>
      <translation>Bassin versant</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Catchments</source>
      <translation>Bassins versants</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Catchments before and after</source>
      <translation>Bassins versants avant et après</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Catchments: {CATCHMENTS}, together {AREA:.1f} m²; {NOWHERE:.1f} m² of it drain nowhere.</source>
      <translation>Bassins versants : {CATCHMENTS}, ensemble {AREA:.1f} m² ; dont {NOWHERE:.1f} m² ne s'écoulent nulle part.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cell size (in the unit of the surface's CRS)</source>
      <translation>Taille de cellule (dans l'unité du SCR de la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cell size of the depth raster (in the unit of the CRS)</source>
      <translation>Taille de cellule du raster de profondeur (dans l'unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Cells of the GeoTIFF (unit of the CRS)</source>
      <translation>Cellules du GeoTIFF (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cells on the surface</source>
      <translation>Cellules sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Centreline</source>
      <translation>Axe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Centreline (one line)</source>
      <translation>Axe (une ligne)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Chance of noise (%)</source>
      <translation>Probabilité de bruit (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Change</source>
      <translation>Changement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Change of grade (%)</source>
      <translation>Changement de pente (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Change of the water in full ponds (m³)</source>
      <translation>Changement de l'eau dans les mares pleines (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Changed surface (2DM mesh)</source>
      <translation>Surface modifiée (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels</source>
      <translation>Talwegs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels: least ground that drains to them (m²)</source>
      <translation>Talwegs : terrain minimal qui s'y écoule (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Check a line against limits</source>
      <translation>Contrôler une ligne par rapport à des limites</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Check points</source>
      <translation>Points de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (CSV file)</source>
      <translation>Points de contrôle (fichier CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (layer)</source>
      <translation>Points de contrôle (couche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points compared</source>
      <translation>Points de contrôle comparés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points on the surface</source>
      <translation>Points de contrôle sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Check the coverage</source>
      <translation>Contrôler la couverture</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Check the points automatically</source>
      <translation>Contrôler les points automatiquement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Check the survey</source>
      <translation>Contrôler le levé</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Check them</source>
      <translation>Les contrôler</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Checked points</source>
      <translation>Points contrôlés</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose a folder for the products.</source>
      <translation>Choisissez un dossier pour les produits.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Choose a survey file first; then it can be shown here.</source>
      <translation>Choisissez d'abord un fichier de levé ; il pourra alors être affiché ici.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Choose a survey file or a layer of points, one of both.</source>
      <translation>Choisissez un fichier de levé ou une couche de points, l'un des deux.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose the CRS from a list</source>
      <translation>Choisir le SCR dans une liste</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose the survey file.</source>
      <translation>Choisissez le fichier de levé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles without a measured point, the widest first; they do not overlap.</source>
      <translation>Cercles sans point mesuré, les plus grands d'abord ; ils ne se recouvrent pas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: at most so many</source>
      <translation>Cercles : au plus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: wider than this radius (m; empty: half of that)</source>
      <translation>Cercles : plus grands que ce rayon (m ; vide : la moitié de celle-ci)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class</source>
      <translation>Classe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class of slope (from 0)</source>
      <translation>Classe de pente (à partir de 0)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Classes that occur</source>
      <translation>Classes présentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Clockwise from grid north.</source>
      <translation>Sens horaire depuis le nord de la projection.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Code</source>
      <translation>Code</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Code field (empty: “code” where there is one)</source>
      <translation>Champ du code (vide : « code » s'il existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Code field (of points)</source>
      <translation>Champ du code (des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code table (CSV; empty: the one that comes with Hummock)</source>
      <translation>Table des codes (CSV ; vide : celle fournie avec Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code tables (*.csv *.txt);;All files (*)</source>
      <translation>Tables de codes (*.csv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Columns</source>
      <translation>Colonnes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Columns (empty: as recognised)</source>
      <translation>Colonnes (vide : telles que reconnues)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Columns of the table</source>
      <translation>Colonnes de la table</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns side (left, right, both), part (its name, or ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) and run (1 : n), rows from the centreline outward.</source>
      <translation>Colonnes side (left, right, both), part (son nom, ou ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) et run (1 : n), lignes de l'axe vers l'extérieur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns station and height, in metres, and if wanted curve, the length of the vertical curve about the place. Straight between them.</source>
      <translation>Colonnes station et height, en mètres, et si souhaité curve, la longueur du raccordement vertical autour de l'endroit. Droit entre elles.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Columns: {roles}</source>
      <translation>Colonnes : {roles}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor</source>
      <translation>Facteur combiné</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor (empty: computed at the origin)</source>
      <translation>Facteur combiné (vide : calculé à l'origine)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Comment lines start with</source>
      <translation>Les lignes de commentaire commencent par</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Compares ponds, catchments and paths on the ground and on a design.</source>
      <translation>Compare mares, bassins versants et chemins sur le terrain et sur un projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Contour</source>
      <translation>Courbe de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Contour interval</source>
      <translation>Équidistance</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Contour interval to expect (m)</source>
      <translation>Équidistance à attendre (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Contour interval {interval:g} {unit}, index every {every}. For drawing, heights were moved by up to {moved:.3f} m and lines by up to {shifted:.2f} m in plan.</source>
      <translation>Équidistance {interval:g} {unit}, courbe maîtresse toutes les {every}. Pour le dessin, les altitudes ont été déplacées d'au plus {moved:.3f} m et les lignes d'au plus {shifted:.2f} m en plan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contour labels</source>
      <translation>Étiquettes des courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contours</source>
      <translation>Courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours every {interval} {unit}</source>
      <translation>Courbes de niveau tous les {interval} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Contours for the sheet</source>
      <translation>Courbes de niveau pour la feuille</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours of a surface</source>
      <translation>Courbes de niveau d'une surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Contours, labels, spot heights and sheets, with their styles.</source>
      <translation>Courbes de niveau, étiquettes, points cotés et feuilles, avec leurs styles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours: {count}.</source>
      <translation>Courbes de niveau : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Control point</source>
      <translation>Point d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Control points</source>
      <translation>Points d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points (CSV)</source>
      <translation>Points d'appui (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points left out of the fit</source>
      <translation>Points d'appui exclus de l'ajustement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points that do not fit</source>
      <translation>Points d'appui qui ne s'accordent pas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Coordinate operations accepted by name</source>
      <translation>Opérations de coordonnées acceptées par leur nom</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Coordinates: {crs}</source>
      <translation>Coordonnées : {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Corners that lines or polygons share are set out once.</source>
      <translation>Les sommets que partagent des lignes ou polygones sont implantés une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Cover field (empty: the field cover, if there is one)</source>
      <translation>Champ de la couverture (vide : le champ cover, s'il existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Crest</source>
      <translation>Sommet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cross pass</source>
      <translation>Passage en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Cross passes: {count} lines, {length:.0f} m</source>
      <translation>Passages en travers : {count} lignes, {length:.0f} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cross-sections</source>
      <translation>Profils en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Crossfall is taken from here to the right end; in the unit chosen. Keep both inside kerbs and edges.</source>
      <translation>La pente transversale est prise d'ici à l'extrémité droite ; dans l'unité choisie. Gardez les deux à l'intérieur des bordures et des bords.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the lane (%; below 0 falls outward)</source>
      <translation>Pente transversale de la voie (% ; en dessous de 0, descend vers l'extérieur)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the shoulder (%)</source>
      <translation>Pente transversale de l'accotement (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Crossfall to the edges</source>
      <translation>Pente transversale vers les bords</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Crossfalls</source>
      <translation>Pentes transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Curves at most</source>
      <translation>Raccordements au plus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut</source>
      <translation>Déblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut (m³)</source>
      <translation>Déblai (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance at {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</source>
      <translation>Déblai et remblai s'équilibrent à {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance with the design shifted by {shift:+.3f} ± {half:.3f} m (95 %).</source>
      <translation>Déblai et remblai s'équilibrent avec le projet décalé de {shift:+.3f} ± {half:.3f} m (95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from it to the survey. Give a design or an earlier surface.</source>
      <translation>Déblai et remblai de celui-ci au levé. Donnez un projet ou une surface antérieure.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from the survey to it.</source>
      <translation>Déblai et remblai du levé à celui-ci.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill of level pads, with slopes to the ground.</source>
      <translation>Déblai et remblai de plateformes horizontales, avec talus jusqu'au terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Cut by region and material</source>
      <translation>Déblai par région et matériau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut or fill not known</source>
      <translation>Déblai ou remblai inconnu</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Cut there (m³)</source>
      <translation>Déblai à cet endroit (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Déblai {value:.2f} ± {half:.2f} m³ (95 %) sur {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and net with their doubt.</source>
      <translation>Déblai, remblai et bilan avec leur incertitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Cut, fill and the running balance from station to station.</source>
      <translation>Déblai, remblai et bilan cumulé d'abscisse en abscisse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and what is left over about the balanced height; empty without a balance.</source>
      <translation>Déblai, remblai et excédent autour de l'altitude équilibrée ; vide sans équilibre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, half its 95 % interval (m³)</source>
      <translation>Déblai, moitié de son intervalle à 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Cut, second surface below ({unit})</source>
      <translation>Déblai, seconde surface en dessous ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cuts surfaces square to a line, with areas of cut and fill, also as sheets.</source>
      <translation>Coupe des surfaces perpendiculairement à une ligne, avec aires de déblai et de remblai, aussi en feuilles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Daylight lines</source>
      <translation>Lignes d'entrée en terre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Decimal sign</source>
      <translation>Séparateur décimal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Decimals</source>
      <translation>Décimales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Decimals of spot heights</source>
      <translation>Décimales des points cotés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Decisions</source>
      <translation>Décisions</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Decisions on points (CSV)</source>
      <translation>Décisions sur les points (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Deeper</source>
      <translation>Plus profonde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Deepest cut (m)</source>
      <translation>Déblai le plus profond (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Delimited text or a receiver log, as the rover or its software wrote it. It is only read.</source>
      <translation>Texte délimité ou journal de récepteur, tel que le mobile ou son logiciel l'a écrit. Il est seulement lu.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Delimited text or a receiver log. It is only read.</source>
      <translation>Texte délimité ou journal de récepteur. Il est seulement lu.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Departure not worth a curve (m)</source>
      <translation>Écart ne justifiant pas un raccordement (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Depression contour</source>
      <translation>Courbe de cuvette</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth (GeoTIFF)</source>
      <translation>Profondeur (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Depth (m)</source>
      <translation>Profondeur (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Depth below the sill (m)</source>
      <translation>Profondeur sous le seuil (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth classes (m; empty: round ones)</source>
      <translation>Classes de profondeur (m ; vide : valeurs rondes)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/depthstyles.py" />
      <source>Depth of cut and fill</source>
      <translation>Profondeur de déblai et remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth of cut and fill (polygons)</source>
      <translation>Profondeur de déblai et remblai (polygones)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Depth of the ditch below the edge (m; 0: none)</source>
      <translation>Profondeur du fossé sous le bord (m ; 0 : aucun)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design (2DM mesh)</source>
      <translation>Projet (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Design height (unit of the CRS)</source>
      <translation>Altitude projet (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Design heights are the Z of the layer</source>
      <translation>Les altitudes projet sont le Z de la couche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Design less existing height at the cell middles, in the unit of the CRS; fill above 0.</source>
      <translation>Altitude projet moins altitude existante au centre des cellules, dans l'unité du SCR ; remblai au-dessus de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Design surface (2DM mesh)</source>
      <translation>Surface projet (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, for the next step</source>
      <translation>Projet, pour l'étape suivante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, height</source>
      <translation>Projet, altitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Design, or the later survey (2DM mesh)</source>
      <translation>Projet, ou levé postérieur (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Direction</source>
      <translation>Direction</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Direction (degrees from grid north)</source>
      <translation>Direction (degrés depuis le nord de la projection)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Direction of the passes (degrees from grid north)</source>
      <translation>Direction des passages (degrés depuis le nord de la projection)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Distance (m)</source>
      <translation>Distance (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Distance along the line (m)</source>
      <translation>Distance le long de la ligne (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Distance between heights (m)</source>
      <translation>Distance entre les altitudes (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Distance between stations</source>
      <translation>Distance entre les abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Distance of labels along a line on the plan (mm)</source>
      <translation>Distance des étiquettes le long d'une ligne sur le plan (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Distance of stations (m)</source>
      <translation>Distance des abscisses (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Distance of the sections (m)</source>
      <translation>Distance des profils (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Divides a surface by where its water goes: inlets, ponds, outlets, the rim.</source>
      <translation>Divise une surface selon la destination de son eau : avaloirs, mares, exutoires, pourtour.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Divides a surface into areas by classes of slope.</source>
      <translation>Divise une surface en aires par classes de pente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Does the whole job from the survey file and tells it in HTML and PDF.</source>
      <translation>Fait tout le travail à partir du fichier de levé et en rend compte en HTML et PDF.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Done.</source>
      <translation>Terminé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Doubt of the ground between the points</source>
      <translation>Incertitude du terrain entre les points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drained to</source>
      <translation>S'écoulait vers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains now to</source>
      <translation>S'écoule maintenant vers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until full</source>
      <translation>Ne s'écoule nulle part avant d'être pleine</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (%)</source>
      <translation>Ne s'écoule nulle part avant que les mares soient pleines (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (m²)</source>
      <translation>Ne s'écoule nulle part avant que les mares soient pleines (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains to</source>
      <translation>S'écoule vers</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Draw the contours</source>
      <translation>Tracer les courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below all else, in the style that the layer has.</source>
      <translation>Dessinée sous tout le reste, dans le style de la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below the contours in their own styles, the first on top.</source>
      <translation>Dessinées sous les courbes de niveau dans leurs propres styles, la première au-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn by</source>
      <translation>Dessiné par</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Drawn from point to point (snap to them); they become edges. A column “edit” may say swap_edge: the line then lies on the edge to be replaced by the other diagonal.</source>
      <translation>Dessinées de point à point (avec accrochage) ; elles deviennent des côtés. Une colonne « edit » peut indiquer swap_edge : la ligne se trouve alors sur le côté à remplacer par l'autre diagonale.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn on</source>
      <translation>Dessiné le</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Draws a plan at a scale as print layout and PDF, on one sheet or several.</source>
      <translation>Dessine un plan à l'échelle en mise en page et en PDF, sur une ou plusieurs feuilles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Draws calm, smooth contours with labels and spot heights for a plan.</source>
      <translation>Dessine des courbes de niveau calmes et lissées avec étiquettes et points cotés pour un plan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Draws contours exactly on the triangles of a surface.</source>
      <translation>Trace les courbes de niveau exactement sur les triangles d'une surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Drift shared by neighbouring points (m, 1 sigma)</source>
      <translation>Dérive commune aux points voisins (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drop (m)</source>
      <translation>Dénivelé (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Drops vertices as long as the surface stays within a tolerance in height.</source>
      <translation>Supprime des sommets tant que la surface reste dans une tolérance en altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>E</source>
      <translation>E</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Each check point with the height of the surface there; off_m is surface less check.</source>
      <translation>Chaque point de contrôle avec l'altitude de la surface à cet endroit ; off_m est la surface moins le contrôle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Each line becomes two breaklines a small offset apart, a vertical face between them.</source>
      <translation>Chaque ligne devient deux lignes de rupture légèrement décalées, avec un front vertical entre elles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Each polygon feature is one region, with all its parts and holes.</source>
      <translation>Chaque entité polygonale est une région, avec toutes ses parties et ses trous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Each polygon is graded to a level or a sloping plane; holes stay as they are, but slopes.</source>
      <translation>Chaque polygone est terrassé à un niveau ou à un plan incliné ; les trous restent tels quels, sauf les talus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Each stretch of a line, around its station, is an inlet of its own. Empty: each line is one inlet.</source>
      <translation>Chaque tronçon d'une ligne, autour de son abscisse, est un avaloir à part. Vide : chaque ligne est un avaloir.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Each triangle as a polygon with its slope (%) and plan area (m²).</source>
      <translation>Chaque triangle en polygone avec sa pente (%) et son aire en plan (m²).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Earlier surface (2DM mesh)</source>
      <translation>Surface antérieure (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <location filename="../plugin/processing/basinstorage.py" />
      <location filename="../plugin/processing/padgrading.py" />
      <location filename="../plugin/processing/stockpile.py" />
      <location filename="../plugin/processing/stripgrading.py" />
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Earthwork</source>
      <translation>Terrassement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Easting (unit of the CRS)</source>
      <translation>Coordonnée est (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Easting of the origin</source>
      <translation>Coordonnée est de l'origine</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Edges and breaks of platform and slopes with their heights, by kind.</source>
      <translation>Bords et cassures de la plateforme et des talus avec leurs altitudes, par type.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Edges with slopes of their own (lines)</source>
      <translation>Côtés ayant leurs propres talus (lignes)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json)</source>
      <translation>Modifications (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json);;All files (*)</source>
      <translation>Modifications (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits applied</source>
      <translation>Modifications appliquées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits applied: {applied}, not applied: {missed}.</source>
      <translation>Modifications appliquées : {applied}, non appliquées : {missed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits kept from before (JSON)</source>
      <translation>Modifications conservées d'avant (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits that did not apply</source>
      <translation>Modifications qui n'ont pas été appliquées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits to keep (JSON)</source>
      <translation>Modifications à conserver (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: a point is meant from up to (m)</source>
      <translation>Modifications : un point est visé jusqu'à (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: lines to force an edge</source>
      <translation>Modifications : lignes pour imposer un côté</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: points to add or move</source>
      <translation>Modifications : points à ajouter ou déplacer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: polygons to drop triangles</source>
      <translation>Modifications : polygones pour supprimer des triangles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ellipsoidal height of the site (m; empty: from the points)</source>
      <translation>Hauteur ellipsoïdale du site (m ; vide : d'après les points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Empty where a point never has several codes.</source>
      <translation>Vide si un point n'a jamais plusieurs codes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: as many as tell the noise of the survey to 15 %, at most five.</source>
      <translation>Vide : autant qu'il en faut pour connaître le bruit du levé à 15 %, cinq au plus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Empty: ground that only one surface covers is left out. A height, in the unit of the CRS, counts it against that level.</source>
      <translation>Vide : le terrain que seule une surface couvre est laissé de côté. Une altitude, dans l'unité du SCR, le compte par rapport à ce niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <location filename="../plugin/processing/flowpaths.py" />
      <location filename="../plugin/processing/waterchange.py" />
      <source>Empty: one that suits the size of the site.</source>
      <translation>Vide : une valeur adaptée à la taille du site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: so that the fewest passes are needed.</source>
      <translation>Vide : de sorte que le moins de passages soit nécessaire.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.</source>
      <translation>Vide : celui des points voulus, WGS 84 pour des degrés. Un SCR géographique pour des latitudes et longitudes ou un journal de récepteur, un SCR projeté pour des coordonnées est et nord ; les coordonnées sont alors transformées.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the author in the project’s properties.</source>
      <translation>Vide : l'auteur indiqué dans les propriétés du projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Empty: the finest class of whole centimetres that is met.</source>
      <translation>Vide : la classe la plus fine, en centimètres entiers, qui est atteinte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the title in the project’s properties.</source>
      <translation>Vide : le titre indiqué dans les propriétés du projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends at</source>
      <translation>Finit à</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends in</source>
      <translation>Finit dans</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Ends of lines farther apart are taken for different lines.</source>
      <translation>Des extrémités de lignes plus éloignées sont prises pour des lignes différentes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Even depth, wherever earth is moved; cut and fill are then told from the bared ground.</source>
      <translation>Profondeur constante, partout où la terre est déplacée ; déblai et remblai sont alors comptés à partir du terrain décapé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Every height taken, and how far it is from the fit.</source>
      <translation>Chaque altitude prise, et son écart à l'ajustement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Every point with section, offset and height; as CSV where the file ends in .csv.</source>
      <translation>Chaque point avec profil, déport et altitude ; en CSV si le fichier se termine par .csv.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Every rule along the whole line; as CSV where the file ends in .csv.</source>
      <translation>Chaque règle sur toute la ligne ; en CSV si le fichier se termine par .csv.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Every so many contours one is drawn heavier and labelled.</source>
      <translation>À chaque multiple de ce nombre de courbes, une courbe est dessinée plus épaisse et étiquetée.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Every start with the same columns, also those in a pit or off the surface.</source>
      <translation>Chaque départ avec les mêmes colonnes, y compris ceux dans un point bas ou hors de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Exact cut and fill from one surface to another, with how sure they are.</source>
      <translation>Déblai et remblai exacts d'une surface à une autre, avec leur certitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Exact cut and fill in each polygon of a layer, by depth and by material.</source>
      <translation>Déblai et remblai exacts dans chaque polygone d'une couche, par profondeur et par matériau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Exact cut and fill to make a surface level, or an even slope.</source>
      <translation>Déblai et remblai exacts pour rendre une surface horizontale, ou d'une pente constante.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Exact for all work; smooth for hillshades and pictures.</source>
      <translation>Exact pour tout travail ; lissé pour les ombrages et les images.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Exact volume above and below the base that a toe or rim line spans.</source>
      <translation>Volume exact au-dessus et en dessous de la base tendue par une ligne de pied ou de bord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Exaggeration of heights in the plane</source>
      <translation>Exagération des altitudes dans le plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Existing height (unit of the CRS)</source>
      <translation>Altitude existante (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Existing surface (2DM mesh)</source>
      <translation>Surface existante (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Existing surface, or the earlier survey (2DM mesh)</source>
      <translation>Surface existante, ou levé antérieur (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces name their neighbours</source>
      <translation>Les faces nomment leurs voisines</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces written</source>
      <translation>Faces écrites</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Fail</source>
      <translation>Non conforme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Fall of the pads (%)</source>
      <translation>Pente des plateformes (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Fall over run in percent.</source>
      <translation>Dénivelé sur distance horizontale en pour cent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the left edge (%)</source>
      <translation>Chute vers le bord gauche (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the right edge (%)</source>
      <translation>Chute vers le bord droit (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Falls towards (degrees from grid north)</source>
      <translation>Descend vers (degrés depuis le nord de la projection)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Feature of the start</source>
      <translation>Entité du départ</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Field of design heights</source>
      <translation>Champ des altitudes projet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field of the ground cover with its runoff coefficient</source>
      <translation>Champ de la couverture du sol contenant son coefficient de ruissellement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the line number (empty: it stands in the code)</source>
      <translation>Champ du numéro de ligne (vide : il est dans le code)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the words (empty: they stand in the code)</source>
      <translation>Champ des mots (vide : ils sont dans le code)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the direction of the fall (degrees)</source>
      <translation>Champ de la direction de la pente (degrés)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the fall (%)</source>
      <translation>Champ de la pente (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Field with the height of the face (m; empty: as above)</source>
      <translation>Champ de la hauteur du front (m ; vide : comme ci-dessus)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the intensity</source>
      <translation>Champ de l'intensité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the level</source>
      <translation>Champ du niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the pads' names</source>
      <translation>Champ des noms des plateformes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the runoff coefficient</source>
      <translation>Champ du coefficient de ruissellement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of cut (1 : n)</source>
      <translation>Champ du talus de déblai (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of fill (1 : n)</source>
      <translation>Champ du talus de remblai (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Field with their names (empty: numbers)</source>
      <translation>Champ de leurs noms (vide : numéros)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Figures, verdicts, sources and cautions.</source>
      <translation>Chiffres, verdicts, sources et mises en garde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Files</source>
      <translation>Fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Files of any size; those in a zip are to be unpacked first.</source>
      <translation>Fichiers de toute taille ; ceux d'un zip sont à décompresser d'abord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Files written</source>
      <translation>Fichiers écrits</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Fill</source>
      <translation>Remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill (m³)</source>
      <translation>Remblai (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Fill from one cubic metre of cut (m³ compacted)</source>
      <translation>Remblai tiré d'un mètre cube de déblai (m³ compactés)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut (m³)</source>
      <translation>Remblai moins déblai (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill less cut ({unit})</source>
      <translation>Remblai moins déblai ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² compared.</source>
      <translation>Remblai moins déblai {value:.2f} ± {half:.2f} m³ (95 %) ; {area:.1f} m² comparés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill less cut, half its 95 % interval (m³)</source>
      <translation>Remblai moins déblai, moitié de son intervalle à 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Fill there (m³)</source>
      <translation>Remblai à cet endroit (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill to be left over for use elsewhere, or to be had from there. Topsoil that is stripped first is not in the balance.</source>
      <translation>Remblai à laisser pour un usage ailleurs, ou à en faire venir. La terre végétale décapée d'abord n'entre pas dans l'équilibre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Remblai {value:.2f} ± {half:.2f} m³ (95 %) sur {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Fill, cut below 0 (unit of the CRS)</source>
      <translation>Remblai, déblai en dessous de 0 (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill, half its 95 % interval (m³)</source>
      <translation>Remblai, moitié de son intervalle à 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill, second surface above ({unit})</source>
      <translation>Remblai, seconde surface au-dessus ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Find the height that balances</source>
      <translation>Trouver l'altitude qui équilibre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Findings</source>
      <translation>Constats</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Findings of the checks</source>
      <translation>Constats des contrôles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Finds the grades and parabolas that an existing profile follows.</source>
      <translation>Trouve les pentes et paraboles que suit un profil en long existant.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Finds what auto-recorded points get wrong: lifted poles, lost fixes, stops, repeats.</source>
      <translation>Trouve les erreurs des points enregistrés automatiquement : cannes levées, solutions perdues, arrêts, répétitions.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Finds where water stands, how deep and how much, and where it spills to.</source>
      <translation>Trouve où l'eau stagne, sur quelle profondeur et en quelle quantité, et vers où elle déborde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Finest class met (cm)</source>
      <translation>Classe la plus fine atteinte (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground (2DM mesh)</source>
      <translation>Terrain fini (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, for the next step</source>
      <translation>Terrain fini, pour l'étape suivante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, height</source>
      <translation>Terrain fini, altitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>First line names the columns</source>
      <translation>La première ligne nomme les colonnes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First line of the table.</source>
      <translation>Première ligne de la table.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>First lines of the file</source>
      <translation>Premières lignes du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First number</source>
      <translation>Premier numéro</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>First say what is open: press one of the answers above, or choose the roles.</source>
      <translation>Dites d'abord ce qui reste à préciser : cliquez sur l'une des réponses ci-dessus, ou choisissez les rôles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>First surface</source>
      <translation>Première surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>First surface, for the next step</source>
      <translation>Première surface, pour l'étape suivante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit</source>
      <translation>Ajustement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit a survey to control points</source>
      <translation>Ajuster un levé sur des points d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Fit grades and vertical curves</source>
      <translation>Ajuster des pentes et raccordements verticaux</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fitted points</source>
      <translation>Points ajustés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Flagged (used)</source>
      <translation>Signalé (utilisé)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat area (m²)</source>
      <translation>Aire plate (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat areas</source>
      <translation>Aires plates</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flatter than (%)</source>
      <translation>Plus plat que (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Folder</source>
      <translation>Dossier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Folder for the surfaces</source>
      <translation>Dossier des surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Folder of the job</source>
      <translation>Dossier du travail</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Folder of the products</source>
      <translation>Dossier des produits</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Follows water from points, lines or areas down a surface to where it ends.</source>
      <translation>Suit l'eau à partir de points, lignes ou aires en descendant une surface jusqu'à son arrivée.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>For a survey that is fitted to control points in a later step.</source>
      <translation>Pour un levé ajusté sur des points d'appui dans une étape ultérieure.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>For drawing only: heights were moved by up to {moved:.3f} m, then lines by up to {shifted:.3f} m in plan. Contours: {count}.</source>
      <translation>Pour le dessin seulement : les altitudes ont été déplacées d'au plus {moved:.3f} m, puis les lignes d'au plus {shifted:.3f} m en plan. Courbes de niveau : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>For files that say one unit for lengths and another for elevations.</source>
      <translation>Pour les fichiers qui indiquent une unité pour les longueurs et une autre pour les altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>For points and corners that were drawn in 3D; goes before the design surface.</source>
      <translation>Pour les points et sommets dessinés en 3D ; prioritaire sur la surface projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>For points whose geometry has no heights. In the unit of the heights.</source>
      <translation>Pour les points dont la géométrie n'a pas d'altitudes. Dans l'unité des altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>For surveys that keep it in a column of its own.</source>
      <translation>Pour les levés qui le tiennent dans une colonne à part.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>For the accuracy in plan, and for the survey's own check shots.</source>
      <translation>Pour la précision en plan, et pour les visées de contrôle propres au levé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>For the areas of cut and fill; in the CRS of the first.</source>
      <translation>Pour les aires de déblai et de remblai ; dans le SCR de la première.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the data collector.</source>
      <translation>Pour le carnet de terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>For the number of loads of waste and borrow; empty: none are told.</source>
      <translation>Pour le nombre de chargements d'évacuation et d'emprunt ; vide : aucun n'est indiqué.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>For the raster and the check by a grid only; volumes do not depend on it.</source>
      <translation>Pour le raster et le contrôle par grille seulement ; les volumes n'en dépendent pas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>For the time of concentration and the frequency that your code asks for.</source>
      <translation>Pour le temps de concentration et la fréquence que demande votre règlement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From (m along the line)</source>
      <translation>De (m le long de la ligne)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>From here water runs down to the pit.</source>
      <translation>D'ici l'eau descend jusqu'au point bas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>From offset, right positive ({unit})</source>
      <translation>Du déport, droite positive ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>From places that have a path on both surfaces and another one after the change.</source>
      <translation>D'endroits qui ont un chemin sur les deux surfaces et en ont un autre après le changement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>From section to section along the line.</source>
      <translation>De profil à profil le long de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From station</source>
      <translation>De l'abscisse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>From the drawn line to the second one, such as 0.12 for a kerb drawn at its foot.</source>
      <translation>De la ligne dessinée à la seconde, par exemple 0.12 pour une bordure dessinée à son pied.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>From the standard you work to. None comes with Hummock.</source>
      <translation>De la norme que vous appliquez. Aucune n'est fournie avec Hummock.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>From window to window (m; empty: no overlap)</source>
      <translation>De fenêtre à fenêtre (m ; vide : pas de recouvrement)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Further layers for the GeoPackage</source>
      <translation>Autres couches pour le GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Further note</source>
      <translation>Autre remarque</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Further stations</source>
      <translation>Autres abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Further surfaces</source>
      <translation>Autres surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>GPX files (*.gpx)</source>
      <translation>Fichiers GPX (*.gpx)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Gap in a breakline</source>
      <translation>Lacune dans une ligne de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gaps of the lines</source>
      <translation>Lacunes des lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>GeoPackage (*.gpkg)</source>
      <translation>GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Geoid separation</source>
      <translation>Ondulation du géoïde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Geoid separation (m)</source>
      <translation>Ondulation du géoïde (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a constant (m)</source>
      <translation>Ondulation du géoïde, une constante (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a grid</source>
      <translation>Ondulation du géoïde, une grille</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Give a design or a level to compare with: one of them, not both.</source>
      <translation>Donnez un projet ou un niveau de comparaison : l'un des deux, pas les deux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Give a file of control points, or a layer in its place (not both).</source>
      <translation>Donnez un fichier de points d'appui, ou une couche à sa place (pas les deux).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Give a survey file, or a layer of points in its place (not both).</source>
      <translation>Donnez un fichier de levé, ou une couche de points à sa place (pas les deux).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Give check points as a layer or as a file, not as both.</source>
      <translation>Donnez les points de contrôle en couche ou en fichier, pas les deux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Give pads or a centreline, one of both.</source>
      <translation>Donnez des plateformes ou un axe, l'un des deux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Give the plane by a level or by three points: one of them, not both.</source>
      <translation>Donnez le plan par un niveau ou par trois points : l'un des deux, pas les deux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gives lines the surface's heights, with a vertex at every triangle edge.</source>
      <translation>Donne aux lignes les altitudes de la surface, avec un sommet à chaque côté de triangle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Goes into the source data of the first surface.</source>
      <translation>Entre dans les données source de la première surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Gone</source>
      <translation>Disparue</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Grade a pad</source>
      <translation>Terrasser une plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Grade a strip along a line</source>
      <translation>Terrasser une bande le long d'une ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grade along a line and crossfall across it, with standard deviations.</source>
      <translation>Pente le long d'une ligne et pente transversale, avec écarts-types.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade along the line (%)</source>
      <translation>Pente le long de la ligne (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade at the end (%)</source>
      <translation>Pente à la fin (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade, of a curve the one it begins with (%)</source>
      <translation>Pente, pour un raccordement celle de son début (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades</source>
      <translation>Pentes longitudinales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades and crossfall</source>
      <translation>Pentes longitudinales et transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Grades and crossfalls against a table of limits: pass, fail or too close to tell.</source>
      <translation>Pentes longitudinales et transversales par rapport à une table de limites : conforme, non conforme ou trop proche pour conclure.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Grades and curves</source>
      <translation>Pentes et raccordements</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid</source>
      <translation>Grille</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Grid distance over ground distance, where one is prescribed for the site.</source>
      <translation>Distance en projection sur distance au sol, si elle est prescrite pour le site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid north</source>
      <translation>Nord de la projection</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Grid north is {angle:.2f}° {side} of true north here.</source>
      <translation>Le nord de la projection est ici à {angle:.2f}° {side} du nord géographique.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)</source>
      <translation>Grilles lues par PROJ (*.gtx *.tif *.tiff *.gsb);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Ground</source>
      <translation>Terrain</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Ground cover</source>
      <translation>Couverture du sol</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Ground taken by the design (m²)</source>
      <translation>Terrain occupé par le projet (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ground to grid and back</source>
      <translation>Du terrain à la projection et retour</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Terrain dont l'eau va ailleurs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere (m²)</source>
      <translation>Terrain dont l'eau va ailleurs (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Gullies and the like, where water leaves the surface.</source>
      <translation>Avaloirs et ouvrages semblables, par où l'eau quitte la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>HTML files (*.html)</source>
      <translation>Fichiers HTML (*.html)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Half the 95 % interval of the shift (m)</source>
      <translation>Moitié de l'intervalle à 95 % du décalage (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Hand over files</source>
      <translation>Remettre les fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Hand-over</source>
      <translation>Remise</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Height (unit of the CRS)</source>
      <translation>Altitude (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Height ({unit})</source>
      <translation>Altitude ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Height datum</source>
      <translation>Référence altimétrique</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect (m)</source>
      <translation>Erreur altimétrique à attendre (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Height field (empty: Z)</source>
      <translation>Champ d'altitude (vide : Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (empty: the points' Z)</source>
      <translation>Champ d'altitude (vide : le Z des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (in the unit of the CRS; empty: the points' Z)</source>
      <translation>Champ d'altitude (dans l'unité du SCR ; vide : le Z des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of grades and curves ({unit})</source>
      <translation>Altitude des pentes et raccordements ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of surface {number} ({unit})</source>
      <translation>Altitude de la surface {number} ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Height of texts in DXF (m)</source>
      <translation>Hauteur des textes en DXF (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Height of the faces (m; below 0: the second line is lower)</source>
      <translation>Hauteur des fronts (m ; en dessous de 0 : la seconde ligne est plus basse)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric.</source>
      <translation>Hauteur du géoïde au-dessus de l'ellipsoïde : la hauteur ellipsoïdale moins celle-ci est l'altitude orthométrique.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Height of the pads (a number, or balance)</source>
      <translation>Altitude des plateformes (un nombre, ou balance)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Height of the pit (unit of the CRS)</source>
      <translation>Altitude du point bas (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of the surface ({unit})</source>
      <translation>Altitude de la surface ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Height offset between both (m, 1 sigma)</source>
      <translation>Décalage d'altitude entre les deux (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Height that balances cut and fill</source>
      <translation>Altitude qui équilibre déblai et remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height where they meet ({unit})</source>
      <translation>Altitude de leur rencontre ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights (GeoTIFF)</source>
      <translation>Altitudes (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Heights and grades along a line over one or several surfaces, also as a sheet.</source>
      <translation>Altitudes et pentes le long d'une ligne sur une ou plusieurs surfaces, aussi en feuille.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Heights and slopes at points</source>
      <translation>Altitudes et pentes en des points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Heights are</source>
      <translation>Les altitudes sont</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights between the points</source>
      <translation>Altitudes entre les points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights in the file are</source>
      <translation>Les altitudes du fichier sont</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Heights of the first surface along the lines with stations.</source>
      <translation>Altitudes de la première surface le long des lignes avec abscisses.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Heights wander by this within a minute or two, so passes side by side differ by it. It hardly matters for a grade along the line, but it tilts a crossfall. 0 if every height has an error of its own.</source>
      <translation>Les altitudes varient d'autant en une minute ou deux, si bien que des passages côte à côte diffèrent de cette valeur. Cela compte à peine pour une pente le long de la ligne, mais incline une pente transversale. 0 si chaque altitude a sa propre erreur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights wanted</source>
      <translation>Altitudes voulues</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Heights were not tested against independent check points.</source>
      <translation>Les altitudes n'ont pas été testées sur des points de contrôle indépendants.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights, smooth (drawing only)</source>
      <translation>Altitudes, lissées (dessin seulement)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Heights: {datum}</source>
      <translation>Altitudes : {datum}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Highest fill (m)</source>
      <translation>Remblai le plus haut (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Highest height ({unit})</source>
      <translation>Altitude la plus haute ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Highest height of the first surface (m)</source>
      <translation>Altitude la plus haute de la première surface (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>How far a summit stands above, or a pit below, the way to the next one.</source>
      <translation>De combien un sommet se trouve au-dessus, ou un point bas en dessous, du passage vers le suivant.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>How far an arc may stand off the chords that replace it.</source>
      <translation>De combien un arc peut s'écarter des cordes qui le remplacent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>How high a pad or a strip must lie for its cut to make its fill, and how sure that is.</source>
      <translation>À quelle altitude une plateforme ou une bande doit se trouver pour que son déblai fasse son remblai, et avec quelle certitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>How much the ground bends: our own choice of values, no standard.</source>
      <translation>Combien le terrain se courbe : notre propre choix de valeurs, pas une norme.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>How steeply the plane falls; 0 is level.</source>
      <translation>De combien le plan descend ; 0 est horizontal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>How sure it is that both have the same height datum: other base, other geoid, other pole. It moves the volume by itself times the area, and is mostly the largest part.</source>
      <translation>Certitude que les deux ont la même référence altimétrique : autre base, autre géoïde, autre canne. Elle déplace le volume de sa valeur multipliée par l'aire, et c'est le plus souvent la part la plus grande.</translation>
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock</source>
      <translation>Hummock</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Hummock met a fault of its own ({kind}: {reason}); the log panel has the details.</source>
      <translation>Hummock a rencontré une erreur interne ({kind} : {reason}) ; le panneau du journal donne les détails.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock: from rover points to surface and contours</source>
      <translation>Hummock : des points du mobile à la surface et aux courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Import survey points</source>
      <translation>Importer les points du levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>In DXF a layer for each level</source>
      <translation>En DXF, une couche par niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>In file order, such as name,easting,northing,height,code with - for a column to skip and +word to keep one as it is; or by header or number, such as easting=X,northing=Y,height=3. “Preview” fills it.</source>
      <translation>Dans l'ordre du fichier, par exemple name,easting,northing,height,code avec - pour une colonne à ignorer et +mot pour en garder une telle quelle ; ou par en-tête ou numéro, par exemple easting=X,northing=Y,height=3. « Aperçu » le remplit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>In place of the layer.</source>
      <translation>À la place de la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>In the CRS wanted. Points without a height do not count in height.</source>
      <translation>Dans le SCR voulu. Les points sans altitude ne comptent pas en altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>In the grid, or on the ground; these may have no CRS.</source>
      <translation>En projection, ou sur le terrain ; ceux-ci peuvent ne pas avoir de SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>In the order of recording, such as the output of “Import survey points”.</source>
      <translation>Dans l'ordre d'enregistrement, par exemple la sortie de « Importer les points du levé ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>In the order of the line, with grade, K and their standard deviations.</source>
      <translation>Dans l'ordre de la ligne, avec pente, K et leurs écarts-types.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the order wanted, of: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</source>
      <translation>Dans l'ordre voulu, parmi : name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>In the unit chosen, right positive: 0 for the line itself, else its parallel.</source>
      <translation>Dans l'unité choisie, positif à droite : 0 pour la ligne elle-même, sinon sa parallèle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen, seen in the way of rising stations.</source>
      <translation>Dans l'unité choisie, vu dans le sens des abscisses croissantes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen: sections at whole multiples of it; 0 for none.</source>
      <translation>Dans l'unité choisie : profils aux multiples entiers de cette valeur ; 0 pour aucun.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>In the unit chosen: whole multiples of it, and both ends of the line.</source>
      <translation>Dans l'unité choisie : multiples entiers de cette valeur, et les deux extrémités de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the CRS; goes before Z and design surface.</source>
      <translation>Dans l'unité du SCR ; prioritaire sur le Z et la surface projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>In the unit of the heights of the CRS.</source>
      <translation>Dans l'unité des altitudes du SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>In the unit of the interval.</source>
      <translation>Dans l'unité de l'équidistance.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table. Rows lie at whole multiples of the coordinates.</source>
      <translation>Dans l'unité de la table. Les lignes se trouvent aux multiples entiers des coordonnées.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table: 1250 for 1+250.</source>
      <translation>Dans l'unité de la table : 1250 pour 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>In walking order.</source>
      <translation>Dans l'ordre de marche.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>In {crs} the points are nowhere on the Earth.</source>
      <translation>En {crs}, les points ne sont nulle part sur la Terre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Independent check points in the CRS of the points.</source>
      <translation>Points de contrôle indépendants dans le SCR des points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Independent check points in the CRS of the surface, for the accuracy on the plan.</source>
      <translation>Points de contrôle indépendants dans le SCR de la surface, pour la précision sur le plan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index contour</source>
      <translation>Courbe maîtresse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Index contour every … contours</source>
      <translation>Une courbe maîtresse toutes les … courbes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index depression contour</source>
      <translation>Courbe maîtresse de cuvette</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Inlets</source>
      <translation>Avaloirs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets and outlets</source>
      <translation>Avaloirs et exutoires</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets take water within (m)</source>
      <translation>Les avaloirs reçoivent l'eau en deçà de (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets without a name are numbered.</source>
      <translation>Les avaloirs sans nom sont numérotés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Inner side of the ditch, 1 : n</source>
      <translation>Côté intérieur du fossé, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Inspect a surface</source>
      <translation>Inspecter une surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Intensity of the rain (mm/h or in/h)</source>
      <translation>Intensité de la pluie (mm/h ou in/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Interval</source>
      <translation>Intervalle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Interval (in the unit below)</source>
      <translation>Intervalle (dans l'unité ci-dessous)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>It appears only when it is whole.</source>
      <translation>Il n'apparaît qu'une fois complet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>It holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², filled to {spill:.3f}.</source>
      <translation>Elle contient {volume:.2f} ± {half:.2f} m³ (95 %) sur {area:.1f} m², remplie jusqu'à {spill:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>It is taken away, whatever the balance.</source>
      <translation>Elle est enlevée, quel que soit l'équilibre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its degrees of freedom</source>
      <translation>Ses degrés de liberté</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its name; may be empty where the file holds one set.</source>
      <translation>Son nom ; peut être vide si le fichier contient un seul jeu.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation</source>
      <translation>Son écart-type</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (%)</source>
      <translation>Son écart-type (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (m)</source>
      <translation>Son écart-type (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Its standard deviation ({unit})</source>
      <translation>Son écart-type ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json)</source>
      <translation>Fichiers JSON (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json);;All files (*)</source>
      <translation>Fichiers JSON (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Join lines by the field codes</source>
      <translation>Joindre des lignes par les codes de terrain</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>K ({unit} for each percent)</source>
      <translation>K ({unit} par pour cent)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Kerbs and walls (lines with heights)</source>
      <translation>Bordures et murs (lignes avec altitudes)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Key map</source>
      <translation>Tableau d'assemblage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Kind: grade, crest or sag</source>
      <translation>Type : pente, sommet ou creux</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Label</source>
      <translation>Étiquette</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Label index contours only</source>
      <translation>N'étiqueter que les courbes maîtresses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML file</source>
      <translation>Fichier LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML files (*.xml *.landxml);;All files (*)</source>
      <translation>Fichiers LandXML (*.xml *.landxml);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>LandXML files (*.xml)</source>
      <translation>Fichiers LandXML (*.xml)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the left of the line</source>
      <translation>Voie à gauche de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the right of the line</source>
      <translation>Voie à droite de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Larger gives fewer curves.</source>
      <translation>Une valeur plus grande donne moins de raccordements.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest change of a height (m)</source>
      <translation>Plus grand changement d'une altitude (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Largest crossfall, either way (%)</source>
      <translation>Pente transversale la plus forte, dans les deux sens (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Largest difference from the surface (m)</source>
      <translation>Plus grande différence avec la surface (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Largest difference in height (m)</source>
      <translation>Plus grande différence d'altitude (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Largest empty circles</source>
      <translation>Plus grands cercles vides</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Largest peak flow (l/s or ft³/s)</source>
      <translation>Plus grand débit de pointe (l/s ou ft³/s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Largest residual (m)</source>
      <translation>Plus grand résidu (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest shift of a line (m)</source>
      <translation>Plus grand décalage d'une ligne (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lay lines on a surface</source>
      <translation>Poser des lignes sur une surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Layer of control points in place of the file</source>
      <translation>Couche de points d'appui à la place du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Layer of points in place of the file</source>
      <translation>Couche de points à la place du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Layers of the plan</source>
      <translation>Couches du plan</translation>
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <source>Leads through a survey, from its file to plan and report.</source>
      <translation>Guide à travers un levé, de son fichier au plan et au rapport.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Least area (m²)</source>
      <translation>Aire minimale (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Least depth of a pond (m)</source>
      <translation>Profondeur minimale d'une mare (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Least fall to an edge (%)</source>
      <translation>Chute minimale vers un bord (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Least height of a spike (m)</source>
      <translation>Hauteur minimale d'un pic (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Least piece of moved ground (m²)</source>
      <translation>Plus petit morceau de terrain détourné (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Least prominence of spot heights (m; empty: the interval)</source>
      <translation>Proéminence minimale des points cotés (m ; vide : l'équidistance)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Leave it empty to compare with a level.</source>
      <translation>Laissez vide pour comparer à un niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Left empty, points are numbered, and offsets named by station and side.</source>
      <translation>Si laissé vide, les points sont numérotés, et les déports nommés par abscisse et côté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Left over (m³)</source>
      <translation>Excédent (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Legend</source>
      <translation>Légende</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length ({unit})</source>
      <translation>Longueur ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Length in plan (m)</source>
      <translation>Longueur en plan (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the curve ({unit})</source>
      <translation>Longueur du raccordement ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Length of the gaps (m)</source>
      <translation>Longueur des lacunes (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Length of the line (m)</source>
      <translation>Longueur de la ligne (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the water along the line (m)</source>
      <translation>Longueur de l'eau le long de la ligne (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Level (height in the unit of the CRS)</source>
      <translation>Niveau (altitude dans l'unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Level (height, in the unit of the CRS)</source>
      <translation>Niveau (altitude, dans l'unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Level (unit of the CRS)</source>
      <translation>Niveau (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Level in place of a surface that is missing</source>
      <translation>Niveau à la place d'une surface manquante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Level in the unit of the CRS, above_pit_m, area_m2 and volume_m3.</source>
      <translation>Niveau dans l'unité du SCR, above_pit_m, area_m2 et volume_m3.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Level instead of a design (in the unit of the CRS)</source>
      <translation>Niveau au lieu d'un projet (dans l'unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Level spot</source>
      <translation>Endroit horizontal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Levels of the curve</source>
      <translation>Niveaux de la courbe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Levels polygons, or slopes them, with slopes of cut and fill to daylight.</source>
      <translation>Met des polygones à niveau ou en pente, avec talus de déblai et de remblai jusqu'à l'entrée en terre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Limit</source>
      <translation>Limite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Limit (%)</source>
      <translation>Limite (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Limits as a file to edit</source>
      <translation>Limites sous forme de fichier à modifier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <location filename="../plugin/processing/slopemap.py" />
      <source>Limits between the classes (%)</source>
      <translation>Limites entre les classes (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Limits of the road (CSV; empty: those that come with Hummock)</source>
      <translation>Limites de la route (CSV ; vide : celles fournies avec Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Line</source>
      <translation>Ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Line for sections (check by other methods)</source>
      <translation>Ligne des profils (contrôle par d'autres méthodes)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Line of a road</source>
      <translation>Ligne d'une route</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Line of column names</source>
      <translation>Ligne des noms de colonnes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Line of the file</source>
      <translation>Ligne du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Lines</source>
      <translation>Lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines drawn along edges of the pads. Edges within 0.1 m of a line take its slopes, from the fields cut_run and fill_run (1 : n) of the layer.</source>
      <translation>Lignes dessinées le long de côtés des plateformes. Les côtés à moins de 0.1 m d'une ligne prennent ses talus, dans les champs cut_run et fill_run (1 : n) de la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Lines in the direction of the water.</source>
      <translation>Lignes dans le sens de l'eau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Lines in the file</source>
      <translation>Lignes du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Lines of no cut and no fill</source>
      <translation>Lignes de passage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Lines of the surface</source>
      <translation>Lignes de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines on the surface</source>
      <translation>Lignes sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines or polygon outlines that must be edges of the surface.</source>
      <translation>Lignes ou contours de polygones qui doivent être des côtés de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Lines rejected</source>
      <translation>Lignes rejetées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that become edges and take their heights from the surface around them.</source>
      <translation>Lignes qui deviennent des côtés et prennent leurs altitudes de la surface autour d'elles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Lines that begin with #; switch off for a data collector that cannot skip them.</source>
      <translation>Lignes qui commencent par # ; désactivez-les pour un carnet de terrain qui ne peut pas les ignorer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that cross are joined there by a new point; this gives its height.</source>
      <translation>Les lignes qui se croisent y sont jointes par un nouveau point ; ceci donne son altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines that follow no edge of a pad, not used: {count} of {total}.</source>
      <translation>Lignes qui ne suivent aucun côté d'une plateforme, non utilisées : {count} sur {total}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Lines to walk</source>
      <translation>Lignes à parcourir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines whose heights differ by up to this are joined at their mean.</source>
      <translation>Les lignes dont les altitudes diffèrent jusqu'à cette valeur sont jointes à leur moyenne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Lines with heights from left to right, one for each surface and part.</source>
      <translation>Lignes avec altitudes de gauche à droite, une par surface et partie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Lines with level, index and depression.</source>
      <translation>Lignes avec level, index et depression.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Lines with level, index and depression; for drawing only.</source>
      <translation>Lignes avec level, index et depression ; pour le dessin seulement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Lines with stations</source>
      <translation>Lignes avec abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines: {lines}, pieces on the surface: {pieces}.</source>
      <translation>Lignes : {lines}, morceaux sur la surface : {pieces}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Link</source>
      <translation>Liaison</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Links between them: {count} lines, {length:.0f} m</source>
      <translation>Liaisons entre eux : {count} lignes, {length:.0f} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Load of a truck (m³ loose)</source>
      <translation>Charge d'un camion (m³ foisonnés)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Loads: {waste} of waste, {borrow} of borrow.</source>
      <translation>Chargements : {waste} d'évacuation, {borrow} d'emprunt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Long edges: longer than (m; empty: from the spacing)</source>
      <translation>Côtés longs : plus longs que (m ; vide : d'après l'écartement)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Long edges: more than … times the distance of the passes</source>
      <translation>Côtés longs : plus de … fois l'écartement des passages</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Long triangles</source>
      <translation>Triangles longs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Longest edge at the rim (m; empty: no limit)</source>
      <translation>Côté le plus long au pourtour (m ; vide : pas de limite)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Look for gaps</source>
      <translation>Chercher les lacunes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Loose from one cubic metre in the ground (m³)</source>
      <translation>Foisonné pour un mètre cube en place (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points</source>
      <translation>Points bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points of the edges</source>
      <translation>Points bas des bords</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Lower it to see more of them.</source>
      <translation>Abaissez-la pour en voir davantage.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Lowest height ({unit})</source>
      <translation>Altitude la plus basse ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Lowest height of the first surface (m)</source>
      <translation>Altitude la plus basse de la première surface (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Made if missing.</source>
      <translation>Créé s'il manque.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Made only when asked for.</source>
      <translation>Produit seulement sur demande.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Make the plan</source>
      <translation>Produire le plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Maps and tables of paths, ponds and catchments, with method, sources and limits.</source>
      <translation>Cartes et tableaux des chemins, mares et bassins versants, avec méthode, sources et limites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Maps before and after, tables of ponds and of moved ground, with limits.</source>
      <translation>Cartes avant et après, tableaux des mares et du terrain détourné, avec limites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Marks ground that falls too little to shed water.</source>
      <translation>Marque le terrain trop peu incliné pour évacuer l'eau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Marks what a surveyor would warn of: spikes, gaps, long and level triangles.</source>
      <translation>Marque ce dont un géomètre avertirait : pics, lacunes, triangles longs et horizontaux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Mass diagram (pieces of the centreline)</source>
      <translation>Épure de Lalanne (morceaux de l'axe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Material at the surface</source>
      <translation>Matériau en surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of cut (m)</source>
      <translation>Profondeur moyenne de déblai (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of fill (m)</source>
      <translation>Profondeur moyenne de remblai (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Mean difference, the bias (m)</source>
      <translation>Différence moyenne, le biais (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Mean gradient over (m)</source>
      <translation>Gradient moyen sur (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Method: rational, Q = C i A ({source}).</source>
      <translation>Méthode : rationnelle, Q = C i A ({source}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre down.</source>
      <translation>Mètres vers l'extérieur pour chaque mètre de descente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre up. What stands depends on the soil: see the cautions.</source>
      <translation>Mètres vers l'extérieur pour chaque mètre de montée. Ce qui tient dépend du sol : voir les mises en garde.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Middle: {lat}° {north}, {lon}° {east} in {crs}</source>
      <translation>Milieu : {lat}° {north}, {lon}° {east} en {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>More breaklines</source>
      <translation>Autres lignes de rupture</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>More files of the same site</source>
      <translation>Autres fichiers du même site</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>More files that are handed over</source>
      <translation>Autres fichiers remis</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>More findings, all in the layer of findings: {count}.</source>
      <translation>Autres constats, tous dans la couche des constats : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>More layers</source>
      <translation>Autres couches</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>More layers of points of the same site</source>
      <translation>Autres couches de points du même site</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>More surfaces</source>
      <translation>Autres surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>N</source>
      <translation>N</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Name</source>
      <translation>Nom</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Name field (empty: “name” where there is one)</source>
      <translation>Champ du nom (vide : « name » s'il existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Name field (of points)</source>
      <translation>Champ du nom (des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Name of an inlet (empty: the field name, if there is one)</source>
      <translation>Nom d'un avaloir (vide : le champ name, s'il existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Name of the files</source>
      <translation>Nom des fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Name of the surface</source>
      <translation>Nom de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Names in more than one file</source>
      <translation>Noms présents dans plusieurs fichiers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Names parted by commas. Their residuals are shown all the same.</source>
      <translation>Noms séparés par des virgules. Leurs résidus sont affichés malgré tout.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Names that come again get a number behind them.</source>
      <translation>Les noms qui reviennent reçoivent un numéro à la suite.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Neighbours share drift within (m)</source>
      <translation>Les voisins partagent la dérive en deçà de (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>New pond</source>
      <translation>Nouvelle mare</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>No cell centre lies on the surface: the raster is empty. Choose smaller cells.</source>
      <translation>Aucun centre de cellule n'est sur la surface : le raster est vide. Choisissez des cellules plus petites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>No cut, no fill</source>
      <translation>Ni déblai ni remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there are no contours. Choose a smaller interval.</source>
      <translation>Aucun niveau ne se trouve entre l'altitude la plus basse ({low:.3f} {unit}) et la plus haute ({high:.3f} {unit}) : il n'y a pas de courbes de niveau. Choisissez une équidistance plus petite.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No place of a line moves farther. In metres whatever the CRS.</source>
      <translation>Aucun endroit d'une ligne ne se déplace davantage. En mètres quel que soit le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>No place should be farther than this from a measured point.</source>
      <translation>Aucun endroit ne devrait être plus loin que cela d'un point mesuré.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>No surface</source>
      <translation>Pas de surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>No vertex of the given surface is farther above or below the new one.</source>
      <translation>Aucun sommet de la surface donnée n'est davantage au-dessus ou en dessous de la nouvelle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Noise from point to point {white:.1f} mm; no place was visited twice to tell more.</source>
      <translation>Bruit de point à point {white:.1f} mm ; aucun endroit n'a été visité deux fois pour en dire plus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Noise of a height: standard deviation (m)</source>
      <translation>Bruit d'une altitude : écart-type (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Noise of a surveyed height (m, 1 sigma)</source>
      <translation>Bruit d'une altitude levée (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Noise: {count} of {vertices} vertices of the surface are points of {layer}.</source>
      <translation>Bruit : {count} sommets de la surface sur {vertices} sont des points de {layer}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Northing (unit of the CRS)</source>
      <translation>Coordonnée nord (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Northing of the origin</source>
      <translation>Coordonnée nord de l'origine</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Not a design for construction: whether slopes stand, and safety while they are dug, need licensed practice and the local codes.</source>
      <translation>Pas un projet d'exécution : la tenue des talus, et la sécurité pendant leur excavation, exigent un praticien agréé et les règles locales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not a payment certificate: the contract says what is measured and by whom. Locate buried services before anyone digs.</source>
      <translation>Pas un décompte de paiement : le marché indique ce qui est mesuré et par qui. Repérez les réseaux enterrés avant que quiconque ne creuse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Not applied</source>
      <translation>Non appliquée</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: design only (m²)</source>
      <translation>Non comparé : projet seulement (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: existing surface only (m²)</source>
      <translation>Non comparé : surface existante seulement (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Not for setting out without independent checks. Parcels are no boundary survey; buried services are not shown.</source>
      <translation>Ne pas utiliser pour l'implantation sans contrôles indépendants. Les parcelles ne sont pas un bornage ; les réseaux enterrés ne sont pas représentés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Notes at the head of the table</source>
      <translation>Remarques en tête de la table</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Number of areas</source>
      <translation>Nombre d'aires</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Number of arrows</source>
      <translation>Nombre de flèches</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Number of catchments</source>
      <translation>Nombre de bassins versants</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of contours</source>
      <translation>Nombre de courbes de niveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Number of cross-sections</source>
      <translation>Nombre de profils en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Number of findings</source>
      <translation>Nombre de constats</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of gaps</source>
      <translation>Nombre de lacunes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Number of labels</source>
      <translation>Nombre d'étiquettes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Number of paths</source>
      <translation>Nombre de chemins</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of pieces on the surface</source>
      <translation>Nombre de morceaux sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of pits, those of noise too</source>
      <translation>Nombre de points bas, ceux du bruit compris</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Number of places to walk again</source>
      <translation>Nombre d'endroits à parcourir de nouveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Number of points</source>
      <translation>Nombre de points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of ponds</source>
      <translation>Nombre de mares</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of sheets</source>
      <translation>Nombre de feuilles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of spot heights</source>
      <translation>Nombre de points cotés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the cross-section</source>
      <translation>Numéro du profil en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the curve</source>
      <translation>Numéro de la courbe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the rule</source>
      <translation>Numéro de la règle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the surface</source>
      <translation>Numéro de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Number of triangles</source>
      <translation>Nombre de triangles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of vertical curves</source>
      <translation>Nombre de raccordements verticaux</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of a fit with four parameters. A plane takes up a slope of the geoid over the site.</source>
      <translation>D'un ajustement à quatre paramètres. Un plan absorbe une pente du géoïde sur le site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates and heights.</source>
      <translation>Des coordonnées et altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates, heights and stations in the table, and of the lengths given here.</source>
      <translation>Des coordonnées, altitudes et abscisses de la table, et des longueurs données ici.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Of each of its points by itself: 0 for a design, more for a second survey.</source>
      <translation>De chacun de ses points pris isolément : 0 pour un projet, davantage pour un second levé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of easting, northing and height as they stand in the layer.</source>
      <translation>Des coordonnées est et nord et de l'altitude telles qu'elles figurent dans la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of it the part that drifts (m)</source>
      <translation>Dont la part qui dérive (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of its easting, northing and height.</source>
      <translation>De ses coordonnées est et nord et de son altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of one surveyed height, its drift included. “Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>D'une altitude levée, dérive comprise. « Contrôler le levé » le détermine ; 15 mm est usuel en RTK (pratique courante, sans source).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: a table of the points that share a name. All of them are kept.</source>
      <translation>De plusieurs fichiers : une table des points qui partagent un nom. Tous sont conservés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: pairs of points at one place whose heights differ.</source>
      <translation>De plusieurs fichiers : paires de points au même endroit dont les altitudes diffèrent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of survey and control together. Empty: estimated from the residuals, which tells fewer errors.</source>
      <translation>Du levé et des points d'appui ensemble. Vide : estimé d'après les résidus, ce qui révèle moins d'erreurs.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Of the intensity and of the results. Nothing is rounded between them.</source>
      <translation>De l'intensité et des résultats. Rien n'est arrondi entre les deux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Of the plane; where it slopes, its height at the place below.</source>
      <translation>Du plan ; s'il est incliné, son altitude à l'endroit ci-dessous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Of the profile as a layer; the sheet has scales of its own.</source>
      <translation>Du profil en long en tant que couche ; la feuille a ses propres échelles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of the sheets in PDF. Print them at 100 %, without fitting to the page.</source>
      <translation>Des feuilles en PDF. Imprimez-les à 100 %, sans ajustement à la page.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Of the value.</source>
      <translation>De la valeur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of what is given and shown here. Coordinates of layers stay in the unit of the CRS.</source>
      <translation>De ce qui est donné et affiché ici. Les coordonnées des couches restent dans l'unité du SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Off the surface</source>
      <translation>Hors de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Offset of the line whose grade is taken</source>
      <translation>Déport de la ligne dont la pente est prise</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Offset of the second line in plan (m)</source>
      <translation>Déport de la seconde ligne en plan (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Offset, right above 0 (unit of the CRS)</source>
      <translation>Déport, droite au-dessus de 0 (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Offset, right positive ({unit})</source>
      <translation>Déport, droite positive ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Offsets from lines</source>
      <translation>Déports par rapport aux lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Offsets: “{text}” is no list of numbers, such as -3.5, 0, 3.5.</source>
      <translation>Déports : « {text} » n'est pas une liste de nombres, telle que -3.5, 0, 3.5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>On a slope a pole held aside meets another height.</source>
      <translation>Sur une pente, une canne tenue de côté rencontre une autre altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>On the demo survey:</source>
      <translation>Sur le levé de démonstration :</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>One band of heights in the unit of the CRS; the file's name ends in .tif.</source>
      <translation>Une bande d'altitudes dans l'unité du SCR ; le nom du fichier se termine par .tif.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>One line, such as a centreline, in the CRS of the surface. Stations grow in the way it was drawn. Of a layer with several lines select one and tick “Selected features only”.</source>
      <translation>Une ligne, par exemple un axe, dans le SCR de la surface. Les abscisses croissent dans le sens où elle a été dessinée. Dans une couche de plusieurs lignes, sélectionnez-en une et cochez « Entités sélectionnées uniquement ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>One page with numbers, doubt, map, histogram, other methods and cautions.</source>
      <translation>Une page avec nombres, incertitude, carte, histogramme, autres méthodes et mises en garde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>One page: plan, sections, volumes with their doubt, balance, other methods, cautions.</source>
      <translation>Une page : plan, profils, volumes avec leur incertitude, équilibre, autres méthodes, mises en garde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>One row for each control point that was surveyed, at its known place.</source>
      <translation>Une ligne par point d'appui levé, à sa position connue.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Only for points whose geometry has no heights.</source>
      <translation>Seulement pour les points dont la géométrie n'a pas d'altitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Only inside these polygons</source>
      <translation>Seulement à l'intérieur de ces polygones</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Only the first part of a long file is shown and counted here.</source>
      <translation>Seule la première partie d'un long fichier est affichée et comptée ici.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Only where heights are in another unit than easting and northing.</source>
      <translation>Seulement si les altitudes sont dans une autre unité que les coordonnées est et nord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Only where the file does not say it and heights are to be changed.</source>
      <translation>Seulement si le fichier ne l'indique pas et que les altitudes doivent être converties.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Open</source>
      <translation>Ouvrir</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Open: {question}.</source>
      <translation>À préciser : {question}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Opens its dialog; what you run there becomes a step of the job.</source>
      <translation>Ouvre sa boîte de dialogue ; ce que vous y exécutez devient une étape du travail.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Optional in the standard; makes the file larger.</source>
      <translation>Facultatif dans la norme ; rend le fichier plus volumineux.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Options…</source>
      <translation>Options…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Origin</source>
      <translation>Origine</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Origin in the grid (empty: the middle of the points)</source>
      <translation>Origine en projection (vide : le milieu des points)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Other days or rovers.</source>
      <translation>Autres jours ou autres mobiles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Other days or rovers. All points are kept with their file; names that occur twice and same places with different heights are reported.</source>
      <translation>Autres jours ou autres mobiles. Tous les points sont conservés avec leur fichier ; les noms qui apparaissent deux fois et les mêmes endroits avec des altitudes différentes sont signalés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Other surface</source>
      <translation>Autre surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Otherwise contours lie on CONTOUR and CONTOUR_INDEX.</source>
      <translation>Sinon les courbes de niveau sont sur CONTOUR et CONTOUR_INDEX.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Otherwise the strip ends with a steep face where it is above or below the ground.</source>
      <translation>Sinon la bande se termine par un front raide là où elle est au-dessus ou en dessous du terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Otherwise they are laid on the surface. Z is in the unit of the CRS of the surface.</source>
      <translation>Sinon elles sont posées sur la surface. Le Z est dans l'unité du SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Outlets on the rim: least catchment (m²)</source>
      <translation>Exutoires sur le pourtour : bassin versant minimal (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Outside the surface</source>
      <translation>Hors de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>PDOP</source>
      <translation>PDOP</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used only when its name, as the refusal shows it, is written here; several are parted by |.</source>
      <translation>PROJ peut ne disposer que d'une opération approximative, ou manquer du fichier de grille d'une meilleure. Une telle opération n'est utilisée que si son nom, tel que le refus l'affiche, est écrit ici ; plusieurs sont séparés par |.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pad {name}: nothing says how high it is; give a level, or fill the field.</source>
      <translation>Plateforme {name} : rien n'indique son altitude ; donnez un niveau, ou remplissez le champ.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pads (polygons)</source>
      <translation>Plateformes (polygones)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Pads to be graded</source>
      <translation>Plateformes à terrasser</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Page (HTML)</source>
      <translation>Page (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pages.py" />
      <source>Page {page} of {pages}</source>
      <translation>Page {page} sur {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Pairs of cross-sections that cross</source>
      <translation>Paires de profils en travers qui se croisent</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Paper</source>
      <translation>Papier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Parcels</source>
      <translation>Parcelles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Parcels or phases whose volumes are told apart; the field name names them.</source>
      <translation>Parcelles ou phases dont les volumes sont distingués ; le champ name les nomme.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Part of pond</source>
      <translation>Partie de la mare</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Part of the section on the surface</source>
      <translation>Partie du profil sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Pass</source>
      <translation>Conforme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Pass walked</source>
      <translation>Passage parcouru</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes across</source>
      <translation>Passages en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are at most half of it apart.</source>
      <translation>Les passages en sont écartés d'au plus la moitié.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes never farther apart than (m)</source>
      <translation>Écartement des passages au plus (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Passes: {count} lines, {length:.0f} m</source>
      <translation>Passages : {count} lignes, {length:.0f} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path after</source>
      <translation>Chemin après</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path before</source>
      <translation>Chemin avant</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Paths before and after</source>
      <translation>Chemins avant et après</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths of water</source>
      <translation>Chemins de l'eau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Paths, ponds and catchments.</source>
      <translation>Chemins, mares et bassins versants.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths: {PATHS}. Starts whose water leaves over the rim: {TO_RIM}, comes to an inlet: {TO_INLETS}, stays in a pit or pond: {STAY}.</source>
      <translation>Chemins : {PATHS}. Départs dont l'eau sort par le pourtour : {TO_RIM}, arrive à un avaloir : {TO_INLETS}, reste dans un point bas ou une mare : {STAY}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Pattern of a code (regular expression; empty: code, line number, words)</source>
      <translation>Motif d'un code (expression régulière ; vide : code, numéro de ligne, mots)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flow (rational method)</source>
      <translation>Débit de pointe (méthode rationnelle)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flows</source>
      <translation>Débits de pointe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per depth class.</source>
      <translation>Par classe de profondeur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per material.</source>
      <translation>Par matériau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Perimeter</source>
      <translation>Périmètre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Perimeter: {count} lines, {length:.0f} m</source>
      <translation>Périmètre : {count} lignes, {length:.0f} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pit</source>
      <translation>Point bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Pit and spill</source>
      <translation>Point bas et débordement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and ponds</source>
      <translation>Points bas et mares</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and spill points</source>
      <translation>Points bas et points de débordement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits: {PIT_COUNT}; ponds that noise does not explain: {PONDS}, {AREA:.1f} m² and {VOLUME:.2f} m³ when all are full.</source>
      <translation>Points bas : {PIT_COUNT} ; mares que le bruit n'explique pas : {PONDS}, {AREA:.1f} m² et {VOLUME:.2f} m³ lorsque toutes sont pleines.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Place that has the level (empty: middle of the surface)</source>
      <translation>Endroit qui a ce niveau (vide : milieu de la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again</source>
      <translation>Endroits à parcourir de nouveau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as CSV</source>
      <translation>Endroits à parcourir de nouveau en CSV</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as GPX</source>
      <translation>Endroits à parcourir de nouveau en GPX</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/planlayout.py" />
      <source>Plan</source>
      <translation>Plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Plan (PDF)</source>
      <translation>Plan (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area (m²)</source>
      <translation>Aire en plan (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area {area:.1f} m², heights {low:.3f} m to {high:.3f} m.</source>
      <translation>Aire en plan {area:.1f} m², altitudes de {low:.3f} m à {high:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Platform and slopes to daylight; the CRS is written beside it as .prj.</source>
      <translation>Plateforme et talus jusqu'à l'entrée en terre ; le SCR est écrit à côté en .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform break</source>
      <translation>Cassure de plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform edge</source>
      <translation>Bord de plateforme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Point beside a line</source>
      <translation>Point à côté d'une ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Points</source>
      <translation>Points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Points (gullies, the end of a pipe, an outlet on the rim) or lines (a trench drain). Each takes all water that reaches a triangle near it. In another CRS they are brought into that of the surface.</source>
      <translation>Points (avaloirs, extrémité d'une conduite, exutoire sur le pourtour) ou lignes (caniveau à grille). Chacun reçoit toute l'eau qui atteint un triangle proche de lui. Dans un autre SCR, ils sont ramenés à celui de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: nearer in plan than (m)</source>
      <translation>Points à côté d'une ligne : plus proches en plan que (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: off in height by more than (m)</source>
      <translation>Points à côté d'une ligne : écart en altitude de plus de (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points changed</source>
      <translation>Points modifiés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points decided by hand against the checks</source>
      <translation>Points décidés à la main contre les contrôles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points flagged</source>
      <translation>Points signalés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points of lines were placed on purpose: they are held against their line only.</source>
      <translation>Les points de lignes ont été placés à dessein : ils ne sont comparés qu'à leur ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Points of the cross-sections</source>
      <translation>Points des profils en travers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface</source>
      <translation>Points hors de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface or without a place, left empty: {count}.</source>
      <translation>Points hors de la surface ou sans position, laissés vides : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points on the ground carry none, so it has to be given for the way to the grid.</source>
      <translation>Les points sur le terrain n'en portent pas, il doit donc être donné pour le passage à la projection.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface</source>
      <translation>Points sur la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface: {count}.</source>
      <translation>Points sur la surface : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points outside the area of use of the CRS</source>
      <translation>Points hors de la zone d'usage du SCR</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Points read</source>
      <translation>Points lus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points rejected</source>
      <translation>Points rejetés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points so near to a breakline should have its height.</source>
      <translation>Des points si proches d'une ligne de rupture devraient avoir son altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points that may shape the surface</source>
      <translation>Points pouvant façonner la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points to ask at</source>
      <translation>Points à interroger</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points to set out</source>
      <translation>Points à implanter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Points to use, flag or reject, by their line.</source>
      <translation>Points à utiliser, signaler ou rejeter, par leur ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Points under water</source>
      <translation>Points sous l'eau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points used</source>
      <translation>Points utilisés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points used: {used}, flagged: {flagged}, rejected: {rejected}.</source>
      <translation>Points utilisés : {used}, signalés : {flagged}, rejetés : {rejected}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points used: {used}, rejected: {rejected}. Triangles: {triangles}; taken off outside the boundary or in voids: {outside}, at the rim: {trimmed}.</source>
      <translation>Points utilisés : {used}, rejetés : {rejected}. Triangles : {triangles} ; retirés hors de la limite ou dans les trous : {outside}, au pourtour : {trimmed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Points with Z or with a height field, in the CRS of the surface.</source>
      <translation>Points avec Z ou avec un champ d'altitude, dans le SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Points with Z or with a height field. Its CRS is that of its coordinates.</source>
      <translation>Points avec Z ou avec un champ d'altitude. Son SCR est celui de ses coordonnées.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Points with a name, in walking order; radius_m is how far anything measured was.</source>
      <translation>Points avec un nom, dans l'ordre de marche ; radius_m est la distance à laquelle se trouvait la mesure la plus proche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points with heights</source>
      <translation>Points avec altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Points with heights are added. A column “edit” may say move_point (a new height, or a “difference”), swap_edge, remove_triangle or add_triangle instead; “height” goes before Z, in the CRS's unit.</source>
      <translation>Les points avec altitudes sont ajoutés. Une colonne « edit » peut indiquer à la place move_point (une nouvelle altitude, ou une « difference »), swap_edge, remove_triangle ou add_triangle ; « height » est prioritaire sur le Z, dans l'unité du SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points with heights in the unit of the CRS, all columns of the file, and a status.</source>
      <translation>Points avec altitudes dans l'unité du SCR, toutes les colonnes du fichier, et un statut.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points with heights, such as the output of “Import survey points”.</source>
      <translation>Points avec altitudes, par exemple la sortie de « Importer les points du levé ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Points with text, rotation (degrees clockwise) and size, styled to show the text.</source>
      <translation>Points avec texte, rotation (degrés, sens horaire) et taille, stylés pour afficher le texte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points without design height</source>
      <translation>Points sans altitude projet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Points written</source>
      <translation>Points écrits</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Points, lines or polygons in the CRS of the existing surface.</source>
      <translation>Points, lignes ou polygones dans le SCR de la surface existante.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points: {points}, control points: {control}. Fill up to {fill:.3f} m, cut up to {cut:.3f} m.</source>
      <translation>Points : {points}, points d'appui : {control}. Remblai jusqu'à {fill:.3f} m, déblai jusqu'à {cut:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons in a projected CRS.</source>
      <translation>Polygones dans un SCR projeté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines that the surface leaves out, such as buildings.</source>
      <translation>Polygones ou lignes fermées que la surface laisse de côté, par exemple des bâtiments.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines: the surface ends there. A ring in a ring is a hole.</source>
      <translation>Polygones ou lignes fermées : la surface s'y arrête. Un anneau dans un anneau est un trou.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons, each with a runoff coefficient. Ground without one takes that of its catchment.</source>
      <translation>Polygones, chacun avec un coefficient de ruissellement. Le terrain qui n'en a pas prend celui de son bassin versant.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Polygons, in a projected CRS; holes are left out. Select features to plan some only.</source>
      <translation>Polygones, dans un SCR projeté ; les trous sont laissés de côté. Sélectionnez des entités pour n'en planifier que certaines.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Polygons, or lines that are closed; one feature a stockpile or pit.</source>
      <translation>Polygones, ou lignes fermées ; une entité par stock ou fosse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond</source>
      <translation>Mare</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond after</source>
      <translation>Mare après</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond before</source>
      <translation>Mare avant</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Ponds</source>
      <translation>Mares</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds compared</source>
      <translation>Mares comparées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds new: {NEW}, gone: {GONE}, deeper or shallower: {CHANGED}; {VOLUME:+.2f} m³ in full ponds; {MOVED_AREA:.1f} m² whose water goes elsewhere.</source>
      <translation>Mares nouvelles : {NEW}, disparues : {GONE}, plus ou moins profondes : {CHANGED} ; {VOLUME:+.2f} m³ dans les mares pleines ; {MOVED_AREA:.1f} m² dont l'eau va ailleurs.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are deeper or shallower</source>
      <translation>Mares plus ou moins profondes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are gone</source>
      <translation>Mares disparues</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are new</source>
      <translation>Mares nouvelles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Ponds: chance of noise at most (%)</source>
      <translation>Mares : probabilité de bruit au plus (%)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview</source>
      <translation>Aperçu</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Preview of the survey</source>
      <translation>Aperçu du levé</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview…</source>
      <translation>Aperçu…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Profile (CSV; empty: the Z of the line)</source>
      <translation>Profil en long (CSV ; vide : le Z de la ligne)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile along a line</source>
      <translation>Profil en long le long d'une ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile in its plane</source>
      <translation>Profil en long dans son plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Profile, sections and grades along it, checked against limits.</source>
      <translation>Profil en long, profils en travers et pentes le long de celle-ci, contrôlés par rapport à des limites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Profiles take the largest usual scale that fits, cross-sections that of the lengths.</source>
      <translation>Les profils en long prennent la plus grande échelle usuelle qui convient, les profils en travers celle des longueurs.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Project</source>
      <translation>Projet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Proposes where to walk on an area, how far and how long, before going out.</source>
      <translation>Propose où marcher sur une aire, sur quelle distance et combien de temps, avant de sortir.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Put layers and layout into the project</source>
      <translation>Mettre les couches et la mise en page dans le projet</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>QGIS knows no CRS of this code.</source>
      <translation>QGIS ne connaît pas de SCR avec ce code.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Quality</source>
      <translation>Qualité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Quantity</source>
      <translation>Quantité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>RMSE (m)</source>
      <translation>RMSE (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Radius of the widest empty circle (m)</source>
      <translation>Rayon du plus grand cercle vide (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Raise it where edits were drawn without snapping to the points.</source>
      <translation>Augmentez-la là où des modifications ont été dessinées sans accrochage aux points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Raises or lowers the whole design until cut, times the fill that a cubic metre of it makes, equals fill and the surplus.</source>
      <translation>Élève ou abaisse le projet entier jusqu'à ce que le déblai, multiplié par le remblai qu'en donne un mètre cube, égale le remblai et l'excédent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Read LandXML</source>
      <translation>Lire du LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Read coordinates outside the area of use as</source>
      <translation>Lire les coordonnées hors de la zone d'usage comme</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Read the field codes</source>
      <translation>Lire les codes de terrain</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Read the points</source>
      <translation>Lire les points</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Read them so: {cause}</source>
      <translation>Les lire ainsi : {cause}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Reads a survey file into a point layer and accounts for every line of it.</source>
      <translation>Lit un fichier de levé dans une couche de points et rend compte de chacune de ses lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Reads surfaces, points, lines and alignments of a LandXML file.</source>
      <translation>Lit les surfaces, points, lignes et tracés d'un fichier LandXML.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Regions</source>
      <translation>Régions</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Regions of the volumes</source>
      <translation>Régions des volumes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Rejected (not in the surface)</source>
      <translation>Rejeté (pas dans la surface)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Rejected lines</source>
      <translation>Lignes rejetées</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Remove</source>
      <translation>Supprimer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Report (HTML)</source>
      <translation>Rapport (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report (PDF)</source>
      <translation>Rapport (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Report of the change (HTML)</source>
      <translation>Rapport du changement (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Report of the ponds (HTML)</source>
      <translation>Rapport des mares (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey</source>
      <translation>Rapport du levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey {file}</source>
      <translation>Rapport du levé {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Report of the water (HTML)</source>
      <translation>Rapport de l'eau (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report, surface, contours and tables; files of these names there are replaced.</source>
      <translation>Rapport, surface, courbes de niveau et tables ; les fichiers de ces noms qui s'y trouvent sont remplacés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Residuals</source>
      <translation>Résidus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Residuals at control</source>
      <translation>Résidus aux points d'appui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Ridges</source>
      <translation>Crêtes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Rim as boundary where there is no other</source>
      <translation>Pourtour comme limite là où il n'y en a pas d'autre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rising depths such as 0.1; 0.25; 0.5; 1, used for cut and for fill.</source>
      <translation>Profondeurs croissantes, par exemple 0.1; 0.25; 0.5; 1, utilisées pour le déblai et pour le remblai.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Rising numbers with semicolons or blanks between them.</source>
      <translation>Nombres croissants séparés par des points-virgules ou des espaces.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Rising numbers with semicolons or blanks between them. They are no standard.</source>
      <translation>Nombres croissants séparés par des points-virgules ou des espaces. Ils ne sont pas une norme.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Roads and lines</source>
      <translation>Routes et lignes</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>Role of column {number}</source>
      <translation>Rôle de la colonne {number}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Root mean square difference (m)</source>
      <translation>Différence quadratique moyenne (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Round corners are cones in facets of 10 degrees; mitred ones carry both slopes on.</source>
      <translation>Les angles arrondis sont des cônes à facettes de 10 degrés ; ceux à onglet prolongent les deux talus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Rows</source>
      <translation>Lignes de la table</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rows of cut, fill and net (m³) with the ends of the 95 % interval and the standard deviations apart: random, drift, systematic and surface model.</source>
      <translation>Lignes de déblai, remblai et bilan (m³) avec les bornes de l'intervalle à 95 % et les écarts-types séparés : aléatoire, dérive, systématique et modèle de surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Rule</source>
      <translation>Règle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Rule does not apply</source>
      <translation>Règle non applicable</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Rules bring the window over which their slope is taken.</source>
      <translation>Les règles apportent la fenêtre sur laquelle leur pente est prise.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Run</source>
      <translation>Exécuter</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run everything</source>
      <translation>Tout exécuter</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run what is out of date</source>
      <translation>Exécuter ce qui est périmé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Runoff coefficient</source>
      <translation>Coefficient de ruissellement</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>S</source>
      <translation>S</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>S makes S001, S002, …; give each job another one.</source>
      <translation>S donne S001, S002, … ; donnez-en un autre à chaque travail.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Saddle</source>
      <translation>Col</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Sag</source>
      <translation>Creux</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Same places with different heights</source>
      <translation>Mêmes endroits avec des altitudes différentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line in the grid (m)</source>
      <translation>Ligne d'exemple en projection (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line on the ground (m)</source>
      <translation>Ligne d'exemple sur le terrain (m)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Say the CRS of the survey, such as EPSG:25832.</source>
      <translation>Indiquez le SCR du levé, par exemple EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Say which field of the ground cover holds its runoff coefficient.</source>
      <translation>Indiquez quel champ de la couverture du sol contient son coefficient de ruissellement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Scale</source>
      <translation>Échelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of heights (1 : N; empty: chosen)</source>
      <translation>Échelle des altitudes (1 : N ; vide : choisie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of lengths (1 : N)</source>
      <translation>Échelle des longueurs (1 : N)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Scale of the plan, 1 : …</source>
      <translation>Échelle du plan, 1 : …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Scales points between ground distances and the grid of the CRS about an origin.</source>
      <translation>Met les points à l'échelle entre distances terrain et projection du SCR autour d'une origine.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Second line</source>
      <translation>Seconde ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Second surface</source>
      <translation>Seconde surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Second surface (2DM mesh), such as a design</source>
      <translation>Seconde surface (maillage 2DM), par exemple un projet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Sections reach to each side (m)</source>
      <translation>Portée des profils de chaque côté (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Separator</source>
      <translation>Séparateur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Set of the file</source>
      <translation>Jeu du fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Set out</source>
      <translation>Implanter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Set-out points with design height, cut and fill, and a table for data collectors.</source>
      <translation>Points d'implantation avec altitude projet, déblai et remblai, et une table pour carnets de terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Seven parameters also tilt the survey; level instruments need four.</source>
      <translation>Sept paramètres inclinent aussi le levé ; les instruments calés à l'horizontale en demandent quatre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Shallower</source>
      <translation>Moins profonde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Shallower hollows do not count, however sure they are.</source>
      <translation>Les creux moins profonds ne comptent pas, si sûrs soient-ils.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Share of cut that cannot be used as fill (%)</source>
      <translation>Part du déblai inutilisable en remblai (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Share of the site in long triangles (%)</source>
      <translation>Part du site en triangles longs (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Share of the surface (%)</source>
      <translation>Part de la surface (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Sheet</source>
      <translation>Feuille</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>Sheets</source>
      <translation>Feuilles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Sheets (PDF)</source>
      <translation>Feuilles (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Sheets: {count}.</source>
      <translation>Feuilles : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground eastings (unit of the CRS)</source>
      <translation>Décalage des coordonnées est du terrain (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground northings (unit of the CRS)</source>
      <translation>Décalage des coordonnées nord du terrain (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Shift that balances (m)</source>
      <translation>Décalage qui équilibre (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Shorter than the window, windows overlap and neighbours share points.</source>
      <translation>Plus court que la fenêtre, les fenêtres se recouvrent et les voisines partagent des points.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Shows the file, the role of each column, rejected lines, and where points would land</source>
      <translation>Affiche le fichier, le rôle de chaque colonne, les lignes rejetées et l'endroit où tomberaient les points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Shows where nothing was recorded, and lists the places to walk again.</source>
      <translation>Montre où rien n'a été enregistré, et énumère les endroits à parcourir de nouveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Shrinkage: 0.9 where ten cubic metres in the ground make nine of fill. It depends on the material; take it from tests or the contract.</source>
      <translation>Contraction : 0.9 là où dix mètres cubes en place font neuf de remblai. Elle dépend du matériau ; tirez-la d'essais ou du marché.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Size of the labels on the plan (mm)</source>
      <translation>Taille des étiquettes sur le plan (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Slivers at the rim are taken off while it is wider; 165 is a good value.</source>
      <translation>Les triangles effilés du pourtour sont retirés tant que l'angle est plus grand ; 165 est une bonne valeur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Slope (%)</source>
      <translation>Pente (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Slope break</source>
      <translation>Rupture de pente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope classes</source>
      <translation>Classes de pente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope map</source>
      <translation>Carte des pentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Slopes at both ends too</source>
      <translation>Talus aussi aux deux extrémités</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes at outer corners</source>
      <translation>Talus aux angles saillants</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of cut, 1 : n</source>
      <translation>Talus de déblai, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of fill, 1 : n</source>
      <translation>Talus de remblai, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Slow errors of the receiver that points recorded near each other have in common.</source>
      <translation>Erreurs lentes du récepteur, communes aux points enregistrés près les uns des autres.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Smaller areas are left out.</source>
      <translation>Les aires plus petites sont laissées de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller gives more channels, and ridges between them.</source>
      <translation>Une valeur plus petite donne plus de talwegs, et des crêtes entre eux.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller ones are counted together with the rest of the rim.</source>
      <translation>Les plus petits sont comptés ensemble avec le reste du pourtour.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Smaller pieces, as along edges that are drawn twice, are left out.</source>
      <translation>Les morceaux plus petits, comme le long de côtés dessinés deux fois, sont laissés de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Smallest contour interval supported (m)</source>
      <translation>Plus petite équidistance justifiée (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Smallest form to be shown (m wide)</source>
      <translation>Plus petite forme à représenter (largeur en m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Smooth heights are for drawing only: they are up to {largest:.3f} m off the surface, most at E {easting:.3f} N {northing:.3f} (m).</source>
      <translation>Les altitudes lissées servent au dessin seulement : elles s'écartent de la surface de {largest:.3f} m au plus, le maximum étant à E {easting:.3f} N {northing:.3f} (m).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Smooth: move lines by up to (m in plan; 0: not at all)</source>
      <translation>Lisser : déplacer les lignes d'au plus (m en plan ; 0 : pas du tout)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>So many even steps from the pit to the spill.</source>
      <translation>Nombre de pas égaux du point bas au débordement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>So that a program that triangulates anew ends where the surface ends.</source>
      <translation>Pour qu'un programme qui triangule à nouveau s'arrête là où la surface s'arrête.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Source of the limit</source>
      <translation>Source de la limite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Spacing along lines and in areas (m)</source>
      <translation>Écartement le long des lignes et dans les aires (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Spacing along the passes (m)</source>
      <translation>Écartement le long des passages (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Spacing of the arrows (m)</source>
      <translation>Écartement des flèches (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Spacing of the grid, or interval along lines</source>
      <translation>Pas de la grille, ou intervalle le long des lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Spacing of the passes (m)</source>
      <translation>Écartement des passages (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Spacing of the starts of paths (m)</source>
      <translation>Écartement des départs de chemins (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Speed (km/h)</source>
      <translation>Vitesse (km/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Speeds and least K of crests (CSV)</source>
      <translation>Vitesses et K minimal des sommets (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Spike</source>
      <translation>Pic</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Spikes: more than … times the scatter of the neighbours</source>
      <translation>Pics : plus de … fois la dispersion des voisins</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Spill level (unit of the CRS)</source>
      <translation>Niveau de débordement (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spill point</source>
      <translation>Point de débordement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spills to</source>
      <translation>Déborde vers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Spot heights</source>
      <translation>Points cotés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Stage, area and volume</source>
      <translation>Niveau, aire et volume</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of K ({unit}/%)</source>
      <translation>Écart-type de K ({unit}/%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Standard deviation of a height (m)</source>
      <translation>Écart-type d'une altitude (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Standard deviation of a height, found in the survey (m)</source>
      <translation>Écart-type d'une altitude, déterminé dans le levé (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Standard deviation of a height: {total:.1f} mm ({low:.1f} to {high:.1f} mm at 95 %, {freedom:.0f} degrees of freedom, {places} places visited twice).</source>
      <translation>Écart-type d'une altitude : {total:.1f} mm ({low:.1f} à {high:.1f} mm à 95 %, {freedom:.0f} degrés de liberté, {places} endroits visités deux fois).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Standard deviation of a plan coordinate (m)</source>
      <translation>Écart-type d'une coordonnée en plan (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of a surveyed height (m)</source>
      <translation>Écart-type d'une altitude levée (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Standard deviation of it (unit of the CRS)</source>
      <translation>Son écart-type (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Standard deviation of one height of the rover (m)</source>
      <translation>Écart-type d'une altitude du mobile (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of set-out in plan (m)</source>
      <translation>Écart-type de l'implantation en plan (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Standard deviation of the depth (m)</source>
      <translation>Écart-type de la profondeur (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of the grade (%)</source>
      <translation>Écart-type de la pente longitudinale (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Standard deviation of the height of one point of the existing surface, as repeated points or check points tell it. A mesh file does not hold it, so it is asked for.</source>
      <translation>Écart-type de l'altitude d'un point de la surface existante, tel que l'indiquent des points répétés ou des points de contrôle. Un fichier de maillage ne le contient pas, il est donc demandé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Standard deviation of the residuals, robust (m)</source>
      <translation>Écart-type des résidus, robuste (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Standard deviation of the second surface (m)</source>
      <translation>Écart-type de la seconde surface (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Start</source>
      <translation>Départ</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts and their ends</source>
      <translation>Départs et leurs arrivées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface</source>
      <translation>Départs hors de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface, without a path: {count}.</source>
      <translation>Départs hors de la surface, sans chemin : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water comes to an inlet</source>
      <translation>Départs dont l'eau arrive à un avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water leaves over the rim</source>
      <translation>Départs dont l'eau sort par le pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water stays in a pit or pond</source>
      <translation>Départs dont l'eau reste dans un point bas ou une mare</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts: points, lines or areas</source>
      <translation>Départs : points, lignes ou aires</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement</source>
      <translation>Déclaration</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement (HTML)</source>
      <translation>Déclaration (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Station</source>
      <translation>Abscisse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Station (unit of the table)</source>
      <translation>Abscisse (unité de la table)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station equations (back = ahead)</source>
      <translation>Équations d'abscisse (arrière = avant)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the highest or lowest place</source>
      <translation>Abscisse du point le plus haut ou le plus bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station of the line's beginning</source>
      <translation>Abscisse du début de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Station of the lines' beginning</source>
      <translation>Abscisse du début des lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Station of the lines' beginning (unit of the CRS)</source>
      <translation>Abscisse du début des lignes (unité du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the lowest place</source>
      <translation>Abscisse du point le plus bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the sill</source>
      <translation>Abscisse du seuil</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the value</source>
      <translation>Abscisse de la valeur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station where the grades meet</source>
      <translation>Abscisse de la rencontre des pentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Stations</source>
      <translation>Abscisses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Steep end</source>
      <translation>Extrémité raide</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Steepest grade, either way (%)</source>
      <translation>Pente longitudinale la plus forte, dans les deux sens (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpile or pit volume</source>
      <translation>Volume d'un stock ou d'une fosse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits</source>
      <translation>Stocks et fosses</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits on {name}</source>
      <translation>Stocks et fosses sur {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Stopping, turning, looking for the next line.</source>
      <translation>S'arrêter, faire demi-tour, chercher la ligne suivante.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Storage of a basin</source>
      <translation>Stockage d'un bassin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Straight grade</source>
      <translation>Pente constante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Straight grades and parabolas fitted to that profile, as “Fit grades and vertical curves” does, as the alignment's profile. It describes what is there; it is no design.</source>
      <translation>Pentes droites et paraboles ajustées à ce profil, comme le fait « Ajuster des pentes et raccordements verticaux », comme profil de l'axe. Cela décrit l'existant ; ce n'est pas un projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Stretches of line inlets (m)</source>
      <translation>Tronçons d'avaloirs linéaires (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Stretches off the surface, left out: {count}, together {length:.2f} m of line.</source>
      <translation>Tronçons hors de la surface, laissés de côté : {count}, soit ensemble {length:.2f} m de ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that fail</source>
      <translation>Tronçons non conformes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that pass</source>
      <translation>Tronçons conformes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches too close to tell</source>
      <translation>Tronçons trop proches pour conclure</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches with verdicts</source>
      <translation>Tronçons avec verdicts</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Such as -3.5, 0, 3.5 in the unit of the table: left is below 0, right above.</source>
      <translation>Par exemple -3.5, 0, 3.5 dans l'unité de la table : la gauche est en dessous de 0, la droite au-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Such as 1+234.50; 1+300, parted by semicolons.</source>
      <translation>Par exemple 1+234.50; 1+300, séparés par des points-virgules.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Such as 1+250.00 or 1250: a plus stands after kilometres, in feet after hundreds.</source>
      <translation>Par exemple 1+250.00 ou 1250 : le plus vient après les kilomètres, en pieds après les centaines.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a centreline; stations grow in the way it was drawn.</source>
      <translation>Par exemple un axe ; les abscisses croissent dans le sens où il a été dessiné.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Such as a design. Differences are theirs less the first.</source>
      <translation>Par exemple un projet. Les différences sont les leurs moins la première.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a design; named by their files, in the CRS of the first surface.</source>
      <translation>Par exemple un projet ; nommées d'après leurs fichiers, dans le SCR de la première surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Such as a plan; the report lists them with their SHA-256.</source>
      <translation>Par exemple un plan ; le rapport les énumère avec leur SHA-256.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such as utf-8 or latin-1.</source>
      <translation>Par exemple utf-8 ou latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Such as “Import survey points” makes them without a CRS.</source>
      <translation>Par exemple « Importer les points du levé » les produit sans SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such lines are counted, not read. With auto the sign is found from the file.</source>
      <translation>Ces lignes sont comptées, pas lues. Avec auto, le signe est déterminé d'après le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Summit</source>
      <translation>Sommet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Summits, pits and saddles with height and prominence, on the surface as measured.</source>
      <translation>Sommets, points bas et cols avec altitude et proéminence, sur la surface telle que mesurée.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/drapelines.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <location filename="../plugin/processing/slopemap.py" />
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Surface</source>
      <translation>Surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>Surface (2DM mesh)</source>
      <translation>Surface (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface above the check point</source>
      <translation>Surface au-dessus du point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface above the fit</source>
      <translation>Surface au-dessus de l'ajustement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Surface as a raster (DEM)</source>
      <translation>Surface en raster (MNT)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface below the check point</source>
      <translation>Surface en dessous du point de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface below the fit</source>
      <translation>Surface en dessous de l'ajustement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface less fit (m)</source>
      <translation>Surface moins ajustement (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surface to LandXML</source>
      <translation>Surface vers LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface {number} less the first ({unit})</source>
      <translation>Surface {number} moins la première ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Surface, for the next step</source>
      <translation>Surface, pour l'étape suivante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, height</source>
      <translation>Surface, altitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces</source>
      <translation>Surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces read</source>
      <translation>Surfaces lues</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surfaces written</source>
      <translation>Surfaces écrites</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces: {surfaces}, points: {points}, breaklines and boundaries: {lines}, alignments: {alignments}. Unit of the file: {unit}; CRS: {crs}.</source>
      <translation>Surfaces : {surfaces}, points : {points}, lignes de rupture et limites : {lines}, tracés : {alignments}. Unité du fichier : {unit} ; SCR : {crs}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Surplus of the balance (m³ of fill; below 0: brought in)</source>
      <translation>Excédent de l'équilibre (m³ de remblai ; en dessous de 0 : apporté)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/hummock.py" />
      <source>Survey desk</source>
      <translation>Bureau du levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Survey file</source>
      <translation>Fichier de levé</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Survey files</source>
      <translation>Fichiers de levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;All files (*)</source>
      <translation>Fichiers de levé (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Survey or control points.</source>
      <translation>Points levés ou points d'appui.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Survey points</source>
      <translation>Points du levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Survey points (for times and own deviations)</source>
      <translation>Points du levé (pour les heures et leurs propres écarts-types)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Survey points in local coordinates</source>
      <translation>Points du levé en coordonnées locales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Surveyed on</source>
      <translation>Levé le</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Swell: how much room dug earth takes on a truck, such as 1.25.</source>
      <translation>Foisonnement : place que la terre excavée prend dans un camion, par exemple 1.25.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Switch it off for a step inside a model.</source>
      <translation>Désactivez-le pour une étape dans un modèle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Switch it off to label every contour.</source>
      <translation>Désactivez-le pour étiqueter chaque courbe de niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off when the lines were drawn with heights of 0.</source>
      <translation>Désactivez-le si les lignes ont été dessinées avec des altitudes de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Table for the data collector</source>
      <translation>Table pour le carnet de terrain</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Table of limits (CSV; empty: the one that comes with Hummock)</source>
      <translation>Table de limites (CSV ; vide : celle fournie avec Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Tables (*.csv *.txt);;All files (*)</source>
      <translation>Tables (*.csv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Tell where the water runs</source>
      <translation>Indiquer où l'eau s'écoule</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Test the accuracy</source>
      <translation>Tester la précision</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Tests a surface against check points, by NSSDA and ASPRS.</source>
      <translation>Teste une surface sur des points de contrôle, selon NSSDA et ASPRS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Text encoding</source>
      <translation>Encodage du texte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Text encoding (empty: found)</source>
      <translation>Encodage du texte (vide : détecté)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text files (*.csv *.txt)</source>
      <translation>Fichiers texte (*.csv *.txt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text in UTF-8; its notes stand in a second file, NAME_notes.txt.</source>
      <translation>Texte en UTF-8 ; ses remarques figurent dans un second fichier, NAME_notes.txt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>That of the mesh where it is empty.</source>
      <translation>Celui du maillage si ce champ est vide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The catchments with their peak flow.</source>
      <translation>Les bassins versants avec leur débit de pointe.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The changed surface is in {other}, the other in {crs}; bring both into one.</source>
      <translation>La surface modifiée est en {other}, l'autre en {crs} ; ramenez les deux à un même SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The coordinates are local or assumed: no CRS</source>
      <translation>Les coordonnées sont locales ou supposées : pas de SCR</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The day of the survey, as it shall be written.</source>
      <translation>Le jour du levé, tel qu'il doit être écrit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The design, or a later survey, in the same CRS.</source>
      <translation>Le projet, ou un levé postérieur, dans le même SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The difference from the height of the line there.</source>
      <translation>La différence avec l'altitude de la ligne à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The difference in height between two neighbouring contours.</source>
      <translation>La différence d'altitude entre deux courbes de niveau voisines.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The distance from pass to pass is found from the surface itself.</source>
      <translation>La distance de passage à passage est déterminée d'après la surface elle-même.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The distance of the passes is measured from the triangles themselves; with 1.5, bays wider than three passes stay open. For surveys recorded while walking to and fro.</source>
      <translation>La distance des passages est mesurée sur les triangles eux-mêmes ; avec 1.5, les échancrures plus larges que trois passages restent ouvertes. Pour les levés enregistrés en allers et retours.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The doubt of the heights, such as 0.015 for a fixed RTK solution. In metres.</source>
      <translation>L'incertitude des altitudes, par exemple 0.015 pour une solution RTK fixe. En mètres.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>The existing surface with the design in it: what the ground will be.</source>
      <translation>La surface existante avec le projet intégré : ce que sera le terrain.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that holds what the surveyor typed beside the point.</source>
      <translation>Le champ qui contient ce que le géomètre a saisi à côté du point.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that names the points.</source>
      <translation>Le champ qui nomme les points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>The first line names the columns name, easting, northing and, where known, height.</source>
      <translation>La première ligne nomme les colonnes name, easting, northing et, si elle est connue, height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The ground cover overlaps within a catchment ({over:.2f} map units² twice); mend it first.</source>
      <translation>La couverture du sol se recouvre dans un bassin versant ({over:.2f} unités de carte² en double) ; corrigez-la d'abord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The ground inside each line with the volumes above and below its base.</source>
      <translation>Le terrain à l'intérieur de chaque ligne avec les volumes au-dessus et en dessous de sa base.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The height from which the levels are counted.</source>
      <translation>L'altitude à partir de laquelle les niveaux sont comptés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The interval, error or spacing, in the unit below.</source>
      <translation>L'équidistance, l'erreur ou l'écartement, dans l'unité ci-dessous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The layer of that name from “Build the surface”, with the columns kind and label.</source>
      <translation>La couche de ce nom issue de « Construire la surface », avec les colonnes kind et label.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The layout is then under Project › Layouts.</source>
      <translation>La mise en page se trouve ensuite sous Projet › Mises en page.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The length over which a grade is taken: shorter shows more, and more noise.</source>
      <translation>La longueur sur laquelle une pente longitudinale est prise : plus courte, elle montre plus de détails, et plus de bruit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The length over which a slope is taken: shorter shows more, and more noise.</source>
      <translation>La longueur sur laquelle une pente est prise : plus courte, elle montre plus de détails, et plus de bruit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The levels of the contours are whole multiples in this unit.</source>
      <translation>Les niveaux des courbes sont des multiples entiers dans cette unité.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>The limits “{text}” are no list of numbers; write them such as 1; 2; 5; 8.33; 20.</source>
      <translation>Les limites « {text} » ne sont pas une liste de nombres ; écrivez-les par exemple 1; 2; 5; 8.33; 20.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the crossfall; drawn beside the grades.</source>
      <translation>La ligne en fenêtres, avec la pente transversale ; dessinée à côté des pentes longitudinales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the grade along it.</source>
      <translation>La ligne en fenêtres, avec la pente le long de celle-ci.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The lines have heights of their own (Z)</source>
      <translation>Les lignes ont leurs propres altitudes (Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The lines that the surface was asked to hold to, by kind.</source>
      <translation>Les lignes que la surface devait respecter, par type.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>The lines with heights in the unit of the surface's CRS.</source>
      <translation>Les lignes avec des altitudes dans l'unité du SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>The lowest place, and the place where water leaves.</source>
      <translation>L'endroit le plus bas, et celui par où l'eau sort.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The lowest point of each pond and the one over which it spills.</source>
      <translation>Le point le plus bas de chaque mare et celui par-dessus lequel elle déborde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>The memory of this machine does not suffice; take fewer points at a time.</source>
      <translation>La mémoire de cette machine ne suffit pas ; prenez moins de points à la fois.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj.</source>
      <translation>Le fichier du maillage ; son SCR est écrit à côté en .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The name of a likely cause, such as swapped, as the warning shows it: the coordinates are then read so. Nothing is corrected without it.</source>
      <translation>Le nom d'une cause probable, par exemple swapped, telle que l'avertissement l'affiche : les coordonnées sont alors lues ainsi. Rien n'est corrigé sans cela.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The outermost ponds of both surfaces; those gone as they were.</source>
      <translation>Les mares extérieures des deux surfaces ; celles qui ont disparu, telles qu'elles étaient.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>The output cannot be written ({reason}); choose another file.</source>
      <translation>La sortie ne peut pas être écrite ({reason}) ; choisissez un autre fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The paper's long side upright.</source>
      <translation>Le grand côté du papier à la verticale.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>The place that keeps its coordinates. From ground to grid it has to be given.</source>
      <translation>L'endroit qui garde ses coordonnées. Du terrain à la projection, il doit être donné.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>The plane needs a layer of exactly three points with Z; {count} were found.</source>
      <translation>Le plan exige une couche d'exactement trois points avec Z ; {count} ont été trouvés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>The points as they are, with the answers as columns.</source>
      <translation>Les points tels quels, avec les réponses en colonnes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The points have no code field: no lines are joined by codes.</source>
      <translation>Les points n'ont pas de champ de code : aucune ligne n'est jointe par les codes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The points that the surface was built from, in the CRS of the surface.</source>
      <translation>Les points à partir desquels la surface a été construite, dans le SCR de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The points that the surface was built from. Their times tell which drift together, their field sigma_v takes the place of the standard deviation above. Without them each strip of 1 m along the line counts as a pass of its own, which is cautious.</source>
      <translation>Les points à partir desquels la surface a été construite. Leurs heures indiquent lesquels dérivent ensemble, leur champ sigma_v remplace l'écart-type ci-dessus. Sans eux, chaque bande de 1 m le long de la ligne compte comme un passage à part, ce qui est prudent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The points that the surface was built from; rejected ones do not count.</source>
      <translation>Les points à partir desquels la surface a été construite ; les points rejetés ne comptent pas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>The polygons with cut, fill, net, their ± (95 %), areas and mean depths.</source>
      <translation>Les polygones avec déblai, remblai, bilan, leurs ± (95 %), aires et profondeurs moyennes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>The profile to scale with grades and K.</source>
      <translation>Le profil en long à l'échelle avec pentes et K.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The profile to scale with its table.</source>
      <translation>Le profil en long à l'échelle avec son tableau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>The project's name in the file.</source>
      <translation>Le nom du projet dans le fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>The receiver claims {claimed:.1f} mm.</source>
      <translation>Le récepteur annonce {claimed:.1f} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The recording distance set in the receiver.</source>
      <translation>L'intervalle d'enregistrement en distance réglé dans le récepteur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m)</source>
      <translation>Idem pour la seconde surface (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m; 0: a design)</source>
      <translation>Idem pour la seconde surface (m ; 0 : un projet)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The same radius in distances of the passes (empty: no limit)</source>
      <translation>Le même rayon en écartements des passages (vide : pas de limite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>The sections to scale.</source>
      <translation>Les profils en travers à l'échelle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The short side of the paper is below.</source>
      <translation>Le petit côté du papier est en bas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The side of a square of ground in which drift is one and the same.</source>
      <translation>Le côté d'un carré de terrain dans lequel la dérive est une seule et même.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The size of a sheet.</source>
      <translation>Le format d'une feuille.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>The size of the typeface; figures are about 0.7 of it high.</source>
      <translation>Le corps de la police ; les chiffres en font environ 0,7 en hauteur.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>The statement with its statistics, a map and every check point.</source>
      <translation>La déclaration avec ses statistiques, une carte et chaque point de contrôle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The two surfaces do not overlap; check that both belong to one site.</source>
      <translation>Les deux surfaces ne se recouvrent pas ; vérifiez qu'elles appartiennent au même site.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>The unit in the file. Empty: as found from the file, else that of the CRS.</source>
      <translation>L'unité du fichier. Vide : celle trouvée dans le fichier, sinon celle du SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The unit in the file. Empty: that of the CRS.</source>
      <translation>L'unité du fichier. Vide : celle du SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The water of each full pond; parts lie over the pond they are parts of.</source>
      <translation>L'eau de chaque mare pleine ; les parties sont placées au-dessus de la mare dont elles font partie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The way of the overflow to the next pond, an inlet or the rim.</source>
      <translation>Le chemin du trop-plein vers la mare suivante, un avaloir ou le pourtour.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The widest ones are kept.</source>
      <translation>Les plus larges sont conservés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>The width of the window around each place. 0: the triangle there alone.</source>
      <translation>La largeur de la fenêtre autour de chaque endroit. 0 : le triangle à cet endroit seul.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>The width of the window around each triangle. 0: the triangle alone.</source>
      <translation>La largeur de la fenêtre autour de chaque triangle. 0 : le triangle seul.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>There are no check points; give a layer or a file of them, or the survey.</source>
      <translation>Il n'y a pas de points de contrôle ; donnez-en une couche ou un fichier, ou le levé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>Aucun parcours n'est assez long pour dire comment les altitudes se répètent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>There is no {what} for {count} catchments, the first is feature {feature}; give one.</source>
      <translation>Il n'y a pas de {what} pour {count} bassins versants, le premier est l'entité {feature} ; donnez-en un.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>They are merged with the files and the layer above. Heights are their Z, or their field height where the points have none; name and code are taken from fields called so.</source>
      <translation>Ils sont réunis aux fichiers et à la couche ci-dessus. Leurs altitudes sont leur Z, ou leur champ height quand les points n'en ont pas ; le nom et le code sont pris dans les champs ainsi nommés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>They go in as they are, with the style they have in the project.</source>
      <translation>Elles y entrent telles quelles, avec leur style dans le projet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thin a surface</source>
      <translation>Alléger une surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface (2DM mesh)</source>
      <translation>Surface allégée (maillage 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface, height</source>
      <translation>Surface allégée, altitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Three points of the plane (instead of a level)</source>
      <translation>Trois points du plan (au lieu d'un niveau)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time (minutes)</source>
      <translation>Temps (minutes)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time for each turn (s)</source>
      <translation>Temps par demi-tour (s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Title</source>
      <translation>Titre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To (m along the line)</source>
      <translation>Jusqu'à (m le long de la ligne)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pit</source>
      <translation>Vers un point bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pond</source>
      <translation>Vers une mare</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To an inlet</source>
      <translation>Vers un avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>To begin one of your own, have the table written by “Limits as a file to edit”.</source>
      <translation>Pour en commencer une à vous, faites écrire la table par « Limites sous forme de fichier à modifier ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To both edges</source>
      <translation>Vers les deux bords</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>To go on where another table ended.</source>
      <translation>Pour continuer là où une autre table s'est arrêtée.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To neither edge</source>
      <translation>Vers aucun bord</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>To offset ({unit})</source>
      <translation>Jusqu'au déport ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To station</source>
      <translation>Jusqu'à l'abscisse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the left edge</source>
      <translation>Vers le bord gauche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the right edge</source>
      <translation>Vers le bord droit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To the rim</source>
      <translation>Vers le pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Toe of fill</source>
      <translation>Pied de remblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Toe or rim lines</source>
      <translation>Lignes de pied ou de bord</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Tolerance at crossings (m)</source>
      <translation>Tolérance aux croisements (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Tolerance in height (m)</source>
      <translation>Tolérance en altitude (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Tolerance of arcs (m)</source>
      <translation>Tolérance des arcs (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerance sets of your own (JSON)</source>
      <translation>Vos propres jeux de tolérances (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances</source>
      <translation>Tolérances</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances as a file to edit</source>
      <translation>Tolérances sous forme de fichier à modifier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Too close to tell</source>
      <translation>Trop proche pour conclure</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Top of cut</source>
      <translation>Crête de déblai</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Topographic plan</source>
      <translation>Plan topographique</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Tops of layers below the ground, from above to below</source>
      <translation>Toits des couches sous le terrain, de haut en bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Topsoil stripped first (m)</source>
      <translation>Terre végétale décapée d'abord (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Topsoil {volume:.1f} m³ off {area:.1f} m².</source>
      <translation>Terre végétale : {volume:.1f} m³ sur {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles</source>
      <translation>Triangles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.</source>
      <translation>Les triangles sont retirés du pourtour tant que leur côté extérieur est plus long. En mètres quel que soit le SCR.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles in the GeoPackage</source>
      <translation>Triangles dans le GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Triangles whose centre lies inside are left out. A column “edit” may say remove_triangle (the one inside) or add_triangle (take back one that boundary, void or rim left out) instead.</source>
      <translation>Les triangles dont le centre est à l'intérieur sont laissés de côté. Une colonne « edit » peut indiquer à la place remove_triangle (celui qui est dedans) ou add_triangle (reprendre celui que la limite, un trou ou le pourtour a écarté).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Triangles with a longer edge are taken off the rim of the surface.</source>
      <translation>Les triangles ayant un côté plus long sont retirés du pourtour de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with a longer edge count as ground that nobody walked.</source>
      <translation>Les triangles ayant un côté plus long comptent comme du terrain que personne n'a parcouru.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with an edge over the limit.</source>
      <translation>Triangles ayant un côté au-delà de la limite.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangulates survey points with breaklines, boundary and voids into a mesh.</source>
      <translation>Triangule des points levés avec lignes de rupture, limite et trous en un maillage.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turn (degrees, counter-clockwise)</source>
      <translation>Rotation (degrés, sens antihoraire)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turns, scales and shifts a local survey onto control points by least squares.</source>
      <translation>Tourne, met à l'échelle et décale un levé local sur des points d'appui par moindres carrés.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Two geoid separations are given, a constant and a grid; give one of them.</source>
      <translation>Deux ondulations du géoïde sont données, une constante et une grille ; n'en donnez qu'une.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Typical section (CSV; empty: from the values below)</source>
      <translation>Profil type (CSV ; vide : d'après les valeurs ci-dessous)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>US survey feet (ftUS, 1200/3937 m)</source>
      <translation>Pieds de géomètre américains (ftUS, 1200/3937 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Unchanged</source>
      <translation>Inchangé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Undecided</source>
      <translation>Indécis</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit</source>
      <translation>Unité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit (empty: as the file says)</source>
      <translation>Unité (vide : comme l'indique le fichier)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit of &amp;heights:</source>
      <translation>Unité des al&amp;titudes :</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Unit of easting and northing</source>
      <translation>Unité des coordonnées est et nord</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit of heights, if another</source>
      <translation>Unité des altitudes, si elle diffère</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Unit of interval and base</source>
      <translation>Unité de l'équidistance et de la base</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Unit of stations, offsets and heights</source>
      <translation>Unité des abscisses, déports et altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the control file (empty: that of the CRS)</source>
      <translation>Unité du fichier des points d'appui (vide : celle du SCR)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of the heights, if another</source>
      <translation>Unité des altitudes, si elle diffère</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the survey's coordinates</source>
      <translation>Unité des coordonnées du levé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Unit of the table</source>
      <translation>Unité de la table</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Unit of the value</source>
      <translation>Unité de la valeur</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit: {unit}</source>
      <translation>Unité : {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Units</source>
      <translation>Unités</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Upright</source>
      <translation>Portrait</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Use as shown</source>
      <translation>Utiliser tel qu'affiché</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Use the heights (Z) of the lines in these layers</source>
      <translation>Utiliser les altitudes (Z) des lignes de ces couches</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Used</source>
      <translation>Utilisé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Value nearest to or farthest beyond the limit</source>
      <translation>Valeur la plus proche de la limite ou la dépassant le plus</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Value wanted</source>
      <translation>Valeur voulue</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Verdict at 95 %</source>
      <translation>Verdict à 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Vertical class wanted (cm RMSE)</source>
      <translation>Classe verticale voulue (RMSE en cm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices dropped</source>
      <translation>Sommets supprimés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept</source>
      <translation>Sommets conservés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept: {kept}, dropped: {dropped}. Largest difference {largest:.4f} m at E {easting:.3f} N {northing:.3f} (m), root mean square {rms:.4f} m; asked for: {tolerance:g} m.</source>
      <translation>Sommets conservés : {kept}, supprimés : {dropped}. Plus grande différence {largest:.4f} m à E {easting:.3f} N {northing:.3f} (m), moyenne quadratique {rms:.4f} m ; demandé : {tolerance:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Void</source>
      <translation>Trou</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Voids</source>
      <translation>Trous</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Volume (m³)</source>
      <translation>Volume (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Volume at the spill level (m³)</source>
      <translation>Volume au niveau de débordement (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Volume between two surfaces</source>
      <translation>Volume entre deux surfaces</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volume by region</source>
      <translation>Volume par région</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Volume to a level or plane</source>
      <translation>Volume jusqu'à un niveau ou un plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Volumes</source>
      <translation>Volumes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes (table)</source>
      <translation>Volumes (table)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes by height (table)</source>
      <translation>Volumes par altitude (table)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region</source>
      <translation>Volumes par région</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and depth</source>
      <translation>Volumes par région et profondeur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and quantity</source>
      <translation>Volumes par région et quantité</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>W</source>
      <translation>O</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walk the perimeter too</source>
      <translation>Parcourir aussi le périmètre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walking plan</source>
      <translation>Plan de parcours</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Wanted is</source>
      <translation>Est demandé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Waste {waste:.1f} m³ ({waste_loose:.1f} m³ loose), borrow {borrow:.1f} m³ ({borrow_loose:.1f} m³ loose).</source>
      <translation>Évacuation {waste:.1f} m³ ({waste_loose:.1f} m³ foisonnés), emprunt {borrow:.1f} m³ ({borrow_loose:.1f} m³ foisonnés).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water</source>
      <translation>Eau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Water at the spill level</source>
      <translation>Eau au niveau de débordement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Water in all full ponds (m³)</source>
      <translation>Eau dans toutes les mares pleines (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water in hollows</source>
      <translation>Eau dans les creux</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Water runs to: left, right, both, neither, unsure</source>
      <translation>L'eau s'écoule vers : la gauche, la droite, les deux, aucune, incertain</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>What a change does to the water</source>
      <translation>Ce qu'un changement fait à l'eau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>What became of the edits</source>
      <translation>Ce que sont devenues les modifications</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>What becomes of water that comes to a place with nothing lower around it.</source>
      <translation>Ce que devient l'eau qui arrive à un endroit sans rien de plus bas autour.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>What each half of the lane should fall to its edge; common practice, no source.</source>
      <translation>Ce que chaque moitié de la voie doit descendre vers son bord ; pratique courante, sans source.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>What grows at the point, such as hard, short grass, tall grass.</source>
      <translation>Ce qui pousse au point, par exemple sol nu, herbe courte, herbe haute.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>What heights are measured from. Empty: as a compound CRS says it.</source>
      <translation>Référence à partir de laquelle les altitudes sont mesurées. Vide : comme l'indique un SCR composé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>What is above the first of these layers.</source>
      <translation>Ce qui se trouve au-dessus de la première de ces couches.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What is set out</source>
      <translation>Ce qui est implanté</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>What lies beyond is not in that check.</source>
      <translation>Ce qui est au-delà n'est pas compris dans ce contrôle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What lies under the heap, or lay over the pit.</source>
      <translation>Ce qui se trouve sous le tas, ou se trouvait au-dessus de la fosse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>What parts the columns.</source>
      <translation>Ce qui sépare les colonnes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>What single points are held to; a file of your own goes before.</source>
      <translation>Ce à quoi les points isolés sont tenus ; un fichier à vous est prioritaire.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>What the coordinates are in, whatever the file says. Nothing is transformed.</source>
      <translation>Unité des coordonnées, quoi qu'indique le fichier. Rien n'est transformé.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What the data collector shows with the point.</source>
      <translation>Ce que le carnet de terrain affiche avec le point.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>What the points are, and what they become.</source>
      <translation>Ce que sont les points, et ce qu'ils deviennent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>What the receiver reads; the mesh's file name where it is empty.</source>
      <translation>Ce que lit le destinataire ; le nom du fichier du maillage si ce champ est vide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What the results call them.</source>
      <translation>Nom que leur donnent les résultats.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>What the surveyor types beside a code where a line begins, ends, closes, or runs in an arc through the point. Commas between them; leave one empty where the field has no word.</source>
      <translation>Ce que le géomètre saisit à côté d'un code là où une ligne commence, finit, se ferme, ou passe par le point en arc. Séparez par des virgules ; laissez vide là où le terrain n'a pas de mot.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>What the value below means.</source>
      <translation>Ce que signifie la valeur ci-dessous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>What was done to coordinates</source>
      <translation>Ce qui a été fait aux coordonnées</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Whatever the formula allows.</source>
      <translation>Tout ce que permet la formule.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Where catchments differ; in place of the one for all.</source>
      <translation>Là où les bassins versants diffèrent ; à la place de celui qui vaut pour tous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Where grades meet</source>
      <translation>Rencontre des pentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Where it is known otherwise than from the points.</source>
      <translation>Là où on le connaît autrement que par les points.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Where lines cross</source>
      <translation>Aux croisements de lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Where lines differ. A line whose field is empty takes the height above.</source>
      <translation>Là où les lignes diffèrent. Une ligne dont le champ est vide prend l'altitude ci-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where polygons overlap the ground counts once.</source>
      <translation>Là où des polygones se recouvrent, le terrain compte une seule fois.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Where polygons overlap the ground counts once; for one row each see “Volume by region”.</source>
      <translation>Là où des polygones se recouvrent, le terrain compte une seule fois ; pour une ligne par polygone, voir « Volume par région ».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Where ponds spill to</source>
      <translation>Où débordent les mares</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Where the design meets the ground: top of cut, toe of fill, and ends without slope.</source>
      <translation>Là où le projet rencontre le terrain : crête de déblai, pied de remblai et extrémités sans talus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Where the numbering jumps, such as 1+200 = 1+250; 3+000 = 0+000, in the order of the line.</source>
      <translation>Là où la numérotation saute, par exemple 1+200 = 1+250; 3+000 = 0+000, dans l'ordre de la ligne.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <source>Where the points would land</source>
      <translation>Où tomberaient les points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Where the rule applies</source>
      <translation>Là où la règle s'applique</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where the sloping plane has the height given as level.</source>
      <translation>Là où le plan incliné a l'altitude donnée comme niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Where the surfaces cross, with the height there.</source>
      <translation>Là où les surfaces se croisent, avec l'altitude à cet endroit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Where the water of two channels parts.</source>
      <translation>Là où les eaux de deux talwegs se séparent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Where water starts. Empty: a square grid all over the surface.</source>
      <translation>Là où l'eau commence. Vide : une grille carrée sur toute la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Where you come from. Empty: the south-west.</source>
      <translation>D'où vous venez. Vide : le sud-ouest.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Whether the first line that is no comment is a header.</source>
      <translation>Si la première ligne qui n'est pas un commentaire est un en-tête.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Which are made.</source>
      <translation>Lesquels sont produits.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest angle opposite to an outer edge (degrees; empty: no limit)</source>
      <translation>Plus grand angle opposé à un côté extérieur (degrés ; vide : pas de limite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest circle of triangles at the rim (radius in m; empty: no limit)</source>
      <translation>Plus grand cercle des triangles au pourtour (rayon en m ; vide : pas de limite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Widest gap in a breakline (m)</source>
      <translation>Plus grande lacune dans une ligne de rupture (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the ditch's bottom (m)</source>
      <translation>Largeur du fond du fossé (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the lane on each side (m)</source>
      <translation>Largeur de la voie de chaque côté (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width of the section ({unit})</source>
      <translation>Largeur du profil ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the shoulder on each side (m; 0: none)</source>
      <translation>Largeur de l'accotement de chaque côté (m ; 0 : aucun)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the left</source>
      <translation>Largeur à gauche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the right</source>
      <translation>Largeur à droite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width with both surfaces ({unit})</source>
      <translation>Largeur avec les deux surfaces ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Window (m)</source>
      <translation>Fenêtre (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Window of a grade (m)</source>
      <translation>Fenêtre d'une pente longitudinale (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Window of the indications (m)</source>
      <translation>Fenêtre des indications (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Windows that the surface does not cover, without a slope: {count} of {all}.</source>
      <translation>Fenêtres que la surface ne couvre pas, sans pente : {count} sur {all}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>With a field “name”; they stand at the end of the table and in the layer.</source>
      <translation>Avec un champ « name » ; ils figurent à la fin de la table et dans la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With grades and vertical curves fitted</source>
      <translation>Avec des pentes et des raccordements verticaux ajustés</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>With the groups (?P&lt;code&gt;…) and, if there are any, (?P&lt;line&gt;…) and (?P&lt;words&gt;…), for codes that are written in another way.</source>
      <translation>Avec les groupes (?P&lt;code&gt;…) et, s'il y en a, (?P&lt;line&gt;…) et (?P&lt;words&gt;…), pour les codes écrits autrement.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With the profile of the surface</source>
      <translation>Avec le profil en long de la surface</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>With where its water went and where it goes.</source>
      <translation>Avec l'endroit où allait son eau et celui où elle va.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Without a typical section out of a table. Ditches are dug where the ground is above.</source>
      <translation>Sans profil type tiré d'une table. Des fossés sont creusés là où le terrain est au-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Without it the surface ends at the outermost passes.</source>
      <translation>Sans cela, la surface s'arrête aux passages extérieurs.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Words for begin, end, close and arc</source>
      <translation>Mots pour début, fin, fermeture et arc</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Write the report</source>
      <translation>Écrire le rapport</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Writes a surface as LandXML, DXF, GeoPackage, GeoTIFF and mesh into one folder.</source>
      <translation>Écrit une surface en LandXML, DXF, GeoPackage, GeoTIFF et maillage dans un même dossier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Writes surfaces, points, breaklines and alignments as LandXML 1.2.</source>
      <translation>Écrit des surfaces, points, lignes de rupture et tracés en LandXML 1.2.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Writes the heights of a surface as a GeoTIFF, exact or smooth for drawing.</source>
      <translation>Écrit les altitudes d'une surface en GeoTIFF, exactes ou lissées pour le dessin.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Writes the set that was used. Change the numbers and give the file back above.</source>
      <translation>Écrit le jeu utilisé. Changez les nombres et redonnez le fichier ci-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Writes the table that was used. Change it and give the file back above.</source>
      <translation>Écrit la table utilisée. Changez-la et redonnez le fichier ci-dessus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Written with the other notes on every sheet.</source>
      <translation>Inscrit avec les autres remarques sur chaque feuille.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Written: {file}</source>
      <translation>Écrit : {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a contour interval</source>
      <translation>une équidistance</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>a grid over its polygons</source>
      <translation>une grille sur ses polygones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a height error of the surface (RMSE)</source>
      <translation>une erreur altimétrique de la surface (RMSE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a spacing of the passes</source>
      <translation>un écartement des passages</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>accuracy,check points,RMSE,bias,NSSDA,FGDC,ASPRS,vertical class,95 percent,test</source>
      <translation>précision,points de contrôle,RMSE,biais,NSSDA,FGDC,ASPRS,classe verticale,95 pour cent,test</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>all of the ground compared</source>
      <translation>tout le terrain comparé</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>as found</source>
      <translation>tel que trouvé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as in the file (with a geoid separation: orthometric)</source>
      <translation>comme dans le fichier (avec une ondulation du géoïde : orthométrique)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>as recognised</source>
      <translation>tel que reconnu</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as the file says</source>
      <translation>comme l'indique le fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>balance,cut,fill,level,grading,pad,strip,profile,surplus,shrinkage,earthwork</source>
      <translation>équilibre,déblai,remblai,niveau,terrassement,plateforme,bande,profil en long,excédent,contraction,mouvement des terres</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>balance: the height where cut makes up for fill.</source>
      <translation>équilibre : l'altitude où le déblai compense le remblai.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>base of {name}</source>
      <translation>base de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>basin,pond,storage,stage,volume,capacity,spill,water level,retention,detention</source>
      <translation>bassin,mare,stockage,hauteur d'eau,volume,capacité,débordement,niveau d'eau,rétention,stockage temporaire</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>best-fit plane of the line</source>
      <translation>plan le mieux ajusté à la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>blank</source>
      <translation>espace</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>blanks</source>
      <translation>espaces</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>blunders,outliers,tolerances,pole height,fix,tilt,status,reject,flag,repeatability,noise</source>
      <translation>fautes,valeurs aberrantes,tolérances,hauteur de canne,fix,inclinaison,statut,rejeter,signaler,répétabilité,bruit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>broken: banks, mounds, building sites</source>
      <translation>accidenté : talus, buttes, chantiers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>check,limits,rules,accessible,running slope,cross slope,grade,crossfall,kerb,ponding,gutter,sight,crest</source>
      <translation>contrôle,limites,règles,accessible,pente longitudinale,dévers,déclivité,pente transversale,bordure,flaques,caniveau,visibilité,sommet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>check,quality,warnings,spikes,flat triangles,long triangles,gaps,breaklines,tin</source>
      <translation>contrôle,qualité,avertissements,pics,triangles plats,triangles longs,lacunes,lignes de rupture,tin</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>code</source>
      <translation>code</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>comma</source>
      <translation>virgule</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>contour lines,isolines,levels,interval,tin,mesh,feet,metres</source>
      <translation>courbes de niveau,isolignes,niveaux,équidistance,tin,maillage,pieds,mètres</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>contour lines,smooth,labels,spot heights,summit,pit,plan,drawing,feet,half foot</source>
      <translation>courbes de niveau,lisser,étiquettes,points cotés,sommet,point bas,plan,dessin,pieds,demi-pied</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>control,helmert,similarity,transformation,local,site,calibration,residuals,least squares,outlier</source>
      <translation>points d'appui,helmert,similitude,transformation,local,site,calage,résidus,moindres carrés,valeur aberrante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>control: several observations, points others are built on</source>
      <translation>contrôle : plusieurs observations, points sur lesquels d'autres s'appuient</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>cross section,sections,offset,cut,fill,area,road,sheet,pdf,csv,line</source>
      <translation>profil en travers,profils,déport,déblai,remblai,aire,route,feuille,pdf,csv,ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut over {low} m</source>
      <translation>déblai de plus de {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut {low} to {high} m</source>
      <translation>déblai de {low} à {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>datum not stated</source>
      <translation>référence altimétrique non indiquée</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>dem,dtm,raster,grid,heights,elevation,geotiff,interpolate,hillshade,clough-tocher</source>
      <translation>mne,mnt,raster,grille,altitudes,élévation,geotiff,interpoler,ombrage,clough-tocher</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>done</source>
      <translation>fait</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>drape,lines,height,elevation,profile,z values,centreline,tin</source>
      <translation>draper,lignes,altitude,élévation,profil en long,valeurs z,axe,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>east</source>
      <translation>est</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>easting</source>
      <translation>est (E)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>ellipsoidal</source>
      <translation>ellipsoïdale</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>ellipsoidal height</source>
      <translation>hauteur ellipsoïdale</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>en</source>
      <translation>fr</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>even: fields, car parks, pitches</source>
      <translation>régulier : champs, parkings, terrains de sport</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>exact: linear on the triangles</source>
      <translation>exact : linéaire sur les triangles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>export,dxf,cad,geopackage,gpkg,geotiff,dem,landxml,mesh,deliver,checksums</source>
      <translation>export,dxf,cao,dao,geopackage,gpkg,geotiff,mnt,landxml,maillage,livrer,sommes de contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>failed</source>
      <translation>échoué</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill over {low} m</source>
      <translation>remblai de plus de {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill {low} to {high} m</source>
      <translation>remblai de {low} à {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>first: {steps}</source>
      <translation>d'abord : {steps}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>fitted</source>
      <translation>ajusté</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>fix</source>
      <translation>fix</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>found from the file</source>
      <translation>déterminé d'après le fichier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>four parameters in plan, heights by themselves</source>
      <translation>quatre paramètres en plan, altitudes à part</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from grid to ground</source>
      <translation>de la projection au terrain</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from ground to grid</source>
      <translation>du terrain à la projection</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>gaps,density,spacing,empty circles,walk again,waypoints,gpx,contour interval</source>
      <translation>lacunes,densité,écartement,cercles vides,parcourir de nouveau,points de cheminement,gpx,équidistance</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>grade,gradient,crossfall,cross slope,superelevation,camber,slope,percent,road</source>
      <translation>pente longitudinale,déclivité,pente transversale,dévers,bombement,pente,pourcentage,route</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>grading,pad,platform,yard,level,slope,batter,daylight,cut,fill,balance,earthwork</source>
      <translation>terrassement,plateforme,aire,niveau,pente,talus,entrée en terre,déblai,remblai,équilibre,mouvement des terres</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>grading,strip,road,path,bank,corridor,typical section,ditch,mass diagram,haul,cut,fill,earthwork</source>
      <translation>terrassement,bande,route,chemin,digue,corridor,profil type,fossé,épure de Lalanne,transport,déblai,remblai,mouvement des terres</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>ground,grid,scale factor,combined factor,projection,distance,elevation factor</source>
      <translation>terrain,projection,facteur d'échelle,facteur combiné,altération linéaire,distance,altitude,facteur d'altitude</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>height</source>
      <translation>altitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>height,elevation,slope,aspect,sample,query,check points,triangle,tin</source>
      <translation>altitude,élévation,pente,exposition,échantillonner,interroger,points de contrôle,triangle,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>in/h, acres, ft³/s</source>
      <translation>in/h, acres, ft³/s</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>intensity</source>
      <translation>intensité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>international feet (ft, 0.3048 m)</source>
      <translation>pieds internationaux (ft, 0.3048 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>its points, or the corners of its lines and polygons</source>
      <translation>ses points, ou les sommets de ses lignes et polygones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>kept as they are</source>
      <translation>conservés tels quels</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>landxml,xml,tin,surface,export,exchange,design,alignment,breaklines,machine</source>
      <translation>landxml,xml,tin,surface,export,échange,projet,tracé,lignes de rupture,engin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>landxml,xml,tin,surface,import,design,alignment,breaklines,points</source>
      <translation>landxml,xml,tin,surface,import,projet,tracé,lignes de rupture,points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>lane</source>
      <translation>voie</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>latitude</source>
      <translation>latitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>left of the line</source>
      <translation>à gauche de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its highest place</source>
      <translation>horizontal à son point le plus haut</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its lowest place</source>
      <translation>horizontal à son point le plus bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>level {level:.3f}</source>
      <translation>niveau {level:.3f}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>line</source>
      <translation>ligne</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>longitude</source>
      <translation>longitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>mesh (2DM)</source>
      <translation>maillage (2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>metres (m)</source>
      <translation>mètres (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>mitred</source>
      <translation>à onglet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>mm/h, hectares, l/s</source>
      <translation>mm/h, hectares, l/s</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>name</source>
      <translation>nom</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>no</source>
      <translation>non</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>no further details</source>
      <translation>pas d'autres détails</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <location filename="../plugin/processing/sinks.py" />
      <location filename="../plugin/processing/trustlayers.py" />
      <source>no reason given</source>
      <translation>sans motif indiqué</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>northing</source>
      <translation>nord (N)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumelayers.py" />
      <source>not known</source>
      <translation>inconnu</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>not part of this job</source>
      <translation>ne fait pas partie de ce travail</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>nothing yet</source>
      <translation>rien encore</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>offsets along its lines</source>
      <translation>déports le long de ses lignes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>orthometric (above a geoid)</source>
      <translation>orthométrique (au-dessus d'un géoïde)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>out of date</source>
      <translation>périmé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>over {low:.4g} %</source>
      <translation>plus de {low:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>over {low} m deep</source>
      <translation>plus de {low} m de profondeur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>plan,passes,lines,spacing,before the survey,distance,time,contour interval,rover</source>
      <translation>plan,passages,lignes,écartement,avant le levé,distance,temps,équidistance,mobile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>plan,sheet,pdf,print,layout,topographic,contours,spot heights,title block,key map,scale,paper</source>
      <translation>plan,feuille,pdf,imprimer,mise en page,topographique,courbes de niveau,points cotés,cartouche,plan de situation,échelle,papier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>plane of {level:.3f} at E {east:.2f} N {north:.2f}, {slope:g} % down to {towards:g}°</source>
      <translation>plan de {level:.3f} à E {east:.2f} N {north:.2f}, descendant de {slope:g} % vers {towards:g}°</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>point</source>
      <translation>point</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>pole height</source>
      <translation>hauteur de canne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>profile,longitudinal section,line,centreline,station,heights,grade,sheet,pdf,csv</source>
      <translation>profil en long,coupe longitudinale,ligne,axe,abscisse,altitudes,pente,feuille,pdf,csv</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>refuse when the heights differ by more than the tolerance</source>
      <translation>refuser lorsque les altitudes diffèrent de plus que la tolérance</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report,documentation,pdf,html,sha-256,checksums,hand over,accuracy,rejects,whole job</source>
      <translation>rapport,documentation,pdf,html,sha-256,sommes de contrôle,remise,précision,rejets,travail complet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf beside report.html.</source>
      <translation>report.pdf à côté de report.html.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf: {pages} pages.</source>
      <translation>report.pdf : {pages} pages.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterlayers.py" />
      <source>rest of the rim</source>
      <translation>reste du pourtour</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>right of the line</source>
      <translation>à droite de la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>role</source>
      <translation>rôle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>rolling: parks, pastures</source>
      <translation>ondulé : parcs, pâturages</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>round</source>
      <translation>arrondi</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>runoff coefficient</source>
      <translation>coefficient de ruissellement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>runs on over full ponds, to the rim or an inlet</source>
      <translation>continue par-dessus les mares pleines, jusqu'au pourtour ou à un avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>satellites</source>
      <translation>satellites</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>semicolon</source>
      <translation>point-virgule</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>set-out,stake out,staking,layout,grid,offsets,cut,fill,design,data collector,csv,control</source>
      <translation>implantation,implanter,piquetage,tracé,grille,déports,déblai,remblai,projet,carnet de terrain,csv,contrôle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>seven parameters in space</source>
      <translation>sept paramètres dans l'espace</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted</source>
      <translation>décalé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted and tilted (a plane)</source>
      <translation>décalé et incliné (un plan)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>shoulder</source>
      <translation>accotement</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in height</source>
      <translation>sigma en altitude</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in plan</source>
      <translation>sigma en plan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>slope,grade,gradient,steepness,classes,percent,areas,accessibility</source>
      <translation>pente,déclivité,gradient,raideur,classes,pourcentage,aires,accessibilité</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>smooth (Clough-Tocher): for drawing only</source>
      <translation>lissé (Clough-Tocher) : pour le dessin seulement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>soil</source>
      <translation>sol</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in every pit</source>
      <translation>s'arrête dans chaque point bas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in ponds and passes hollows that noise explains</source>
      <translation>s'arrête dans les mares et franchit les creux que le bruit explique</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>stockpile,heap,pile,pit,volume,toe,rim,base,inventory,tonnage,excavation,earthwork</source>
      <translation>stock,tas,dépôt,fosse,volume,pied,bord,base,inventaire,tonnage,excavation,terrassement</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load</source>
      <translation>levé,gnss,gps,rtk,mobile,csv,texte,coordonnées,lire,charger</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>tab</source>
      <translation>tabulation</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the height of the first line</source>
      <translation>prendre l'altitude de la première ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the mean of the heights</source>
      <translation>prendre la moyenne des altitudes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>the height that balances</source>
      <translation>l'altitude qui équilibre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>the plane through three points</source>
      <translation>le plan passant par trois points</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>thin,simplify,reduce,decimate,fewer points,tolerance,tin,mesh</source>
      <translation>alléger,simplifier,réduire,décimer,moins de points,tolérance,tin,maillage</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>tilt</source>
      <translation>inclinaison</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>time</source>
      <translation>temps</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids</source>
      <translation>tin,triangulation,delaunay,terrain,mnt,maillage,lignes de rupture,limite,trous</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>topographic: single observations while walking</source>
      <translation>topographique : observations uniques en marchant</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>triangles through the line</source>
      <translation>triangles traversés par la ligne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>unchanged</source>
      <translation>inchangé</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>vertical curve,parabola,K value,crest,sag,grade,profile,fit,alignment,road</source>
      <translation>raccordement vertical,parabole,valeur K,sommet,creux,pente,profil en long,ajustement,tracé,route</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>volume,earthwork,cut,fill,cut and fill,quantities,cubic metres,difference,excavation,uncertainty</source>
      <translation>volume,terrassement,déblai,remblai,déblai et remblai,quantités,mètres cubes,différence,excavation,incertitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>volume,earthwork,cut,fill,level,plane,slope,datum,levelling,platform,uncertainty</source>
      <translation>volume,terrassement,déblai,remblai,niveau,plan,pente,référence,nivellement,plateforme,incertitude</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>volume,earthwork,cut,fill,region,parcel,phase,polygon,quantities,depth,material,rock,topsoil</source>
      <translation>volume,terrassement,déblai,remblai,région,parcelle,phase,polygone,quantités,profondeur,matériau,rocher,terre végétale</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>water,catchment,watershed,basin,drainage area,inlet,gully,outlet,channel,ridge,divide,contributing area</source>
      <translation>eau,bassin versant,bassin,aire drainée,avaloir,grille,exutoire,talweg,crête,ligne de partage,aire contributive</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>water,change,design,difference,compare,before,after,ponds,catchments,diversion,drainage,impact</source>
      <translation>eau,changement,projet,différence,comparer,avant,après,mares,bassins versants,déviation,drainage,impact</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>water,flat,level,slope,fall,minimum slope,drainage,puddles</source>
      <translation>eau,plat,niveau,pente,chute,pente minimale,drainage,flaques</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>water,flow,direction,arrows,slope,aspect,downhill,drainage</source>
      <translation>eau,écoulement,direction,flèches,pente,exposition,descente,drainage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>water,flow,path,drainage,steepest descent,downhill,runoff,raindrop,trace,inlet</source>
      <translation>eau,écoulement,chemin,drainage,plus grande pente,descente,ruissellement,goutte de pluie,tracé,avaloir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>water,peak flow,runoff,rational method,rain,intensity,coefficient,stormwater,C i A</source>
      <translation>eau,débit de pointe,ruissellement,méthode rationnelle,pluie,intensité,coefficient,eaux pluviales,C i A</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>water,pond,puddle,pit,sink,depression,hollow,ponding,standing water,volume,spill,drainage</source>
      <translation>eau,mare,flaque,point bas,cuvette,dépression,creux,stagnation,eau stagnante,volume,débordement,drainage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>west</source>
      <translation>ouest</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>whole design</source>
      <translation>projet entier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>yes</source>
      <translation>oui</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>{columns} × {rows} cells, {filled} of them on the surface.</source>
      <translation>{columns} × {rows} cellules, dont {filled} sur la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>{count} of the further surfaces cannot be loaded as meshes; check their files.</source>
      <translation>{count} des autres surfaces ne peuvent pas être chargées comme maillages ; vérifiez leurs fichiers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>{count} pads</source>
      <translation>{count} plateformes</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{count} remarks, the first: {first}</source>
      <translation>{count} remarques, la première : {first}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>{curves} vertical curves; the surface departs from them by {spread:.1f} mm (robust standard deviation) and {worst:.1f} mm at most.</source>
      <translation>{curves} raccordements verticaux ; la surface s'en écarte de {spread:.1f} mm (écart-type robuste) et de {worst:.1f} mm au plus.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: cannot be read so.</source>
      <translation>{files} : ne peut pas être lu ainsi.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: {lines} lines, {points} points, &lt;b&gt;{rejects} rejected&lt;/b&gt;, {others} others.</source>
      <translation>{files} : {lines} lignes, {points} points, &lt;b&gt;{rejects} rejetées&lt;/b&gt;, {others} autres.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>{file}: cannot be opened again.</source>
      <translation>{file} : ne peut pas être rouvert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>{file}: cannot be written ({reason}); choose another file.</source>
      <translation>{file} : ne peut pas être écrit ({reason}) ; choisissez un autre fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{file}: the file does not say its CRS; ask for it and choose it.</source>
      <translation>{file} : le fichier n'indique pas son SCR ; demandez-le et choisissez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <source>{file}: the layer {layer} cannot be written ({reason}).</source>
      <translation>{file} : la couche {layer} ne peut pas être écrite ({reason}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planproject.py" />
      <source>{file}: the plan cannot be written {reason}</source>
      <translation>{file} : le plan ne peut pas être écrit {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geotiff.py" />
      <source>{file}: the raster cannot be written ({reason}); choose another file.</source>
      <translation>{file} : le raster ne peut pas être écrit ({reason}) ; choisissez un autre fichier.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{file}: there is no such file.</source>
      <translation>{file} : ce fichier n'existe pas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{file}: this makes a GeoTIFF; choose a name that ends in .tif.</source>
      <translation>{file} : ceci produit un GeoTIFF ; choisissez un nom qui se termine par .tif.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{folder}: the folder cannot be made ({reason}); choose another.</source>
      <translation>{folder} : le dossier ne peut pas être créé ({reason}) ; choisissez-en un autre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{hours} h {minutes:02d} min</source>
      <translation>{hours} h {minutes:02d} min</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>{label}: the height of its face is not known; give one, or fill the field.</source>
      <translation>{label} : l'altitude de son front n'est pas connue ; donnez-en une, ou remplissez le champ.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{label}: {area:.1f} m² in plan, {share:.1f} % of the surface.</source>
      <translation>{label} : {area:.1f} m² en plan, {share:.1f} % de la surface.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: a grid is laid over polygons; choose a layer of them.</source>
      <translation>{layer} : une grille se pose sur des polygones ; choisissez une couche de polygones.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drawnsource.py" />
      <source>{layer}: all heights are 0. If the lines were drawn without heights, switch their use off.</source>
      <translation>{layer} : toutes les altitudes valent 0. Si les lignes ont été dessinées sans altitudes, désactivez leur utilisation.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point {number} has no name; give it one, or choose the name field.</source>
      <translation>{layer} : le point d'appui {number} n'a pas de nom ; donnez-lui-en un, ou choisissez le champ du nom.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point “{name}” occurs twice; keep one.</source>
      <translation>{layer} : le point d'appui « {name} » apparaît deux fois ; n'en gardez qu'un.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: feature {id} has no geometry; delete or draw it.</source>
      <translation>{layer} : l'entité {id} n'a pas de géométrie ; supprimez-la ou dessinez-la.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} has no heights (Z); switch their use off.</source>
      <translation>{layer} : l'entité {id} n'a pas d'altitudes (Z) ; désactivez leur utilisation.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} is not one closed line (parts: {count}); close it, without holes.</source>
      <translation>{layer} : l'entité {id} n'est pas une seule ligne fermée (parties : {count}) ; fermez-la, sans trous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: features without a place or a height left out: {count}.</source>
      <translation>{layer} : entités sans position ou sans altitude laissées de côté : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>{layer}: features without a usable geometry left out: {count}.</source>
      <translation>{layer} : entités sans géométrie utilisable laissées de côté : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>{layer}: features without a usable line left out: {count}.</source>
      <translation>{layer} : entités sans ligne utilisable laissées de côté : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: is in {crs}, not in the CRS chosen; leave the CRS empty or reproject the layer.</source>
      <translation>{layer} : est en {crs}, et non dans le SCR choisi ; laissez le SCR vide ou reprojetez la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{layer}: it has neither a field cut_run nor fill_run; add one.</source>
      <translation>{layer} : elle n'a ni champ cut_run ni champ fill_run ; ajoutez-en un.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{layer}: it has {count} lines; a strip follows one. Select it.</source>
      <translation>{layer} : elle contient {count} lignes ; une bande n'en suit qu'une. Sélectionnez-la.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>{layer}: its CRS is not that of the surface; its points are compared as they are.</source>
      <translation>{layer} : son SCR n'est pas celui de la surface ; ses points sont comparés tels quels.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: its CRS is {crs}, that of the first surface {other}.</source>
      <translation>{layer} : son SCR est {crs}, celui de la première surface {other}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>{layer}: its CRS is {crs}, that of the surface {other}; reproject the layer first.</source>
      <translation>{layer} : son SCR est {crs}, celui de la surface {other} ; reprojetez d'abord la couche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: no point has a height; give points with Z values or choose the height field.</source>
      <translation>{layer} : aucun point n'a d'altitude ; donnez des points avec des valeurs Z ou choisissez le champ de l'altitude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: offsets are laid along lines; choose a layer of them.</source>
      <translation>{layer} : les déports se posent le long de lignes ; choisissez une couche de lignes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.</source>
      <translation>{layer} : points dont le statut n'est ni used, ni flagged, ni rejected, pris comme used : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: rejected points that are not handed over: {count}.</source>
      <translation>{layer} : points rejetés qui ne sont pas remis : {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: there are no lines in it; draw one around each stockpile or pit.</source>
      <translation>{layer} : elle ne contient pas de lignes ; dessinez-en une autour de chaque stock ou fosse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: there are no polygons in it; draw one or leave it out.</source>
      <translation>{layer} : elle ne contient pas de polygones ; dessinez-en un ou laissez-la de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: there is no field {field}; choose one of {fields}.</source>
      <translation>{layer} : il n'y a pas de champ {field} ; choisissez l'un de {fields}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{layer}: there is no line in it; draw one or leave it out.</source>
      <translation>{layer} : elle ne contient pas de ligne ; dessinez-en une ou laissez-la de côté.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>{layer}: {count} lines are in it; select one and tick “Selected features only”, or join them.</source>
      <translation>{layer} : elle contient {count} lignes ; sélectionnez-en une et cochez « Entités sélectionnées uniquement », ou joignez-les.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks, header and other sentences of a log.</source>
      <translation>{lines} lignes : {points} points, {rejected} lignes rejetées, {others} commentaires, lignes vides, en-tête et autres phrases d'un journal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{low:.4g} to {high:.4g} %</source>
      <translation>{low:.4g} à {high:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>{low} to {high} m deep</source>
      <translation>{low} à {high} m de profondeur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{name}: the line has no heights; give it Z, or a profile.</source>
      <translation>{name} : la ligne n'a pas d'altitudes ; donnez-lui un Z, ou un profil en long.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{name}: {above:.2f} ± {above_95:.2f} m³ above its base, {below:.2f} ± {below_95:.2f} m³ below.</source>
      <translation>{name} : {above:.2f} ± {above_95:.2f} m³ au-dessus de sa base, {below:.2f} ± {below_95:.2f} m³ en dessous.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{name}: {field} is “{value}”, which is no number; mend it.</source>
      <translation>{name} : {field} vaut « {value} », qui n'est pas un nombre ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>{rule}: pass {good:.1f} m, fail {bad:.1f} m, too close to tell {close:.1f} m.</source>
      <translation>{rule} : conforme {good:.1f} m, non conforme {bad:.1f} m, trop proche pour conclure {close:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{spacing:.2f} m from pass to pass, {distance:.0f} m to walk, {points} points, {turns} turns, {time}.</source>
      <translation>{spacing:.2f} m de passage à passage, {distance:.0f} m à parcourir, {points} points, {turns} demi-tours, {time}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{step} …</source>
      <translation>{step} …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>{what}: the CRS is not known; choose a projected one, such as EPSG:25832.</source>
      <translation>{what} : le SCR n'est pas connu ; choisissez un SCR projeté, tel que EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit needs a height; give a Z or fill the column height.</source>
      <translation>{where} : la modification a besoin d'une altitude ; donnez un Z ou remplissez la colonne height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit “{kind}” is none of {known}; correct the column edit.</source>
      <translation>{where} : la modification « {kind} » n'est aucune de {known} ; corrigez la colonne edit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: {value} in the column {name} is no number; correct it.</source>
      <translation>{where} : {value} dans la colonne {name} n'est pas un nombre ; corrigez-le.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of cut, 95 % (m³)</source>
      <translation>± du déblai, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill less cut, 95 % (m³)</source>
      <translation>± du remblai moins le déblai, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill, 95 % (m³)</source>
      <translation>± du remblai, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>± of it, 95 % (m³)</source>
      <translation>± de celui-ci, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>– (kept beside)</source>
      <translation>– (conservé à côté)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>“Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>« Contrôler le levé » le détermine ; 15 mm est usuel en RTK (pratique courante, sans source).</translation>
    </message>
  </context>
</TS>
