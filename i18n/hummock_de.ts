<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>core</name>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is in degrees; the surface needs a projected CRS in metres or feet, such as EPSG:25832.</source>
      <translation>'{crs}' ({name}) ist in Grad; die Oberfläche braucht ein projiziertes KBS in Metern oder Fuß, etwa EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is no projected CRS; the surface needs one in metres or feet.</source>
      <translation>'{crs}' ({name}) ist kein projiziertes KBS; die Oberfläche braucht eines in Metern oder Fuß.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is not in degrees; positions in degrees need a geographic CRS, such as EPSG:4326.</source>
      <translation>'{crs}' ({name}) ist nicht in Grad; Positionen in Grad brauchen ein geographisches KBS, etwa EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is in {unit}; only metres, feet and US survey feet are read. Choose another CRS.</source>
      <translation>'{crs}' ist in {unit}; gelesen werden nur Meter, Fuß und US-Vermessungsfuß. Wählen Sie ein anderes KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is not understood as a CRS; give an EPSG code such as EPSG:25832, or WKT.</source>
      <translation>'{crs}' ist als KBS nicht verständlich; geben Sie einen EPSG-Code wie EPSG:25832 oder WKT an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>'{name}' is to be left out, but is no matched control point.</source>
      <translation>'{name}' soll ausgelassen werden, ist aber kein zugeordneter Passpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>'{word}' neben einem Liniencode ist kein Wort der Feldkonvention; es bleibt unbeachtet. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns is empty; name the columns in file order.</source>
      <translation>--columns ist leer; nennen Sie die Spalten in der Reihenfolge der Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns lacks {roles}; a point needs easting, northing and height (or latitude, longitude and height).</source>
      <translation>--columns fehlt {roles}; ein Punkt braucht easting, northing und height (oder latitude, longitude und height).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is given twice; give it once.</source>
      <translation>--columns: '{word}' ist zweimal angegeben; geben Sie es einmal an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is no role{hint}; roles are {roles}. Use '-' to skip a column, '+{word}' to keep it as it is.</source>
      <translation>--columns: '{word}' ist keine Rolle{hint}; Rollen sind {roles}. Mit '-' wird eine Spalte übergangen, mit '+{word}' bleibt sie, wie sie ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is not role=column; a column is a header word or a number from 1.</source>
      <translation>--columns: '{word}' ist nicht Rolle=Spalte; eine Spalte ist ein Wort der Kopfzeile oder eine Zahl ab 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' mixes two ways; give either all as role=column or all in file order.</source>
      <translation>--columns: '{word}' mischt zwei Arten; geben Sie entweder alles als Rolle=Spalte an oder alles in der Reihenfolge der Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>--depths must be rising numbers with commas between them, not {value}.</source>
      <translation>--depths müssen steigende Zahlen mit Kommas dazwischen sein, nicht {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>--geoid is empty; give metres, or a file with a grid of geoid separations.</source>
      <translation>--geoid ist leer; geben Sie Meter an oder eine Datei mit einem Gitter von Geoidundulationen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>1 : {run}</source>
      <translation>1 : {run}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>1.9600 × RMSE (NSSDA, 95 %)</source>
      <translation>1,9600 × RMSE (NSSDA, 95 %)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>95 % interval (mm)</source>
      <translation>95-%-Intervall (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>95 %: 1.96 times that</source>
      <translation>95 %: das 1,96-Fache davon</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>95 in 100 are below</source>
      <translation>95 von 100 liegen darunter</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>95 in 100 records are nearer than</source>
      <translation>95 von 100 Aufzeichnungen liegen näher als</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>95th percentile of the absolute values</source>
      <translation>95. Perzentil der Beträge</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>A - A, along the line of the sections</source>
      <translation>A - A, entlang der Linie der Schnitte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>A bar along {name} for each of {count} rules with its verdicts.</source>
      <translation>Ein Balken entlang {name} für jede von {count} Regeln mit ihren Urteilen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.</source>
      <translation>Eine Zellgröße von {cell} m ergibt {columns} x {rows} Zellen auf dieser Oberfläche, mehr als {most}; geben Sie eine größere Zelle an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>A combined factor of {factor} cannot be right; it is a number close to 1.</source>
      <translation>Ein kombinierter Maßstabsfaktor von {factor} kann nicht stimmen; er ist eine Zahl nahe 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A contour interval of {interval:g} m asks for a height error of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Eine Äquidistanz von {interval:g} m verlangt einen Höhenfehler von einem Drittel davon (ASPRS Positional Accuracy Standards, 2014, Anhang B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} is too small to tell levels apart at heights near {high:.3f} m; give a larger interval.</source>
      <translation>Eine Äquidistanz von {interval} {unit} ist zu klein, um Stufen bei Höhen um {high:.3f} m zu unterscheiden; geben Sie eine größere an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} makes {count} levels from {low:.3f} m to {high:.3f} m, more than {most}; give a larger interval, or look for a wrong height.</source>
      <translation>Eine Äquidistanz von {interval} {unit} ergibt {count} Stufen von {low:.3f} m bis {high:.3f} m, mehr als {most}; geben Sie eine größere an oder suchen Sie nach einer falschen Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>A control point was not surveyed, and is not used: {names}.</source>
      <translation>Ein Passpunkt wurde nicht gemessen und wird nicht verwendet: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A cross-section cannot reach {left} to the left and {right} to the right. Give widths of 0 or more.</source>
      <translation>Ein Querprofil kann nicht {left} nach links und {right} nach rechts reichen. Geben Sie Breiten von 0 oder mehr an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>A curve of {count} steps cannot be made; give 1 to {most}.</source>
      <translation>Eine Kurve mit {count} Schritten lässt sich nicht bilden; geben Sie 1 bis {most} an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>A fault in the program, not in your file: {reason}. Please report it with what --debug shows.</source>
      <translation>Ein Fehler im Programm, nicht in Ihrer Datei: {reason}. Bitte melden Sie ihn mit dem, was --debug zeigt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>A file with another SHA-256 than here was changed afterwards; checksums.sha256 is the same list for programs that check it.</source>
      <translation>Eine Datei mit einer anderen SHA-256 als hier wurde nachträglich geändert; checksums.sha256 ist dieselbe Liste für Programme, die sie prüfen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A fit in space needs both standard deviations, in plan and in height, or neither.</source>
      <translation>Eine räumliche Einpassung braucht beide Standardabweichungen, in der Lage und in der Höhe, oder keine.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A four-parameter fit</source>
      <translation>Eine Einpassung mit vier Parametern</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid grid needs to know where the points are; say their CRS, or give a constant.</source>
      <translation>Ein Geoidgitter muss wissen, wo die Punkte liegen; nennen Sie ihr KBS oder geben Sie eine Konstante an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid separation of '{value}' is no number; give metres.</source>
      <translation>Eine Geoidundulation '{value}' ist keine Zahl; geben Sie Meter an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>A grid knows the depth at cell middles only. Along rims, breaklines and the line of no cut nor fill a cell is counted wholly or not at all: {area:.1f} m² were compared by the grid, {exact:.1f} m² exactly.</source>
      <translation>Ein Raster kennt die Tiefe nur in den Zellmitten. Entlang von Rändern, Bruchkanten und der Nulllinie zwischen Abtrag und Auftrag zählt eine Zelle ganz oder gar nicht: {area:.1f} m² hat das Raster verglichen, genau sind es {exact:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A height error of {error:.3f} m cannot be had with heights good to {sigma:.3f} m: their noise alone gives {least:.3f} m. Ask for less, or observe each point longer.</source>
      <translation>Ein Höhenfehler von {error:.3f} m ist mit Höhen, die auf {sigma:.3f} m gut sind, nicht zu haben: Ihr Rauschen allein ergibt {least:.3f} m. Verlangen Sie weniger oder beobachten Sie jeden Punkt länger.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>A hollow counts as a pond when the noise of the heights, with a standard deviation of {sigma} mm, makes one like it anywhere in the survey with a probability below {chance} %, and it is at least {depth} deep. This takes errors as independent; what neighbours share, as one bad fix over a minute, can make a wider hollow.</source>
      <translation>Eine Mulde zählt als Tümpel, wenn das Rauschen der Höhen mit einer Standardabweichung von {sigma} mm eine solche irgendwo in der Vermessung mit einer Wahrscheinlichkeit unter {chance} % hervorbringt und sie mindestens {depth} tief ist. Dabei gelten Fehler als unabhängig; was Nachbarn gemeinsam haben, etwa eine schlechte Lösung über eine Minute, kann eine breitere Mulde ergeben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A plane for heights</source>
      <translation>Eine Ebene für die Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>A point of {first} and one of {second} lie within {distance_m} m and differ in height by {most_m} m, more than {height_m} m.</source>
      <translation>Ein Punkt aus {first} und einer aus {second} liegen innerhalb von {distance_m} m und unterscheiden sich in der Höhe um {most_m} m, mehr als {height_m} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>A profile needs heights at two stations or more.</source>
      <translation>Ein Längsprofil braucht Höhen an zwei Stationen oder mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>A ring of the pad has {count} different corners; a ring needs three or more.</source>
      <translation>Ein Ring des Planums hat {count} verschiedene Ecken; ein Ring braucht drei oder mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/sheet_parts.py" />
      <source>A scale of 1 : {scale} cannot be. Give a number above 0.</source>
      <translation>Einen Maßstab 1 : {scale} kann es nicht geben. Geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>A set-out table needs the columns name, easting and northing; “{word}” is missing.</source>
      <translation>Eine Absteckliste braucht die Spalten name, easting und northing; „{word}“ fehlt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A seven-parameter fit</source>
      <translation>Eine Einpassung mit sieben Parametern</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A shift of heights</source>
      <translation>Eine Verschiebung der Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>A slope of {run} (metres out for each metre up) cannot be graded; give more than 0.</source>
      <translation>Eine Böschung von {run} (Meter hinaus je Meter Höhe) lässt sich nicht anlegen; geben Sie mehr als 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A standard deviation of {value} m is none; give one above 0.</source>
      <translation>Eine Standardabweichung von {value} m gibt es nicht; geben Sie eine über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>A thin triangle along the rim, {area:.1f} m², spans {value:.1f} m at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation>Ein schmales Dreieck am Rand, {area:.1f} m², spannt {value:.1f} m bei E {easting:.3f} N {northing:.3f}. Geben Sie eine Grenze an oder lassen Sie den Rand beschneiden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A window of {window} m with steps of {step} m does not fit a line of {length:.3f} m. Give a window above 0 and no longer than the line, and a step above 0.</source>
      <translation>Ein Fenster von {window} m mit Schritten von {step} m passt nicht auf eine Linie von {length:.3f} m. Geben Sie ein Fenster über 0 an, das nicht länger als die Linie ist, und einen Schritt über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Above the heights, exaggerated; below the grade, the straight line that fits the heights of {window} best, with the interval in which it lies with 95 %.</source>
      <translation>Oben die Höhen, überhöht; unten die Längsneigung, die Gerade, die den Höhen auf {window} am besten entspricht, mit dem Intervall, in dem sie mit 95 % liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Above the pit ({unit})</source>
      <translation>Über dem Tiefpunkt ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Accuracy</source>
      <translation>Genauigkeit</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one check point</source>
      <translation>Genauigk. RMSE {rmse:.3f} m, Mittel {mean:+.3f} m gegen einen Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one own check shot; no test</source>
      <translation>Genauigk. RMSE {rmse:.3f} m, Mittel {mean:+.3f} m gegen eine eigene Kontrollmessung; keine Prüfung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} check points</source>
      <translation>Genauigk. RMSE {rmse:.3f} m, Mittel {mean:+.3f} m gegen {count} Kontrollpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} own check shots; no test</source>
      <translation>Genauigk. RMSE {rmse:.3f} m, Mittel {mean:+.3f} m gegen {count} eigene Kontrollmessungen; keine Prüfung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Accuracy statement: {file}</source>
      <translation>Genauigkeitsaussage: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Accuracy: FGDC-STD-007.3-1998 (NSSDA) and ASPRS Positional Accuracy Standards, edition 2 (2023). Empty circles: G. Toussaint (1983, “Computing largest empty circles with location constraints”).</source>
      <translation>Genauigkeit: FGDC-STD-007.3-1998 (NSSDA) und ASPRS Positional Accuracy Standards, Ausgabe 2 (2023). Leere Kreise: G. Toussaint (1983, „Computing largest empty circles with location constraints“).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm (one checkpoint, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation>Die tatsächliche VVA-Genauigkeit ergab sich zu RMSEV = {rmse_cm:.1f} cm (ein Kontrollpunkt, 95. Perzentil {percentile_cm:.1f} cm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation>Die tatsächliche VVA-Genauigkeit ergab sich zu RMSEV = {rmse_cm:.1f} cm ({count} Kontrollpunkte, 95. Perzentil {percentile_cm:.1f} cm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After</source>
      <translation>Nachher</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After ({unit}²)</source>
      <translation>Nachher ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Against the limits</source>
      <translation>Gegen die Grenzwerte</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>All check points on the surface are in vegetated ground; no class can be stated without open ground.</source>
      <translation>Alle Kontrollpunkte auf der Oberfläche liegen im Bewuchs; ohne offenes Gelände lässt sich keine Klasse angeben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>All together: {lines} lines on {levels} levels, {length} {unit} long.</source>
      <translation>Zusammen: {lines} Linien auf {levels} Stufen, {length} {unit} lang.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Along the edges of the lane no low point is deeper than the noise.</source>
      <translation>An den Rändern der Fahrbahn ist kein Tiefpunkt tiefer als das Rauschen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Along the line</source>
      <translation>Entlang der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only one checkpoint in non-vegetated ground.</source>
      <translation>Obwohl die Standards mindestens {needed} Kontrollpunkte verlangen, wurde diese Prüfung mit nur einem Kontrollpunkt auf unbewachsenem Gelände durchgeführt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only {count} checkpoints in non-vegetated ground.</source>
      <translation>Obwohl die Standards mindestens {needed} Kontrollpunkte verlangen, wurde diese Prüfung mit nur {count} Kontrollpunkten auf unbewachsenem Gelände durchgeführt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Apart in plan</source>
      <translation>Abstand in der Lage</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Applies</source>
      <translation>Gilt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area ({unit})</source>
      <translation>Fläche ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Area ({unit}²)</source>
      <translation>Fläche ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Area a bar of {width} {unit} ({area})</source>
      <translation>Fläche je Balken von {width} {unit} ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Area and volume by level; the dashed line is the level at which water leaves.</source>
      <translation>Fläche und Volumen nach Pegel; die gestrichelte Linie ist der Pegel, bei dem Wasser abläuft.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area by depth: cut to the left of 0, fill to the right; exact for each bar.</source>
      <translation>Fläche nach Tiefe: Abtrag links von 0, Auftrag rechts; genau für jeden Balken.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area in plan ({unit}²)</source>
      <translation>Fläche im Grundriss ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area on the slope ({unit}²)</source>
      <translation>Fläche in der Neigung ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Areas</source>
      <translation>Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>As it stands in the file</source>
      <translation>Wie es in der Datei steht</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little to cover a site; choose a larger paper or another scale.</source>
      <translation>Bei 1 : {scale:g} zeigt ein Blatt {width:.1f} m mal {height:.1f} m, davon überlappen {overlap:.1f} m: zu wenig, um ein Gelände zu decken; wählen Sie ein größeres Papier oder einen anderen Maßstab.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a larger paper.</source>
      <translation>Bei 1 : {scale:g} bräuchte das Gelände {count} Blätter; höchstens {most} werden gemacht. Wählen Sie einen kleineren Maßstab oder ein größeres Papier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} for heights the profile does not fit on {paper}: one sheet spans {range:.2f} m. Choose {fit} or a larger paper.</source>
      <translation>Beim Höhenmaßstab {scale} passt das Profil nicht auf {paper}: Ein Blatt fasst {range:.2f} m. Wählen Sie {fit} oder ein größeres Papier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} the sheets would be {count}; the most is {most}. Choose a smaller scale, such as {fit}.</source>
      <translation>Beim Maßstab {scale} wären es {count} Blätter; höchstens sind es {most}. Wählen Sie einen kleineren Maßstab, etwa {fit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Automatic checks</source>
      <translation>Automatische Prüfungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Automatic checks: noise from the scatter about cubics through neighbouring points; offsets of stretches of the walk by iteratively reweighted least squares over all places where passes meet or run side by side; intervals of sigmas by chi-square. Limits are this program's own choice.</source>
      <translation>Automatische Prüfungen: Rauschen aus der Streuung um kubische Kurven durch benachbarte Punkte; Versätze von Abschnitten des Weges durch iterativ umgewichtete kleinste Quadrate über alle Stellen, an denen sich Bahnen treffen oder nebeneinander laufen; Intervalle der Standardabweichungen nach Chi-Quadrat. Die Grenzen sind eigene Wahl dieses Programms.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>B - B, across it</source>
      <translation>B - B, quer dazu</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Balance   at {height:.3f} ± {sigma_95:.3f} {unit}, fill from one of cut {factor:g}</source>
      <translation>Ausgleich bei {height:.3f} ± {sigma_95:.3f} {unit}, Auftrag aus einem Teil Abtrag {factor:g}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Balance of cut and fill</source>
      <translation>Massenausgleich von Abtrag und Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Base {height}</source>
      <translation>Grundfläche {height}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Basin     holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², spills at {level:.3f} {unit}</source>
      <translation>Becken    fasst {volume:.2f} ± {half:.2f} m³ (95 %) auf {area:.1f} m², läuft über bei {level:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before</source>
      <translation>Vorher</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before ({unit}²)</source>
      <translation>Vorher ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Beyond them lies what no receiver tells: heights are held against the walk itself, the passes beside it, places walked twice and coded lines, by the noise found in this survey. Steps that several passes saw at one line are ground: kerbs, walls, ditches.</source>
      <translation>Darüber hinaus gibt es, was kein Empfänger sagt: Höhen werden am Weg selbst, an den Bahnen daneben, an zweimal begangenen Stellen und an codierten Linien gemessen, mit dem Rauschen, das sich in dieser Vermessung fand. Stufen, die mehrere Bahnen an einer Linie sahen, sind Gelände: Borde, Mauern, Gräben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Boundaries here are the limits of the surface, not legal boundaries of land.</source>
      <translation>Grenzen sind hier die der Oberfläche, keine rechtlichen Grundstücksgrenzen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Buried services are not shown.</source>
      <translation>Leitungen im Boden sind nicht dargestellt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By depth: all the earth moved where it is so deep</source>
      <translation>Nach Tiefe: alle bewegte Erde dort, wo es so tief ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By hand</source>
      <translation>Von Hand</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is flagged or no longer flagged.</source>
      <translation>Von Hand ist der Punkt in Zeile {line} markiert oder nicht mehr markiert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is in the surface, which the checks rejected ({reasons}).</source>
      <translation>Von Hand ist der Punkt in Zeile {line} in der Oberfläche, den die Prüfungen verworfen haben ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is out of the surface, which the checks let pass.</source>
      <translation>Von Hand ist der Punkt in Zeile {line} nicht in der Oberfläche, den die Prüfungen gelten ließen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are flagged or no longer flagged, the first in line {line}.</source>
      <translation>Von Hand sind {count} Punkte markiert oder nicht mehr markiert, der erste in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are in the surface that the checks rejected, the first in line {line} ({reasons}).</source>
      <translation>Von Hand sind {count} Punkte in der Oberfläche, die die Prüfungen verworfen haben, der erste in Zeile {line} ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are out of the surface that the checks let pass, the first in line {line}.</source>
      <translation>Von Hand sind {count} Punkte nicht in der Oberfläche, die die Prüfungen gelten ließen, der erste in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By it ({unit})</source>
      <translation>Um ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By region</source>
      <translation>Nach Gebiet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By that rule the survey supports the interval of {interval} {unit}.</source>
      <translation>Nach dieser Regel trägt die Vermessung die Äquidistanz von {interval} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By the checks</source>
      <translation>Laut Prüfungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchment</source>
      <translation>Einzugsgebiet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments are bounded by lines of steepest descent and found exactly, so their areas add up to that of the surface. Areas and volumes of ponds are exact on the triangles.</source>
      <translation>Einzugsgebiete werden von Fallinien begrenzt und genau gefunden, sodass ihre Flächen zusammen die der Oberfläche ergeben. Flächen und Volumen von Tümpeln sind auf den Dreiecken genau.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Catchments before and after</source>
      <translation>Einzugsgebiete vorher und nachher</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>Catchments without a runoff coefficient have no peak flow: {names}. Give one for all or for each inlet.</source>
      <translation>Einzugsgebiete ohne Abflussbeiwert haben keinen Spitzenabfluss: {names}. Geben Sie einen für alle oder für jeden Einlauf an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments, the largest first</source>
      <translation>Einzugsgebiete, die größten zuerst</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments; {merged} outlets on the rim that drain less than {least} {unit}² each are counted with the rest of the rim, which has no name here.</source>
      <translation>Einzugsgebiete; {merged} Ausläufe am Rand, die weniger als {least} {unit}² entwässern, sind beim übrigen Rand mitgezählt, der hier keinen Namen hat.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} doubles back on itself at station {station} (E {easting:.3f} N {northing:.3f}), so that left and right are not defined there. Remove the vertex or split the line there.</source>
      <translation>Die Achse {name} kehrt bei Station {station} um (E {easting:.3f} N {northing:.3f}), sodass links und rechts dort nicht bestimmt sind. Entfernen Sie den Stützpunkt oder teilen Sie die Linie dort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no length: all its {vertices} vertices are at one place. Draw the line again.</source>
      <translation>Die Achse {name} hat keine Länge: Alle {vertices} Stützpunkte liegen an einem Ort. Zeichnen Sie die Linie neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no station {station}; its stations are {ranges}. Give one of those.</source>
      <translation>Die Achse {name} hat keine Station {station}; ihre Stationen sind {ranges}. Geben Sie eine davon an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has station {station} more than once, in the numberings {parts}. Say which one is meant.</source>
      <translation>Die Achse {name} hat die Station {station} mehr als einmal, in den Zählungen {parts}. Sagen Sie, welche gemeint ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} is nowhere on the surface {surface} (the line begins at E {easting:.1f} N {northing:.1f}, the surface reaches from E {west:.1f} N {south:.1f} to E {east:.1f} N {north:.1f}). Check that both are of one site and in one CRS.</source>
      <translation>Die Achse {name} liegt nirgends auf der Oberfläche {surface} (die Linie beginnt bei E {easting:.1f} N {northing:.1f}, die Oberfläche reicht von E {west:.1f} N {south:.1f} bis E {east:.1f} N {north:.1f}). Prüfen Sie, ob beide vom selben Gelände und im selben KBS sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself once, at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). That place has two stations; the lower one is given.</source>
      <translation>Die Achse {name} trifft sich selbst einmal, bei den Stationen {first} und {second} (E {easting:.3f} N {northing:.3f}). Dieser Ort hat zwei Stationen; angegeben wird die kleinere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself {count} times, first at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). A place there has two stations; the lower one is given.</source>
      <translation>Die Achse {name} trifft sich selbst {count}-mal, zuerst bei den Stationen {first} und {second} (E {easting:.3f} N {northing:.3f}). Ein Ort dort hat zwei Stationen; angegeben wird die kleinere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: a repeated vertex (closer than 0.1 mm) was left out.</source>
      <translation>Achse {name}: Ein wiederholter Stützpunkt (näher als 0,1 mm) wurde ausgelassen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: station equation {number} (back {back} = ahead {ahead}) is not on the line beyond the one before; the numbering there runs from {low} to {high}. Correct the back station or the order.</source>
      <translation>Achse {name}: Die Stationsgleichung {number} (zurück {back} = voraus {ahead}) liegt nicht auf der Linie hinter der vorigen; die Zählung läuft dort von {low} bis {high}. Berichtigen Sie die Station oder die Reihenfolge.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: vertex {vertex} has no finite coordinates. Draw the line again or repair its layer.</source>
      <translation>Achse {name}: Der Stützpunkt {vertex} hat keine endlichen Koordinaten. Zeichnen Sie die Linie neu oder reparieren Sie ihren Layer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out.</source>
      <translation>Achse {name}: {count} wiederholte Stützpunkte (näher als 0,1 mm) wurden ausgelassen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Chance of noise (%)</source>
      <translation>Wahrscheinlichkeit von Rauschen (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Change ({unit}²)</source>
      <translation>Änderung ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Check on the control points before, during and after the work; set nothing out while they are off by more than the job's tolerance.</source>
      <translation>Prüfen Sie vor, während und nach der Arbeit an den Festpunkten; stecken Sie nichts ab, solange die Abweichung größer ist als die Toleranz des Auftrags.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Check point</source>
      <translation>Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Check shots kept out of the surface: {count}, first {point} (line {line}).</source>
      <translation>Kontrollmessungen, die nicht in die Oberfläche gingen: {count}, erste {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report</source>
      <translation>Prüfungen ein Befund, im Bericht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation>Prüfungen ein Befund, im Bericht; Höhen wiederholen sich auf {sigma:.1f} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report</source>
      <translation>Prüfungen {count} Befunde, im Bericht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation>Prüfungen {count} Befunde, im Bericht; Höhen wiederholen sich auf {sigma:.1f} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Claimed (mm)</source>
      <translation>Angegeben (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Classes of slope</source>
      <translation>Neigungsklassen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Closed</source>
      <translation>Geschlossen</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Code {code} is not in the code table; taken as ground. Points: {count}, first {point} (line {line}).</source>
      <translation>Der Code {code} steht nicht in der Codetabelle; er gilt als Gelände. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Colours: ColorBrewer 2.0, schemes safe for colour-blind readers.</source>
      <translation>Farben: ColorBrewer 2.0, Schemata, die bei Farbenfehlsichtigkeit unterscheidbar bleiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor {projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature {radius} m).</source>
      <translation>Kombinierter Maßstabsfaktor {combined} bei Ostwert {easting} m, Nordwert {northing} m: Maßstabsfaktor der Abbildung {projection} x Höhenfaktor {height} (ellipsoidische Höhe {h} m, {h_origin}; mittlerer Krümmungsradius {radius} m).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined}, as given by the user.</source>
      <translation>Kombinierter Maßstabsfaktor {combined}, vom Benutzer angegeben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Compared with it</source>
      <translation>Damit verglichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Contents</source>
      <translation>Inhalt</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/labels.py" />
      <source>Contour labels {height} m high every {spacing} m cannot be placed; give two numbers of metres above 0.</source>
      <translation>Höhenlinienbeschriftungen von {height} m Höhe alle {spacing} m lassen sich nicht setzen; geben Sie zwei Zahlen in Metern über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours</source>
      <translation>Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Contours  {lines} lines on {levels} levels, every {interval:g} {unit}</source>
      <translation>Höhenl.   {lines} Linien auf {levels} Stufen, alle {interval:g} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours are exact on that surface. Ground exactly at a level counts as above it.</source>
      <translation>Höhenlinien sind auf dieser Oberfläche genau. Gelände genau auf einer Stufe zählt als darüber.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level</source>
      <translation>Höhenlinien nach Stufen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level; index contours only, as there are many levels</source>
      <translation>Höhenlinien nach Stufen; nur Zähllinien, da es viele Stufen sind</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours every {interval} {unit}, index contours every {index} {unit}. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Höhenlinien alle {interval} {unit}, Zähllinien alle {index} {unit}. Schummerung von Nordwesten, Höhen nur für die Schummerung {times}-fach überhöht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours of the sheet: low-pass filter of G. Taubin (1995, “A signal processing approach to fair surface design”), for heights with the weights of U. Pinkall and K. Polthier (1993); lines are then drawn as Bézier curves inside corridors that do not meet.</source>
      <translation>Höhenlinien des Blattes: Tiefpassfilter von G. Taubin (1995, „A signal processing approach to fair surface design“), für Höhen mit den Gewichten von U. Pinkall und K. Polthier (1993); dann werden die Linien als Bézierkurven in Korridoren gezeichnet, die sich nicht treffen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Control point</source>
      <translation>Passpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm from it, in height {height_mm} mm.</source>
      <translation>Der Passpunkt '{name}' wurde {count}-mal gemessen; verwendet wird das Mittel, der entfernteste liegt in der Lage {plan_mm} mm davon, in der Höhe {height_mm} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Coordinates and units</source>
      <translation>Koordinaten und Einheiten</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Coordinates in {crs}; lengths and heights in {unit} (1 {unit} = {metres} m); {decimals} decimals. Cut and fill are design less existing ground: above 0 fill, below 0 cut.</source>
      <translation>Koordinaten in {crs}; Längen und Höhen in {unit} (1 {unit} = {metres} m); {decimals} Nachkommastellen. Abtrag und Auftrag sind Entwurf minus Bestand: über 0 Auftrag, unter 0 Abtrag.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Count</source>
      <translation>Anzahl</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Cover</source>
      <translation>Bewuchs</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Coverage</source>
      <translation>Abdeckung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; one place to walk again</source>
      <translation>Abdeckung alle {along:.2f} m, Bahnen {across:.1f} m auseinander; eine Stelle nochmals zu begehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; {count} places to walk again</source>
      <translation>Abdeckung alle {along:.2f} m, Bahnen {across:.1f} m auseinander; {count} Stellen nochmals zu begehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crest, stations</source>
      <translation>Kuppe, Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Cross-sections of {name}</source>
      <translation>Querprofile von {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall</source>
      <translation>Querneigung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Crossfall (%)</source>
      <translation>Querneigung (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Crossfall cannot be found from offset {low} m to {high} m. Give the lower one first.</source>
      <translation>Die Querneigung von Abstand {low} m bis {high} m lässt sich nicht bestimmen. Geben Sie den kleineren zuerst an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall from {left} left to {right} right of the line, positive where the surface rises to the right, over {window}, with its 95 % interval.</source>
      <translation>Querneigung von {left} links bis {right} rechts der Linie, positiv, wo die Oberfläche nach rechts steigt, über {window}, mit ihrem 95-%-Intervall.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall over the stations of {name}.</source>
      <translation>Querneigung über den Stationen von {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall towards the edges: does each half of the lane fall to its edge by {least} % for sure?</source>
      <translation>Querneigung zu den Rändern: Fällt jede Fahrbahnhälfte sicher mit {least} % zu ihrem Rand?</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Curves of the water's area and volume by its level, from the pit to the spill.</source>
      <translation>Kurven von Fläche und Volumen des Wassers nach seinem Pegel, vom Tiefpunkt bis zum Überlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut ({unit})</source>
      <translation>Abtrag ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Cut and fill between stations, and the running balance along the line.</source>
      <translation>Abtrag und Auftrag zwischen Stationen und die laufende Bilanz entlang der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>Cut and fill jump at the balanced height, where slopes run on over a brow or reach other ground: {rest:.1f} m³ are left over.</source>
      <translation>Abtrag und Auftrag springen bei der ausgleichenden Höhe, wo Böschungen über eine Kante laufen oder anderes Gelände erreichen: {rest:.1f} m³ bleiben übrig.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut area ({unit})</source>
      <translation>Abtragsfläche ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut by material</source>
      <translation>Abtrag nach Material</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Cut, fill and what is left over against the height of the design.</source>
      <translation>Abtrag, Auftrag und was übrig bleibt gegen die Höhe des Entwurfs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>DEM: the plane of the triangle under each cell's centre.</source>
      <translation>DGM: die Ebene des Dreiecks unter jeder Zellmitte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Decisions by hand against the checks: {shown} of {count}</source>
      <translation>Entscheidungen von Hand gegen die Prüfungen: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Decisions made by hand were read from {file}.</source>
      <translation>Entscheidungen von Hand wurden aus {file} gelesen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Deeper by ({unit})</source>
      <translation>Tiefer um ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Depressions</source>
      <translation>Mulden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth</source>
      <translation>Tiefe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Depth (mm)</source>
      <translation>Tiefe (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth of cut (orange) and fill (purple), drawn from a grid of {cell} m. Numbers come from the triangles.</source>
      <translation>Tiefe von Abtrag (orange) und Auftrag (violett), gezeichnet aus einem Raster von {cell} m. Die Zahlen kommen aus den Dreiecken.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Depth ± 1 sigma ({unit})</source>
      <translation>Tiefe ± 1 Sigma ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Depth: cut below 0, fill above ({unit})</source>
      <translation>Tiefe: Abtrag unter 0, Auftrag darüber ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference (%)</source>
      <translation>Unterschied (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference ({unit})</source>
      <translation>Unterschied ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Differences are those at all {count} vertices of the full surface, checked on the finished one. Rim and breaklines are kept as they are.</source>
      <translation>Unterschiede sind die an allen {count} Eckpunkten der vollen Oberfläche, geprüft an der fertigen. Rand und Bruchkanten bleiben, wie sie sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Differences of height (mm)</source>
      <translation>Höhenunterschiede (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Distance ({unit})</source>
      <translation>Entfernung ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Distance along the pass ({unit})</source>
      <translation>Entfernung entlang der Bahn ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Distance to the point recorded before ({unit})</source>
      <translation>Entfernung zum zuvor aufgezeichneten Punkt ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Dots and intervals: the standard deviation of a height found for each of {shown} runs, from {low} to {high} mm, beside what the receiver claims; {off} claims lie outside the interval of their run.</source>
      <translation>Punkte und Intervalle: die Standardabweichung einer Höhe, gefunden für jeden von {shown} Läufen, von {low} bis {high} mm, daneben die Angabe des Empfängers; {off} Angaben liegen außerhalb des Intervalls ihres Laufs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Doubtful points along the walk</source>
      <translation>Zweifelhafte Punkte entlang des Weges</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drained to</source>
      <translation>Entwässerte nach</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drains now to</source>
      <translation>Entwässert nun nach</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Drains to</source>
      <translation>Entwässert nach</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>Drift over {value} m cannot be; give the metres within which points share it.</source>
      <translation>Eine Drift über {value} m kann es nicht geben; geben Sie die Meter an, innerhalb derer Punkte sie gemeinsam haben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Each window is judged by itself with at most 5 in 100 wrong; of many windows near the limit a few will be judged wrongly. Drift of the receiver counts only where it was given.</source>
      <translation>Jedes Fenster wird für sich beurteilt, höchstens 5 von 100 falsch; von vielen Fenstern nahe am Grenzwert werden einige falsch beurteilt. Drift des Empfängers zählt nur, wo sie angegeben wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Earthwork of the grading</source>
      <translation>Erdarbeiten der Geländemodellierung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_page.py" />
      <source>Earthwork: {existing} to {design}</source>
      <translation>Erdarbeiten: {existing} zu {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>East, mm</source>
      <translation>Ost, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Easting ({unit})</source>
      <translation>Ostwert ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Easting and northing are as in the file. Heights too: this program has not changed their datum and does not know it.</source>
      <translation>Ost- und Nordwert sind wie in der Datei. Die Höhen auch: Dieses Programm hat ihr Bezugssystem nicht geändert und kennt es nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edit</source>
      <translation>Änderung</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is outside the outermost points; no triangle can be added there.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: E {easting:.3f} N {northing:.3f} liegt außerhalb der äußersten Punkte; dort lässt sich kein Dreieck anfügen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is too far from the survey; a surface may measure 107 km.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: E {easting:.3f} N {northing:.3f} ist zu weit von der Vermessung; eine Oberfläche darf 107 km messen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: at E {easting:.3f} N {northing:.3f} there is a point already, of height {height:.3f} m. Move its height instead.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Bei E {easting:.3f} N {northing:.3f} gibt es schon einen Punkt mit der Höhe {height:.3f} m. Ändern Sie stattdessen seine Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: it would leave no triangle of the surface.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Sie ließe kein Dreieck der Oberfläche übrig.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: its line stays at one point, E {easting:.3f} N {northing:.3f}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Ihre Linie bleibt an einem Punkt, E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: its three corners are not the corners of one triangle, the first at E {easting:.3f} N {northing:.3f}. Force or swap edges first.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Ihre drei Ecken sind nicht die Ecken eines Dreiecks, die erste bei E {easting:.3f} N {northing:.3f}. Erzwingen oder tauschen Sie zuerst Kanten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: no edge joins E {easting:.3f} N {northing:.3f} and E {end_easting:.3f} N {end_northing:.3f}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Keine Kante verbindet E {easting:.3f} N {northing:.3f} und E {end_easting:.3f} N {end_northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: no point with a height lies within {reach:.3f} m of E {easting:.3f} N {northing:.3f}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Kein Punkt mit einer Höhe liegt innerhalb von {reach:.3f} m um E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} belongs to a breakline, boundary, void or forced edge.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Kante bei E {easting:.3f} N {northing:.3f} gehört zu einer Bruchkante, Grenze, Aussparung oder erzwungenen Kante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} is on the rim; there are not two triangles to swap it in.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Kante bei E {easting:.3f} N {northing:.3f} liegt am Rand; es gibt keine zwei Dreiecke, in denen sie zu tauschen wäre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: the edge from E {easting:.3f} N {northing:.3f} would cross {label}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Kante von E {easting:.3f} N {northing:.3f} würde {label} kreuzen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle at E {easting:.3f} N {northing:.3f}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Oberfläche hat bei E {easting:.3f} N {northing:.3f} kein Dreieck.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle with its centroid in the polygon at E {easting:.3f} N {northing:.3f}.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Oberfläche hat kein Dreieck mit dem Schwerpunkt im Polygon bei E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has the triangle at E {easting:.3f} N {northing:.3f} already.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die Oberfläche hat das Dreieck bei E {easting:.3f} N {northing:.3f} schon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the two triangles at E {easting:.3f} N {northing:.3f} form no convex quadrilateral, so there is no other diagonal.</source>
      <translation>Änderung {number} ({kind}) wird nicht angewandt: Die zwei Dreiecke bei E {easting:.3f} N {northing:.3f} bilden kein konvexes Viereck, also gibt es keine andere Diagonale.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edited.py" />
      <source>Edit {number} ({kind}): the added point at E {easting:.3f} N {northing:.3f} is no part of the surface; it is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>Änderung {number} ({kind}): Der hinzugefügte Punkt bei E {easting:.3f} N {northing:.3f} gehört nicht zur Oberfläche; er liegt außerhalb der Grenze oder des beschnittenen Randes oder in einer Aussparung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Edits     {applied} of {count} applied</source>
      <translation>Änderung  {applied} von {count} angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edits by hand from {file}: {applied} of {count} applied</source>
      <translation>Änderungen von Hand aus {file}: {applied} von {count} angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.</source>
      <translation>Ellipsoidische Höhen sind gewünscht, aber {crs} zählt Höhen von einem anderen Niveau; geben Sie ein KBS ohne Höhen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Ellipsoidal heights changed to orthometric ones: height minus geoid separation.</source>
      <translation>Ellipsoidische Höhen wurden in orthometrische geändert: Höhe minus Geoidundulation.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>End areas take the area to change evenly between sections. Where it grows faster or slower than that they count too much or too little; the prismoidal correction for cut is {cut:.1f} m³, for fill {fill:.1f} m³.</source>
      <translation>Endflächen nehmen an, dass sich die Fläche zwischen Schnitten gleichmäßig ändert. Wo sie schneller oder langsamer wächst, zählen sie zu viel oder zu wenig; die prismatische Korrektur beträgt für Abtrag {cut:.1f} m³, für Auftrag {fill:.1f} m³.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Every check point, largest differences first</source>
      <translation>Alle Kontrollpunkte, größte Unterschiede zuerst</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Every line of the file</source>
      <translation>Jede Zeile der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Exact, same ground ({unit})</source>
      <translation>Genau, selbes Gelände ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Falls (%)</source>
      <translation>Gefälle (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811.</source>
      <translation>Fuß: 0,3048 m (international) und 1200/3937 m (US-Vermessung), NIST SP 811.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Field codes were not read: the surface has no lines to hold to.</source>
      <translation>Feldcodes wurden nicht gelesen: Die Oberfläche hat keine Linien einzuhalten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>File</source>
      <translation>Datei</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>File and line</source>
      <translation>Datei und Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>File: {file}</source>
      <translation>Datei: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files</source>
      <translation>Dateien</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files handed over</source>
      <translation>Übergebene Dateien</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill ({unit})</source>
      <translation>Auftrag ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill area ({unit})</source>
      <translation>Auftragsfläche ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Filled to where it spills, {level} {rise}, the basin holds {volume} ± {half} {unit} (95 %) on {area} {area_unit}, {depth} {rise} deep at its pit.</source>
      <translation>Gefüllt bis zum Überlauf, {level} {rise}, fasst das Becken {volume} ± {half} {unit} (95 %) auf {area} {area_unit}, {depth} {rise} tief an seinem Tiefpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  one place to look at, in the report</source>
      <translation>Befunde   eine Stelle zum Ansehen, im Bericht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  {count} places to look at, in the report</source>
      <translation>Befunde   {count} Stellen zum Ansehen, im Bericht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Findings by kind, the greatest value first: {shown} of {count}</source>
      <translation>Befunde nach Art, der größte Wert zuerst: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>First file, line</source>
      <translation>Erste Datei, Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>First line</source>
      <translation>Erste Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Fits</source>
      <translation>Passt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Flagged</source>
      <translation>Markiert</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>For a height error of {error:.3f} m with heights good to {sigma:.3f} m on ground that bends {curvature:.4f} 1/m, passes may be {spacing:.1f} m apart: error² = 2/3 sigma² + (bend × spacing² / (2 √30))² (reasoned here, no standard).</source>
      <translation>Für einen Höhenfehler von {error:.3f} m mit Höhen, die auf {sigma:.3f} m gut sind, auf Gelände mit der Krümmung {curvature:.4f} 1/m dürfen Bahnen {spacing:.1f} m auseinander liegen: Fehler² = 2/3 Sigma² + (Krümmung × Abstand² / (2 √30))² (hier hergeleitet, kein Standard).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>For machine guidance: load it, then check at several points of known height, by a person who is not on the machine's path.</source>
      <translation>Für die Maschinensteuerung: laden und dann an mehreren Punkten bekannter Höhe prüfen, durch eine Person, die nicht im Weg der Maschine steht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Forms narrower than {narrow:.1f} m (kerbs, ditches, banks) fall between passes: walk their edges as coded lines.</source>
      <translation>Formen schmaler als {narrow:.1f} m (Borde, Gräben, Böschungen) fallen zwischen die Bahnen: Begehen Sie ihre Kanten als codierte Linien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Found (mm)</source>
      <translation>Gefunden (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>From E {easting:.3f} N {northing:.3f} water runs off the surface at once: there is no basin. Give a place inside the basin, or a surface that takes in its whole rim.</source>
      <translation>Von E {easting:.3f} N {northing:.3f} läuft das Wasser gleich von der Oberfläche ab: Dort ist kein Becken. Geben Sie einen Ort im Becken an oder eine Oberfläche, die seinen ganzen Rand enthält.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>From station ({unit})</source>
      <translation>Ab Station ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>From {existing} to {design}: cut {cut} ± {cut_doubt} {unit}, fill {fill} ± {fill_doubt} {unit}, net {net} ± {net_doubt} {unit} (95 %), over {area} {area_unit} that both have.</source>
      <translation>Von {existing} zu {design}: Abtrag {cut} ± {cut_doubt} {unit}, Auftrag {fill} ± {fill_doubt} {unit}, netto {net} ± {net_doubt} {unit} (95 %), auf {area} {area_unit}, die beide haben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and {lines} contour lines every {interval} {height_unit}.</source>
      <translation>Aus {points} Punkten von {file}, {used} davon verwendet, eine Oberfläche mit {triangles} Dreiecken auf {area} {unit}² und {lines} Höhenlinien alle {interval} {height_unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. Accept it by its name if that will do: '{name}'.</source>
      <translation>Von {source} nach {target} hat PROJ hier nur eine grobe Operation, die um viele Meter falsch sein kann. Nehmen Sie sie mit ihrem Namen an, wenn das genügt: '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: '{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: '{name}'.</source>
      <translation>Von {source} nach {target} hat PROJ hier nur eine grobe Operation, die um viele Meter falsch sein kann: '{best}' braucht {grids}, hier nicht installiert. Installieren Sie die Datei oder nehmen Sie die grobe Operation mit ihrem Namen an: '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} every operation needs a file not installed here: {grids}. Install it.</source>
      <translation>Von {source} nach {target} braucht jede Operation eine Datei, die hier nicht installiert ist: {grids}. Installieren Sie sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} the best operation needs {grids}, not installed here: '{best}' (accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used (accuracy {accuracy}): '{name}'.</source>
      <translation>Von {source} nach {target} braucht die beste Operation {grids}, hier nicht installiert: '{best}' (Genauigkeit {best_accuracy}). Installieren Sie die Datei oder nehmen Sie die verfügbare Operation mit ihrem Namen an (Genauigkeit {accuracy}): '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Further rejected lines, in the table of rejects: {count}.</source>
      <translation>Weitere verworfene Zeilen, in der Tabelle der verworfenen: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation as the receiver sent it with each point: {least_m} to {most_m} m, mean {mean_m} m; from which model is not known.</source>
      <translation>Geoidundulation, wie sie der Empfänger mit jedem Punkt sandte: {least_m} bis {most_m} m, Mittel {mean_m} m; aus welchem Modell, ist nicht bekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation interpolated from the grid {grid}: {least_m} to {most_m} m, mean {mean_m} m, over the site. The accuracy of the grid is not known to PROJ.</source>
      <translation>Geoidundulation aus dem Gitter {grid} interpoliert: {least_m} bis {most_m} m, Mittel {mean_m} m, über das Gelände. Die Genauigkeit des Gitters kennt PROJ nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation {value_m} m for the whole site, a constant ({origin}); its slope is left out.</source>
      <translation>Geoidundulation {value_m} m für das ganze Gelände, eine Konstante ({origin}); ihre Neigung bleibt außer Acht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Give one of: the contour interval, the height error or the pass spacing wanted.</source>
      <translation>Geben Sie eines an: die Äquidistanz, den Höhenfehler oder den gewünschten Bahnabstand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grade (%)</source>
      <translation>Längsneigung (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades and vertical curves fitted; residuals {spread} mm (robust), at most {worst} mm</source>
      <translation>Längsneigungen und Ausrundungen eingepasst; Restabweichungen {spread} mm (robust), höchstens {worst} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades meet at (station, height)</source>
      <translation>Neigungen treffen sich bei (Station, Höhe)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Grading</source>
      <translation>Geländemodellierung</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Grading   pads: {count}; cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² taken</source>
      <translation>Planum    {count}; Abtrag {cut:.1f} ± {cut_95:.1f} m³, Auftrag {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² beansprucht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_page.py" />
      <source>Grading: {name}</source>
      <translation>Geländemodellierung: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. Heights are untouched.</source>
      <translation>Gitterkoordinaten auf den Boden gebracht: Abstände vom Ursprung (Ostwert {easting} m, Nordwert {northing} m) durch den kombinierten Faktor geteilt, dann {shift_e} m zu den Ostwerten und {shift_n} m zu den Nordwerten gezählt. Höhen bleiben unberührt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground and grid need the CRS of the grid; give it as --crs, not a local grid.</source>
      <translation>Boden und Gitter brauchen das KBS des Gitters; geben Sie es mit --crs an, kein lokales System.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined factor. Heights are untouched.</source>
      <translation>Bodenkoordinaten ins Gitter gebracht: {shift_e} m von den Ostwerten und {shift_n} m von den Nordwerten abgezogen, dann Abstände vom Ursprung (Ostwert {easting} m, Nordwert {northing} m) mit dem kombinierten Faktor multipliziert. Höhen bleiben unberührt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground coordinates need the origin about which they were made; give its easting and northing as --ground-origin.</source>
      <translation>Bodenkoordinaten brauchen den Ursprung, um den sie gebildet wurden; geben Sie seinen Ost- und Nordwert mit --ground-origin an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Gelände, dessen Wasser anderswohin läuft</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauled</source>
      <translation>Transportiert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauls along the line</source>
      <translation>Transporte entlang der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Have buried services located before anything is dug or driven in; they are not in this table.</source>
      <translation>Lassen Sie Leitungen im Boden orten, bevor gegraben oder gerammt wird; sie stehen nicht in dieser Liste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Height ({unit})</source>
      <translation>Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Height and grade over the stations of {name}.</source>
      <translation>Höhe und Längsneigung über den Stationen von {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height guessed ({unit})</source>
      <translation>Geschätzte Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Height of the surface less that of the check point, in millimetres; those outside have no figure.</source>
      <translation>Höhe der Oberfläche minus die des Kontrollpunkts, in Millimetern; die außerhalb haben keine Zahl.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass at {shown} places, with used, flagged and rejected points.</source>
      <translation>Höhe über der Entfernung entlang der Bahn an {shown} Stellen, mit verwendeten, markierten und verworfenen Punkten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass: {shown} of {count} places with flagged or rejected points, each kind before a second of its kind, the longest first.</source>
      <translation>Höhe über der Entfernung entlang der Bahn: {shown} von {count} Stellen mit markierten oder verworfenen Punkten, jede Art vor einer zweiten ihrer Art, die längste zuerst.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Height, mm</source>
      <translation>Höhe, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Höhe: um {shift} m verschoben in der Mitte von {count} Passpunkten, mit einer Ebene, die je Kilometer {east} mm nach Osten und {north} mm nach Norden steigt; Redundanz {freedom}, Standardabweichung einer Höhe {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Höhe: um {shift} m verschoben, aus {count} Passpunkten; Redundanz {freedom}, Standardabweichung einer Höhe {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are ellipsoidal and are taken over so; a geoid separation makes heights above the geoid of them.</source>
      <translation>Die Höhen sind ellipsoidisch und werden so übernommen; eine Geoidundulation macht daraus Höhen über dem Geoid.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are orthometric as sent and are taken over so.</source>
      <translation>Die Höhen sind orthometrisch, wie gesandt, und werden so übernommen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Heights are taken over as they are.</source>
      <translation>Die Höhen werden übernommen, wie sie sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are taken over as they are; only positions in plan are transformed.</source>
      <translation>Die Höhen werden übernommen, wie sie sind; nur die Lage wird transformiert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are transformed too, by the same operation.</source>
      <translation>Die Höhen werden mit derselben Operation transformiert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Heights of the used points.</source>
      <translation>Höhen der verwendeten Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here all ponds are full: water runs on over them to the rim or an inlet.</source>
      <translation>Hier sind alle Tümpel voll: Das Wasser läuft über sie weiter zum Rand oder zu einem Einlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here ponds keep their water, and hollows that noise explains let it pass as if they were full.</source>
      <translation>Hier behalten Tümpel ihr Wasser, und Mulden, die das Rauschen erklärt, lassen es durch, als wären sie voll.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here water stays in every pit, those of noise too.</source>
      <translation>Hier bleibt Wasser in jedem Tiefpunkt, auch in denen des Rauschens.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Highest ({unit})</source>
      <translation>Höchste ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Histogram of the area by depth of cut and fill.</source>
      <translation>Histogramm der Fläche nach Tiefe von Abtrag und Auftrag.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Histogram of the distance between points recorded one after another; median {middle} {unit}.</source>
      <translation>Histogramm der Entfernung nacheinander aufgezeichneter Punkte; Median {middle} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Histogram of the heights of the used points, from {low} to {high} {unit}.</source>
      <translation>Histogramm der Höhen der verwendeten Punkte, von {low} bis {high} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Holds</source>
      <translation>Enthält</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Holds more by ({unit}³)</source>
      <translation>Fasst mehr um ({unit}³)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Hollow outline: what is left is the alpha shape of Edelsbrunner, Kirkpatrick and Seidel (1983).</source>
      <translation>Hohler Umriss: Was bleibt, ist die Alpha-Form von Edelsbrunner, Kirkpatrick und Seidel (1983).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of the one mark found in both: RMSEH = {rmse_cm:.1f} cm (the check point's own error included).</source>
      <translation>Lagegenauigkeit der einen in beiden gefundenen Marke: RMSEH = {rmse_cm:.1f} cm (eigener Fehler des Kontrollpunkts inbegriffen).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own error included).</source>
      <translation>Lagegenauigkeit von {count} in beiden gefundenen Marken: RMSEH = {rmse_cm:.1f} cm (eigener Fehler der Kontrollpunkte inbegriffen).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights of each run repeat where it met others, against the receiver's claim: {shown} of {count} runs. Grey: the whole survey.</source>
      <translation>Wie sich Höhen jedes Laufs wiederholen, wo er andere traf, gegen die Angabe des Empfängers: {shown} von {count} Läufen. Grau: die ganze Vermessung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights repeat</source>
      <translation>Wie sich Höhen wiederholen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How the file was read</source>
      <translation>Wie die Datei gelesen wurde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>How this was found:</source>
      <translation>Wie das gefunden wurde:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How {file} was read</source>
      <translation>Wie {file} gelesen wurde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>In words</source>
      <translation>In Worten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Index</source>
      <translation>Zähllinie</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>Index contours are set to every {index_every} contours; give a whole number from 1 up.</source>
      <translation>Zähllinien sind auf alle {index_every} Höhenlinien gesetzt; geben Sie eine ganze Zahl ab 1 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Indications</source>
      <translation>Hinweise</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>Inlets that take no water, because they are off the surface or another one is nearer: {names}.</source>
      <translation>Einläufe, die kein Wasser aufnehmen, weil sie nicht auf der Oberfläche liegen oder ein anderer näher ist: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against one check shot of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation>Interne Kontrolle, keine Prüfung nach einem Standard: gegen eine Kontrollmessung desselben Empfängers RMSEz {rmse:.3f} m, Mittel {mean:+.3f} m, 1,9600 × RMSEz {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against {count} check shots of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation>Interne Kontrolle, keine Prüfung nach einem Standard: gegen {count} Kontrollmessungen desselben Empfängers RMSEz {rmse:.3f} m, Mittel {mean:+.3f} m, 1,9600 × RMSEz {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Interval and noise: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), annex B, RMSE of heights = interval / 3.</source>
      <translation>Äquidistanz und Rauschen: ASPRS Positional Accuracy Standards for Digital Geospatial Data, Ausgabe 1 (2014), Anhang B, RMSE der Höhen = Äquidistanz / 3.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}, and {second}.</source>
      <translation>Es könnte auch sein, dass {cause}, und {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}.</source>
      <translation>Es könnte auch sein, dass {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Its height ({unit})</source>
      <translation>Ihre Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Its own sigma (mm)</source>
      <translation>Eigenes Sigma (mm)</translation>
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
      <translation>K von Kuppen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of sags</source>
      <translation>K von Wannen</translation>
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
      <translation>Art</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Larger by ({unit}²)</source>
      <translation>Größer um ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Least redundancy</source>
      <translation>Kleinste Redundanz</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length ({unit})</source>
      <translation>Länge ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Length in plan ({unit})</source>
      <translation>Länge im Grundriss ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of each verdict ({unit})</source>
      <translation>Länge jedes Urteils ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of the water ({unit})</source>
      <translation>Länge des Wassers ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Lengths in plan, and area</source>
      <translation>Längen im Grundriss und Fläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Level ({unit})</source>
      <translation>Stufe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of a triangle lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation>Ebene Stelle von {value:.1f} m² bei E {easting:.3f} N {northing:.3f}: Alle Ecken eines Dreiecks liegen auf einer Linie der Höhe {height:.3f} m. Ist das Gelände dort nicht eben, fügen Sie einen Höhenpunkt hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of {count} triangles lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation>Ebene Stelle von {value:.1f} m² bei E {easting:.3f} N {northing:.3f}: Alle Ecken von {count} Dreiecken liegen auf einer Linie der Höhe {height:.3f} m. Ist das Gelände dort nicht eben, fügen Sie einen Höhenpunkt hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}, and {second}.</source>
      <translation>Wahrscheinliche Ursache: {cause}, und {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}.</source>
      <translation>Wahrscheinliche Ursache: {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Limit</source>
      <translation>Grenzwert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Limits and cautions</source>
      <translation>Grenzen und Warnungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Line</source>
      <translation>Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Line {first}: {reason}</source>
      <translation>Zeile {first}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lines</source>
      <translation>Linien</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Lines     {lines} from field codes, {edges} edges of the surface held</source>
      <translation>Linien    {lines} aus Feldcodes, {edges} Kanten der Oberfläche eingehalten</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at one place; they were joined there. Difference of heights {spread:.3f} m.</source>
      <translation>Linien kreuzen sich an einer Stelle; dort wurden sie verbunden. Höhenunterschied {spread:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at {count} places; they were joined there. Largest difference of heights {spread:.3f} m.</source>
      <translation>Linien kreuzen sich an {count} Stellen; dort wurden sie verbunden. Größter Höhenunterschied {spread:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes</source>
      <translation>Linien aus Feldcodes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/run_figures.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lines of the file</source>
      <translation>Zeilen der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines that are</source>
      <translation>Zeilen, die</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} (line {line}).</source>
      <translation>Linien, die nie beendet wurden; sie enden an ihrem letzten Punkt. Linien: {count}, erste {label} bei {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines the surface holds to</source>
      <translation>Linien, die die Oberfläche einhält</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Lines {first} to {last}: {reason}</source>
      <translation>Zeilen {first} bis {last}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Local codes and licensed practice decide on drainage, and on where water may be led: turning it onto a neighbour's ground is a legal matter in most places.</source>
      <translation>Örtliche Vorschriften und befugte Fachleute entscheiden über die Entwässerung und darüber, wohin Wasser geleitet werden darf: Es auf das Grundstück eines Nachbarn zu leiten, ist meist eine Rechtsfrage.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Local codes, the contract and a licensed professional decide; this report does not.</source>
      <translation>Örtliche Vorschriften, der Vertrag und eine befugte Fachperson entscheiden; dieser Bericht nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them.</source>
      <translation>Orten Sie Leitungen im Boden, bevor jemand gräbt: Keine Vermessung der Oberfläche zeigt sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them. Setting out and machine guidance need independent checks.</source>
      <translation>Orten Sie Leitungen im Boden, bevor jemand gräbt: Keine Vermessung der Oberfläche zeigt sie. Absteckung und Maschinensteuerung brauchen unabhängige Kontrollen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Low points along the edges, where water stands</source>
      <translation>Tiefpunkte an den Rändern, wo Wasser steht</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Low points are found along the line alone: water may leave sideways, over a lowered kerb or into an inlet. The deepest place of a noisy profile is a little too deep; depths below 2 standard deviations are not told.</source>
      <translation>Tiefpunkte werden nur entlang der Linie gefunden: Wasser kann seitwärts abfließen, über einen abgesenkten Bord oder in einen Einlauf. Die tiefste Stelle eines verrauschten Profils liegt etwas zu tief; Tiefen unter 2 Standardabweichungen werden nicht genannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lowest ({unit})</source>
      <translation>Niedrigste ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Map of cut and fill by depth, with {count} lines of no cut and no fill and the rims of both surfaces.</source>
      <translation>Karte von Abtrag und Auftrag nach Tiefe, mit {count} Nulllinien und den Rändern beider Oberflächen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the slopes in {count} classes, the steeper the darker, with rim and breaklines.</source>
      <translation>Karte der Neigungen in {count} Klassen, je steiler, desto dunkler, mit Rand und Bruchkanten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark.</source>
      <translation>Karte der Vermessungspunkte: {used} verwendet, {flagged} markiert und {rejected} verworfen, jede Art mit ihrem Zeichen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Map of the used points with {circles} empty circles and {places} places to walk again.</source>
      <translation>Karte der verwendeten Punkte mit {circles} leeren Kreisen und {places} nochmals zu begehenden Stellen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the {count} places to look at over the shaded surface, by kind and number.</source>
      <translation>Karte der {count} anzusehenden Stellen über der geschummerten Oberfläche, nach Art und Nummer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} catchments with channels and ridges.</source>
      <translation>Karte von {count} Einzugsgebieten mit Gerinnen und Wasserscheiden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Map of {count} check points over the shaded surface with their differences.</source>
      <translation>Karte von {count} Kontrollpunkten über der geschummerten Oberfläche mit ihren Unterschieden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Map of {count} contour lines every {interval} {unit} over the shaded surface, with their heights, spot heights, rim and breaklines.</source>
      <translation>Karte von {count} Höhenlinien alle {interval} {unit} über der geschummerten Oberfläche, mit ihren Höhen, Höhenpunkten, Rand und Bruchkanten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} ponds by depth with pits, spill points and where they spill to.</source>
      <translation>Karte von {count} Tümpeln nach Tiefe mit Tiefpunkten, Überläufen und wohin sie überlaufen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Map of {count} ponds that are new, changed or gone.</source>
      <translation>Karte von {count} Tümpeln, die neu, verändert oder verschwunden sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {paths} paths of water, channels, ponds and inlets over the shaded surface.</source>
      <translation>Karte von {paths} Wasserwegen, Gerinnen, Tümpeln und Einläufen über der geschummerten Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mass diagram: the lower line rises in cut and falls in fill; between places where it is 0 the earth balances.</source>
      <translation>Massenlinie: Die untere Linie steigt im Abtrag und fällt im Auftrag; zwischen Stellen, an denen sie 0 ist, gleicht sich die Erde aus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Material ({unit} of cut)</source>
      <translation>Material ({unit} Abtrag)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean cut ({unit})</source>
      <translation>Mittlerer Abtrag ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean depth ({unit})</source>
      <translation>Mittlere Tiefe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Mean fall to the left (%)</source>
      <translation>Mittleres Gefälle nach links (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean fill ({unit})</source>
      <translation>Mittlerer Auftrag ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mean haul ({unit})</source>
      <translation>Mittlere Förderweite ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Mean, used ({unit})</source>
      <translation>Mittel, verwendet ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Median</source>
      <translation>Median</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Method</source>
      <translation>Verfahren</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Method and sources</source>
      <translation>Verfahren und Quellen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Middle height ({unit})</source>
      <translation>Höhe in der Mitte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Much of the ground is no deeper than the noise of the points: noise alone makes about {excess:.1f} m³ of cut and as much fill. The net volume is not touched by it.</source>
      <translation>Ein großer Teil des Geländes ist nicht tiefer als das Rauschen der Punkte: Das Rauschen allein macht etwa {excess:.1f} m³ Abtrag und ebenso viel Auftrag. Das Nettovolumen ist davon nicht berührt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Name</source>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS.</source>
      <translation>Weder vertauschte Spalten noch eine andere Einheit, Zone oder ein anderer Ursprung bringen sie dorthin; prüfen Sie das KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Net ({unit})</source>
      <translation>Netto ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none.</source>
      <translation>Es ist kein KBS angegeben; verwenden Sie --crs mit einem EPSG-Code wie EPSG:25832 oder 'local' für keines.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>No check point states its own height error, so none is added; edition 2 asks for it. Give a column sigma_v.</source>
      <translation>Kein Kontrollpunkt nennt seinen eigenen Höhenfehler, also wird keiner hinzugerechnet; Ausgabe 2 verlangt ihn. Geben Sie eine Spalte sigma_v an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>No contour interval can be vouched for: neither check points nor repeats nor stated errors are known.</source>
      <translation>Für keine Äquidistanz kann gebürgt werden: Weder Kontrollpunkte noch Wiederholungen noch angegebene Fehler sind bekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>No crest was fitted, so nothing is said of sight.</source>
      <translation>Es wurde keine Kuppe eingepasst, also wird nichts über die Sicht gesagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>No decisions were made by hand.</source>
      <translation>Es wurden keine Entscheidungen von Hand getroffen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>No ground drains nowhere: all water comes to the rim or to an inlet.</source>
      <translation>Kein Gelände entwässert nirgendwohin: Alles Wasser kommt zum Rand oder zu einem Einlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>No ground has its water go elsewhere.</source>
      <translation>Von keinem Gelände läuft das Wasser anderswohin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>No height between {low:.1f} m and {high:.1f} m balances cut and fill with a surplus of {surplus:.1f} m³. Check the surplus.</source>
      <translation>Keine Höhe zwischen {low:.1f} m und {high:.1f} m gleicht Abtrag und Auftrag mit einem Überschuss von {surplus:.1f} m³ aus. Prüfen Sie den Überschuss.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>No level meets the surface; choose a smaller interval or another base.</source>
      <translation>Keine Stufe trifft die Oberfläche; wählen Sie eine kleinere Äquidistanz oder eine andere Basis.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>No line was rejected.</source>
      <translation>Keine Zeile wurde verworfen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>No pass fits into the area: none would be {step:g} m long, the distance at which points are stored. Have the perimeter walked too, or give a larger area.</source>
      <translation>In das Gebiet passt keine Bahn: Keine wäre {step:g} m lang, der Abstand, in dem Punkte gespeichert werden. Lassen Sie auch den Umfang begehen oder geben Sie ein größeres Gebiet an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No place needs to be walked again.</source>
      <translation>Keine Stelle muss nochmals begangen werden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out.</source>
      <translation>Kein Punkt liegt außerhalb des Geltungsbereichs seines KBS, also wird '{name}' nicht angewandt; lassen Sie --correct weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No point was flagged or rejected for anything but its code.</source>
      <translation>Kein Punkt wurde aus einem anderen Grund als seinem Code markiert oder verworfen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No two used points have the same place.</source>
      <translation>Keine zwei verwendeten Punkte haben denselben Ort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No.</source>
      <translation>Nr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Noise moves a contour sideways by the noise of the height over the slope: at the median slope of {slope} % a standard deviation of {shift} {unit}; on flatter ground more.</source>
      <translation>Rauschen verschiebt eine Höhenlinie seitwärts um das Rauschen der Höhe geteilt durch die Neigung: bei der mittleren Neigung von {slope} % eine Standardabweichung von {shift} {unit}; auf flacherem Gelände mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Noise of the used points as the receiver claims it</source>
      <translation>Rauschen der verwendeten Punkte laut Empfänger</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>None of the {count} cross-sections is on the surface {surface}. Check line and CRS.</source>
      <translation>Keines der {count} Querprofile liegt auf der Oberfläche {surface}. Prüfen Sie Linie und KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>None of the {count} points lies at a vertex of the surface, so they cannot tell its noise. Give the points that the surface was built from.</source>
      <translation>Keiner der {count} Punkte liegt auf einem Eckpunkt der Oberfläche, also können sie ihr Rauschen nicht nennen. Geben Sie die Punkte an, aus denen die Oberfläche gebildet wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>None of these is a proof.</source>
      <translation>Nichts davon ist ein Beweis.</translation>
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
      <translation>Nordwert ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Not compared ({unit})</source>
      <translation>Nicht verglichen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Not compared: {existing:.1f} m² that only {existing_name} covers, {design:.1f} m² that only {design_name} covers.</source>
      <translation>Nicht verglichen: {existing:.1f} m², die nur {existing_name} bedeckt, {design:.1f} m², die nur {design_name} bedeckt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Not for construction or setting out without independent checks on the ground.</source>
      <translation>Nicht für Bau oder Absteckung ohne unabhängige Kontrollen im Gelände.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Not for construction or setting out without independent checks; see the limits and cautions at the end.</source>
      <translation>Nicht für Bau oder Absteckung ohne unabhängige Kontrollen; siehe die Grenzen und Warnungen am Ende.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Not for construction, traffic or setting out without independent checks.</source>
      <translation>Nicht für Bau, Verkehr oder Absteckung ohne unabhängige Kontrollen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation>Nicht geprüft nach FGDC-STD-007.3-1998: Verlangt werden {needed} Kontrollpunkte, es sind {count}. Was sie zeigen: 1,9600 × RMSEz = {accuracy:.3f} {symbol}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there is one. What it shows is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation>Nicht geprüft nach FGDC-STD-007.3-1998: Verlangt werden {needed} Kontrollpunkte, es ist nur einer. Was er zeigt: 1,9600 × RMSEz = {accuracy:.3f} {symbol}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Note</source>
      <translation>Anmerkung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing measured within ({unit})</source>
      <translation>Nichts gemessen innerhalb von ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing was deleted: every point is in points.csv with its status and reasons. Where you know better, decide by hand with --decisions.</source>
      <translation>Nichts wurde gelöscht: Jeder Punkt steht mit Status und Gründen in points.csv. Wo Sie es besser wissen, entscheiden Sie von Hand mit --decisions.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation>Bis zu {value:.1f} m weit wurde bei E {easting:.3f} N {northing:.3f} nichts aufgezeichnet (ein Dreieck, {area:.0f} m²); sonst liegen die Bahnen {passes:.1f} m und die Punkte {spacing:.2f} m auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation>Bis zu {value:.1f} m weit wurde bei E {easting:.3f} N {northing:.3f} nichts aufgezeichnet (ein Dreieck, {area:.0f} m²); sonst liegen die Bahnen {passes:.1f} m auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation>Bis zu {value:.1f} m weit wurde bei E {easting:.3f} N {northing:.3f} nichts aufgezeichnet ({count} Dreiecke, {area:.0f} m²); sonst liegen die Bahnen {passes:.1f} m und die Punkte {spacing:.2f} m auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation>Bis zu {value:.1f} m weit wurde bei E {easting:.3f} N {northing:.3f} nichts aufgezeichnet ({count} Dreiecke, {area:.0f} m²); sonst liegen die Bahnen {passes:.1f} m auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>Noticed on the way:</source>
      <translation>Unterwegs bemerkt:</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Nowhere to walk again: no place of the surface is farther than {limit:.1f} m from a measured one.</source>
      <translation>Nichts nochmals zu begehen: Keine Stelle der Oberfläche ist weiter als {limit:.1f} m von einem gemessenen Punkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of it drains nowhere ({unit}²)</source>
      <translation>Davon ohne Abfluss ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.</source>
      <translation>Davon kommen {bend:.3f} m vom Gelände zwischen Bahnen mit {spacing:.1f} m Abstand (hier aus den Krümmungen entlang der Bahnen geschätzt, nach keinem Standard); Formen schmaler als etwa {narrow:.0f} m sind nicht in den Daten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of {count} places on the surface the water of {rim} leaves over the rim, of {inlets} comes to an inlet, and of {stay} stays in a pond or pit.</source>
      <translation>Von {count} Orten auf der Oberfläche fließt das Wasser von {rim} über den Rand ab, von {inlets} kommt es zu einem Einlauf, und von {stay} bleibt es in einem Tümpel oder Tiefpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Offset</source>
      <translation>Versatz</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Offset, right of the line above 0 ({unit})</source>
      <translation>Abstand, rechts der Linie über 0 ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>On the user's word the coordinates were read otherwise: {cause}.</source>
      <translation>Auf Wort des Benutzers wurden die Koordinaten anders gelesen: {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>One catchment is larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation>Ein Einzugsgebiet ist größer als 80 ha; für solche Flächen wird das rationale Verfahren gewöhnlich nicht verwendet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>One check point has the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' if it is not.</source>
      <translation>Ein Kontrollpunkt hat den Bewuchs 'grass', der als kurzes Gras gilt, also als unbewachsen; schreiben Sie 'tall grass', wenn das nicht stimmt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One check point states no height error of its own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation>Ein Kontrollpunkt nennt keinen eigenen Höhenfehler; er zählt mit {sigma:.3f} m, wie bei den anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>One crossing of passes tells next to nothing of the noise of the survey; plan more passes across.</source>
      <translation>Eine einzige Kreuzung von Bahnen sagt fast nichts über das Rauschen der Vermessung; planen Sie mehr Bahnen quer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One of {all} check points lies outside the surface and was not used: {names}.</source>
      <translation>Einer von {all} Kontrollpunkten liegt außerhalb der Oberfläche und wurde nicht verwendet: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>One of {total} points lies outside the area the operation is made for ({area}).</source>
      <translation>Einer von {total} Punkten liegt außerhalb des Gebiets, für das die Operation gemacht ist ({area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place to walk again; with it no place is farther than {limit:.1f} m from a measured one.</source>
      <translation>Eine Stelle nochmals zu begehen; mit ihr ist keine Stelle weiter als {limit:.1f} m von einem gemessenen Punkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point has no name; choose another name field or number the points.</source>
      <translation>Ein Punkt hat keinen Namen; wählen Sie ein anderes Namensfeld oder nummerieren Sie die Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the design surface: it has no design height.</source>
      <translation>Ein Punkt liegt nicht auf der Entwurfsoberfläche: Er hat keine Entwurfshöhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the existing surface: cut and fill are not known there.</source>
      <translation>Ein Punkt liegt nicht auf der bestehenden Oberfläche: Abtrag und Auftrag sind dort nicht bekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>One point shares its name “{name}” with another; both are kept.</source>
      <translation>Ein Punkt teilt seinen Namen „{name}“ mit einem anderen; beide bleiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One position was recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation>Ein Ort wurde mehrfach aufgezeichnet (auf 0,1 mm gleich); die Oberfläche nimmt die mittlere Höhe. Größter Unterschied {spread:.3f} m, bei E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>One status was set by hand against the automatic checks, in line {line}.</source>
      <translation>Ein Status wurde von Hand gegen die automatischen Prüfungen gesetzt, in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One vertex is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>Ein Eckpunkt liegt außerhalb der Grenze oder des beschnittenen Randes oder in einer Aussparung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Orthometric heights changed to ellipsoidal ones: height plus geoid separation.</source>
      <translation>Orthometrische Höhen wurden in ellipsoidische geändert: Höhe plus Geoidundulation.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Outcome</source>
      <translation>Ergebnis</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to {worst_mm} mm.</source>
      <translation>Über das Gelände läuft der Faktor von {least} bis {most}; mit einem Faktor ist eine Linie von 100 m um bis zu {worst_mm} mm falsch.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>PDOP, at most</source>
      <translation>PDOP, höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>PROJ knows no way from {source} to {target}; choose another CRS.</source>
      <translation>PROJ kennt keinen Weg von {source} nach {target}; wählen Sie ein anderes KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Pad</source>
      <translation>Planum</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Part of</source>
      <translation>Teil von</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Passes {spacing:.2f} m apart would be {count} on this area; ask for less or plan parts of it.</source>
      <translation>Bahnen mit {spacing:.2f} m Abstand wären auf dieser Fläche {count}; verlangen Sie weniger oder planen Sie Teile davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flow ({unit})</source>
      <translation>Spitzenabfluss ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>Peak flows by the rational method (Kuichling 1889) are an indication: they hold as far as the runoff coefficients, the intensity and its duration do that were given, and do not replace a drainage design.</source>
      <translation>Spitzenabflüsse nach dem rationalen Verfahren (Kuichling 1889) sind ein Anhalt: Sie gelten so weit wie die angegebenen Abflussbeiwerte, die Regenspende und ihre Dauer und ersetzen keine Entwässerungsplanung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flows by the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889), with an intensity of {intensity} {unit}. They hold as far as the coefficients, the intensity and its duration do, which were given, not found here; they are an indication.</source>
      <translation>Spitzenabflüsse nach dem rationalen Verfahren, Q = C i A (E. Kuichling, „The relation between the rainfall and the discharge of sewers in populous districts“, Transactions of the American Society of Civil Engineers 20, 1889), mit einer Intensität von {intensity} {unit}. Sie gelten so weit wie die Beiwerte, die Intensität und ihre Dauer, die angegeben und nicht hier gefunden wurden; sie sind ein Anhalt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Place     {statement}</source>
      <translation>Lage      {statement}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Places</source>
      <translation>Stellen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Places met</source>
      <translation>Getroffene Stellen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once (equal to 0.1 mm in plan): {count}. Rule: the surface takes the mean height.</source>
      <translation>Mehrfach aufgezeichnete Orte (in der Lage auf 0,1 mm gleich): {count}. Regel: Die Oberfläche nimmt die mittlere Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once, largest differences first: {shown} of {count}</source>
      <translation>Mehrfach aufgezeichnete Orte, größte Unterschiede zuerst: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at</source>
      <translation>Stellen zum Ansehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at, numbered as in the table.</source>
      <translation>Stellen zum Ansehen, nummeriert wie in der Tabelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places to walk again, in walking order: {shown} of {count}</source>
      <translation>Nochmals zu begehende Stellen, in der Reihenfolge des Weges: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places with flagged or rejected points: {shown} of {count}</source>
      <translation>Stellen mit markierten oder verworfenen Punkten: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan</source>
      <translation>Lage</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole numbers exactly. Heights are never rounded. Where rounding could decide, bounds of J. R. Shewchuk (1997, “Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates”) tell when whole numbers must.</source>
      <translation>Lagekoordinaten sind ganze Zehntelmillimeter; welche Punkte Dreiecke bilden, wird an diesen ganzen Zahlen genau entschieden. Höhen werden nie gerundet. Wo Rundung entscheiden könnte, sagen Schranken von J. R. Shewchuk (1997, „Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates“), wann ganze Zahlen nötig sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design over the shaded ground, with slopes and daylight lines.</source>
      <translation>Grundriss des Entwurfs über dem geschummerten Gelände, mit Böschungen und Böschungsschnittlinien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design: arrows and ticks point downhill; slopes are told as 1 up or down in so many out, falls of the platform in per cent.</source>
      <translation>Grundriss des Entwurfs: Pfeile und Striche zeigen bergab; Böschungen sind als 1 hinauf oder hinab auf so viel hinaus angegeben, Gefälle des Planums in Prozent.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Lage: Einpassung mit vier Parametern auf {count} Passpunkte; um {turn} Grad gedreht (gegen den Uhrzeigersinn; Standardabweichung {turn_sd} Bogensekunden), Maßstab {scale} ({ppm} ppm, Standardabweichung {scale_sd} ppm), dann in der Mitte der Punkte um {shift_e} m nach Osten und {shift_n} m nach Norden verschoben. Redundanz {freedom}, Standardabweichung einer Koordinate {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points</source>
      <translation>Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Points    {points} from {lines} lines ({rejects} lines rejected); {used} used, {flagged} flagged, {rejected} rejected</source>
      <translation>Punkte    {points} aus {lines} Zeilen ({rejects} Zeilen verworfen); {used} verwendet, {flagged} markiert, {rejected} verworfen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Points a bar of {width} {unit}</source>
      <translation>Punkte je Balken von {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points and decisions</source>
      <translation>Punkte und Entscheidungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Points kept out of the surface because their code is not ground: {count}, first {point} (line {line}).</source>
      <translation>Punkte, die nicht in die Oberfläche gingen, weil ihr Code kein Gelände ist: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Points on a local grid cannot be transformed; say their CRS, or fit them to control points.</source>
      <translation>Punkte in einem lokalen System lassen sich nicht transformieren; nennen Sie ihr KBS oder passen Sie sie auf Passpunkte ein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points rejected</source>
      <translation>Verworfene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points still used</source>
      <translation>Weiter verwendete Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Points that have another status by hand than the checks gave them: {changed}. Decisions that agree with the checks: {same}.</source>
      <translation>Punkte, die von Hand einen anderen Status haben als durch die Prüfungen: {changed}. Entscheidungen, die mit den Prüfungen übereinstimmen: {same}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Points to set out: {count}, control points: {control}.</source>
      <translation>Abzusteckende Punkte: {count}, Festpunkte: {control}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points with a value</source>
      <translation>Punkte mit einem Wert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Pond</source>
      <translation>Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>Ponds</source>
      <translation>Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds after the change, those that are gone, and ground whose water goes elsewhere, over the changed surface.</source>
      <translation>Tümpel nach der Änderung, verschwundene und Gelände, dessen Wasser anderswohin läuft, über der geänderten Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds before and after, the largest change first: {shown} of {count}</source>
      <translation>Tümpel vorher und nachher, die größte Änderung zuerst: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds that noise does not explain: {count}, of {pits} pits. Full, they hold {volume} {unit}³ under {area} {unit}² of water.</source>
      <translation>Tümpel, die das Rauschen nicht erklärt: {count}, von {pits} Tiefpunkten. Voll fassen sie {volume} {unit}³ unter {area} {unit}² Wasser.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds when full, by depth, with the way of the overflow.</source>
      <translation>Volle Tümpel nach Tiefe, mit dem Weg des Überlaufs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds, the deepest first: {shown} of {count}</source>
      <translation>Tümpel, der tiefste zuerst: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: {accuracy}.</source>
      <translation>Positionen von {source} nach {target} transformiert mit der PROJ-Operation '{name}'; Genauigkeit laut PROJ: {accuracy}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Profile and grades</source>
      <translation>Längsprofil und Neigungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Profile of {name}</source>
      <translation>Längsprofil von {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Quantity</source>
      <translation>Größe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSE</source>
      <translation>RMSE</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSEV with that error in quadrature (mm)</source>
      <translation>RMSEV mit diesem Fehler quadratisch dazu (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reason</source>
      <translation>Grund</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Reasons</source>
      <translation>Gründe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reasons (a point can have several)</source>
      <translation>Gründe (ein Punkt kann mehrere haben)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Reasons given</source>
      <translation>Angegebene Gründe</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass.</source>
      <translation>Aufgezeichnet alle {along:.2f} m entlang der Bahnen, {across:.1f} m von Bahn zu Bahn.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Region</source>
      <translation>Gebiet</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/partition.py" />
      <source>Region {name} has a ring of {count} corners with coordinates; a ring needs three.</source>
      <translation>Das Gebiet {name} hat einen Ring mit {count} Ecken mit Koordinaten; ein Ring braucht drei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Regions overlap over {area:.1f} m² ({names}): each of them counts that ground, the total counts it once.</source>
      <translation>Gebiete überlappen sich auf {area:.1f} m² ({names}): Jedes zählt dieses Gelände, die Summe zählt es einmal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Rejected</source>
      <translation>Verworfen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Rejected lines</source>
      <translation>Verworfene Zeilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Remark</source>
      <translation>Bemerkung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   {count}, all of them in the report</source>
      <translation>Hinweise  {count}, alle im Bericht</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Repeated records with line codes, left out of the lines together with their words. Points: {count}, first {point} (line {line}).</source>
      <translation>Wiederholte Aufzeichnungen mit Liniencodes, samt ihren Wörtern aus den Linien gelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Residuals at the control points: fitted minus control</source>
      <translation>Restklaffungen an den Passpunkten: eingepasst minus Soll</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area encloses nothing: {count} corners; draw a polygon of three corners or more.</source>
      <translation>Der Ring {number} der Fläche umschließt nichts: {count} Ecken; zeichnen Sie ein Polygon mit drei oder mehr Ecken.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area has a corner without finite coordinates; draw it again.</source>
      <translation>Der Ring {number} der Fläche hat eine Ecke ohne endliche Koordinaten; zeichnen Sie ihn neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/road.py" />
      <source>Road      {name}, {length:.1f} {unit}; stretches by the limits: {passed} pass, {failed} fail, {close} too close to tell</source>
      <translation>Straße    {name}, {length:.1f} {unit}; Abschnitte nach den Grenzwerten: {passed} erfüllt, {failed} nicht erfüllt, {close} zu knapp</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Road: {name}</source>
      <translation>Straße: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Rule</source>
      <translation>Regel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the height of the line that comes first.</source>
      <translation>Regel: die Höhe der Linie, die zuerst kommt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights, however much they differ.</source>
      <translation>Regel: das Mittel der zwei Höhen, wie sehr sie sich auch unterscheiden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights; a larger difference than the tolerance would have been refused.</source>
      <translation>Regel: das Mittel der zwei Höhen; ein Unterschied über der Toleranz wäre zurückgewiesen worden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Run by run, where a run met others at {least} places or more: {shown} of {count} runs</source>
      <translation>Lauf für Lauf, wo ein Lauf andere an {least} oder mehr Stellen traf: {shown} von {count} Läufen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Runoff coefficient</source>
      <translation>Abflussbeiwert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Same place, different heights: the largest differences</source>
      <translation>Selber Ort, verschiedene Höhen: die größten Unterschiede</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart ({ppm} ppm).</source>
      <translation>Beispiellinie {start} bis {end}: {grid_m} m im Gitter, {ground_m} m am Boden, {difference_mm} mm auseinander ({ppm} ppm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second file, line</source>
      <translation>Zweite Datei, Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Second line</source>
      <translation>Zweite Zeile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second minus first</source>
      <translation>Zweite minus erste</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Section {name}. Heights are exact all along, at every edge of both surfaces.</source>
      <translation>Schnitt {name}. Die Höhen sind überall genau, an jeder Kante beider Oberflächen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/sections.py" />
      <source>Sections of {width} m to each side cannot be drawn; give a width above 0.</source>
      <translation>Schnitte von {width} m nach jeder Seite lassen sich nicht zeichnen; geben Sie eine Breite über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Räumliche Einpassung mit sieben Parametern auf {count} Passpunkte; um {turn} Grad um die Achse (Ost {x}, Nord {y}, oben {z}) gedreht, Maßstab {scale} ({ppm} ppm). Redundanz {freedom}, Standardabweichung einer Koordinate {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Share of the plan (%)</source>
      <translation>Anteil im Grundriss (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Share of the site (%)</source>
      <translation>Anteil am Gelände (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Sheet     contours shifted by at most {shifted:.3f} m, {labels} labels for 1 : {scale:g}, {spots} spots</source>
      <translation>Blatt     Höhenlinien um höchstens {shifted:.3f} m verschoben, {labels} Beschriftungen für 1 : {scale:g}, {spots} Höhenpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/paper.py" />
      <source>Sheet {page} of {pages}</source>
      <translation>Blatt {page} von {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Shift of the design ({unit})</source>
      <translation>Verschiebung des Entwurfs ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sight on crests by your table of speeds and least K</source>
      <translation>Sicht auf Kuppen nach Ihrer Tabelle von Geschwindigkeiten und kleinsten K</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Sight on crests is an indication only: it compares the K of a fitted curve with your table. It knows nothing of bends, walls, hedges, or the eye and object heights that your table assumes.</source>
      <translation>Die Sicht auf Kuppen ist nur ein Hinweis: Sie vergleicht das K einer eingepassten Ausrundung mit Ihrer Tabelle. Von Kurven, Mauern, Hecken oder den Aug- und Zielhöhen, die Ihre Tabelle annimmt, weiß sie nichts.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Signs: cut is ground to be taken away (existing above design), fill ground to be placed (design above existing), both positive; net is fill less cut, above 0 where earth must be brought in. Volumes are as the ground lies, without shrink or swell, unless a table says otherwise.</source>
      <translation>Vorzeichen: Abtrag ist wegzunehmendes Gelände (Bestand über Entwurf), Auftrag einzubauendes (Entwurf über Bestand), beide positiv; netto ist Auftrag minus Abtrag, über 0, wo Erde zugeführt werden muss. Volumen sind, wie das Gelände liegt, ohne Auflockerung oder Verdichtung, wenn eine Tabelle nichts anderes sagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sill at station</source>
      <translation>Schwelle bei Station</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Size (bytes)</source>
      <translation>Größe (Bytes)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size (mm)</source>
      <translation>Größe (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size / its sigma</source>
      <translation>Größe / ihr Sigma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope</source>
      <translation>Neigung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope of the triangles; a slope on a limit belongs to the flatter class.</source>
      <translation>Neigung der Dreiecke; eine Neigung auf einer Grenze gehört zur flacheren Klasse.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Slopes of cut, fill</source>
      <translation>Böschungen von Abtrag, Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Kleinste Äquidistanz, die die Daten tragen: {interval:g} {unit} (RMSEz {rmse:.3f} m aus {basis}; RMSEz = Äquidistanz / 3, ASPRS Positional Accuracy Standards, 2014, Anhang B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Source of the limit</source>
      <translation>Quelle des Grenzwerts</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Space</source>
      <translation>Abstand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end.</source>
      <translation>Punktabstand entlang der Bahnen. {count} längere Schritte, bis {longest} {unit}, liegen jenseits des rechten Endes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Spacing and gaps</source>
      <translation>Punktabstand und Lücken</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Speed reached for sure</source>
      <translation>Sicher erreichte Geschwindigkeit</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the plane of its {count:.0f} neighbours, {ratio:.0f} times the scatter there.</source>
      <translation>Ausreißer bei E {easting:.3f} N {northing:.3f}: {value:+.3f} m neben der Ebene seiner {count:.0f} Nachbarn, das {ratio:.0f}-Fache der Streuung dort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike on a line at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the straight between its neighbours on the line, {ratio:.0f} times the scatter of lines.</source>
      <translation>Ausreißer auf einer Linie bei E {easting:.3f} N {northing:.3f}: {value:+.3f} m neben der Geraden zwischen seinen Nachbarn auf der Linie, das {ratio:.0f}-Fache der Streuung von Linien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spikes: points off the plane through their neighbours by several times the scatter of the survey, estimated from the median of absolute residuals (Rousseeuw and Croux 1993). The limits of all findings are this program's own choice, from no standard.</source>
      <translation>Ausreißer: Punkte, die um ein Mehrfaches der Streuung der Vermessung neben der Ebene durch ihre Nachbarn liegen, geschätzt aus dem Median der Restbeträge (Rousseeuw und Croux 1993). Die Grenzen aller Befunde sind eigene Wahl dieses Programms, aus keinem Standard.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Spills to</source>
      <translation>Läuft über nach</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spot heights: summits, pits and saddles by T. Banchoff (1967, “Critical points and curvature for embedded polyhedra”); shown is what stands out by an interval or more.</source>
      <translation>Höhenpunkte: Kuppen, Tiefpunkte und Sättel nach T. Banchoff (1967, „Critical points and curvature for embedded polyhedra“); gezeigt wird, was um eine Äquidistanz oder mehr heraussteht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Stage, area and volume</source>
      <translation>Pegel, Fläche und Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Standard deviation ({unit})</source>
      <translation>Standardabweichung ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>Standard deviation of a height (mm)</source>
      <translation>Standardabweichung einer Höhe (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Standard deviation of a height, found in this survey (mm)</source>
      <translation>Standardabweichung einer Höhe, in dieser Vermessung gefunden (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {own} mm, each with an error of its own; no drift.</source>
      <translation>Standardabweichungen folgen aus Höhen, die auf {own} mm gut sind, jede mit eigenem Fehler; keine Drift.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {total} mm: {own} mm of each point's own and {drift} mm that drift within {time} s, common to points recorded together.</source>
      <translation>Standardabweichungen folgen aus Höhen, die auf {total} mm gut sind: {own} mm eigener Anteil jedes Punktes und {drift} mm, die innerhalb von {time} s driften und zusammen aufgezeichneten Punkten gemeinsam sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Standard deviations of what it holds</source>
      <translation>Standardabweichungen dessen, was es fasst</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Station</source>
      <translation>Station</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Station ({unit})</source>
      <translation>Station ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Station {station}</source>
      <translation>Station {station}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stations</source>
      <translation>Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>Stations every {step} m cannot be set along {length:.1f} m; give a step above 0.</source>
      <translation>Stationen alle {step} m lassen sich auf {length:.1f} m nicht setzen; geben Sie einen Schritt über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Status</source>
      <translation>Status</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Steps a bar of {width} {unit}</source>
      <translation>Schritte je Balken von {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>Stopped; no file is half written.</source>
      <translation>Angehalten; keine Datei ist halb geschrieben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Storage of a basin: {name}</source>
      <translation>Inhalt eines Beckens: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Storage of the basin</source>
      <translation>Inhalt des Beckens</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stretches, each with its value nearest to the limit or farthest beyond it ± one standard deviation: {shown} of {count}</source>
      <translation>Abschnitte, jeder mit dem Wert, der dem Grenzwert am nächsten oder am weitesten darüber liegt, ± eine Standardabweichung: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Surface</source>
      <translation>Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}</source>
      <translation>Oberfl.   {triangles} Dreiecke, {area:.1f} m², Höhen {low:.3f} bis {high:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface ({unit})</source>
      <translation>Oberfläche ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check (mm)</source>
      <translation>Oberfläche minus Kontrolle (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check point</source>
      <translation>Oberfläche minus Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}” has no visible faces; its points ({points}) and lines ({lines}) are read. Build the surface from them.</source>
      <translation>Die Oberfläche „{name}“ hat keine sichtbaren Flächen; ihre Punkte ({points}) und Linien ({lines}) werden gelesen. Bilden Sie daraus die Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: a face is marked invisible and is left out.</source>
      <translation>Oberfläche „{name}“: Eine Fläche ist als unsichtbar gekennzeichnet und bleibt weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: one of {total} segments of its breaklines and boundaries is no edge of its faces; it comes as a line only.</source>
      <translation>Oberfläche „{name}“: Eine von {total} Strecken ihrer Bruchkanten und Grenzen ist keine Kante ihrer Flächen; sie kommt nur als Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: the face in line {line} has no area in plan (upright or none at all) and is left out.</source>
      <translation>Oberfläche „{name}“: Die Fläche in Zeile {line} hat keinen Inhalt im Grundriss (senkrecht oder gar keine) und bleibt weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces are marked invisible and are left out.</source>
      <translation>Oberfläche „{name}“: {count} Flächen sind als unsichtbar gekennzeichnet und bleiben weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces without area in plan (upright or none at all) are left out, the first in line {line}.</source>
      <translation>Oberfläche „{name}“: {count} Flächen ohne Inhalt im Grundriss (senkrecht oder gar keine) bleiben weg, die erste in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} of {total} segments of its breaklines and boundaries are no edges of its faces; they come as lines only.</source>
      <translation>Oberfläche „{name}“: {count} von {total} Strecken ihrer Bruchkanten und Grenzen sind keine Kanten ihrer Flächen; sie kommen nur als Linien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Survey report: {file}</source>
      <translation>Vermessungsbericht: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Tested {accuracy:.3f} {unit} vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check points, RMSEz {rmse:.3f} {symbol}).</source>
      <translation>Geprüfte Höhengenauigkeit {accuracy:.3f} {unit} bei 95 % Vertrauensniveau (FGDC-STD-007.3-1998; {count} Kontrollpunkte, RMSEz {rmse:.3f} {symbol}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>That would be {count} points to set out, more than {most}; choose a wider spacing.</source>
      <translation>Das wären {count} abzusteckende Punkte, mehr als {most}; wählen Sie einen größeren Abstand.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/grid.py" />
      <source>The DEM of {columns} x {rows} cells is a text of about {size:.0f} MB; a larger cell makes it smaller.</source>
      <translation>Das DGM mit {columns} x {rows} Zellen ist ein Text von etwa {size:.0f} MB; eine größere Zelle macht ihn kleiner.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The arc tolerance {value} m cannot be used. Give at least {least} m.</source>
      <translation>Die Bogentoleranz {value} m ist nicht verwendbar. Geben Sie mindestens {least} m an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The area is too small for a pass: its perimeter is all there is to walk, and no place is far from it.</source>
      <translation>Das Gebiet ist zu klein für eine Bahn: Zu begehen ist nur sein Umfang, und keine Stelle ist weit davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The base of the contour levels is {base} {unit}; give a number near the heights.</source>
      <translation>Die Basis der Höhenstufen ist {base} {unit}; geben Sie eine Zahl in der Nähe der Höhen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The basin spills at the edge of the surface (E {easting:.3f} N {northing:.3f}); its true brim may be elsewhere. Survey beyond it.</source>
      <translation>Das Becken läuft am Rand der Oberfläche über (E {easting:.3f} N {northing:.3f}); seine wahre Überlaufkante kann anderswo liegen. Vermessen Sie darüber hinaus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>The cell size is {cell} m; give a number above 0.</source>
      <translation>Die Zellgröße ist {cell} m; geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline has {count} different places; it needs two or more.</source>
      <translation>Die Achse hat {count} verschiedene Orte; sie braucht zwei oder mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The centreline is in {line} but the surface in {surface}. Reproject the line's layer to the surface's CRS.</source>
      <translation>Die Achse ist in {line}, die Oberfläche aber in {surface}. Transformieren Sie den Layer der Linie in das KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline turns back on itself at E {easting:.3f} N {northing:.3f}; redraw it.</source>
      <translation>Die Achse kehrt bei E {easting:.3f} N {northing:.3f} um; zeichnen Sie sie neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA suggests 20 % or more). Nearer to another one than a tenth of the site's diagonal ({distance:.0f} m): {near}.</source>
      <translation>Die Kontrollpunkte sind ungleich verteilt: Das leerste Viertel des Geländes enthält {least:.0f} % von ihnen (NSSDA rät zu 20 % oder mehr). Näher an einem anderen als ein Zehntel der Diagonale des Geländes ({distance:.0f} m): {near}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points' own error is {sigma_cm:.1f} cm; for the {class_cm:g}-cm class they should be good to {needed_cm:.1f} cm.</source>
      <translation>Der eigene Fehler der Kontrollpunkte ist {sigma_cm:.1f} cm; für die {class_cm:g}-cm-Klasse sollten sie auf {needed_cm:.1f} cm gut sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The check shots were taken with the receiver of the survey: an error they share (base station, pole height, geoid) does not show. Points from an independent, better source are needed for a statement by a standard.</source>
      <translation>Die Kontrollmessungen stammen vom Empfänger der Vermessung: Ein gemeinsamer Fehler (Basisstation, Stabhöhe, Geoid) zeigt sich nicht. Für eine Aussage nach einem Standard braucht es Punkte aus einer unabhängigen, besseren Quelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The checks found nothing.</source>
      <translation>Die Prüfungen haben nichts gefunden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The claim</source>
      <translation>Die Angabe</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The coded point of line {line} stands {size:+.3f} m off its line on either side.</source>
      <translation>Der codierte Punkt der Zeile {line} steht {size:+.3f} m neben seiner Linie zu beiden Seiten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>The column “{word}” is asked for twice.</source>
      <translation>Die Spalte „{word}“ ist zweimal verlangt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The columns for line number and words do not fit the number of codes; not joined. Points: {count}, first {point} (line {line}).</source>
      <translation>Die Spalten für Liniennummer und Wörter passen nicht zur Zahl der Codes; nicht verbunden. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The contour interval is {interval} {unit}; give a number above 0.</source>
      <translation>Die Äquidistanz ist {interval} {unit}; geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The contours are no better than the survey: where nobody walked, the surface is a straight guess between the points around.</source>
      <translation>Die Höhenlinien sind nicht besser als die Vermessung: Wo niemand ging, ist die Oberfläche eine gerade Vermutung zwischen den Punkten ringsum.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of one check point is not stated; it counts as non-vegetated.</source>
      <translation>Der Bewuchs eines Kontrollpunkts ist nicht angegeben; er zählt als unbewachsen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of {count} check points is not stated; they count as non-vegetated.</source>
      <translation>Der Bewuchs von {count} Kontrollpunkten ist nicht angegeben; sie zählen als unbewachsen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>The cross-section at station {station} does not fit on {paper} at {scale} (it is {width:.1f} m wide and {height:.1f} m high). Choose {fit} or a larger paper.</source>
      <translation>Das Querprofil bei Station {station} passt bei {scale} nicht auf {paper} (es ist {width:.1f} m breit und {height:.1f} m hoch). Wählen Sie {fit} oder ein größeres Papier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The cross-sections at stations {first} and {second} cross each other in a tight bend, {offset:.2f} m to the {side}. Ground beyond the crossing is counted twice: make the sections narrower there or fewer.</source>
      <translation>Die Querprofile bei den Stationen {first} und {second} kreuzen sich in einem engen Bogen, {offset:.2f} m nach {side}. Gelände jenseits der Kreuzung wird doppelt gezählt: Machen Sie die Schnitte dort schmaler oder weniger.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/depths.py" />
      <source>The depth limits {limits} (metres) must be above 0 and rise; mend their list.</source>
      <translation>Die Tiefengrenzen {limits} (Meter) müssen über 0 liegen und steigen; berichtigen Sie ihre Liste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The depth of topsoil (m)</source>
      <translation>Die Tiefe des Oberbodens (m)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The drift of heights is {value} m; give a standard deviation of 0 or more.</source>
      <translation>Die Drift der Höhen ist {value} m; geben Sie eine Standardabweichung von 0 oder mehr an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>The drift of {drift:g} m is larger than the standard deviation of a height, {sigma:g} m, of which it is a part. Give a smaller drift or a larger standard deviation.</source>
      <translation>Die Drift von {drift:g} m ist größer als die Standardabweichung einer Höhe, {sigma:g} m, deren Teil sie ist. Geben Sie eine kleinere Drift oder eine größere Standardabweichung an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to compacted volume</source>
      <translation>Der Faktor von festem zu verdichtetem Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to loose volume</source>
      <translation>Der Faktor von festem zu lockerem Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>The factor from cut to fill is {factor}; give a number above 0 (1 where volumes do not change).</source>
      <translation>Der Faktor von Abtrag zu Auftrag ist {factor}; geben Sie eine Zahl über 0 an (1, wo sich Volumen nicht ändern).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The file gives no standard deviations, so this report cannot say how uncertain a single height is. Independent check shots can.</source>
      <translation>Die Datei enthält keine Standardabweichungen, also kann dieser Bericht nicht sagen, wie unsicher eine einzelne Höhe ist. Unabhängige Kontrollmessungen können es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The files of the survey</source>
      <translation>Die Dateien der Vermessung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>The height at which cut times the factor equals fill and the surplus asked for. Its ± (95 %) is the doubt of the volumes over the area that a metre of height moves; the factor's own doubt is not in it, and is often larger.</source>
      <translation>Die Höhe, bei der Abtrag mal Faktor gleich Auftrag plus verlangtem Überschuss ist. Ihr ± (95 %) ist die Unsicherheit der Volumen geteilt durch die Fläche, die ein Meter Höhe bewegt; die Unsicherheit des Faktors ist nicht darin und oft größer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The height offset between both surfaces has {value} m; give a standard deviation of 0 or more.</source>
      <translation>Der Höhenversatz zwischen beiden Oberflächen hat {value} m; geben Sie eine Standardabweichung von 0 oder mehr an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/soften.py" />
      <source>The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up.</source>
      <translation>Die Höhentoleranz für das Zeichnen der Höhenlinien ist {tolerance} m; geben Sie eine Zahl von Metern ab 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change distances by 5 mm in a kilometre.</source>
      <translation>Die Höhen wurden ohne Geoidundulation als ellipsoidisch genommen; 30 m Undulation würden Strecken um 5 mm je Kilometer ändern.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The interval of cross-sections is {interval}; give a length above 0 that makes at most {most} of them.</source>
      <translation>Der Abstand der Querprofile ist {interval}; geben Sie eine Länge über 0 an, die höchstens {most} davon ergibt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The interval of {interval} {unit} is finer than the survey can support. Choose a larger one.</source>
      <translation>Die Äquidistanz von {interval} {unit} ist feiner, als die Vermessung trägt. Wählen Sie eine größere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/smooth.py" />
      <source>The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up.</source>
      <translation>Die größte Verschiebung beim Glätten der Höhenlinien ist {max_shift} m; geben Sie eine Zahl von Metern ab 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The level or plane has a value that is no number ({values}); give numbers.</source>
      <translation>Die Höhe oder Ebene hat einen Wert, der keine Zahl ist ({values}); geben Sie Zahlen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <location filename="../plugin/core/surface/findings.py" />
      <source>The limit {option} is {value}; give a number above 0.</source>
      <translation>Die Grenze {option} ist {value}; geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The limits were compared with their sources only as the table says; check them against your copy. Exceptions in the sources, such as landings, lengths and crossings, are not checked here.</source>
      <translation>Die Grenzwerte wurden nur so weit mit ihren Quellen verglichen, wie die Tabelle sagt; prüfen Sie sie an Ihrer Ausgabe. Ausnahmen in den Quellen, etwa Podeste, Längen und Überwege, werden hier nicht geprüft.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The load of a truck (m³ loose)</source>
      <translation>Die Ladung eines Lkw (m³ locker)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the contours of the sheet: heights were moved by at most {moved} (allowed: {calm}) and then lines by at most {shifted} m in plan (allowed: {smooth} m). No line crosses another or a breakline. They are for drawing only; lengths, areas and the table below are of the exact contours.</source>
      <translation>Die Karte zeigt die Höhenlinien des Blattes: Höhen wurden um höchstens {moved} bewegt (erlaubt: {calm}), dann Linien um höchstens {shifted} m in der Lage (erlaubt: {smooth} m). Keine Linie kreuzt eine andere oder eine Bruchkante. Sie sind nur zum Zeichnen; Längen, Flächen und die Tabelle unten sind die der genauen Höhenlinien.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the exact contours, which are not smoothed.</source>
      <translation>Die Karte zeigt die genauen Höhenlinien, die nicht geglättet sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” is that of a control point and of a point to set out; choose another prefix.</source>
      <translation>Der Name „{name}“ ist der eines Festpunkts und eines abzusteckenden Punkts; wählen Sie ein anderes Präfix.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” would stand for {count} points ({names} names in all are used more than once); a data collector would mix them up. Choose another prefix or another name field.</source>
      <translation>Der Name „{name}“ stünde für {count} Punkte (insgesamt {names} Namen sind mehrfach verwendet); ein Feldrechner würde sie verwechseln. Wählen Sie ein anderes Präfix oder ein anderes Namensfeld.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or accept another one.</source>
      <translation>Die mit Namen angenommene Operation '{accepted}' braucht {grids}, hier nicht installiert. Installieren Sie die Datei oder nehmen Sie eine andere an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>The outline of the pad crosses or touches itself or a hole; draw it as rings without loops, holes inside.</source>
      <translation>Der Umriss des Planums kreuzt oder berührt sich selbst oder ein Loch; zeichnen Sie ihn als Ringe ohne Schleifen, Löcher innen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} cannot be used ({reason}). Write a regular expression with a group named code.</source>
      <translation>Das Muster {pattern} ist nicht verwendbar ({reason}). Schreiben Sie einen regulären Ausdruck mit einer Gruppe namens code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} has no group named code. Write (?P&lt;code&gt;...) around the code.</source>
      <translation>Das Muster {pattern} hat keine Gruppe namens code. Schreiben Sie (?P&lt;code&gt;...) um den Code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The place of the basin, E {easting:.3f} N {northing:.3f}, is outside the surface. Give one inside.</source>
      <translation>Der Ort des Beckens, E {easting:.3f} N {northing:.3f}, liegt außerhalb der Oberfläche. Geben Sie einen innerhalb an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The platform is wholly outside the existing surface. Check its place and the CRS.</source>
      <translation>Das Planum liegt ganz außerhalb der bestehenden Oberfläche. Prüfen Sie seinen Ort und das KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_beside.py" />
      <source>The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off its height.</source>
      <translation>Der Punkt bei E {easting:.3f} N {northing:.3f} liegt {distance:.3f} m neben einer Bruchkante und {value:+.3f} m neben ihrer Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>The point name '{name}' occurs in more than one file; all points are kept.</source>
      <translation>Der Punktname '{name}' kommt in mehr als einer Datei vor; alle Punkte bleiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} is beyond the tolerances '{set}' ({reasons}).</source>
      <translation>Der Punkt in Zeile {line} überschreitet die Toleranzen '{set}' ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} lies {size:+.3f} m off the ground around it: pole lifted or of another height.</source>
      <translation>Der Punkt in Zeile {line} liegt {size:+.3f} m neben dem Gelände ringsum: Stab angehoben oder von anderer Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation>Der Punkt in Zeile {line} liegt vielleicht {size:+.3f} m daneben, oder das Gelände hat dort eine Stufe: Sehen Sie es an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} repeats an earlier one.</source>
      <translation>Der Punkt in Zeile {line} wiederholt einen früheren.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line}, next to a loss of the fix, lies {size:+.3f} m off the ground around it: ambiguities fixed wrongly.</source>
      <translation>Der Punkt in Zeile {line}, bei einem Verlust der Lösung, liegt {size:+.3f} m neben dem Gelände ringsum: Mehrdeutigkeiten falsch gelöst.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, is nowhere on the Earth in {crs} (its area of use: {area}).</source>
      <translation>Der Punkt in Zeile {line}, einer von {total}, liegt in {crs} nirgends auf der Erde (Geltungsbereich: {area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, lies outside the area of use of {crs} ({area}), by {distance_km} km.</source>
      <translation>Der Punkt in Zeile {line}, einer von {total}, liegt außerhalb des Geltungsbereichs von {crs} ({area}), um {distance_km} km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked (--no-check): what the receiver got wrong is in the surface.</source>
      <translation>Die Punkte wurden nicht geprüft (--no-check): Was der Empfänger falsch maß, ist in der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked, so nothing is said of how heights repeat.</source>
      <translation>Die Punkte wurden nicht geprüft, also wird nichts darüber gesagt, wie sich Höhen wiederholen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>The prismoidal formula is exact where the ground between sections is ruled; what is left comes from ground that changes between the sections, and from bends ({overlap:.1f} m² of the strip lie in several sections).</source>
      <translation>Die Prismenformel ist genau, wo das Gelände zwischen Schnitten geradlinig erzeugt ist; was bleibt, kommt von Gelände, das sich zwischen den Schnitten ändert, und von Bögen ({overlap:.1f} m² des Streifens liegen in mehreren Schnitten).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The profile is too short to fit grades and vertical curves to.</source>
      <translation>Das Profil ist zu kurz, um Neigungen und Ausrundungen einzupassen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The profile must give heights at rising stations that cover the centreline from 0 to {length:.2f} m; it covers {low:.2f} to {high:.2f} m.</source>
      <translation>Das Profil muss Höhen an steigenden Stationen angeben, die die Achse von 0 bis {length:.2f} m decken; es deckt {low:.2f} bis {high:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims less noise than there is: do not rely on its claims.</source>
      <translation>Der Empfänger gibt weniger Rauschen an, als da ist: Verlassen Sie sich nicht auf seine Angaben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims more noise than was found: its claims are on the safe side.</source>
      <translation>Der Empfänger gibt mehr Rauschen an, als gefunden wurde: Seine Angaben liegen auf der sicheren Seite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims nothing to compare with.</source>
      <translation>Der Empfänger gibt nichts an, womit zu vergleichen wäre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The rules, where their limits come from, and how they apply</source>
      <translation>Die Regeln, woher ihre Grenzwerte kommen und wie sie gelten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The same by other methods</source>
      <translation>Dasselbe mit anderen Verfahren</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The scale of a local grid is not known; say the CRS of the points to compute it.</source>
      <translation>Der Maßstab eines lokalen Systems ist nicht bekannt; nennen Sie das KBS der Punkte, um ihn zu berechnen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The sentences follow the standards in meaning; compare their wording with your copy before you sign them.</source>
      <translation>Die Sätze folgen den Standards dem Sinn nach; vergleichen Sie ihren Wortlaut mit Ihrer Ausgabe, bevor Sie sie unterschreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The share of cut that cannot be used</source>
      <translation>Der Anteil des Abtrags, der nicht verwendbar ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/slopes.py" />
      <source>The slope limits {limits} (percent) must rise and be 0 or more; mend their list.</source>
      <translation>Die Neigungsgrenzen {limits} (Prozent) müssen steigen und 0 oder mehr sein; berichtigen Sie ihre Liste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slope of the edge near E {easting:.3f} N {northing:.3f} would run across the platform itself, and slopes of several grades were asked for. Give this outline one slope, or grade its arms as platforms of their own.</source>
      <translation>Die Böschung der Kante bei E {easting:.3f} N {northing:.3f} liefe über das Planum selbst, und es wurden Böschungen verschiedener Neigung verlangt. Geben Sie diesem Umriss eine Böschung oder legen Sie seine Arme als eigene Plana an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The slopes do not meet the ground along {length:.1f} m, since the surface ends there, first near E {easting:.3f} N {northing:.3f}. Volumes stop at its rim; survey farther out or use steeper slopes.</source>
      <translation>Die Böschungen treffen das Gelände auf {length:.1f} m nicht, da die Oberfläche dort endet, zuerst bei E {easting:.3f} N {northing:.3f}. Volumen enden an ihrem Rand; vermessen Sie weiter hinaus oder nehmen Sie steilere Böschungen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slopes of two edges differ near E {easting:.3f} N {northing:.3f}, where the edges meet at an angle too flat for the slopes to meet. Let the slope change at a sharper corner.</source>
      <translation>Die Böschungen zweier Kanten unterscheiden sich bei E {easting:.3f} N {northing:.3f}, wo die Kanten sich in einem Winkel treffen, der für ein Zusammentreffen der Böschungen zu flach ist. Lassen Sie die Böschung an einer schärferen Ecke wechseln.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The spacing is held at {spacing:.1f} m: {widest:.1f} m by the formula would miss forms a surveyor is expected to show.</source>
      <translation>Der Abstand bleibt bei {spacing:.1f} m: {widest:.1f} m nach der Formel würden Formen verfehlen, die von einer Vermessung erwartet werden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The spacing must be above 0 m, not {spacing} m; mend it.</source>
      <translation>Der Abstand muss über 0 m liegen, nicht {spacing} m; berichtigen Sie ihn.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The stations of the profile must rise; station {station:.2f} m does not.</source>
      <translation>Die Stationen des Profils müssen steigen; Station {station:.2f} m tut es nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The strip folds over itself: a bend of the centreline is tighter than the strip is wide there. Ease the bend or narrow the section.</source>
      <translation>Der Streifen faltet sich über sich selbst: Ein Bogen der Achse ist enger, als der Streifen dort breit ist. Weiten Sie den Bogen auf oder verschmälern Sie den Querschnitt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface (TIN)</source>
      <translation>Die Oberfläche (TIN)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check points of {file}.</source>
      <translation>Die Oberfläche gegen die Kontrollpunkte aus {file}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check shots in {file}, which did not shape it.</source>
      <translation>Die Oberfläche gegen die Kontrollmessungen in {file}, die sie nicht formten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it (constrained Delaunay triangulation), with no points added along them but where lines cross. Tiles of points are triangulated by Qhull, joined, and corrected by Lawson's flips until every edge is right. Between points the surface is plane.</source>
      <translation>Die Oberfläche ist die Delaunay-Triangulation der verwendeten Punkte; Linien, die sie einhalten muss, sind ihre Kanten (Delaunay-Triangulation mit Zwangskanten), ohne hinzugefügte Punkte außer an Kreuzungen. Kacheln von Punkten werden von Qhull trianguliert, verbunden und mit Lawsons Kantentausch berichtigt, bis jede Kante stimmt. Zwischen Punkten ist die Oberfläche eben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.</source>
      <translation>Die Oberfläche liegt im Mittel {mean:+.3f} m neben den Kontrollpunkten (p = {p:.2g}), {share:.0f} % des RMSE. Suchen Sie die Ursache (Stabhöhe, Geoid, Basiskoordinaten), bevor Sie 1,9600 × RMSE verwenden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface was searched for level spots, gaps in lines, ground where nothing was recorded, spikes, and points beside lines at another height: none were found.</source>
      <translation>Die Oberfläche wurde nach ebenen Stellen, Lücken in Linien, Gelände ohne Aufzeichnung, Ausreißern und Punkten neben Linien in anderer Höhe abgesucht: Es wurde nichts gefunden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The survey points by what became of them.</source>
      <translation>Die Vermessungspunkte nach dem, was aus ihnen wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The thinned surface</source>
      <translation>Die ausgedünnte Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The three points of the plane lie on one straight line; give others.</source>
      <translation>Die drei Punkte der Ebene liegen auf einer Geraden; geben Sie andere an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has no heights; it was laid on the surface ({count} vertices).</source>
      <translation>Die Fuß- oder Randlinie hat keine Höhen; sie wurde auf die Oberfläche gelegt ({count} Stützpunkte).</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has {count} different corners; a ring needs three or more.</source>
      <translation>Die Fuß- oder Randlinie hat {count} verschiedene Ecken; ein Ring braucht drei oder mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line itself lies from {low:.3f} m below to {high:.3f} m above the base taken.</source>
      <translation>Die Fuß- oder Randlinie selbst liegt von {low:.3f} m unter bis {high:.3f} m über der angenommenen Grundfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line leaves the surface for {length:.2f} m, first near E {easting:.3f} N {northing:.3f}, and has no heights of its own there. Draw it on the surface or give it heights.</source>
      <translation>Die Fuß- oder Randlinie verlässt die Oberfläche auf {length:.2f} m, zuerst bei E {easting:.3f} N {northing:.3f}, und hat dort keine eigenen Höhen. Zeichnen Sie sie auf der Oberfläche oder geben Sie ihr Höhen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The typical section needs widths above 0 on both sides and a ditch of depth above 0.</source>
      <translation>Der Regelquerschnitt braucht Breiten über 0 auf beiden Seiten und einen Graben mit einer Tiefe über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The unit of the heights was left as it was read.</source>
      <translation>Die Einheit der Höhen wurde gelassen, wie sie gelesen wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The vertical class wanted is {value} cm; give a number above 0.</source>
      <translation>Die gewünschte Höhenklasse ist {value} cm; geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The vertical curve of {length:.2f} m at station {station:.2f} m runs into its neighbour or past the end of the profile; shorten it.</source>
      <translation>Die Ausrundung von {length:.2f} m bei Station {station:.2f} m läuft in ihre Nachbarin oder über das Ende des Profils hinaus; verkürzen Sie sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/thin.py" />
      <source>The vertical tolerance is {tolerance} m; give a number of 0 or more.</source>
      <translation>Die Höhentoleranz ist {tolerance} m; geben Sie eine Zahl von 0 oder mehr an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The volumes of this page are exact for the two surfaces: every triangle of the one is cut along those of the other. Other methods take samples, so they differ:</source>
      <translation>Die Volumen dieser Seite sind für die zwei Oberflächen genau: Jedes Dreieck der einen wird an denen der anderen zerschnitten. Andere Verfahren nehmen Stichproben, darum weichen sie ab:</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; no other is wider than {limit:.1f} m.</source>
      <translation>Der weiteste Kreis ohne gemessenen Punkt hat einen Radius von {radius:.1f} m, bei E {easting:.3f} N {northing:.3f}; kein anderer ist weiter als {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; {count} circles are wider than {limit:.1f} m.</source>
      <translation>Der weiteste Kreis ohne gemessenen Punkt hat einen Radius von {radius:.1f} m, bei E {easting:.3f} N {northing:.3f}; {count} Kreise sind weiter als {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word for {meaning} is '{word}'; it must be one word without spaces or separator.</source>
      <translation>Das Wort für {meaning} ist '{word}'; es muss ein Wort ohne Leerzeichen und Trennzeichen sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The word for {word} stands on a point without a line code; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>Das Wort für {word} steht an einem Punkt ohne Liniencode; es bleibt unbeachtet. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word {word} means both {first} and {second}. Give each its own word.</source>
      <translation>Das Wort {word} bedeutet sowohl {first} als auch {second}. Geben Sie jedem ein eigenes Wort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The words '{words}' must be four, with commas between: for begin, end, close and arc, in this order. Leave one empty where the field has none.</source>
      <translation>Die Wörter '{words}' müssen vier sein, mit Kommas dazwischen: für Anfang, Ende, Schließen und Bogen, in dieser Reihenfolge. Lassen Sie eines leer, wo das Feld keines hat.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Their reasons</source>
      <translation>Ihre Gründe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>There are no check points on the surface, so nothing here tests it. Measure at least 30 points with an independent, better method and give them with --check-points.</source>
      <translation>Es gibt keine Kontrollpunkte auf der Oberfläche, also prüft sie hier nichts. Messen Sie mindestens 30 Punkte mit einem unabhängigen, besseren Verfahren und geben Sie sie mit --check-points an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>There are no points to set out in what was given.</source>
      <translation>In dem Angegebenen gibt es keine abzusteckenden Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>There is no area to walk; give a polygon.</source>
      <translation>Es gibt keine zu begehende Fläche; geben Sie ein Polygon an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>There is no pad to grade; give a polygon.</source>
      <translation>Es gibt kein Planum; geben Sie ein Polygon an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>There is no pond on either surface.</source>
      <translation>Auf keiner der Oberflächen gibt es einen Tümpel.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>There is no pond: noise explains every one of the {pits} pits, or they are shallower than asked.</source>
      <translation>Es gibt keinen Tümpel: Das Rauschen erklärt jeden der {pits} Tiefpunkte, oder sie sind flacher als verlangt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>There is no survey file to merge; give at least one.</source>
      <translation>Es gibt keine Vermessungsdatei zum Zusammenführen; geben Sie mindestens eine an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>There is no survey to read; give at least one file.</source>
      <translation>Es gibt keine Vermessung zu lesen; geben Sie mindestens eine Datei an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>Kein Weg ist lang genug, um zu sagen, wie sich Höhen wiederholen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>There is not enough memory for this survey; split the file.</source>
      <translation>Der Speicher reicht für diese Vermessung nicht; teilen Sie die Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. Only independent check shots measure the accuracy of the surface.</source>
      <translation>Das sind Angaben, keine Prüfungen: Stab, Neigung, Bezug und Versätze des Empfängers sind nicht darin. Nur unabhängige Kontrollmessungen messen die Genauigkeit der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>These are coordinates of the grid: a distance measured on the ground differs from theirs by the combined factor of the site.</source>
      <translation>Das sind Gitterkoordinaten: Eine am Boden gemessene Strecke weicht von ihnen um den kombinierten Faktor des Geländes ab.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Thinned   {kept} of {vertices} vertices, at most {off:.3f} m off in height</source>
      <translation>Ausgedünnt {kept} von {vertices} Eckpunkten, höchstens {off:.3f} m Höhenabweichung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Thinning: greedy insertion by M. Garland and P. S. Heckbert (1995, “Fast Polygonal Approximation of Terrains and Height Fields”), many points a round.</source>
      <translation>Ausdünnung: gieriges Einfügen nach M. Garland und P. S. Heckbert (1995, „Fast Polygonal Approximation of Terrains and Height Fields“), viele Punkte je Runde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>This Python has no package {package}; install {packages}, or run the Python that QGIS uses.</source>
      <translation>Dieses Python hat kein Paket {package}; installieren Sie {packages} oder verwenden Sie das Python von QGIS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested and does not meet the {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class of the ASPRS Positional Accuracy Standards, Edition 2 (2023). Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Dieser Datensatz wurde geprüft und erfüllt die {class_cm:g}-cm-RMSEV-Höhengenauigkeitsklasse der ASPRS Positional Accuracy Standards, Ausgabe 2 (2023), nicht. Die tatsächliche NVA-Genauigkeit ergab sich zu RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested to meet ASPRS Positional Accuracy Standards for Digital Geospatial Data, Edition 2 (2023) for a {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class. Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Dieser Datensatz wurde geprüft und erfüllt die ASPRS Positional Accuracy Standards for Digital Geospatial Data, Ausgabe 2 (2023), für eine {class_cm:g}-cm-RMSEV-Höhengenauigkeitsklasse. Die tatsächliche NVA-Genauigkeit ergab sich zu RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>This is a computation, not a certificate: a licensed professional decides what may be stated for a contract.</source>
      <translation>Das ist eine Berechnung, keine Bescheinigung: Eine befugte Fachperson entscheidet, was für einen Vertrag ausgesagt werden darf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>This is a computation, not a payment certificate: quantities for payment are measured as the contract says, by whom it says. It defers to the contract, local codes and licensed practice.</source>
      <translation>Das ist eine Berechnung, keine Abrechnungsbescheinigung: Mengen für die Zahlung werden gemessen, wie und durch wen der Vertrag es sagt. Sie steht hinter Vertrag, örtlichen Vorschriften und befugten Fachleuten zurück.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>This is a study of grades and quantities, not a design for construction: levels, drainage, retaining works and the grades that local codes and accessibility rules ask for are the work of a licensed professional.</source>
      <translation>Das ist eine Studie von Neigungen und Mengen, kein Entwurf für den Bau: Höhen, Entwässerung, Stützbauwerke und die Neigungen, die örtliche Vorschriften und Regeln der Barrierefreiheit verlangen, sind Sache befugter Fachleute.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>This is an indication from a survey, not an approval. Whether a road, walk or ramp meets its limits is decided by the codes that apply where it lies and by a licensed professional.</source>
      <translation>Das ist ein Anhalt aus einer Vermessung, keine Genehmigung. Ob eine Straße, ein Weg oder eine Rampe ihre Grenzwerte einhält, entscheiden die dort geltenden Vorschriften und eine befugte Fachperson.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>This is how far the heights of this survey scatter about their common error, on even ground. Errors that all visits share (base station, geoid, pole height) do not show here; check points show them.</source>
      <translation>So weit streuen die Höhen dieser Vermessung um ihren gemeinsamen Fehler, auf gleichmäßigem Gelände. Fehler, die alle Begehungen teilen (Basisstation, Geoid, Stabhöhe), zeigen sich hier nicht; Kontrollpunkte zeigen sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>This is no survey of boundaries. Marks of property, and set-out that others build on, are for a licensed professional under local rules, who also checks the design against the issued drawings.</source>
      <translation>Das ist keine Grenzvermessung. Grenzzeichen und Absteckungen, auf die andere bauen, sind nach örtlichen Regeln Sache befugter Fachleute, die auch den Entwurf mit den ausgegebenen Plänen vergleichen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>This is the shape of the ground only: it knows nothing of inflow, outlets, seepage or freeboard. A licensed engineer designs and approves storage by the rules of the place.</source>
      <translation>Das ist nur die Form des Geländes: Zufluss, Abläufe, Versickerung und Freibord kennt sie nicht. Befugte Ingenieure planen und genehmigen Speicherraum nach den Regeln des Ortes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>This operation is not the best one known; the user accepted it by its name.</source>
      <translation>Diese Operation ist nicht die beste bekannte; der Benutzer hat sie mit ihrem Namen angenommen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>This shows where water runs on the surface as surveyed. It is no drainage design: pipes, infiltration, ground beyond the survey and what was not measured are not in it.</source>
      <translation>Das zeigt, wohin Wasser auf der vermessenen Oberfläche läuft. Es ist keine Entwässerungsplanung: Leitungen, Versickerung, Gelände jenseits der Vermessung und was nicht gemessen wurde, sind nicht darin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>To be known with it:</source>
      <translation>Dazu zu wissen:</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>To have it read so, repeat with --correct {name}.</source>
      <translation>Soll es so gelesen werden, wiederholen Sie mit --correct {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>To station ({unit})</source>
      <translation>Bis Station ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Too few places were visited twice to say how far heights wander. Walk a few passes across the others.</source>
      <translation>Zu wenige Stellen wurden zweimal begangen, um zu sagen, wie weit Höhen wandern. Gehen Sie ein paar Bahnen quer zu den anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>U.S. survey feet</source>
      <translation>US-Vermessungsfuß</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Used</source>
      <translation>Verwendet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Value</source>
      <translation>Wert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdict</source>
      <translation>Urteil</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdicts at 95 % along the line, by the number of the rule. A stretch passes or fails when the whole interval of its slope does; else it is too close to tell, and more or better points are needed.</source>
      <translation>Urteile bei 95 % entlang der Linie, nach der Nummer der Regel. Ein Abschnitt erfüllt oder verfehlt sie, wenn das ganze Intervall seiner Neigung es tut; sonst ist es zu knapp, und es braucht mehr oder bessere Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Vertical section {name}: existing ground and design.</source>
      <translation>Vertikalschnitt {name}: bestehendes Gelände und Entwurf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Vertices</source>
      <translation>Eckpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volume    {existing} to {design}: cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³, net {net:.1f} ± {net_95:.1f} m³ (95 %)</source>
      <translation>Volumen   {existing} zu {design}: Abtrag {cut:.1f} ± {cut_95:.1f} m³, Auftrag {fill:.1f} ± {fill_95:.1f} m³, netto {net:.1f} ± {net_95:.1f} m³ (95 %)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volume ({unit})</source>
      <translation>Volumen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Volume ({unit}³)</source>
      <translation>Volumen ({unit}³)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Volume, compacted ({unit})</source>
      <translation>Volumen, verdichtet ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volumes</source>
      <translation>Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Volumes as the design is raised or lowered, slopes graded anew at each height.</source>
      <translation>Volumen, wenn der Entwurf gehoben oder gesenkt wird, die Böschungen in jeder Höhe neu angelegt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volumes: {existing} to {design}</source>
      <translation>Volumen: {existing} zu {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <source>Water     ponds: {ponds}, {volume:.1f} m³ when full; catchments: {catchments}; {nowhere:.0f} of {area:.0f} m² drain nowhere</source>
      <translation>Wasser    Tümpel: {ponds}, {volume:.1f} m³ voll; Einzugsgebiete: {catchments}; {nowhere:.0f} von {area:.0f} m² ohne Abfluss</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Water level ({unit})</source>
      <translation>Wasserstand ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Water runs</source>
      <translation>Wasser läuft</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Water takes the steepest way down on the triangles themselves, not on a grid: along the gradient across a triangle, along an edge into which both its triangles fall, and on level ground the shortest way along edges to where it goes down (after S. Yu, M. van Kreveld and J. Snoeyink, “Drainage queries in TINs: from local to global and back again”, 1996).</source>
      <translation>Wasser nimmt den steilsten Weg hinab auf den Dreiecken selbst, nicht auf einem Raster: entlang des Gefälles über ein Dreieck, entlang einer Kante, in die beide Dreiecke fallen, und auf ebenem Grund den kürzesten Weg entlang von Kanten dorthin, wo es hinabgeht (nach S. Yu, M. van Kreveld und J. Snoeyink, „Drainage queries in TINs: from local to global and back again“, 1996).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ways of water from places {spacing} {unit} apart; channels where more than {channel} {unit}² drain. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Wege des Wassers von Stellen im Abstand von {spacing} {unit}; Gerinne, wo mehr als {channel} {unit}² entwässern. Schummerung von Nordwesten, Höhen nur für die Schummerung {times}-fach überhöht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What</source>
      <translation>Was</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What a surveyor would look at again before handing this surface on. Each may be right: the ground decides, and nothing was changed.</source>
      <translation>Was man vor der Weitergabe dieser Oberfläche nochmals ansehen würde. Jedes kann richtig sein: Das Gelände entscheidet, und nichts wurde geändert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>What became of the points</source>
      <translation>Was aus den Punkten wurde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What came in</source>
      <translation>Was hereinkam</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth</source>
      <translation>Was mit der Erde geschieht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth, once the topsoil is off</source>
      <translation>Was mit der Erde geschieht, wenn der Oberboden ab ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>What is graded</source>
      <translation>Was angelegt wird</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What single points are held to: the set “{name}”</source>
      <translation>Woran einzelne Punkte gemessen werden: der Satz „{name}“</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>What the change does to the water</source>
      <translation>Was die Änderung mit dem Wasser macht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the checks found, in the order of recording: {shown} of {count}</source>
      <translation>Was die Prüfungen fanden, in der Reihenfolge der Aufzeichnung: {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>What the class rests on</source>
      <translation>Worauf die Klasse beruht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What the doubt rests on</source>
      <translation>Worauf die Unsicherheit beruht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the receiver claims agrees with what was found.</source>
      <translation>Was der Empfänger angibt, stimmt mit dem Gefundenen überein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What was done to the coordinates of the file, in this order:</source>
      <translation>Was mit den Koordinaten der Datei geschah, in dieser Reihenfolge:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What was found</source>
      <translation>Was gefunden wurde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Where both surfaces reach, full ponds hold {before} {unit}³ before and {after} {unit}³ after the change. Of each whole surface {kept} {unit}² drained nowhere before, {keeps} {unit}² do after.</source>
      <translation>Wo beide Oberflächen reichen, fassen volle Tümpel vor der Änderung {before} {unit}³ und danach {after} {unit}³. Von jeder ganzen Oberfläche hatten vorher {kept} {unit}² keinen Abfluss, danach {keeps} {unit}².</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Where lines cross and were joined; {shown} of {count}</source>
      <translation>Wo sich Linien kreuzen und verbunden wurden; {shown} von {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Where the doubt comes from</source>
      <translation>Woher die Unsicherheit kommt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Where the ground was measured, and where not. Circles hold no measured point and are wider than {limit} m in radius; triangles are marked from an edge of {edge} m.</source>
      <translation>Wo das Gelände gemessen wurde und wo nicht. Kreise enthalten keinen gemessenen Punkt und haben mehr als {limit} m Radius; Dreiecke sind ab einer Kante von {edge} m gekennzeichnet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Where the surface lies</source>
      <translation>Wo die Oberfläche liegt</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <location filename="../plugin/core/report/water_page.py" />
      <source>Where the water runs</source>
      <translation>Wohin das Wasser läuft</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Whether slopes stand, in the end and while they are dug, is not checked here: it depends on soil, water and loads. Slope stability and excavation safety need licensed practice and the local codes.</source>
      <translation>Ob Böschungen halten, am Ende und beim Graben, wird hier nicht geprüft: Es hängt von Boden, Wasser und Lasten ab. Standsicherheit und Sicherheit beim Aushub brauchen befugte Fachleute und die örtlichen Vorschriften.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Why the columns were taken so:</source>
      <translation>Warum die Spalten so genommen wurden:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Window</source>
      <translation>Fenster</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a triangle has a standard deviation of {middle} from noise alone. What the ground does between points comes on top.</source>
      <translation>Mit dem angegebenen Rauschen von {sigma} (Median der Standardabweichung einer Höhe) hat die Höhe in der Mitte eines Dreiecks allein aus Rauschen eine Standardabweichung von {middle}. Was das Gelände zwischen den Punkten tut, kommt hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Written to {folder}:</source>
      <translation>Geschrieben nach {folder}:</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a ditch needs a depth above 0.</source>
      <translation>Ein Graben braucht eine Tiefe über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>a drawing of faces, lines, contours and points (DXF)</source>
      <translation>eine Zeichnung von Flächen, Linien, Höhenlinien und Punkten (DXF)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>a grid file</source>
      <translation>eine Gitterdatei</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a list of fixes from 0 to 8, such as [4] or [4, 5]</source>
      <translation>eine Liste von Lösungen von 0 bis 8, etwa [4] oder [4, 5]</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/earthwork/comparison.py" />
      <location filename="../plugin/core/points/merge.py" />
      <source>a local grid</source>
      <translation>ein lokales System</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a number above 0, without quotation marks</source>
      <translation>eine Zahl über 0, ohne Anführungszeichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a part needs a width above 0.</source>
      <translation>Ein Teil braucht eine Breite über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a pond</source>
      <translation>ein Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>a pond or pit</source>
      <translation>ein Tümpel oder Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a quote is opened and not closed, or closed too early</source>
      <translation>ein Anführungszeichen ist geöffnet und nicht oder zu früh geschlossen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a side has one ditch at most; remove this row.</source>
      <translation>Eine Seite hat höchstens einen Graben; entfernen Sie diese Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a single pit</source>
      <translation>ein einzelner Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a slope needs a run above 0.</source>
      <translation>Eine Böschung braucht eine Ausladung über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a whole number from 1 up, without quotation marks</source>
      <translation>eine ganze Zahl ab 1, ohne Anführungszeichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>age of the correction, at most</source>
      <translation>Alter der Korrektur, höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>agrees</source>
      <translation>stimmt überein</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>all</source>
      <translation>alle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>all of the ground compared</source>
      <translation>alles verglichene Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>all of the ground with the pads in it as a mesh</source>
      <translation>das ganze Gelände mit den Plana darin als Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>always</source>
      <translation>immer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an inlet</source>
      <translation>ein Einlauf</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an outlet on the rim</source>
      <translation>ein Auslauf am Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>and perhaps</source>
      <translation>und vielleicht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>applied</source>
      <translation>angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>area and volume of the basin by level</source>
      <translation>Fläche und Volumen des Beckens nach der Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>area in plan</source>
      <translation>Fläche im Grundriss</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <location filename="../plugin/core/georeference/heights.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>as given</source>
      <translation>wie angegeben</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>average end areas every {step:g} m</source>
      <translation>mittlere Endflächen alle {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>back</source>
      <translation>zurück</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balance point</source>
      <translation>Ausgleichspunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced height</source>
      <translation>ausgleichende Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balanced height ± 95 %</source>
      <translation>ausgleichende Höhe ± 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced shift of the design</source>
      <translation>ausgleichende Verschiebung des Entwurfs</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>blank lines</source>
      <translation>Leerzeilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, as it lies in the ground</source>
      <translation>Zufuhr, wie sie im Boden liegt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, loose on trucks</source>
      <translation>Zufuhr, locker auf Lkw</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>boundaries</source>
      <translation>Grenzen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>breakline</source>
      <translation>Bruchkante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines</source>
      <translation>Bruchkanten</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>building the surface</source>
      <translation>Oberfläche wird gebildet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>by edge</source>
      <translation>nach Kante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>catchments with their areas</source>
      <translation>Einzugsgebiete mit ihren Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>channel</source>
      <translation>Gerinne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points</source>
      <translation>Kontrollpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points' own error (mm)</source>
      <translation>eigener Fehler der Kontrollpunkte (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>check shot</source>
      <translation>Kontrollmessung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>check shot, kept out to test the surface</source>
      <translation>Kontrollmessung, zurückgehalten, um die Oberfläche zu prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>checking the points</source>
      <translation>Punkte werden geprüft</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>claimed by the receiver</source>
      <translation>vom Empfänger angegeben</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>claimed by the receiver, root mean square</source>
      <translation>vom Empfänger angegeben, quadratisches Mittel</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {columns} may be the height, but its header word '{word}' is not known</source>
      <translation>Spalte {columns} kann die Höhe sein, aber ihr Kopfwort '{word}' ist nicht bekannt</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the code: a few texts repeat</source>
      <translation>Spalte {column} ist der Code: Wenige Texte wiederholen sich</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {column} is the height: no other column can be</source>
      <translation>Spalte {column} ist die Höhe: Keine andere Spalte kann es sein</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: all texts differ</source>
      <translation>Spalte {column} ist der Name: Alle Texte sind verschieden</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: whole numbers that only grow</source>
      <translation>Spalte {column} ist der Name: ganze Zahlen, die nur wachsen</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>column {column} is {role}: its angles have the letters {letters}</source>
      <translation>Spalte {column} ist {role}: Ihre Winkel haben die Buchstaben {letters}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/reading.py" />
      <source>column {column} is {role}: its header word is '{word}'</source>
      <translation>Spalte {column} ist {role}: Ihr Kopfwort ist '{word}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>columns read</source>
      <translation>gelesene Spalten</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside</source>
      <translation>die Spalten {first} und {second} sind beide mit {role} überschrieben; die erste wird so gelesen, die andere daneben behalten</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use of the CRS ({area})</source>
      <translation>die Spalten {first} und {second} sind {first_role} und {second_role}: Keine andere Lesart fällt in den Geltungsbereich des KBS ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} look like degrees but may be lengths</source>
      <translation>die Spalten {first} und {second} sehen wie Grad aus, können aber Längen sein</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} make a compact cloud</source>
      <translation>die Spalten {first} und {second} bilden eine dichte Wolke</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} may be easting and northing or the other way round</source>
      <translation>die Spalten {first} und {second} können Ost- und Nordwert sein oder umgekehrt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comma</source>
      <translation>Komma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comment lines</source>
      <translation>Kommentarzeilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>comparing surfaces</source>
      <translation>Oberflächen werden verglichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>contour</source>
      <translation>Höhenlinie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>contour lines with level, index and depression; exact</source>
      <translation>Höhenlinien mit Stufe, Zähllinie und Mulde; genau</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>coordinate system</source>
      <translation>Koordinatenbezugssystem</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them</source>
      <translation>Koordinaten sind in {unit}: Punkte folgen einander im Abstand von {step}, wie ein Rover zu Fuß sie speichert</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: read so they land in the area of use of the CRS, else not</source>
      <translation>Koordinaten sind in {unit}: So gelesen fallen sie in den Geltungsbereich des KBS, sonst nicht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>corners mitred</source>
      <translation>Ecken auf Gehrung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>correction too old</source>
      <translation>Korrektur zu alt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the design only, not compared</source>
      <translation>nur vom Entwurf bedeckt, nicht verglichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the existing surface only, not compared</source>
      <translation>nur von der bestehenden Oberfläche bedeckt, nicht verglichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crest</source>
      <translation>Kuppe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crossfall</source>
      <translation>Querneigung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut</source>
      <translation>Abtrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut over {low} {unit}</source>
      <translation>Abtrag über {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut placed as fill</source>
      <translation>als Auftrag eingebauter Abtrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut that this fill takes</source>
      <translation>Abtrag, den dieser Auftrag braucht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>cut there</source>
      <translation>Abtrag dort</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>cut {cut} {unit}²   fill {fill} {unit}²</source>
      <translation>Abtrag {cut} {unit}²   Auftrag {fill} {unit}²</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut {low} to {high} {unit}</source>
      <translation>Abtrag {low} bis {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut, as it lies in the ground</source>
      <translation>Abtrag, wie er im Boden liegt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>cut, fill and net with their doubt</source>
      <translation>Abtrag, Auftrag und Netto mit ihrer Unsicherheit</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>decided by hand</source>
      <translation>von Hand entschieden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decimal mark</source>
      <translation>Dezimalzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>deeper</source>
      <translation>tiefer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>degrees of freedom</source>
      <translation>Freiheitsgrade</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>delimiter</source>
      <translation>Trennzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>design</source>
      <translation>Entwurf</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>drains nowhere until full</source>
      <translation>kein Abfluss, bis er voll ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>drift: what neighbouring points share</source>
      <translation>Drift: was benachbarte Punkte gemeinsam haben</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>easting and northing are exchanged</source>
      <translation>Ost- und Nordwert sind vertauscht</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so they are of another CRS or exchanged</source>
      <translation>Ost- und Nordwert liegen nicht, wo Länge und Breite in diesem KBS liegen, sondern {distance_km} km davon, also gehören sie zu einem anderen KBS oder sind vertauscht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>easting of the surface</source>
      <translation>Ostwert der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edge swapped</source>
      <translation>Kante getauscht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges and breaks of the pads and their slopes, by kind</source>
      <translation>Kanten und Brüche der Plana und ihrer Böschungen, nach Art</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges forced</source>
      <translation>erzwungene Kanten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by boundaries</source>
      <translation>von Grenzen gehaltene Kanten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by breaklines</source>
      <translation>von Bruchkanten gehaltene Kanten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by voids</source>
      <translation>von Aussparungen gehaltene Kanten</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>ellipsoidal</source>
      <translation>ellipsoidisch</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>empty circle</source>
      <translation>leerer Kreis</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point with its status and reasons</source>
      <translation>jeder Punkt mit Status und Gründen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>exact</source>
      <translation>genau</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>existing ground</source>
      <translation>bestehendes Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>factors: loose {loose}, compacted {compacted}, unusable share {unusable} %</source>
      <translation>Faktoren: locker {loose}, verdichtet {compacted}, nicht verwendbarer Anteil {unusable} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>fail</source>
      <translation>nicht erfüllt</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>feet</source>
      <translation>Fuß</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill</source>
      <translation>Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill from one of cut</source>
      <translation>Auftrag aus einem Teil Abtrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill over {low} {unit}</source>
      <translation>Auftrag über {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill there</source>
      <translation>Auftrag dort</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill {low} to {high} {unit}</source>
      <translation>Auftrag {low} bis {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill, compacted</source>
      <translation>Auftrag, verdichtet</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>filling the basin</source>
      <translation>Becken wird gefüllt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>finest class met (cm)</source>
      <translation>feinste erfüllte Klasse (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>finishing contours for the sheet</source>
      <translation>Höhenlinien werden für das Blatt fertiggestellt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>fixes accepted (numbers of NMEA 0183 GGA)</source>
      <translation>zugelassene Lösungen (Zahlen aus NMEA 0183 GGA)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>flagged, still used</source>
      <translation>markiert, weiter verwendet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>flatter than {limit} %</source>
      <translation>flacher als {limit} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>following the water</source>
      <translation>dem Wasser wird gefolgt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>format</source>
      <translation>Format</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>forward</source>
      <translation>vorwärts</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>found, with its 95 % interval</source>
      <translation>gefunden, mit dem 95-%-Intervall</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from pass to pass</source>
      <translation>von Bahn zu Bahn</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from record to record, median</source>
      <translation>von Aufzeichnung zu Aufzeichnung, Median</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>gap in a line</source>
      <translation>Lücke in einer Linie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>gone</source>
      <translation>verschwunden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>grade</source>
      <translation>Längsneigung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>grades and vertical curves fitted</source>
      <translation>Neigungen und Ausrundungen eingepasst</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>grading pads</source>
      <translation>Plana werden angelegt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>grid north</source>
      <translation>Gitternord</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>grid of {cell:g} m</source>
      <translation>Raster von {cell:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points as designed</source>
      <translation>Gelände zwischen den Punkten wie entworfen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points judged from the surface's own roughness</source>
      <translation>Gelände zwischen den Punkten nach der eigenen Rauheit der Oberfläche beurteilt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ground by depth of cut and fill</source>
      <translation>Gelände nach der Tiefe von Abtrag und Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground compared</source>
      <translation>verglichenes Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>ground taken by the design, in plan</source>
      <translation>vom Entwurf beanspruchtes Gelände, im Grundriss</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>ground that several sections count, in bends</source>
      <translation>Gelände, das mehrere Schnitte zählen, in Bögen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>header lines</source>
      <translation>Kopfzeilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height doubtful: look at it</source>
      <translation>Höhe zweifelhaft: ansehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height less certain than allowed</source>
      <translation>Höhe unsicherer als erlaubt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>height of a point changed</source>
      <translation>Höhe eines Punktes geändert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height of the surface</source>
      <translation>Höhe der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>height offset between the surfaces, standard deviation</source>
      <translation>Höhenversatz zwischen den Oberflächen, Standardabweichung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights of the surface on a grid (DEM) of {columns} x {rows} cells</source>
      <translation>Höhen der Oberfläche auf einem Raster (DGM) von {columns} x {rows} Zellen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>heights {scale}</source>
      <translation>Höhen {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights, grades and crossfalls at the stations of the road</source>
      <translation>Höhen, Längs- und Querneigungen an den Stationen der Straße</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>holding the surface to its lines</source>
      <translation>Oberfläche wird an ihre Linien gebunden</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>independent check points</source>
      <translation>unabhängige Kontrollpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>index contour</source>
      <translation>Zähllinie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>inlet</source>
      <translation>Einlauf</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; coordinates are read in {unit}, the unit of the CRS</source>
      <translation>internationaler und US-Vermessungsfuß lassen sich an den Werten nicht unterscheiden, sie weichen um 2 mm je Kilometer ab; Koordinaten werden in {unit} gelesen, der Einheit des KBS</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>its 95 % interval</source>
      <translation>das 95-%-Intervall</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its coordinate system</source>
      <translation>sein Koordinatenbezugssystem</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its cross-sections to scale</source>
      <translation>ihre Querprofile maßstäblich</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its profile to scale</source>
      <translation>ihr Längsprofil maßstäblich</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its stretches against the limits, with verdicts</source>
      <translation>ihre Abschnitte gegen die Grenzwerte, mit Urteilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>jump at loss or regain of the fix</source>
      <translation>Sprung bei Verlust oder Rückkehr der Lösung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>labels of the index contours, for a sheet at 1 : {scale}</source>
      <translation>Beschriftungen der Zähllinien, für ein Blatt in 1 : {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands in the area of use of the CRS ({area})</source>
      <translation>fällt in den Geltungsbereich des KBS ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands outside the area of use of the CRS ({area})</source>
      <translation>fällt außerhalb des Geltungsbereichs des KBS ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>largest difference found</source>
      <translation>größter gefundener Unterschied</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>left</source>
      <translation>links</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>left at the end (below 0: to be brought in)</source>
      <translation>am Ende übrig (unter 0: zuzuführen)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>left over: cut × factor less fill less surplus</source>
      <translation>übrig: Abtrag × Faktor minus Auftrag minus Überschuss</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>lengths {scale}</source>
      <translation>Längen {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>level</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>level in place of the surface that is missing</source>
      <translation>Höhe anstelle der fehlenden Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>level spot</source>
      <translation>ebene Stelle</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>limit {limit}</source>
      <translation>Grenzwert {limit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>line of the sections</source>
      <translation>Linie der Schnitte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines along which there is no cut and no fill</source>
      <translation>Linien ohne Abtrag und Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines where the slopes of the pads meet the ground</source>
      <translation>Linien, an denen die Böschungen der Plana das Gelände treffen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>loads of {load} {unit}: waste, borrow</source>
      <translation>Ladungen von {load} {unit}: Abfuhr, Zufuhr</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>local grid, metres</source>
      <translation>lokales System, Meter</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>long triangle</source>
      <translation>langes Dreieck</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking along the road</source>
      <translation>Blick entlang der Straße</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking at accuracy and coverage</source>
      <translation>Genauigkeit und Abdeckung werden betrachtet</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking the surface over</source>
      <translation>Oberfläche wird durchgesehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>mean (bias)</source>
      <translation>Mittel (systematisch)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points</source>
      <translation>Mittel der Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points plus geoid separation</source>
      <translation>Mittel der Punkte plus Geoidundulation</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>median</source>
      <translation>Median</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>median slope, by area</source>
      <translation>mittlere Neigung, nach Fläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>median {value} {unit}</source>
      <translation>Median {value} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>metres</source>
      <translation>Meter</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>moved beyond the ends of the line, not in the diagram</source>
      <translation>über die Enden der Linie hinaus bewegt, nicht im Diagramm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>names that stand in more than one file</source>
      <translation>Namen, die in mehr als einer Datei stehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>net (fill less cut)</source>
      <translation>netto (Auftrag minus Abtrag)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>new</source>
      <translation>neu</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>new at every point, along the passes</source>
      <translation>an jedem Punkt neu, entlang der Bahnen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>no</source>
      <translation>nein</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>no column can be the height</source>
      <translation>keine Spalte kann die Höhe sein</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>no cut, no fill</source>
      <translation>weder Abtrag noch Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>no fixed ambiguities</source>
      <translation>Mehrdeutigkeiten nicht gelöst</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>no geoid separation was sent, so the ellipsoidal height is unknown</source>
      <translation>es wurde keine Geoidundulation gesandt, also ist die ellipsoidische Höhe unbekannt</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>no grid of a kind it knows</source>
      <translation>kein Gitter einer bekannten Art</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>no surface</source>
      <translation>keine Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>no surface here</source>
      <translation>hier keine Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>noise of a point's height {sigma} mm, drift {drift} mm within {length} m, {ground}</source>
      <translation>Rauschen der Höhe eines Punktes {sigma} mm, Drift {drift} mm innerhalb {length} m, {ground}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>non-vegetated</source>
      <translation>unbewachsen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>none over the limit</source>
      <translation>keiner über dem Grenzwert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>normalised median absolute deviation</source>
      <translation>normierte mittlere absolute Abweichung vom Median</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>northing of the surface</source>
      <translation>Nordwert der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>not UTF-8</source>
      <translation>nicht UTF-8</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>not applied</source>
      <translation>nicht angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>not known (a layer's surface is missing)</source>
      <translation>nicht bekannt (die Oberfläche einer Schicht fehlt)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>not on the ground, by its code</source>
      <translation>nach seinem Code nicht auf dem Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>nothing recorded</source>
      <translation>nichts aufgezeichnet</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says for sure whether coordinates are in {units}</source>
      <translation>nichts sagt sicher, ob Koordinaten in {units} sind</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>nothing says for sure which columns are which</source>
      <translation>nichts sagt sicher, welche Spalten welche sind</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is</source>
      <translation>nichts sagt, in welcher Einheit die Koordinaten sind; sie werden in {unit} gelesen, wie ein lokales System</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are</source>
      <translation>nichts sagt, ob die Höhen ellipsoidisch oder über einem Geoid sind; sie werden genommen, wie sie sind</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>observations, at least</source>
      <translation>Beobachtungen, mindestens</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>of a kind that nothing says</source>
      <translation>von einer Art, die nichts nennt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it not fit for fill</source>
      <translation>davon nicht zum Einbau geeignet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it unchanged</source>
      <translation>davon unverändert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>off the line it is coded for</source>
      <translation>neben der Linie, für die er codiert ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>offsets and heights of its cross-sections</source>
      <translation>Abstände und Höhen ihrer Querprofile</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>on {paper}, printed at 100 %</source>
      <translation>auf {paper}, mit 100 % gedruckt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>one height, both together</source>
      <translation>eine Höhe, beides zusammen</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>orthometric</source>
      <translation>orthometrisch</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>other sentences of a receiver log</source>
      <translation>andere Sätze eines Empfängerprotokolls</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>outside the interval</source>
      <translation>außerhalb des Intervalls</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>outside the regions</source>
      <translation>außerhalb der Gebiete</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>outside the surface</source>
      <translation>außerhalb der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>over {low} %</source>
      <translation>über {low} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>over {width} {unit} of {whole}</source>
      <translation>auf {width} {unit} von {whole}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>pass</source>
      <translation>erfüllt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>path of water</source>
      <translation>Wasserweg</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>paths of the water and its channels</source>
      <translation>Wege des Wassers und seine Rinnen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pit</source>
      <translation>Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places of the surface to look at</source>
      <translation>anzusehende Stellen der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places to walk again, for the data collector</source>
      <translation>nochmals zu begehende Stellen, für den Feldrechner</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>places visited twice</source>
      <translation>zweimal begangene Stellen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>plan less certain than allowed</source>
      <translation>Lage unsicherer als erlaubt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>platform</source>
      <translation>Planum</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform break</source>
      <translation>Bruch im Planum</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform edge</source>
      <translation>Kante des Planums</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>point</source>
      <translation>Punkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>point added</source>
      <translation>Punkt hinzugefügt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>point beside a line</source>
      <translation>Punkt neben einer Linie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>points</source>
      <translation>Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>points follow each other at {step} in columns {first} and {second}</source>
      <translation>Punkte folgen einander im Abstand von {step} in den Spalten {first} und {second}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points kept out</source>
      <translation>zurückgehaltene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points that shape it</source>
      <translation>Punkte, die sie formen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole lifted or its height wrong</source>
      <translation>Stab angehoben oder seine Höhe falsch</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole tilted</source>
      <translation>Stab geneigt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond</source>
      <translation>Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond after the change</source>
      <translation>Tümpel nach der Änderung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond gone</source>
      <translation>Tümpel verschwunden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ponds with depth, volume and where they spill to</source>
      <translation>Tümpel mit Tiefe, Volumen und Ziel des Überlaufs</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>prismoidal formula every {step:g} m</source>
      <translation>Prismenformel alle {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>radius of the widest empty circle</source>
      <translation>Radius des weitesten leeren Kreises</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>random: noise of single points</source>
      <translation>zufällig: Rauschen einzelner Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>reading points</source>
      <translation>Punkte werden gelesen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>receiver log, NMEA 0183</source>
      <translation>Empfängerprotokoll, NMEA 0183</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>recorded while standing still</source>
      <translation>im Stillstand aufgezeichnet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>region</source>
      <translation>Gebiet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>rejected</source>
      <translation>verworfen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>rejected lines</source>
      <translation>verworfene Zeilen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>rejected lines with their reasons</source>
      <translation>verworfene Zeilen mit ihren Gründen</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>repeated ground</source>
      <translation>wiederholtes Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>repeats another point</source>
      <translation>wiederholt einen anderen Punkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>residuals at the control points</source>
      <translation>Restklaffungen an den Passpunkten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>ridge</source>
      <translation>Wasserscheide</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>right</source>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the design</source>
      <translation>Rand des Entwurfs</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the existing surface</source>
      <translation>Rand der bestehenden Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>rim of the surface</source>
      <translation>Rand der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: longest edge allowed</source>
      <translation>Rand: längste erlaubte Kante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: the same in distances of the passes</source>
      <translation>Rand: dasselbe in Bahnabständen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest angle allowed opposite an outer edge</source>
      <translation>Rand: weitester erlaubter Winkel gegenüber einer Außenkante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest circumcircle allowed (radius)</source>
      <translation>Rand: weitester erlaubter Umkreis (Radius)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>root mean square of all differences</source>
      <translation>quadratisches Mittel aller Unterschiede</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>rule does not apply</source>
      <translation>Regel gilt nicht</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>running balance: usable cut less fill</source>
      <translation>laufende Bilanz: verwendbarer Abtrag minus Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>saddle</source>
      <translation>Sattel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>sag</source>
      <translation>Wanne</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>same places of several files whose heights differ</source>
      <translation>gleiche Stellen mehrerer Dateien, deren Höhen sich unterscheiden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>satellites badly spread (PDOP)</source>
      <translation>Satelliten schlecht verteilt (PDOP)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>scale {scale}</source>
      <translation>Maßstab {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>section line</source>
      <translation>Schnittlinie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>seen in the way of rising stations; offsets and heights in {unit}</source>
      <translation>in Richtung steigender Stationen gesehen; Abstände und Höhen in {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>semicolon</source>
      <translation>Semikolon</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>several columns may be the height: {columns}</source>
      <translation>mehrere Spalten können die Höhe sein: {columns}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>shallower</source>
      <translation>flacher</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>share in the SW, SE, NW and NE quarter (%)</source>
      <translation>Anteil im SW-, SO-, NW- und NO-Viertel (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>share of the site in triangles with a long edge</source>
      <translation>Anteil des Geländes in Dreiecken mit langer Kante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>shift from the first height</source>
      <translation>Verschiebung gegenüber der ersten Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>six digits before the mark, then seven, as eastings and northings often</source>
      <translation>sechs Ziffern vor dem Zeichen, dann sieben, wie Ost- und Nordwerte oft</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>slope break</source>
      <translation>Böschungskante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>slope by window, with its 95 % interval</source>
      <translation>Neigung je Fenster, mit dem 95-%-Intervall</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of cut</source>
      <translation>Abtragsböschung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of fill</source>
      <translation>Auftragsböschung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>smallest and largest</source>
      <translation>kleinster und größter</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>spaces</source>
      <translation>Leerzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>spike</source>
      <translation>Ausreißer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>spill level: noise of its height, times the area</source>
      <translation>Überlaufpegel: Rauschen seiner Höhe mal Fläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>spill point and way of the overflow</source>
      <translation>Überlauf und Weg des überlaufenden Wassers</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>spills at {level}</source>
      <translation>läuft über bei {level}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>spot heights at summits, pits and saddles</source>
      <translation>Höhenpunkte an Kuppen, Tiefpunkten und Sätteln</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>standard deviation</source>
      <translation>Standardabweichung</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation in plan</source>
      <translation>Standardabweichung in der Lage</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation in plan, at most</source>
      <translation>Standardabweichung in der Lage, höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation of a height</source>
      <translation>Standardabweichung einer Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation of the height, at most</source>
      <translation>Standardabweichung der Höhe, höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>station {station:.1f} m</source>
      <translation>Station {station:.1f} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>steep end</source>
      <translation>steiles Ende</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>summit</source>
      <translation>Kuppe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface above the check point</source>
      <translation>Oberfläche über dem Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface below the check point</source>
      <translation>Oberfläche unter dem Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>surface from the used points</source>
      <translation>Oberfläche aus den verwendeten Punkten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>surface model: ground between the points</source>
      <translation>Oberflächenmodell: Gelände zwischen den Punkten</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>surface, its lines and the points used, in LandXML 1.2</source>
      <translation>Oberfläche, ihre Linien und die verwendeten Punkte, in LandXML 1.2</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>surplus asked for</source>
      <translation>verlangter Überschuss</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>systematic: height offset between the surfaces</source>
      <translation>systematisch: Höhenversatz zwischen den Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>tab</source>
      <translation>Tabulator</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>text encoding</source>
      <translation>Textkodierung</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the checksum is {found}, but the characters give {right}: damaged on its way</source>
      <translation>die Prüfsumme ist {found}, aber die Zeichen ergeben {right}: unterwegs beschädigt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the coordinate system of the mesh</source>
      <translation>das Koordinatenbezugssystem des Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are in {unit}, not in {assumed}</source>
      <translation>die Koordinaten sind in {unit}, nicht in {assumed}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another system: {crs}</source>
      <translation>die Koordinaten gehören zu einem anderen System: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another zone: {crs}</source>
      <translation>die Koordinaten gehören zu einer anderen Zone: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of the other hemisphere: {crs}</source>
      <translation>die Koordinaten gehören zur anderen Halbkugel: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the easting is usually written first</source>
      <translation>der Ostwert wird meist zuerst geschrieben</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the eastings have a zone number, {prefix}, before them</source>
      <translation>vor den Ostwerten steht eine Zonennummer, {prefix}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the false origin is left out of the coordinates (east {easting} m, north {northing} m)</source>
      <translation>der Ursprungsversatz fehlt in den Koordinaten (Ost {easting} m, Nord {northing} m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>the feature has no place or no height</source>
      <translation>das Objekt hat keinen Ort oder keine Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the file ends within the line, in column {count} of {width}</source>
      <translation>die Datei endet in der Zeile, in Spalte {count} von {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the graded pads with their slopes as a mesh</source>
      <translation>die angelegten Plana mit ihren Böschungen als Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it</source>
      <translation>die Kopfzeile nennt die Spalten {first} und {second} {first_role} und {second_role}, aber so gelesen liegen die Punkte außerhalb des Geltungsbereichs des KBS ({area}), und vertauscht oder anders gelesen darin</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the header says that coordinates are in {unit}</source>
      <translation>die Kopfzeile sagt, dass Koordinaten in {unit} sind</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place</source>
      <translation>der Buchstabe O in Spalte {column} kann Ost oder West (Ouest, Oeste) sein; schreiben Sie stattdessen E oder W</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns instead of {width}</source>
      <translation>die Zeile hat {count} Spalten statt {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns; {role} is column {column}</source>
      <translation>die Zeile hat {count} Spalten; {role} ist Spalte {column}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the line is no NMEA sentence</source>
      <translation>die Zeile ist kein NMEA-Satz</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings contain the 10,000,000 m added in the southern hemisphere</source>
      <translation>die Nordwerte enthalten die 10 000 000 m, die auf der Südhalbkugel addiert werden</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings lack the 10,000,000 m added in the southern hemisphere</source>
      <translation>den Nordwerten fehlen die 10 000 000 m, die auf der Südhalbkugel addiert werden</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS</source>
      <translation>die Punkte liegen in jeder Einheit außerhalb des Geltungsbereichs des KBS; sie werden in {unit} gelesen, der Einheit des KBS</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver had no position</source>
      <translation>der Empfänger hatte keine Position</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver sent a position without a height</source>
      <translation>der Empfänger sandte eine Position ohne Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rest of the rim</source>
      <translation>der übrige Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rim</source>
      <translation>der Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the same epoch as line {line}, which is used</source>
      <translation>dieselbe Epoche wie Zeile {line}, die verwendet wird</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the same finished for the sheet; for drawing only</source>
      <translation>dasselbe für das Blatt fertiggestellt; nur zum Zeichnen</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the same zone is meant, with the eastings written as in {crs}</source>
      <translation>gemeint ist dieselbe Zone, mit Ostwerten, wie {crs} sie schreibt</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the sentence has no checksum</source>
      <translation>der Satz hat keine Prüfsumme</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>the slope is the same left and right; write both, once.</source>
      <translation>Die Böschung ist links und rechts dieselbe; schreiben Sie beide, einmal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface as a mesh</source>
      <translation>die Oberfläche als Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted</source>
      <translation>die Vermessung liegt wirklich jenseits der Zonengrenze; transformieren Sie sie nach {crs}, wenn das gewünscht ist</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the thinned surface as a mesh</source>
      <translation>die ausgedünnte Oberfläche als Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the tolerances of single points; edit them for --tolerances</source>
      <translation>die Toleranzen einzelner Punkte; zum Ändern für --tolerances</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are latitude and longitude in degrees; read them as such</source>
      <translation>die Werte sind Breite und Länge in Grad; lesen Sie sie so</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are longitude and latitude in degrees; read them as such</source>
      <translation>die Werte sind Länge und Breite in Grad; lesen Sie sie so</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>the values of column {column} are such as {role} has</source>
      <translation>die Werte der Spalte {column} sind solche, wie {role} sie hat</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>the whole survey, with its 95 % interval</source>
      <translation>die ganze Vermessung, mit dem 95-%-Intervall</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the zone number {prefix} before the eastings is missing</source>
      <translation>die Zonennummer {prefix} vor den Ostwerten fehlt</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>thinning the surface</source>
      <translation>Oberfläche wird ausgedünnt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>tilt, at most</source>
      <translation>Neigung, höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to both edges</source>
      <translation>zu beiden Rändern</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to neither edge</source>
      <translation>zu keinem Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the left edge</source>
      <translation>zum linken Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right (%)</source>
      <translation>nach rechts (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right edge</source>
      <translation>zum rechten Rand</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>toe of fill</source>
      <translation>Fuß des Auftrags</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>together</source>
      <translation>zusammen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>together (root of the sum of squares)</source>
      <translation>zusammen (Wurzel der Quadratsumme)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>together, the lines of the file</source>
      <translation>zusammen, die Zeilen der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>tolerance in height</source>
      <translation>Höhentoleranz</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>too close to tell</source>
      <translation>zu knapp</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>too few observations</source>
      <translation>zu wenige Beobachtungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>top of cut</source>
      <translation>Oberkante des Abtrags</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>topsoil, {depth} {unit} off {area} {area_unit}</source>
      <translation>Oberboden, {depth} {unit} von {area} {area_unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>tracing contours</source>
      <translation>Höhenlinien werden gezogen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle added</source>
      <translation>Dreieck hinzugefügt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle removed</source>
      <translation>Dreieck entfernt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles</source>
      <translation>Dreiecke</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles in a polygon dropped</source>
      <translation>Dreiecke in einem Polygon weggelassen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles outside the boundary or in voids</source>
      <translation>Dreiecke außerhalb der Grenze oder in Aussparungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles taken off the rim</source>
      <translation>vom Rand genommene Dreiecke</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>true RMSE, 95 % confidence</source>
      <translation>wahrer RMSE, 95 % Vertrauen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>unchanged</source>
      <translation>unverändert</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>undecided</source>
      <translation>unentschieden</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of heights</source>
      <translation>Einheit der Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of plan coordinates</source>
      <translation>Einheit der Lagekoordinaten</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <location filename="../plugin/core/georeference/operations.py" />
      <source>unknown</source>
      <translation>unbekannt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>used</source>
      <translation>verwendet</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>used point</source>
      <translation>verwendeter Punkt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>vegetated</source>
      <translation>bewachsen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices</source>
      <translation>Eckpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices kept</source>
      <translation>behaltene Eckpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>voids</source>
      <translation>Aussparungen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>walk again</source>
      <translation>nochmals begehen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>wandering, from one visit to another</source>
      <translation>wandernd, von einem Besuch zum andern</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, as it lies in the ground</source>
      <translation>Abfuhr, wie sie im Boden liegt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, loose on trucks</source>
      <translation>Abfuhr, locker auf Lkw</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>water goes elsewhere</source>
      <translation>Wasser läuft anderswohin</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>way down, longer where steeper</source>
      <translation>Weg hinab, länger, wo steiler</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>what the checks found: points, size, reasons, place</source>
      <translation>was die Prüfungen fanden: Punkte, Größe, Gründe, Ort</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>what the receiver states</source>
      <translation>was der Empfänger angibt</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>where it spills</source>
      <translation>wo es überläuft</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>whole site</source>
      <translation>ganzes Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>whole surface</source>
      <translation>ganze Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>widths {along}   heights {up}</source>
      <translation>Breiten {along}   Höhen {up}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing files</source>
      <translation>Dateien werden geschrieben</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing the report</source>
      <translation>Bericht wird geschrieben</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>yes</source>
      <translation>ja</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>{area:.1f} m² of the platform are outside the existing surface; no volume is counted there.</source>
      <translation>{area:.1f} m² des Planums liegen außerhalb der bestehenden Oberfläche; dort wird kein Volumen gezählt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{area} {unit}², {share} % of the site, drain nowhere: their water stays in a pond or pit until that is full.</source>
      <translation>{area} {unit}², {share} % des Geländes, haben keinen Abfluss: Ihr Wasser bleibt in einem Tümpel oder Tiefpunkt, bis er voll ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{back} back = {ahead} ahead</source>
      <translation>{back} zurück = {ahead} voraus</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} areas of at least {least} {unit}², together {area} {unit}², fall less than {limit} % in the mean over {window} {unit}.</source>
      <translation>{count} Flächen von mindestens {least} {unit}², zusammen {area} {unit}², fallen im Mittel über {window} {unit} um weniger als {limit} %.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{count} catchments are larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation>{count} Einzugsgebiete sind größer als 80 ha; für solche Flächen wird das rationale Verfahren gewöhnlich nicht verwendet.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{count} check points have the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' where it is not.</source>
      <translation>{count} Kontrollpunkte haben den Bewuchs 'grass', der als kurzes Gras gilt, also als unbewachsen; schreiben Sie 'tall grass', wo das nicht stimmt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} check points state no height error of their own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation>{count} Kontrollpunkte nennen keinen eigenen Höhenfehler; er zählt mit {sigma:.3f} m, wie bei den anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{count} control points were not surveyed, and are not used: {names}.</source>
      <translation>{count} Passpunkte wurden nicht gemessen und werden nicht verwendet: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{count} crossings of passes will tell the noise of the survey to about {percent:.0f} % (95 %, independent differences).</source>
      <translation>{count} Kreuzungen von Bahnen nennen das Rauschen der Vermessung auf etwa {percent:.0f} % (95 %, unabhängige Unterschiede).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} heights are too few to fit grades and vertical curves to; at least {least} are needed. Take a shorter spacing or a longer part of the line.</source>
      <translation>{count} Höhen sind zu wenige, um Neigungen und Ausrundungen einzupassen; es braucht mindestens {least}. Nehmen Sie einen kleineren Abstand oder einen längeren Teil der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} of {all} check points lie outside the surface and were not used: {names}.</source>
      <translation>{count} von {all} Kontrollpunkten liegen außerhalb der Oberfläche und wurden nicht verwendet: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in line {line}.</source>
      <translation>{count} von {total} Punkten liegen in {crs} nirgends auf der Erde (Geltungsbereich: {area}); der erste steht in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; the first is in line {line}.</source>
      <translation>{count} von {total} Punkten liegen außerhalb des Geltungsbereichs von {crs} ({area}), der entfernteste um {distance_km} km; der erste steht in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{count} of {total} points lie outside the area the operation is made for ({area}).</source>
      <translation>{count} von {total} Punkten liegen außerhalb des Gebiets, für das die Operation gemacht ist ({area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} pairs of cross-sections cross each other in tight bends, first those at stations {first} and {second}, {offset:.2f} m to the {side}. Ground beyond the crossings is counted twice: make the sections narrower there or fewer.</source>
      <translation>{count} Paare von Querprofilen kreuzen sich in engen Bögen, zuerst die bei den Stationen {first} und {second}, {offset:.2f} m nach {side}. Gelände jenseits der Kreuzungen wird doppelt gezählt: Machen Sie die Schnitte dort schmaler oder weniger.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} pairs of points of {first} and {second} lie within {distance_m} m and differ in height by more than {height_m} m, on average by {mean_m} m, at most by {most_m} m.</source>
      <translation>{count} Punktpaare aus {first} und {second} liegen innerhalb von {distance_m} m und unterscheiden sich in der Höhe um mehr als {height_m} m, im Mittel um {mean_m} m, höchstens um {most_m} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one.</source>
      <translation>{count} Stellen nochmals zu begehen; mit ihnen ist keine Stelle weiter als {limit:.1f} m von einem gemessenen Punkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} point names occur in more than one file, such as '{name}'; all points are kept.</source>
      <translation>{count} Punktnamen kommen in mehr als einer Datei vor, etwa '{name}'; alle Punkte bleiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the design surface: they have no design height.</source>
      <translation>{count} Punkte liegen nicht auf der Entwurfsoberfläche: Sie haben keine Entwurfshöhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the existing surface: cut and fill are not known there.</source>
      <translation>{count} Punkte liegen nicht auf der bestehenden Oberfläche: Abtrag und Auftrag sind dort nicht bekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} are beyond the tolerances '{set}' ({reasons}).</source>
      <translation>{count} Punkte von Zeile {line} bis {last} überschreiten die Toleranzen '{set}' ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} lie {size:+.3f} m off the ground around them: pole lifted or of another height.</source>
      <translation>{count} Punkte von Zeile {line} bis {last} liegen {size:+.3f} m neben dem Gelände ringsum: Stab angehoben oder von anderer Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation>{count} Punkte von Zeile {line} bis {last} liegen vielleicht {size:+.3f} m daneben, oder das Gelände hat dort eine Stufe: Sehen Sie es an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} repeat earlier ones.</source>
      <translation>{count} Punkte von Zeile {line} bis {last} wiederholen frühere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last}, next to a loss of the fix, lie {size:+.3f} m off the ground around them: ambiguities fixed wrongly.</source>
      <translation>{count} Punkte von Zeile {line} bis {last}, bei einem Verlust der Lösung, liegen {size:+.3f} m neben dem Gelände ringsum: Mehrdeutigkeiten falsch gelöst.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points have no name; choose another name field or number them.</source>
      <translation>{count} Punkte haben keinen Namen; wählen Sie ein anderes Namensfeld oder nummerieren Sie sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{count} points share a name with another, such as “{name}”; all are kept.</source>
      <translation>{count} Punkte teilen ihren Namen mit einem anderen, etwa „{name}“; alle bleiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>{count} ponds lie where only one of the surfaces reaches and are not compared.</source>
      <translation>{count} Tümpel liegen, wo nur eine der Oberflächen reicht, und werden nicht verglichen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation>{count} Orte wurden mehrfach aufgezeichnet (auf 0,1 mm gleich); die Oberfläche nimmt die mittlere Höhe. Größter Unterschied {spread:.3f} m, bei E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} smaller ones</source>
      <translation>{count} kleinere</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} statuses were set by hand against the automatic checks, the first in line {line}.</source>
      <translation>{count} Status wurden von Hand gegen die automatischen Prüfungen gesetzt, der erste in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>{count} thin triangles along the rim, {area:.1f} m² in all, span up to {value:.1f} m, the longest at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation>{count} schmale Dreiecke am Rand, zusammen {area:.1f} m², spannen bis zu {value:.1f} m, das längste bei E {easting:.3f} N {northing:.3f}. Geben Sie eine Grenze an oder lassen Sie den Rand beschneiden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} vertices are outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>{count} Eckpunkte liegen außerhalb der Grenze oder des beschnittenen Randes oder in einer Aussparung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0), and no value stands in. Give the standard deviation of a height of this survey.</source>
      <translation>{count} Eckpunkte der Oberfläche haben keine Standardabweichung der Höhe (oder eine unter 0), und kein Wert vertritt sie. Geben Sie die Standardabweichung einer Höhe dieser Vermessung an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0). Give the standard deviation of a height of this survey.</source>
      <translation>{count} Eckpunkte der Oberfläche haben keine Standardabweichung der Höhe (oder eine unter 0). Geben Sie die Standardabweichung einer Höhe dieser Vermessung an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{crs} does not say where it may be used; whether the points lie there is not checked.</source>
      <translation>{crs} sagt nicht, wo es gilt; ob die Punkte dort liegen, wird nicht geprüft.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their geometric mean is used; distances depend on direction.</source>
      <translation>{crs} ist nicht winkeltreu: Der Maßstab ist hier {along_meridian} nach Norden und {along_parallel} nach Osten. Verwendet wird ihr geometrisches Mittel; Strecken hängen von der Richtung ab.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs}: easting {easting} m, northing {northing} m is no place on the Earth; mend it.</source>
      <translation>{crs}: Ostwert {easting} m, Nordwert {northing} m ist kein Ort auf der Erde; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes ({axes}) make a mirrored plan; choose the variant of this CRS with axes to east and north.</source>
      <translation>{crs}: Seine Achsen ({axes}) ergeben einen gespiegelten Grundriss; wählen Sie die Variante dieses KBS mit Achsen nach Osten und Norden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are.</source>
      <translation>{crs}: Seine Achsen laufen nach {first} und {second}; die Spalten easting und northing enthalten sie, wie sie sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common inside the regions given: there is nothing to compare. Check the regions and their coordinate system.</source>
      <translation>{existing} und {design} haben innerhalb der angegebenen Gebiete kein Gelände gemeinsam: Es gibt nichts zu vergleichen. Prüfen Sie die Gebiete und ihr Koordinatenbezugssystem.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common: there is nothing to compare. Check that both are of one place.</source>
      <translation>{existing} und {design} haben kein Gelände gemeinsam: Es gibt nichts zu vergleichen. Prüfen Sie, ob beide vom selben Ort sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} is in {existing_crs}, {design} in {design_crs}: volumes need both in one coordinate system. Bring one of them into that of the other first.</source>
      <translation>{existing} ist in {existing_crs}, {design} in {design_crs}: Volumen brauchen beide in einem Koordinatenbezugssystem. Bringen Sie zuerst eine in das der anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>{field} cannot be read: '{value}'</source>
      <translation>{field} ist nicht lesbar: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file} holds several tolerance sets; say by its name which one counts: {names}.</source>
      <translation>{file} enthält mehrere Toleranzsätze; sagen Sie mit seinem Namen, welcher gilt: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other.</source>
      <translation>{file} ist in {crs}, die Vermessung in einem lokalen System: Nichts sagt, wie sie zueinander liegen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file} is in {unit}, its CRS {crs} in {other}: read as it says. If that is a slip of who wrote it, places are up to {shift:.3f} m off; ask, and choose the unit if so.</source>
      <translation>{file} ist in {unit}, sein KBS {crs} in {other}: gelesen, wie es dasteht. War das ein Versehen beim Schreiben, liegen Orte um bis zu {shift:.3f} m daneben; fragen Sie nach und wählen Sie dann die Einheit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: control point '{name}' stands in line {first} already; keep one.</source>
      <translation>{file} Zeile {line}: Der Passpunkt '{name}' steht schon in Zeile {first}; behalten Sie einen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line names the columns name, easting, northing and, where known, runoff.</source>
      <translation>{file} Zeile {line}: Die Spalte '{column}' fehlt; die erste Zeile nennt die Spalten name, easting, northing und, wo bekannt, runoff.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns name, easting, northing and, where known, height.</source>
      <translation>{file} Zeile {line}: Die Spalte '{column}' fehlt; die erste Zeile einer Passpunktdatei nennt die Spalten name, easting, northing und, wo bekannt, height.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the point has no name; give it one.</source>
      <translation>{file} Zeile {line}: Der Punkt hat keinen Namen; geben Sie ihm einen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: this is no text; save it as CSV.</source>
      <translation>{file} Zeile {line}: Das ist kein Text; speichern Sie es als CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: this point lies outside the geoid grid {grid}; give a grid that covers the site, or a constant.</source>
      <translation>{file} Zeile {line}: Dieser Punkt liegt außerhalb des Geoidgitters {grid}; geben Sie ein Gitter an, das das Gelände deckt, oder eine Konstante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: this position cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation>{file} Zeile {line}: Diese Position lässt sich nicht von {source} nach {target} transformieren; prüfen Sie KBS und Koordinaten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: {column} '{found}' is no number; mend it.</source>
      <translation>{file} Zeile {line}: {column} '{found}' ist keine Zahl; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: {count} points lie outside the geoid grid {grid}, the first in this line; give a grid that covers the site, or a constant.</source>
      <translation>{file} Zeile {line}: {count} Punkte liegen außerhalb des Geoidgitters {grid}, der erste in dieser Zeile; geben Sie ein Gitter an, das das Gelände deckt, oder eine Konstante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: {count} positions cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation>{file} Zeile {line}: {count} Positionen lassen sich nicht von {source} nach {target} transformieren; prüfen Sie KBS und Koordinaten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {kind} is no polygon of coordinates; give polygons only.</source>
      <translation>{file}, Objekt {number}: {kind} ist kein Polygon aus Koordinaten; geben Sie nur Polygone an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {name} is “{value}”, which is no number; mend it.</source>
      <translation>{file}, Objekt {number}: {name} ist „{value}“, das ist keine Zahl; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file.</source>
      <translation>{file}, Zeile 1: Das ist kein 2DM-Mesh, das mit MESH2D beginnt; wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, column {column}: no valid JSON ({reason}). Mend the file.</source>
      <translation>{file}, Zeile {line}, Spalte {column}: kein gültiges JSON ({reason}). Berichtigen Sie die Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: the kind in "edit" is {value}; it must be one of {known}.</source>
      <translation>{file}, Zeile {line}, Änderung {number}: Die Art in "edit" ist {value}; sie muss eine von {known} sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {field} must be {wanted}, not {value}.</source>
      <translation>{file}, Zeile {line}, Änderung {number}: {field} muss {wanted} sein, nicht {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} has no field {field}. Remove it or correct its name.</source>
      <translation>{file}, Zeile {line}, Änderung {number}: {kind} hat kein Feld {field}. Entfernen Sie es oder berichtigen Sie seinen Namen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} needs {fields}, exactly one of them.</source>
      <translation>{file}, Zeile {line}, Änderung {number}: {kind} braucht {fields}, genau eines davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: "edits" must be a list of edits, and nothing may stand beside it.</source>
      <translation>{file}, Zeile {line}: "edits" muss eine Liste von Änderungen sein, und nichts darf daneben stehen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' is none of the files of this survey ({sources}); the decision has no effect.</source>
      <translation>{file}, Zeile {line}: '{source}' ist keine der Dateien dieser Vermessung ({sources}); die Entscheidung hat keine Wirkung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' may be any of {sources}; write the name as it stands there.</source>
      <translation>{file}, Zeile {line}: '{source}' kann jede von {sources} sein; schreiben Sie den Namen, wie er dort steht.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ...</source>
      <translation>{file}, Zeile {line}: '{word}' ist keine Zeilennummer einer Vermessung; verwenden Sie 1, 2, ...</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'.</source>
      <translation>{file}, Zeile {line}: '{word}' ist kein Grund; verwenden Sie {words}, mehrere mit '+' verbunden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no status; use {words}.</source>
      <translation>{file}, Zeile {line}: '{word}' ist kein Status; verwenden Sie {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; holds a coordinate that is no number or no place on Earth; mend it.</source>
      <translation>{file}, Zeile {line}: &lt;{element}&gt; enthält eine Koordinate, die keine Zahl oder kein Ort auf der Erde ist; berichtigen Sie sie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; lacks its {attribute}; have the file written anew.</source>
      <translation>{file}, Zeile {line}: &lt;{element}&gt; fehlt sein {attribute}; lassen Sie die Datei neu schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; needs {needed} numbers (northing before easting) but holds “{found}”; mend it.</source>
      <translation>{file}, Zeile {line}: &lt;{element}&gt; braucht {needed} Zahlen (Nordwert vor Ostwert), enthält aber „{found}“; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; refers to the point “{found}”, which the file does not hold just once.</source>
      <translation>{file}, Zeile {line}: &lt;{element}&gt; verweist auf den Punkt „{found}“, den die Datei nicht genau einmal enthält.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: LandXML of version “{found}” is not read; have it written as LandXML 1.2.</source>
      <translation>{file}, Zeile {line}: LandXML der Version „{found}“ wird nicht gelesen; lassen Sie es als LandXML 1.2 schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a curve of alignment “{name}” does not fit: its ends lie {start:.3f} m and {end:.3f} m from its centre.</source>
      <translation>{file}, Zeile {line}: Ein Bogen der Achse „{name}“ passt nicht: Seine Enden liegen {start:.3f} m und {end:.3f} m von seinem Mittelpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has the corner {number}, but there is no such point; the file is damaged, have it written anew.</source>
      <translation>{file}, Zeile {line}: Eine Fläche der Oberfläche „{name}“ hat die Ecke {number}, aber es gibt keinen solchen Punkt; die Datei ist beschädigt, lassen Sie sie neu schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has {count} corners; only triangles are read, have the surface written as a TIN.</source>
      <translation>{file}, Zeile {line}: Eine Fläche der Oberfläche „{name}“ hat {count} Ecken; nur Dreiecke werden gelesen, lassen Sie die Oberfläche als TIN schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” lies on the same side of an edge as another; the surface overlaps itself, have it written anew.</source>
      <translation>{file}, Zeile {line}: Eine Fläche der Oberfläche „{name}“ liegt auf derselben Seite einer Kante wie eine andere; die Oberfläche überlappt sich, lassen Sie sie neu schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: a quote is not closed; mend the line.</source>
      <translation>{file}, Zeile {line}: Ein Anführungszeichen ist nicht geschlossen; berichtigen Sie die Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a spiral of alignment “{name}” ends {gap:.3f} m beside the place that the file gives.</source>
      <translation>{file}, Zeile {line}: Ein Übergangsbogen der Achse „{name}“ endet {gap:.3f} m neben dem Ort, den die Datei angibt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first.</source>
      <translation>{file}, Zeile {line}: Eine {record}-Zelle ist kein Dreieck; teilen Sie die Zellen zuerst in Dreiecke (E3T).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a gap of {gap:.3f} m before this element; its elements must follow each other.</source>
      <translation>{file}, Zeile {line}: Die Achse „{name}“ hat vor diesem Element eine Lücke von {gap:.3f} m; ihre Elemente müssen aufeinander folgen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a spiral ({kind}) that is not read; it is left out as a whole.</source>
      <translation>{file}, Zeile {line}: Die Achse „{name}“ hat einen Übergangsbogen ({kind}), der nicht gelesen wird; sie bleibt ganz weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has no lines or curves; it is left out.</source>
      <translation>{file}, Zeile {line}: Die Achse „{name}“ hat keine Geraden oder Bögen; sie bleibt weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: applies is {value}. Write "always", "grade &gt; 1:20" or "grade &lt;= 1:20".</source>
      <translation>{file}, Zeile {line}: applies ist {value}. Schreiben Sie "always", "grade &gt; 1:20" oder "grade &lt;= 1:20".</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: close is {close} for code {code}. Write yes, no or nothing.</source>
      <translation>{file}, Zeile {line}: close ist {close} beim Code {code}. Schreiben Sie yes, no oder nichts.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} already stands in line {first}. Keep one of them (case does not matter).</source>
      <translation>{file}, Zeile {line}: Der Code {code} steht schon in Zeile {first}. Behalten Sie einen (Groß- und Kleinschreibung zählt nicht).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} is a {kind} and always closes. Leave close empty or write yes.</source>
      <translation>{file}, Zeile {line}: Der Code {code} ist {kind} und schließt immer. Lassen Sie close leer oder schreiben Sie yes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} makes no line, so it cannot close. Leave close empty or change the kind.</source>
      <translation>{file}, Zeile {line}: Der Code {code} bildet keine Linie, kann also nicht schließen. Lassen Sie close leer oder ändern Sie die Art.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read as {role}, as --columns says.</source>
      <translation>{file}, Zeile {line}: Spalte {column} ist mit '{word}' überschrieben, wird aber als {role} gelesen, wie --columns sagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read in {unit}; check the unit.</source>
      <translation>{file}, Zeile {line}: Spalte {column} ist mit '{word}' überschrieben, wird aber in {unit} gelesen; prüfen Sie die Einheit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs code, kind and layer; close is optional.</source>
      <translation>{file}, Zeile {line}: Die Spalte {column} fehlt. Die Kopfzeile braucht code, kind und layer; close ist freigestellt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs {columns}.</source>
      <translation>{file}, Zeile {line}: Die Spalte {column} fehlt. Die Kopfzeile braucht {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close.</source>
      <translation>{file}, Zeile {line}: Die Spalte {column} ist unbekannt oder doppelt. Die Spalten sind code, kind, layer und close.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are {columns}.</source>
      <translation>{file}, Zeile {line}: Die Spalte {column} ist unbekannt oder doppelt. Die Spalten sind {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: column {column} is unknown, missing or twice. The columns are {columns}.</source>
      <translation>{file}, Zeile {line}: Die Spalte {column} ist unbekannt, fehlt oder ist doppelt. Die Spalten sind {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, cannot be read in any line; check --columns.</source>
      <translation>{file}, Zeile {line}: Spalte {column}, als {role} gelesen, ist in keiner Zeile lesbar; prüfen Sie --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, holds no number in any line (here '{value}'); check --columns and --decimal (read with delimiter {delimiter}, decimal mark '{decimal}').</source>
      <translation>{file}, Zeile {line}: Spalte {column}, als {role} gelesen, enthält in keiner Zeile eine Zahl (hier '{value}'); prüfen Sie --columns und --decimal (gelesen mit Trennzeichen {delimiter}, Dezimalzeichen '{decimal}').</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: columns {first} and {second} are both headed {role}; give --columns, such as name,easting,northing,height,code.</source>
      <translation>{file}, Zeile {line}: Die Spalten {first} und {second} sind beide mit {role} überschrieben; geben Sie --columns an, etwa name,easting,northing,height,code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: elements within elements, over {most} deep; this is no sound LandXML.</source>
      <translation>{file}, Zeile {line}: Elemente in Elementen, über {most} tief; das ist kein gesundes LandXML.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: give either at_least or at_most, one of them and not both.</source>
      <translation>{file}, Zeile {line}: Geben Sie at_least oder at_most an, eines davon und nicht beide.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}.</source>
      <translation>{file}, Zeile {line}: Die Art {kind} des Codes {code} ist unbekannt. Verwenden Sie eine von {kinds}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: lengths are in {unit} but elevations are said to be in “{found}”; programs read this either way. Ask for it, and choose the unit of the heights.</source>
      <translation>{file}, Zeile {line}: Längen sind in {unit}, Höhen aber angeblich in „{found}“; Programme lesen das so oder so. Fragen Sie nach und wählen Sie die Einheit der Höhen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: line {survey_line} of {source} holds no point; the decision has no effect.</source>
      <translation>{file}, Zeile {line}: Zeile {survey_line} von {source} enthält keinen Punkt; die Entscheidung hat keine Wirkung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: more cells than columns. Put quotes around text that contains the separator.</source>
      <translation>{file}, Zeile {line}: mehr Zellen als Spalten. Setzen Sie Text, der das Trennzeichen enthält, in Anführungszeichen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: more cells than columns. Use one separator all through.</source>
      <translation>{file}, Zeile {line}: mehr Zellen als Spalten. Verwenden Sie durchweg ein Trennzeichen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}.</source>
      <translation>{file}, Zeile {line}: Keine Spalte ist mit '{word}' überschrieben, das --columns nennt; die Kopfzeile hat {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter.</source>
      <translation>{file}, Zeile {line}: keine drei Spalten mit dem Trennzeichen {tried} ('{start}'); geben Sie --delimiter an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} is not in the file; it may have been cut short, write it anew.</source>
      <translation>{file}, Zeile {line}: Der Knoten {node} steht nicht in der Datei; sie ist vielleicht abgeschnitten, schreiben Sie sie neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} was given before; number each node once.</source>
      <translation>{file}, Zeile {line}: Der Knoten {node} war schon da; nummerieren Sie jeden Knoten einmal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: none of the {count} data lines is a point with delimiter {delimiter} and decimal mark '{decimal}' (here: {reason}); check --columns, --delimiter and --decimal.</source>
      <translation>{file}, Zeile {line}: Keine der {count} Datenzeilen ist ein Punkt mit Trennzeichen {delimiter} und Dezimalzeichen '{decimal}' (hier: {reason}); prüfen Sie --columns, --delimiter und --decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: point {number} of surface “{name}” was given before; keep one.</source>
      <translation>{file}, Zeile {line}: Der Punkt {number} der Oberfläche „{name}“ war schon da; behalten Sie einen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: quantity {value} is unknown. Use one of {known}.</source>
      <translation>{file}, Zeile {line}: Die Größe {value} ist unbekannt. Verwenden Sie eine von {known}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: side is “{value}”; write left, right or both.</source>
      <translation>{file}, Zeile {line}: side ist „{value}“; schreiben Sie left, right oder both.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: surface “{name}” is {width:.0f} km wide; a surface may measure 107 km.</source>
      <translation>{file}, Zeile {line}: Die Oberfläche „{name}“ ist {width:.0f} km breit; eine Oberfläche darf 107 km messen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect.</source>
      <translation>{file}, Zeile {line}: Die Vermessungszeile {survey_line} enthält keinen Punkt; die Entscheidung hat keine Wirkung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is a point in several files ({sources}); say which file is meant in a column 'source' of the decisions.</source>
      <translation>{file}, Zeile {line}: Die Vermessungszeile {survey_line} ist in mehreren Dateien ein Punkt ({sources}); sagen Sie in einer Spalte 'source' der Entscheidungen, welche Datei gemeint ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one.</source>
      <translation>{file}, Zeile {line}: Über die Vermessungszeile {survey_line} ist schon in Zeile {before} entschieden; behalten Sie eine.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the CRS “{found}” is not understood or not one in metres or feet; choose the CRS.</source>
      <translation>{file}, Zeile {line}: Das KBS „{found}“ ist nicht verständlich oder keines in Metern oder Fuß; wählen Sie das KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: the code is empty. Fill it in or remove the row.</source>
      <translation>{file}, Zeile {line}: Der Code ist leer. Füllen Sie ihn aus oder entfernen Sie die Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file declares a document type or entities, which LandXML does not need and which can do harm; it is not read. Have it written anew without them.</source>
      <translation>{file}, Zeile {line}: Die Datei erklärt einen Dokumenttyp oder Entities, die LandXML nicht braucht und die schaden können; sie wird nicht gelesen. Lassen Sie sie ohne diese neu schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file is no LandXML but holds &lt;{found}&gt;; choose another file.</source>
      <translation>{file}, Zeile {line}: Die Datei ist kein LandXML, sondern enthält &lt;{found}&gt;; wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma a decimal comma? Give --delimiter and --decimal, or mend the header.</source>
      <translation>{file}, Zeile {line}: Die Kopfzeile hat {header} Spalten, die meisten Zeilen aber {count}; ist das Komma ein Dezimalkomma? Geben Sie --delimiter und --decimal an oder berichtigen Sie die Kopfzeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: the header lacks {column}; it needs line, status and reason.</source>
      <translation>{file}, Zeile {line}: In der Kopfzeile fehlt {column}; sie braucht line, status und reason.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the profile “{name}” has a vertical curve &lt;{element}&gt;, which is not read; it is left out.</source>
      <translation>{file}, Zeile {line}: Das Profil „{name}“ hat eine Ausrundung &lt;{element}&gt;, die nicht gelesen wird; sie bleibt weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the stations of profile “{name}” do not rise, or its curves overlap; mend it.</source>
      <translation>{file}, Zeile {line}: Die Stationen des Profils „{name}“ steigen nicht, oder seine Ausrundungen überlappen sich; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle has no area in plan; remove it.</source>
      <translation>{file}, Zeile {line}: Das Dreieck hat im Grundriss keine Fläche; entfernen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle lies on the same side of an edge as another; remove one of them.</source>
      <translation>{file}, Zeile {line}: Das Dreieck liegt auf derselben Seite einer Kante wie ein anderes; entfernen Sie eines.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the units are said a second time, and otherwise; keep one.</source>
      <translation>{file}, Zeile {line}: Die Einheiten stehen ein zweites Mal da, und anders; behalten Sie eine Angabe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: there is a header but no data line; export the survey again.</source>
      <translation>{file}, Zeile {line}: Es gibt eine Kopfzeile, aber keine Datenzeile; exportieren Sie die Vermessung erneut.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file.</source>
      <translation>{file}, Zeile {line}: Das ist kein GeoJSON ({reason}); geben Sie eine GeoJSON-Datei an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}, line {line}: this is no JSON ({reason}); mend the line.</source>
      <translation>{file}, Zeile {line}: Das ist kein JSON ({reason}); berichtigen Sie die Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: this is no whole XML ({reason}); the file is damaged or cut short, have it written anew.</source>
      <translation>{file}, Zeile {line}: Das ist kein vollständiges XML ({reason}); die Datei ist beschädigt oder abgeschnitten, lassen Sie sie neu schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: this is not a list of edits; "format" must be "{format}".</source>
      <translation>{file}, Zeile {line}: Das ist keine Liste von Änderungen; "format" muss "{format}" sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: this is not a text table. Save it as CSV.</source>
      <translation>{file}, Zeile {line}: Das ist keine Texttabelle. Speichern Sie sie als CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: this is not a text table. Save the code table as CSV.</source>
      <translation>{file}, Zeile {line}: Das ist keine Texttabelle. Speichern Sie die Codetabelle als CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: this is not a text table. Save the table of limits as CSV.</source>
      <translation>{file}, Zeile {line}: Das ist keine Texttabelle. Speichern Sie die Tabelle der Grenzwerte als CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}, line {line}: this point has no plan position (easting or northing is not a number), nor have {others} others. Reject such points.</source>
      <translation>{file}, Zeile {line}: Dieser Punkt hat keine Lage (Ost- oder Nordwert ist keine Zahl), ebenso {others} andere. Verwerfen Sie solche Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: version {version} of the list of edits is not known here (known: up to {known}). Update the plugin.</source>
      <translation>{file}, Zeile {line}: Die Version {version} der Änderungsliste ist hier nicht bekannt (bekannt: bis {known}). Aktualisieren Sie die Erweiterung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: window is {value}. Write metres above 0.</source>
      <translation>{file}, Zeile {line}: window ist {value}. Schreiben Sie Meter über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: {attribute}=“{found}” of &lt;{element}&gt; cannot be; mend it.</source>
      <translation>{file}, Zeile {line}: {attribute}=„{found}“ von &lt;{element}&gt; kann nicht sein; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is empty. Fill it in.</source>
      <translation>{file}, Zeile {line}: {column} ist leer. Füllen Sie es aus.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a number above 0 with a decimal point.</source>
      <translation>{file}, Zeile {line}: {column} ist {value}. Schreiben Sie eine Zahl über 0 mit Dezimalpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a ratio such as 1:20, a percentage such as 5%, or a number, not negative.</source>
      <translation>{file}, Zeile {line}: {column} ist {value}. Schreiben Sie ein Verhältnis wie 1:20, einen Prozentsatz wie 5% oder eine Zahl, nicht negativ.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: {column} is “{value}”, which is no number here. Mend the cell.</source>
      <translation>{file}, Zeile {line}: {column} ist „{value}“, das ist hier keine Zahl. Berichtigen Sie die Zelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter and as decimal mark? Give --delimiter or --decimal, or name every column.</source>
      <translation>{file}, Zeile {line}: {count} Spalten und in keiner Koordinate ein Dezimalpunkt: Komma als Trenn- und als Dezimalzeichen? Geben Sie --delimiter oder --decimal an oder benennen Sie jede Spalte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: {count} points are of survey line {survey_line}, and it cannot be told which is meant; decide on them in the layer, or import the points again.</source>
      <translation>{file}, Zeile {line}: {count} Punkte gehören zur Vermessungszeile {survey_line}, und es ist nicht zu sagen, welcher gemeint ist; entscheiden Sie im Layer darüber oder importieren Sie die Punkte erneut.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {name} already stands in line {first}. Rename or remove one of them.</source>
      <translation>{file}, Zeile {line}: {name} steht schon in Zeile {first}. Benennen Sie eines um oder entfernen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: {reason}</source>
      <translation>{file}, Zeile {line}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: {role} is column {column}, but the lines have {count} columns with delimiter {delimiter}; check --delimiter and --columns.</source>
      <translation>{file}, Zeile {line}: {role} ist Spalte {column}, aber die Zeilen haben mit dem Trennzeichen {delimiter} {count} Spalten; prüfen Sie --delimiter und --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: “{found}” is no {system} unit of length of LandXML (such as {known}); mend it, or choose the unit.</source>
      <translation>{file}, Zeile {line}: „{found}“ ist keine {system}-Längeneinheit von LandXML (wie {known}); berichtigen Sie sie oder wählen Sie die Einheit.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line.</source>
      <translation>{file}, Zeile {line}: „{found}“ ist kein vollständiger {record}-Satz; schreiben Sie das Mesh neu oder berichtigen Sie diese Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{decimal}' cannot be a decimal mark; use '.' or ','.</source>
      <translation>{file}: '{decimal}' kann kein Dezimalzeichen sein; verwenden Sie '.' oder ','.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space or one sign such as '|'.</source>
      <translation>{file}: '{delimiter}' kann kein Trennzeichen sein; verwenden Sie Komma, Semikolon, Tabulator, Leerzeichen oder ein Zeichen wie '|'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: '{key}' stands twice in one set; keep one of them.</source>
      <translation>{file}: '{key}' steht zweimal in einem Satz; behalten Sie eines davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.</source>
      <translation>{file}: '{name}' ist keine Ursache, die erklärt, wo die Punkte liegen; gefundene Ursachen sind: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' needs the file to be read or transformed otherwise: name the columns latitude and longitude in --columns, or give the CRS of the file as --source-crs and the one wanted as --crs.</source>
      <translation>{file}: Für '{name}' muss die Datei anders gelesen oder transformiert werden: Nennen Sie die Spalten latitude und longitude in --columns oder geben Sie das KBS der Datei mit --source-crs und das gewünschte mit --crs an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: --columns names column {column} ({role}), but no line has more than {count} columns; check --columns and --delimiter.</source>
      <translation>{file}: --columns nennt Spalte {column} ({role}), aber keine Zeile hat mehr als {count} Spalten; prüfen Sie --columns und --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot open a grid whose path contains {sign}; move or rename the file.</source>
      <translation>{file}: PROJ kann kein Gitter öffnen, dessen Pfad {sign} enthält; verschieben oder benennen Sie die Datei um.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot read this as a grid of geoid separations ({reason}); give a GTX or GeoTIFF grid, or a constant.</source>
      <translation>{file}: PROJ kann das nicht als Gitter von Geoidundulationen lesen ({reason}); geben Sie ein GTX- oder GeoTIFF-Gitter oder eine Konstante an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: a list of tolerance sets is expected, each with a name; write [ and ] around them.</source>
      <translation>{file}: Erwartet wird eine Liste von Toleranzsätzen, jeder mit einem Namen; schreiben Sie [ und ] darum.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: all usable points are at one place; a surface needs at least three different ones.</source>
      <translation>{file}: Alle verwendbaren Punkte liegen an einem Ort; eine Oberfläche braucht mindestens drei verschiedene.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: all {count} points lie on one straight line, which spans no surface. Check the column mapping (the same column for easting and northing?) or add points beside the line.</source>
      <translation>{file}: Alle {count} Punkte liegen auf einer Geraden, die keine Oberfläche aufspannt. Prüfen Sie die Spaltenzuordnung (dieselbe Spalte für Ost- und Nordwert?) oder fügen Sie Punkte neben der Linie hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: brackets within brackets too deep for a list of tolerance sets; mend the file.</source>
      <translation>{file}: Klammern zu tief ineinander für eine Liste von Toleranzsätzen; berichtigen Sie die Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/checksums.py" />
      <source>{file}: cannot be read ({reason}), so it cannot be listed among the files handed over.</source>
      <translation>{file}: nicht lesbar ({reason}), kann also nicht unter den übergebenen Dateien aufgeführt werden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: cannot be read ({reason}); check its permissions and whether it is in use.</source>
      <translation>{file}: nicht lesbar ({reason}); prüfen Sie die Rechte und ob sie in Gebrauch ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/files.py" />
      <source>{file}: cannot be written ({reason}); check the folder, its permissions and the space left.</source>
      <translation>{file}: nicht schreibbar ({reason}); prüfen Sie den Ordner, seine Rechte und den freien Platz.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} contains a space or the separator '{separator}', so it can never be found. Rename it.</source>
      <translation>{file}: Der Code {code} enthält ein Leerzeichen oder das Trennzeichen '{separator}', ist also nie zu finden. Benennen Sie ihn um.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} is also the word for {meaning}. Change one of them.</source>
      <translation>{file}: Der Code {code} ist auch das Wort für {meaning}. Ändern Sie eines davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file}: Die Spalten {first} und {second} sind Länge und Breite in Grad, hier braucht es aber ebene Koordinaten; transformieren Sie sie zuerst in ein projiziertes KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of the check point of line {line} is no known word; it counts as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation>{file}: Der Bewuchs '{word}' des Kontrollpunkts in Zeile {line} ist kein bekanntes Wort; er zählt als unbewachsen. Schreiben Sie hard, bare, short grass oder tall grass, crops, brush, forest.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation>{file}: Der Bewuchs '{word}' von {count} Kontrollpunkten ist kein bekanntes Wort (zuerst in Zeile {line}); sie zählen als unbewachsen. Schreiben Sie hard, bare, short grass oder tall grass, crops, brush, forest.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again.</source>
      <translation>{file}: hat keine Datenzeilen, nur {comments} Kommentar- und {blanks} Leerzeilen; exportieren Sie die Vermessung erneut.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has no header line, but --columns names the header word '{word}'; use column numbers.</source>
      <translation>{file}: hat keine Kopfzeile, aber --columns nennt das Kopfwort '{word}'; verwenden Sie Spaltennummern.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has over {most} columns with delimiter {delimiter}; check --delimiter.</source>
      <translation>{file}: hat mit dem Trennzeichen {delimiter} über {most} Spalten; prüfen Sie --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are above mean sea level as the receiver sent them.</source>
      <translation>{file}: Höhen sind über dem Meeresspiegel, wie der Empfänger sie sandte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are ellipsoidal: height above mean sea level plus geoid separation.</source>
      <translation>{file}: Höhen sind ellipsoidisch: Höhe über dem Meeresspiegel plus Geoidundulation.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: holds positions in degrees and {first} in lengths, or the other way round; transform the degrees before they are merged.</source>
      <translation>{file}: enthält Positionen in Grad und {first} in Längen oder umgekehrt; transformieren Sie die Grade, bevor sie zusammengeführt werden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a binary file, not text; export the survey as delimited text (CSV).</source>
      <translation>{file}: ist eine Binärdatei, kein Text; exportieren Sie die Vermessung als Text mit Trennzeichen (CSV).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a folder; give the survey file inside it.</source>
      <translation>{file}: ist ein Ordner; geben Sie die Vermessungsdatei darin an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/survey.py" />
      <source>{file}: is a receiver log with latitudes and longitudes, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file}: ist ein Empfängerprotokoll mit Breiten und Längen, hier braucht es aber ebene Koordinaten; transformieren Sie sie zuerst in ein projiziertes KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is empty; export the survey again.</source>
      <translation>{file}: ist leer; exportieren Sie die Vermessung erneut.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is given twice; give each file once.</source>
      <translation>{file}: ist zweimal angegeben; geben Sie jede Datei einmal an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is in {crs}, but {first} is in {first_crs}; transform one of them before they are merged.</source>
      <translation>{file}: ist in {crs}, {first} aber in {first_crs}; transformieren Sie eine davon, bevor sie zusammengeführt werden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not UTF-8 text; it was read as {encoding}. Check accented letters.</source>
      <translation>{file}: ist kein UTF-8-Text; gelesen wurde als {encoding}. Prüfen Sie Buchstaben mit Akzenten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not {encoding} text ({reason}); give the encoding it was written in.</source>
      <translation>{file}: ist kein {encoding}-Text ({reason}); geben Sie die Kodierung an, in der sie geschrieben wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: it cannot be read ({reason}); give a GeoJSON file.</source>
      <translation>{file}: nicht lesbar ({reason}); geben Sie eine GeoJSON-Datei an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: its EPSG code means {epsg}, its WKT {wkt}; the code is taken. Choose the CRS if that is wrong.</source>
      <translation>{file}: Ihr EPSG-Code bedeutet {epsg}, ihr WKT {wkt}; genommen wird der Code. Wählen Sie das KBS, wenn das falsch ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its columns hold eastings and northings, but {crs}, given as --source-crs, is in degrees; give the projected CRS they are in, or name the columns latitude and longitude in --columns.</source>
      <translation>{file}: Ihre Spalten enthalten Ost- und Nordwerte, aber {crs}, mit --source-crs angegeben, ist in Grad; geben Sie das projizierte KBS an, in dem sie sind, oder nennen Sie die Spalten latitude und longitude in --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: its coordinate system “{crs}” is not understood here; write it anew.</source>
      <translation>{file}: Das Koordinatenbezugssystem „{crs}“ ist hier nicht verständlich; schreiben Sie die Datei neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs.</source>
      <translation>{file}: Die Koordinaten lassen sich nicht in ein lokales System transformieren; geben Sie mit --crs ein projiziertes KBS an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said, though the file itself says {found}.</source>
      <translation>{file}: Die Höhen gelten als {heights}, wie gesagt, obwohl die Datei selbst {found} sagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said.</source>
      <translation>{file}: Die Höhen gelten als {heights}, wie gesagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are {heights} already, so the geoid separation would be counted twice; leave --geoid out, or say with --heights-are what they are.</source>
      <translation>{file}: Die Höhen sind schon {heights}, die Geoidundulation zählte also doppelt; lassen Sie --geoid weg oder sagen Sie mit --heights-are, was sie sind.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: its heights are {heights}, those of {first} {first_heights}; bring them to one kind first.</source>
      <translation>{file}: Die Höhen sind {heights}, die von {first} {first_heights}; bringen Sie sie zuerst auf eine Art.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its positions are in degrees, but {crs}, given as --source-crs, is projected; give a geographic CRS, such as EPSG:4326.</source>
      <translation>{file}: Die Positionen sind in Grad, aber {crs}, mit --source-crs angegeben, ist projiziert; geben Sie ein geographisches KBS an, etwa EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are in degrees; give the projected CRS they are wanted in, not a local grid.</source>
      <translation>{file}: Die Positionen sind in Grad; geben Sie das projizierte KBS an, in dem sie gewünscht sind, kein lokales System.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are taken as {source}, as receivers send them; a correction service may work in another datum, which the file does not tell.</source>
      <translation>{file}: Die Positionen gelten als {source}, wie Empfänger sie senden; ein Korrekturdienst kann in einem anderen Bezug arbeiten, den die Datei nicht nennt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: line {line} is no point; the rejects give its reason.</source>
      <translation>{file}: Zeile {line} ist kein Punkt; sie steht mit ihrem Grund in der Tabelle der verworfenen Zeilen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting them at their crossings makes new ones. Remove one of them.</source>
      <translation>{file}: Linien laufen bei E {easting:.3f} N {northing:.3f} so dicht beieinander, dass das Teilen an ihren Kreuzungen neue erzeugt. Entfernen Sie eine davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines with different heights cross at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation>{file}: Linien mit verschiedenen Höhen kreuzen sich bei E {easting:.3f} N {northing:.3f}: {first} auf {first_height:.3f} m und {second} auf {second_height:.3f} m. Berichtigen Sie die Linien oder wählen Sie eine Regel für Kreuzungen (mean, first).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01.</source>
      <translation>{file}: Kein RMC- oder ZDA-Satz gibt ein Datum an; Zeiten sind Tageszeiten, wie am 1970-01-01.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{file}: no point is left to compute a scale from.</source>
      <translation>{file}: Kein Punkt ist übrig, um einen Maßstab zu berechnen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.</source>
      <translation>{file}: Kein gemessener Punkt hat den Namen eines Passpunkts (wie '{name}'); Namen müssen gleich geschrieben sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: no tolerance set is called '{name}'; there are {names}.</source>
      <translation>{file}: Kein Toleranzsatz heißt '{name}'; es gibt {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. Check the boundary's place and the maximum rim edge.</source>
      <translation>{file}: Innerhalb der Grenze und außerhalb der Aussparungen bleibt kein Dreieck mit Randkanten bis zur Grenze übrig. Prüfen Sie den Ort der Grenze und die längste Randkante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum.</source>
      <translation>{file}: Keine der {lines} Zeilen ist ein NMEA-0183-Satz mit richtiger Prüfsumme.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.</source>
      <translation>{file}: Keiner der {sentences} NMEA-Sätze gibt eine Position; zeichnen Sie GGA- oder GNS-Sätze mit Lösung auf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: none of the {count} check points lies on the surface (the first is line {line}); check their coordinate system, units and the order of easting and northing.</source>
      <translation>{file}: Keiner der {count} Kontrollpunkte liegt auf der Oberfläche (der erste steht in Zeile {line}); prüfen Sie Koordinatenbezugssystem, Einheiten und die Reihenfolge von Ost- und Nordwert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: not all of its coordinates can be brought from {source} to {target}; write it anew in the CRS of the survey (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file}: Nicht alle Koordinaten lassen sich von {source} nach {target} bringen; schreiben Sie die Datei im KBS der Vermessung neu (in QGIS: Export, Objekte speichern als, mit diesem KBS und der Option RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); give --columns, such as {options}.</source>
      <translation>{file}: Nichts sagt sicher, welche Spalten Ostwert, Nordwert und Höhe sind (erste Zeile: {words}); geben Sie --columns an, etwa {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>{file}: nothing says how high {name} is; give --pad-level, a height or “balance”, or a property level.</source>
      <translation>{file}: Nichts sagt, wie hoch {name} liegt; geben Sie --pad-level an, eine Höhe oder „balance“, oder eine Eigenschaft level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local for a local grid in metres.</source>
      <translation>{file}: Nichts sagt, welches Koordinatenbezugssystem das ist; geben Sie seinen Code an, wie in --crs EPSG:25832, oder --crs local für ein lokales System in Metern.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: one of {total} positions has no GST sentence; its accuracy is unknown.</source>
      <translation>{file}: Eine von {total} Positionen hat keinen GST-Satz; ihre Genauigkeit ist unbekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: read as {columns} with delimiter {delimiter}.</source>
      <translation>{file}: gelesen als {columns} mit dem Trennzeichen {delimiter}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': '{key}' is no tolerance; use {keys}.</source>
      <translation>{file}: Satz '{name}': '{key}' ist keine Toleranz; verwenden Sie {keys}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': {key} is {value}; it must be {wanted}.</source>
      <translation>{file}: Satz '{name}': {key} ist {value}; es muss {wanted} sein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1.</source>
      <translation>{file}: Die Textkodierung '{encoding}' ist nicht bekannt; verwenden Sie utf-8, utf-16 oder latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the LandXML file cannot be read ({reason}); check the path.</source>
      <translation>{file}: Die LandXML-Datei ist nicht lesbar ({reason}); prüfen Sie den Pfad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: the check point of line {line} does not lie on the surface; check its coordinate system, units and the order of easting and northing.</source>
      <translation>{file}: Der Kontrollpunkt in Zeile {line} liegt nicht auf der Oberfläche; prüfen Sie Koordinatenbezugssystem, Einheiten und die Reihenfolge von Ost- und Nordwert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: Die Codetabelle ist nicht lesbar ({reason}). Prüfen Sie Pfad und Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table has no codes. Give a header code,kind,layer,close and rows.</source>
      <translation>{file}: Die Codetabelle hat keine Codes. Geben Sie eine Kopfzeile code,kind,layer,close und Zeilen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: the comma cannot be delimiter and decimal mark both, unless fields are quoted; give another --delimiter or --decimal.</source>
      <translation>{file}: Das Komma kann nicht Trenn- und Dezimalzeichen zugleich sein, außer Felder stehen in Anführungszeichen; geben Sie ein anderes --delimiter oder --decimal an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: the control file cannot be read ({reason}); check path and encoding (UTF-8).</source>
      <translation>{file}: Die Passpunktdatei ist nicht lesbar ({reason}); prüfen Sie Pfad und Kodierung (UTF-8).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: the coordinates look like degrees, and the file names no other system. Save the line in the survey's CRS (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file}: Die Koordinaten sehen wie Grad aus, und die Datei nennt kein anderes System. Speichern Sie die Linie im KBS der Vermessung (in QGIS: Export, Objekte speichern als, mit diesem KBS und der Option RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}: the decision in line {line} names no file of the survey; it is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation>{file}: Die Entscheidung in Zeile {line} nennt keine Datei der Vermessung; sie gilt für den einzigen Punkt ihrer Zeile. Eine Spalte 'source' sagt, welche Datei gemeint ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}: the edits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: Die Änderungen sind nicht lesbar ({reason}). Prüfen Sie Pfad und Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the file does not say its unit of length (element Units); ask for it and choose it here.</source>
      <translation>{file}: Die Datei nennt ihre Längeneinheit nicht (Element Units); fragen Sie nach und wählen Sie sie hier.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/write.py" />
      <source>{file}: the folder cannot be made ({reason}); choose another one for --out.</source>
      <translation>{file}: Der Ordner lässt sich nicht anlegen ({reason}); wählen Sie einen anderen für --out.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets are in {found}, the surface in {wanted}; reproject them or give them as CSV.</source>
      <translation>{file}: Die Einläufe sind in {found}, die Oberfläche in {wanted}; transformieren Sie sie oder geben Sie sie als CSV an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets cannot be read ({reason}); check the path.</source>
      <translation>{file}: Die Einläufe sind nicht lesbar ({reason}); prüfen Sie den Pfad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh file cannot be read ({reason}); check the path.</source>
      <translation>{file}: Die Mesh-Datei ist nicht lesbar ({reason}); prüfen Sie den Pfad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh has no triangles; choose another file or write it anew.</source>
      <translation>{file}: Das Mesh hat keine Dreiecke; wählen Sie eine andere Datei oder schreiben Sie es neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the point of line {line} has fewer columns than the rest; what is missing counts as unknown.</source>
      <translation>{file}: Der Punkt in Zeile {line} hat weniger Spalten als die übrigen; was fehlt, zählt als unbekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. Check the column mapping, the units and single points far off.</source>
      <translation>{file}: Die Punkte liegen bis zu {distance_km:.0f} km auseinander; eine Oberfläche darf 107 km messen. Prüfen Sie Spaltenzuordnung, Einheiten und einzelne weit entfernte Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the runoff coefficient of inlet '{name}' is {found}; it is above 0 and at most 1.</source>
      <translation>{file}: Der Abflussbeiwert des Einlaufs '{name}' ist {found}; er liegt über 0 und höchstens bei 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code table that is shipped) and use field codes.</source>
      <translation>{file}: Die Vermessung enthält keine Kontrollmessungen; geben Sie eine Datei mit Kontrollpunkten an oder codieren Sie Kontrollmessungen (CK in der mitgelieferten Codetabelle) und verwenden Sie Feldcodes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: Die Tabelle ist nicht lesbar ({reason}). Prüfen Sie Pfad und Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table has no rows. Give a header with the columns {columns}, and rows.</source>
      <translation>{file}: Die Tabelle hat keine Zeilen. Geben Sie eine Kopfzeile mit den Spalten {columns} und Zeilen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table has no rows. Give a header with {columns} and at least one row.</source>
      <translation>{file}: Die Tabelle hat keine Zeilen. Geben Sie eine Kopfzeile mit {columns} und mindestens eine Zeile an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table of limits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: Die Tabelle der Grenzwerte ist nicht lesbar ({reason}). Prüfen Sie Pfad und Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances are no text in UTF-8; save the file in that encoding.</source>
      <translation>{file}: Die Toleranzen sind kein Text in UTF-8; speichern Sie die Datei in dieser Kodierung.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances cannot be read ({reason}); check the path and the file.</source>
      <translation>{file}: Die Toleranzen sind nicht lesbar ({reason}); prüfen Sie Pfad und Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the value of {role} in line {line} cannot be read and counts as unknown.</source>
      <translation>{file}: Der Wert von {role} in Zeile {line} ist nicht lesbar und zählt als unbekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}: there are no polygons in it; give a file of polygons.</source>
      <translation>{file}: Es sind keine Polygone darin; geben Sie eine Datei mit Polygonen an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: there are no surfaces, points or alignments in this file that could be read; choose another.</source>
      <translation>{file}: In dieser Datei sind keine lesbaren Oberflächen, Punkte oder Achsen; wählen Sie eine andere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there are {count} lines in it ({names}). Give a file with one; join the parts of a line first.</source>
      <translation>{file}: Es sind {count} Linien darin ({names}). Geben Sie eine Datei mit einer an; verbinden Sie zuerst die Teile einer Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: there is no column {column} for the linework. Columns kept: {columns}.</source>
      <translation>{file}: Es gibt keine Spalte {column} für die Linien. Behaltene Spalten: {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: there is no control point in this file.</source>
      <translation>{file}: In dieser Datei ist kein Passpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: there is no inlet in this file.</source>
      <translation>{file}: In dieser Datei ist kein Einlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there is no line in it. Give a file with one LineString.</source>
      <translation>{file}: Es ist keine Linie darin. Geben Sie eine Datei mit einem LineString an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: there is no such file; check the path.</source>
      <translation>{file}: Eine solche Datei gibt es nicht; prüfen Sie den Pfad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: this is no GeoJSON of points or lines ({reason}); export the layer of inlets as GeoJSON.</source>
      <translation>{file}: Das ist kein GeoJSON mit Punkten oder Linien ({reason}); exportieren Sie den Layer der Einläufe als GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: two sets are called '{name}'; rename one.</source>
      <translation>{file}: Zwei Sätze heißen '{name}'; benennen Sie einen um.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: {count} crossings of lines with different heights, the first at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation>{file}: {count} Kreuzungen von Linien mit verschiedenen Höhen, die erste bei E {easting:.3f} N {northing:.3f}: {first} auf {first_height:.3f} m und {second} auf {second_height:.3f} m. Berichtigen Sie die Linien oder wählen Sie eine Regel für Kreuzungen (mean, first).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}: {count} decisions name no file of the survey, the first in line {line}; each is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation>{file}: {count} Entscheidungen nennen keine Datei der Vermessung, die erste in Zeile {line}; jede gilt für den einzigen Punkt ihrer Zeile. Eine Spalte 'source' sagt, welche Datei gemeint ist.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.</source>
      <translation>{file}: {count} Zeilen sind keine Punkte, die erste ist Zeile {line}; die verworfenen Zeilen stehen mit ihrem Grund in der Tabelle.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown.</source>
      <translation>{file}: {count} von {total} Positionen haben keinen GST-Satz; ihre Genauigkeit ist unbekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} points have fewer columns than the rest, the first in line {line}; what is missing counts as unknown.</source>
      <translation>{file}: {count} Punkte haben weniger Spalten als die übrigen, der erste in Zeile {line}; was fehlt, zählt als unbekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {count} usable points at different places; a surface needs at least three.</source>
      <translation>{file}: {count} verwendbare Punkte an verschiedenen Orten; eine Oberfläche braucht mindestens drei.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}.</source>
      <translation>{file}: {count} Werte von {role} sind nicht lesbar und zählen als unbekannt, der erste in Zeile {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: {found} {record} records found but {expected} announced; the file is cut short, write it anew.</source>
      <translation>{file}: {found} {record}-Sätze gefunden, aber {expected} angekündigt; die Datei ist abgeschnitten, schreiben Sie sie neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {label}, vertex {vertex}, has no plan position (easting or northing is not a number). Mend the line.</source>
      <translation>{file}: {label}, Stützpunkt {vertex}, hat keine Lage (Ost- oder Nordwert ist keine Zahl). Berichtigen Sie die Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {note}.</source>
      <translation>{file}: {note}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}.</source>
      <translation>{file}: {question}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}; type one of: {options}.</source>
      <translation>{file}: {question}; geben Sie eines ein: {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>{file}: {said}</source>
      <translation>{file}: {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: {wanted} heights are wanted and those of the file are {heights}; give the geoid separation as --geoid.</source>
      <translation>{file}: Gewünscht sind {wanted}e Höhen, die der Datei sind {heights}; geben Sie die Geoidundulation mit --geoid an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: {what} has no list of coordinates as GeoJSON asks for. Save the layer again.</source>
      <translation>{file}: {what} hat keine Koordinatenliste, wie GeoJSON sie verlangt. Speichern Sie den Layer erneut.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is one line, join it there.</source>
      <translation>{first} endet, und {second} beginnt {value:.2f} m weiter bei E {easting:.3f} N {northing:.3f}, und ein Dreieck überbrückt die Lücke. Ist es eine Linie, verbinden Sie sie dort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is one line, join it there.</source>
      <translation>{first} endet, und {second} beginnt {value:.2f} m weiter bei E {easting:.3f} N {northing:.3f}, und {count} Dreiecke überbrücken die Lücke. Ist es eine Linie, verbinden Sie sie dort.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is a ring, close it.</source>
      <translation>{first} endet {value:.2f} m vor dem eigenen Anfang bei E {easting:.3f} N {northing:.3f}, und ein Dreieck überbrückt die Lücke. Ist es ein Ring, schließen Sie ihn.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is a ring, close it.</source>
      <translation>{first} endet {value:.2f} m vor dem eigenen Anfang bei E {easting:.3f} N {northing:.3f}, und {count} Dreiecke überbrücken die Lücke. Ist es ein Ring, schließen Sie ihn.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station equation. Write back = ahead, such as 1+200 = 1+250; part several by semicolons.</source>
      <translation>{given} ist keine Stationsgleichung. Schreiben Sie zurück = voraus, etwa 1+200 = 1+250; trennen Sie mehrere mit Semikolon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station. Write it such as 1+234.50 or 1234.5; part several by semicolons.</source>
      <translation>{given} ist keine Station. Schreiben Sie sie wie 1+234.50 oder 1234.5; trennen Sie mehrere mit Semikolon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).</source>
      <translation>{label} lief noch, als {point} (Zeile {line}) sie neu begann; die alte Linie endet bei {last} (Zeile {last_line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: a part has {places} of the {needed} places that it needs; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label}: Ein Teil hat {places} der {needed} Orte, die er braucht; ausgelassen. Bei {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: Ein Ring braucht drei Orte und hat {places}; weggelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a height at every vertex, and {count} have none. Give heights, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label}: Eine senkrechte Fläche braucht an jedem Stützpunkt eine Höhe, und {count} haben keine. Geben Sie Höhen an, zuerst bei {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a line of two places or more. Mend or remove the line.</source>
      <translation>{label}: Eine senkrechte Fläche braucht eine Linie mit zwei oder mehr Orten. Berichtigen oder entfernen Sie die Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: all points of the ring lie on one straight line; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: Alle Punkte des Rings liegen auf einer Geraden; weggelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label}: Alle Stützpunkte eines Rings liegen auf einer Geraden; weggelassen. Bei {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: fewer than three places, so it stays open. It ends at {point} (line {line}).</source>
      <translation>{label}: weniger als drei Orte, also bleibt sie offen. Sie endet bei {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: it has no vertices; left out.</source>
      <translation>{label}: keine Stützpunkte; weggelassen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a circle between each two; straight.</source>
      <translation>{label}: Kein Bogen geht durch {point} (Zeile {line}) und die Punkte daneben mit höchstens einem Halbkreis zwischen je zweien; gerade.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no point of it can be used; no line. It began at {point} (line {line}).</source>
      <translation>{label}: Kein Punkt davon ist verwendbar; keine Linie. Sie begann bei {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: only one place, {point} (line {line}); no line, the point stays a ground point.</source>
      <translation>{label}: nur ein Ort, {point} (Zeile {line}); keine Linie, der Punkt bleibt Geländepunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points at the place of the one before them left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: Punkte am Ort des vorigen aus der Linie gelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: Punkte ohne vollständige Position aus der Linie gelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: rejected points left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: verworfene Punkte aus der Linie gelassen. Punkte: {count}, erster {point} (Zeile {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second line: {count}, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label}: Strecken zu kurz oder Ecken zu eng für den Versatz {offset} m, aus der zweiten Linie gelassen: {count}, zuerst bei {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; the first one is used there.</source>
      <translation>{label}: Der Bogen bei {point} (Zeile {line}) und ein Nachbarbogen weichen zwischen ihren Punkten voneinander ab; dort gilt der erste.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the face height {value} m cannot be used. Give a height other than 0.</source>
      <translation>{label}: Die Flächenhöhe {value} m ist nicht verwendbar. Geben Sie eine Höhe ungleich 0 an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it.</source>
      <translation>{label}: Die Linie kehrt bei {x:.3f}, {y:.3f} um; die zweite Linie geht darum herum.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there.</source>
      <translation>{label}: Die Mitte eines Bogens, {point} (Zeile {line}), ist nicht verwendbar; dort kein Bogen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the offset {value} m of the face cannot be used. Give at least {least} m.</source>
      <translation>{label}: Der Versatz {value} m der Fläche ist nicht verwendbar. Geben Sie mindestens {least} m an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: the ring was open and is closed by a straight edge of {gap:.3f} m from {x:.3f}, {y:.3f}.</source>
      <translation>{label}: Der Ring war offen und wird durch eine gerade Kante von {gap:.3f} m ab {x:.3f}, {y:.3f} geschlossen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the two lines of the face cross or touch near {x:.3f}, {y:.3f}. Use a smaller offset there or draw the line anew.</source>
      <translation>{label}: Die zwei Linien der Fläche kreuzen oder berühren sich bei {x:.3f}, {y:.3f}. Nehmen Sie dort einen kleineren Versatz oder zeichnen Sie die Linie neu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: there is no room for a second line {offset} m beside it. Use a smaller offset or the other side.</source>
      <translation>{label}: Für eine zweite Linie {offset} m daneben ist kein Platz. Nehmen Sie einen kleineren Versatz oder die andere Seite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: vertices dropped because they repeat the place before them: {count}.</source>
      <translation>{label}: weggelassene Stützpunkte, weil sie den vorigen Ort wiederholen: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: {count} of its vertices have no usable coordinates; the part is left out.</source>
      <translation>{label}: {count} Stützpunkte haben keine brauchbaren Koordinaten; der Teil bleibt weg.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight.</source>
      <translation>{label}: {point} (Zeile {line}) ist als Bogenmitte gekennzeichnet, aber ein Ende der Linie; gerade.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label}: {point} (line {line}) starts a new line without a word for it, after the line of that number had ended.</source>
      <translation>{label}: {point} (Zeile {line}) beginnt ohne Wort dafür eine neue Linie, nachdem die Linie dieser Nummer geendet hatte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} or its slopes take {area:.1f} m² of the platform of {earlier}. Move the pads apart, or plan a wall.</source>
      <translation>{later} oder seine Böschungen nehmen {area:.1f} m² der Krone von {earlier} in Anspruch. Rücken Sie die Plana auseinander oder planen Sie eine Mauer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} reaches into the grading of {earlier} ({area:.1f} m²): it is graded into the ground as the other leaves it, so some earth is counted with both. The total is that of the finished ground.</source>
      <translation>{later} reicht in die Erdarbeiten von {earlier} hinein ({area:.1f} m²): Es wird in das Gelände gelegt, wie das andere es hinterlässt, sodass etwas Erde bei beiden zählt. Die Summe ist die des fertigen Geländes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{length:.1f} m of centreline {name} are outside the surface {surface} (stretches: {count}, the first from station {first} to {last}); nothing is said about them.</source>
      <translation>{length:.1f} m der Achse {name} liegen außerhalb der Oberfläche {surface} (Strecken: {count}, die erste von Station {first} bis {last}); darüber wird nichts gesagt.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>{lines} ({count} places)</source>
      <translation>{lines} ({count} Orte)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>{low} to {high} %</source>
      <translation>{low} bis {high} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{low} to {high} {unit}</source>
      <translation>{low} bis {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} is not determined by these control points ({names}): they lie together or on one line. Add one.</source>
      <translation>{model} ist durch diese Passpunkte ({names}) nicht bestimmt: Sie liegen beieinander oder auf einer Geraden. Fügen Sie einen hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} needs {needed} control points or more; {count} can be used: {names}.</source>
      <translation>{model} braucht {needed} oder mehr Passpunkte; {count} sind verwendbar: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>{name}   (heights {times} times)</source>
      <translation>{name}   (Höhen {times}-fach)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>{name} is {length} long, from station {begin} to {end}, seen in the way of rising stations.</source>
      <translation>{name} ist {length} lang, von Station {begin} bis {end}, in Richtung steigender Stationen gesehen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{name} is {value}: a runoff coefficient is above 0 and at most 1, an intensity is above 0. Correct it.</source>
      <translation>{name} ist {value}: Ein Abflussbeiwert liegt über 0 und ist höchstens 1, eine Niederschlagsintensität liegt über 0. Berichtigen Sie den Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/ponds.py" />
      <source>{name} is {value}: ponds need a standard deviation and a least depth of 0 m or more, and a chance between 0 and 1. Correct it.</source>
      <translation>{name} ist {value}: Tümpel brauchen eine Standardabweichung und eine kleinste Tiefe von 0 m oder mehr und eine Wahrscheinlichkeit zwischen 0 und 1. Berichtigen Sie den Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/level_ground.py" />
      <source>{name} is {value}: the slope limit and the window for flat areas must be finite and not negative. Correct it.</source>
      <translation>{name} ist {value}: Grenzneigung und Fenster für flache Flächen müssen endlich und nicht negativ sein. Berichtigen Sie den Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>{name} is {value}; give a number {least} or more, up to {most}.</source>
      <translation>{name} ist {value}; geben Sie eine Zahl von {least} oder mehr an, bis {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>{name} is {value}; it must be a number from 0 up. Correct it.</source>
      <translation>{name} ist {value}; es muss eine Zahl ab 0 sein. Berichtigen Sie den Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{name}: {said}</source>
      <translation>{name}: {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>{off}, at E {easting} N {northing}</source>
      <translation>{off}, bei E {easting} N {northing}</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/road.py" />
      <source>{option} is about a road, whose line is given with --line; give that too.</source>
      <translation>{option} betrifft eine Straße, deren Linie mit --line angegeben wird; geben Sie auch diese an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for grading; give the polygon with --pad too.</source>
      <translation>{option} gilt für die Geländeprofilierung; geben Sie mit --pad auch das Polygon an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for peak flows; give the intensity with --rain too.</source>
      <translation>{option} gilt für Spitzenabflüsse; geben Sie mit --rain auch die Niederschlagsintensität an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing.</source>
      <translation>{option} gilt für das Blatt, das mit --smooth erzeugt wird; geben Sie auch dies an, 0, um nichts zu glätten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>{option} is for volumes; say from or to what: --against, --since or --volume-level.</source>
      <translation>{option} gilt für Volumen; sagen Sie, von oder zu was: --against, --since oder --volume-level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for where the water runs; ask for that with --water too.</source>
      <translation>{option} betrifft, wohin das Wasser läuft; verlangen Sie dies mit --water auch.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number above zero, not {value}.</source>
      <translation>{option} muss eine Zahl über null sein, nicht {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number from zero up, not {value}.</source>
      <translation>{option} muss eine Zahl ab null sein, nicht {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number, not {value}.</source>
      <translation>{option} muss eine Zahl sein, nicht {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>{option} must be two numbers such as 500000,5700000, not '{value}'.</source>
      <translation>{option} muss aus zwei Zahlen bestehen, etwa 500000,5700000, nicht '{value}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{option} of the walking plan is {value}; give a number in its range.</source>
      <translation>{option} des Begehungsplans ist {value}; geben Sie eine Zahl im zulässigen Bereich an.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and fit again without it.</source>
      <translation>{part}: Der Passpunkt '{suspects}' passt nicht ({off_mm} mm neben dem Ort, den die anderen ergeben); prüfen Sie ihn und passen Sie ohne ihn erneut ein.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part}: Kein Passpunkt fällt auf; größte Restabweichung {largest_mm} mm, bei '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no redundancy; the fit is exact, and an error in a point would not show.</source>
      <translation>{part}: keine Redundanz; die Einpassung ist exakt, und ein Fehler in einem Punkt würde sich nicht zeigen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: one of these control points does not fit, and it cannot be told which: {suspects}.</source>
      <translation>{part}: Einer dieser Passpunkte passt nicht, und es lässt sich nicht sagen, welcher: {suspects}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points do not fit within the standard deviation given, and with so few it cannot be told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part}: Die Passpunkte passen nicht im Rahmen der angegebenen Standardabweichung, und bei so wenigen lässt sich nicht sagen, welcher falsch ist; größte Restabweichung {largest_mm} mm, bei '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points fit within the standard deviation given; were one wrong, it could not be told which.</source>
      <translation>{part}: Die Passpunkte passen im Rahmen der angegebenen Standardabweichung; wäre einer falsch, ließe sich nicht sagen, welcher.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or several points may be wrong.</source>
      <translation>{part}: Zusammen sind die Restabweichungen größer, als die angegebene Standardabweichung zulässt; sie ist vielleicht zu klein, oder mehrere Punkte sind falsch.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest {largest_mm} mm, at '{worst}'), and use more control points.</source>
      <translation>{part}: Mit diesen Passpunkten lässt sich nicht sagen, welcher nicht passt; beurteilen Sie die Restabweichungen (größte {largest_mm} mm, bei '{worst}') und verwenden Sie mehr Passpunkte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>{reason}, and more</source>
      <translation>{reason}, und weitere</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
      <source>{reason}; see --help.</source>
      <translation>{reason}; siehe --help.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) has no value: '{value}'</source>
      <translation>{role} (Spalte {column}) hat keinen Wert: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is empty</source>
      <translation>{role} (Spalte {column}) ist leer</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no angle in degrees: '{value}'</source>
      <translation>{role} (Spalte {column}) ist kein Winkel in Grad: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no finite number: '{value}'</source>
      <translation>{role} (Spalte {column}) ist keine endliche Zahl: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is not a number: '{value}'</source>
      <translation>{role} (Spalte {column}) ist keine Zahl: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is too large for a coordinate: '{value}'</source>
      <translation>{role} (Spalte {column}) ist zu groß für eine Koordinate: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m.</source>
      <translation>{share:.1f} % des Geländes ({area:.0f} m²) liegen in Dreiecken mit einer Kante über {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: row {row} was changed by hand but has no line of the survey file; import the points again, so that the decision can be kept.</source>
      <translation>{source}: Die Zeile {row} wurde von Hand geändert, hat aber keine Zeile der Vermessungsdatei; importieren Sie die Punkte erneut, damit die Entscheidung erhalten bleiben kann.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} has '{word}' in column {column}; use one of {words}.</source>
      <translation>{source}: Der Punkt der Zeile {line} hat '{word}' in der Spalte {column}; verwenden Sie eines von {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} was changed in two rows (the second is row {row}); keep one of them.</source>
      <translation>{source}: Der Punkt der Zeile {line} wurde in zwei Zeilen geändert (die zweite ist Zeile {row}); behalten Sie eine davon.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{stored} points from line {first} to {last} were stored in one place; the first now has their weighted mean, the others are kept out. Spread {plan:.3f} m in plan, {size:.3f} m in height.</source>
      <translation>{stored} Punkte von Zeile {first} bis {last} wurden an einem Ort gespeichert; der erste hat jetzt ihr gewichtetes Mittel, die anderen bleiben draußen. Streuung {plan:.3f} m in der Lage, {size:.3f} m in der Höhe.</translation>
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
      <translation>„{word}“ ist keine Spalte einer Absteckungstabelle; wählen Sie aus {known}.</translation>
    </message>
  </context>
  <context>
    <name>hummock</name>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>&amp;Unit of easting and northing:</source>
      <translation>&amp;Einheit von Ost- und Nordwert:</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>, and </source>
      <translation> und </translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>0 fits one grade to the whole line.</source>
      <translation>0 passt der ganzen Linie eine Längsneigung ein.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design, which is exact; for a second survey the noise of its points.</source>
      <translation>0 für eine Planung, die exakt ist; für eine zweite Vermessung das Rauschen ihrer Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design.</source>
      <translation>0 für eine Planung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 for level pads.</source>
      <translation>0 für ebene Plana.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for a level.</source>
      <translation>0 ist Norden, 90 Osten, 180 Süden, 270 Westen; ohne Bedeutung bei einem Niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for level pads.</source>
      <translation>0 ist Norden, 90 Osten, 180 Süden, 270 Westen; ohne Bedeutung bei ebenen Plana.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>0.02 is usual for a fixed solution on a pole that is walked.</source>
      <translation>0.02 ist üblich für eine fixierte Lösung an einem Stab, mit dem gegangen wird.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>0.5 m is 1 mm on paper at 1 : 500.</source>
      <translation>0.5 m sind 1 mm auf dem Papier bei 1 : 500.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>100 is 1 : 100. Long lines take several sheets.</source>
      <translation>100 ist 1 : 100. Lange Linien brauchen mehrere Blätter.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>1250 for 1+250.</source>
      <translation>1250 für 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>2DM meshes (*.2dm)</source>
      <translation>2DM-Meshes (*.2dm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>2DM meshes, such as the surface of rock; the layer's name is the material's.</source>
      <translation>2DM-Meshes, etwa die Felsoberfläche; der Name des Layers ist der des Materials.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;Circle {rank}&lt;/b&gt;&lt;br&gt;Nothing was measured within {radius} m of its middle.</source>
      <translation>&lt;b&gt;Kreis {rank}&lt;/b&gt;&lt;br&gt;Im Umkreis von {radius} m um seine Mitte wurde nichts gemessen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;Walk here again: nothing was measured within {radius} m.</source>
      <translation>&lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;Hier nochmals begehen: Im Umkreis von {radius} m wurde nichts gemessen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>&lt;p&gt;A projection changes lengths, and so does the height above the ellipsoid. The combined factor (grid distance over ground distance) is computed at the origin: projection scale factor times height factor. Distances from the origin are divided by it to get ground coordinates, and multiplied to get back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; one factor for the whole site; how much it varies over the site is told, and what that makes of a line of 100 m. A sample line is shown with both of its distances. Heights stay as they are. The mean height of the points is used for the height factor, plus the geoid separation if you give it.&lt;/p&gt;&lt;p&gt;Ground coordinates belong to no CRS: the layer has none. Add a shift so that nobody takes them for grid coordinates, and note origin, factor and shift: the way back needs the same ones.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without the geoid separation the height is wrong by it, which makes some 5 mm in a kilometre for 30 m. Ground coordinates need the origin about which they were made; with another one everything is shifted by the factor's share of the distance between the two.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Eine Projektion ändert Längen, ebenso die Höhe über dem Ellipsoid. Der Gesamtmaßstabsfaktor (Gitterstrecke durch Geländestrecke) wird am Ursprung berechnet: Maßstabsfaktor der Projektion mal Höhenfaktor. Abstände vom Ursprung werden durch ihn geteilt, um Geländekoordinaten zu erhalten, und mit ihm multipliziert für den Rückweg.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein Faktor für das ganze Gelände; angegeben wird, wie stark er über das Gelände schwankt und was das bei einer Linie von 100 m ausmacht. Eine Beispielstrecke wird mit ihren beiden Längen gezeigt. Höhen bleiben, wie sie sind. Für den Höhenfaktor dient die mittlere Höhe der Punkte, zuzüglich der Geoidundulation, wenn Sie sie angeben.&lt;/p&gt;&lt;p&gt;Geländekoordinaten gehören zu keinem KBS: Der Layer hat keines. Fügen Sie eine Verschiebung hinzu, damit niemand sie für Gitterkoordinaten hält, und notieren Sie Ursprung, Faktor und Verschiebung: Der Rückweg braucht dieselben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ohne die Geoidundulation ist die Höhe um diese falsch, was bei 30 m etwa 5 mm auf einen Kilometer ausmacht. Geländekoordinaten brauchen den Ursprung, um den sie gebildet wurden; mit einem anderen ist alles um den Anteil des Faktors am Abstand der beiden verschoben.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>&lt;p&gt;Asks the surface at each point and adds columns: &lt;b&gt;tin_height&lt;/b&gt;, the height on the surface in the unit of its CRS; &lt;b&gt;slope_pct&lt;/b&gt; and &lt;b&gt;slope_deg&lt;/b&gt;, the slope of the triangle; &lt;b&gt;aspect_deg&lt;/b&gt;, the way down in degrees clockwise from grid north; &lt;b&gt;triangle&lt;/b&gt;, its number. Points with heights of their own also get &lt;b&gt;over_tin&lt;/b&gt;: their height less the surface's, in the same unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Points in another CRS are asked at their place in the surface's CRS and stay as they are; their heights are taken to be in the surface's unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;On an edge&lt;/b&gt; the triangle of lower number answers. A level triangle has no aspect.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points off the surface get empty columns and are counted in the log. Between the survey's points the height is interpolated: it is no measurement.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Fragt die Oberfläche an jedem Punkt ab und fügt Spalten hinzu: &lt;b&gt;tin_height&lt;/b&gt;, die Höhe auf der Oberfläche in der Einheit ihres KBS; &lt;b&gt;slope_pct&lt;/b&gt; und &lt;b&gt;slope_deg&lt;/b&gt;, die Neigung des Dreiecks; &lt;b&gt;aspect_deg&lt;/b&gt;, die Richtung hangabwärts in Grad im Uhrzeigersinn von Gitternord; &lt;b&gt;triangle&lt;/b&gt;, seine Nummer. Punkte mit eigenen Höhen erhalten auch &lt;b&gt;over_tin&lt;/b&gt;: ihre Höhe minus die der Oberfläche, in derselben Einheit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Punkte in einem anderen KBS werden an ihrem Ort im KBS der Oberfläche abgefragt und bleiben, wie sie sind; ihre Höhen gelten als in der Einheit der Oberfläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Auf einer Kante&lt;/b&gt; antwortet das Dreieck mit der kleineren Nummer. Ein ebenes Dreieck hat keine Exposition.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Punkte neben der Oberfläche erhalten leere Spalten und werden im Protokoll gezählt. Zwischen den Punkten der Vermessung ist die Höhe interpoliert: Sie ist keine Messung.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>&lt;p&gt;Brings a survey in local or assumed coordinates into the CRS of known control points: in plan by a turn, a scale and two shifts (four parameters), in height by a shift or a tilted plane; or in space by seven parameters. The fit is by least squares.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the points of the survey carry the names of the control points that they were measured at, written alike. The coordinates of the survey layer are taken as they are in the unit you give, whatever CRS the layer says. Several measurements of one control point are averaged.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The residuals&lt;/b&gt; are fitted minus control, in millimetres. Redundancy numbers say how far an error in a point would show in its residual (0: not at all). A point that does not fit is named by a statistical test; fit again without it and see whether the rest agrees.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; two points in plan, or three in height with a plane, fit exactly and check nothing; with one point more an error shows but not whose it is. Control points on one line do not hold a plane. A scale far from 1 means a wrong unit, or ground distances against grid coordinates.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Bringt eine Vermessung in örtlichen oder angenommenen Koordinaten in das KBS bekannter Passpunkte: in der Lage durch eine Drehung, einen Maßstab und zwei Verschiebungen (vier Parameter), in der Höhe durch eine Verschiebung oder eine geneigte Ebene; oder im Raum durch sieben Parameter. Eingepasst wird nach kleinsten Quadraten.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt;, dass die Punkte der Vermessung die Namen der Passpunkte tragen, an denen sie gemessen wurden, gleich geschrieben. Die Koordinaten des Vermessungslayers gelten, wie sie sind, in der von Ihnen angegebenen Einheit, welches KBS der Layer auch nennt. Mehrere Messungen eines Passpunkts werden gemittelt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Die Restabweichungen&lt;/b&gt; sind eingepasst minus Passpunkt, in Millimetern. Redundanzanteile sagen, wie weit sich ein Fehler in einem Punkt in seiner Restabweichung zeigen würde (0: gar nicht). Ein Punkt, der nicht passt, wird durch einen statistischen Test benannt; passen Sie ohne ihn erneut ein und sehen Sie, ob der Rest übereinstimmt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Zwei Punkte in der Lage oder drei in der Höhe mit einer Ebene passen exakt und kontrollieren nichts; mit einem Punkt mehr zeigt sich ein Fehler, aber nicht, wessen. Passpunkte auf einer Geraden halten keine Ebene. Ein Maßstab weit von 1 bedeutet eine falsche Einheit oder Geländestrecken gegen Gitterkoordinaten.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>&lt;p&gt;Compares a surface with check points and says what that shows: bias, RMSE, the 95 % accuracy of the NSSDA (FGDC-STD-007.3-1998), and the vertical class of the ASPRS Positional Accuracy Standards, edition 2 (2023), with the check points' own error in it. Where there are fewer check points than a standard asks for, it says so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and check points that did not shape it: a point layer, or a CSV file with the columns name, easting, northing, height and, where known, sigma_h, sigma_v and cover, in the CRS of the surface and its units. With neither, the check shots among the survey's points are taken (rejected as check_shot): those are of the same receiver, so the result is an internal check and no test by a standard.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cover:&lt;/b&gt; words such as hard, bare, short grass count as non-vegetated; tall grass, crops, brush, forest as vegetated. The two are reported apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Plan:&lt;/b&gt; with the survey's points, marks of the same name in both tell the accuracy in plan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points from the same base station, pole or geoid share its errors and hide them. The sentences follow the standards in meaning; compare them with your copy before you sign. A licensed professional decides what may be stated for a contract.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Vergleicht eine Oberfläche mit Kontrollpunkten und sagt, was das zeigt: systematische Abweichung, RMSE, die 95-%-Genauigkeit des NSSDA (FGDC-STD-007.3-1998) und die Höhenklasse der ASPRS Positional Accuracy Standards, Ausgabe 2 (2023), mit dem eigenen Fehler der Kontrollpunkte darin. Wo es weniger Kontrollpunkte gibt, als ein Standard verlangt, wird es gesagt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und Kontrollpunkte, die es nicht geformt haben: ein Punktlayer oder eine CSV-Datei mit den Spalten name, easting, northing, height und, wo bekannt, sigma_h, sigma_v und cover, im KBS der Oberfläche und dessen Einheiten. Fehlt beides, dienen die Kontrollmessungen unter den Punkten der Vermessung (als check_shot verworfen): Diese stammen vom selben Empfänger, das Ergebnis ist also eine innere Kontrolle und keine Prüfung nach einem Standard.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Bewuchs:&lt;/b&gt; Wörter wie hard, bare, short grass zählen als unbewachsen; tall grass, crops, brush, forest als bewachsen. Beide werden getrennt ausgewiesen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lage:&lt;/b&gt; Mit den Punkten der Vermessung zeigen gleichnamige Marken in beiden die Lagegenauigkeit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Punkte mit derselben Basisstation, demselben Stab oder Geoid teilen deren Fehler und verbergen sie. Die Sätze folgen den Standards dem Sinn nach; vergleichen Sie sie mit Ihrem Exemplar, bevor Sie unterschreiben. Was für einen Vertrag ausgesagt werden darf, entscheidet eine zugelassene Fachperson.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>&lt;p&gt;Compares the grades and crossfalls along a line with a table of limits. A stretch passes or fails only when the whole interval in which its true slope lies with 95 % is on that side of the limit; else it is too close to tell, and more or better points are needed. The layer shows each rule as a band of its own beside the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS, such as a centreline or the middle of a walk. Crossfall is taken between two offsets; keep them inside kerbs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table of limits&lt;/b&gt; is a CSV file with the columns rule, quantity (grade, crossfall, crest_k, sag_k), at_least or at_most (1:20, 5% or 0.05; K in metres), window (m), applies, source, checked, note. Without one the table that comes with Hummock is used; each of its limits names the published source. Compare them with your copy, and with the code that applies where you build.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indications&lt;/b&gt;, none of them a proof: to which edge the crossfall leads water; low points along both edges where water stands, deeper than the noise; and with a table of speeds (columns speed and least_k, m/%), the speed that each fitted crest suits.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; of many windows near a limit a few are judged wrongly. What lies off the surface is not judged. Whether a road, walk or ramp complies is a matter of local codes and of licensed practice, not of this check.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Vergleicht die Längs- und Querneigungen entlang einer Linie mit einer Tabelle von Grenzwerten. Eine Strecke besteht oder besteht nicht nur dann, wenn das ganze Intervall, in dem ihre wahre Neigung mit 95 % liegt, auf dieser Seite des Grenzwerts liegt; sonst ist sie zu knapp, und es braucht mehr oder bessere Punkte. Der Layer zeigt jede Regel als eigenes Band neben der Linie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und eine Linie in seinem KBS, etwa eine Achse oder die Mitte eines Gehwegs. Die Querneigung wird zwischen zwei Abständen bestimmt; bleiben Sie mit ihnen innerhalb der Borde.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Die Tabelle der Grenzwerte&lt;/b&gt; ist eine CSV-Datei mit den Spalten rule, quantity (grade, crossfall, crest_k, sag_k), at_least oder at_most (1:20, 5% oder 0.05; K in Metern), window (m), applies, source, checked, note. Ohne eine wird die mit Hummock gelieferte Tabelle verwendet; jeder ihrer Grenzwerte nennt die veröffentlichte Quelle. Vergleichen Sie sie mit Ihrem Exemplar und mit dem Regelwerk, das an Ihrem Bauort gilt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hinweise&lt;/b&gt;, keiner davon ein Beweis: zu welchem Rand die Querneigung das Wasser führt; Tiefpunkte entlang beider Ränder, wo Wasser tiefer steht, als das Rauschen reicht; und mit einer Tabelle der Geschwindigkeiten (Spalten speed und least_k, m/%) die Geschwindigkeit, zu der jede eingepasste Kuppe passt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Von vielen Fenstern nahe einem Grenzwert werden einige falsch beurteilt. Was neben der Oberfläche liegt, wird nicht beurteilt. Ob eine Straße, ein Gehweg oder eine Rampe den Vorschriften entspricht, ist Sache der örtlichen Vorschriften und zugelassener Fachleute, nicht dieser Prüfung.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>&lt;p&gt;Computes cut, fill, net, areas and mean depths between two surfaces, or from a surface to a level, in each polygon of a layer: parcels, phases of work, materials on the ground. The polygons' edges cut the triangles exactly, so that the regions and what is outside add up to the whole; where polygons overlap, each counts the ground and the log names them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes in one CRS with one height datum. The polygons are brought into that CRS. &lt;b&gt;Materials:&lt;/b&gt; surfaces of the tops of layers below the ground, such as rock, from above to below; cut is then parted by them. Where a layer's surface is missing the material is “not known”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the polygons with their numbers (± columns are half of the 95 % interval), tables by quantity with the parts of the doubt, by depth class, by material, depth polygons of the whole, and a report. How sure the numbers are: see “Volume between two surfaces”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; intervals of regions do not add up: a height offset moves all of them together, noise does not. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Parcels drawn here are no legal boundaries. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Berechnet Abtrag, Auftrag, Differenz, Flächen und mittlere Tiefen zwischen zwei Oberflächen oder von einer Oberfläche zu einem Niveau, in jedem Polygon eines Layers: Flurstücke, Bauabschnitte, Materialien am Boden. Die Polygonränder schneiden die Dreiecke genau, sodass die Gebiete und das, was außerhalb liegt, das Ganze ergeben; wo Polygone sich überlappen, zählt jedes das Gelände, und das Protokoll nennt sie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; 2DM-Meshes in einem KBS mit einem Höhenbezug. Die Polygone werden in dieses KBS gebracht. &lt;b&gt;Materialien:&lt;/b&gt; Oberflächen der Oberkanten von Schichten unter dem Gelände, etwa Fels, von oben nach unten; der Abtrag wird dann nach ihnen geteilt. Wo die Oberfläche einer Schicht fehlt, ist das Material „nicht bekannt“.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ausgaben:&lt;/b&gt; die Polygone mit ihren Zahlen (±-Spalten sind die Hälfte des 95-%-Intervalls), Tabellen nach Größe mit den Anteilen der Unsicherheit, nach Tiefenklasse, nach Material, Tiefenpolygone des Ganzen und ein Bericht. Wie sicher die Zahlen sind: siehe „Volumen zwischen zwei Oberflächen“.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Intervalle von Gebieten addieren sich nicht: Ein Höhenversatz verschiebt sie alle gemeinsam, Rauschen nicht. Dies ist kein Abrechnungsnachweis: Der Vertrag, örtliche Vorschriften und zugelassene Fachleute sagen, was gemessen wird. Hier gezeichnete Flurstücke sind keine rechtlichen Grenzen. Orten Sie Leitungen im Boden, bevor jemand gräbt.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>&lt;p&gt;Computes the earth between an existing surface (or an earlier survey) and a design (or a later survey). Every triangle of the one is cut along those of the other, so that the volume is exact for the two surfaces: it depends on no cell size and no stations. &lt;b&gt;Cut&lt;/b&gt; is where the existing surface is above the design, &lt;b&gt;fill&lt;/b&gt; where it is below, both positive; net is fill less cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS and with one height datum. Only ground that both cover is compared, and only inside the polygons if a layer of them is given; what is left out is told in square metres. A level in place of the missing surface counts the rest as well.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; each volume comes with its 95 % interval and four standard deviations: random (noise of single points), drift (shared by neighbours), systematic (a height offset between the surfaces, times the area) and surface model (ground between the points). They rest on what you say of the points; the log and the report name it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tables:&lt;/b&gt; volumes with half_95, low_95 and high_95; random, drift, systematic and model are standard deviations, all in m³. &lt;b&gt;Polygons:&lt;/b&gt; kind, from_m and to_m (depth), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; an offset of 1 cm between two surveys is 100 m³ on a hectare: check a few points that did not move. Where nothing is deeper than the noise, cut and fill are both too large. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Berechnet die Erdmassen zwischen einer vorhandenen Oberfläche (oder einer früheren Vermessung) und einer Planung (oder einer späteren Vermessung). Jedes Dreieck der einen wird an denen der anderen geschnitten, sodass das Volumen für die beiden Oberflächen genau ist: Es hängt von keiner Zellgröße und keinen Stationen ab. &lt;b&gt;Abtrag&lt;/b&gt; ist, wo die vorhandene Oberfläche über der Planung liegt, &lt;b&gt;Auftrag&lt;/b&gt;, wo sie darunter liegt, beide positiv; die Differenz ist Auftrag minus Abtrag.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; zwei 2DM-Meshes in einem KBS und mit einem Höhenbezug. Verglichen wird nur Gelände, das beide bedecken, und nur innerhalb der Polygone, wenn ein Layer davon angegeben ist; was wegbleibt, wird in Quadratmetern angegeben. Ein Niveau anstelle der fehlenden Oberfläche zählt auch den Rest.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sicher:&lt;/b&gt; Jedes Volumen kommt mit seinem 95-%-Intervall und vier Standardabweichungen: zufällig (Rauschen einzelner Punkte), Drift (Nachbarn gemeinsam), systematisch (ein Höhenversatz zwischen den Oberflächen, mal die Fläche) und Oberflächenmodell (Gelände zwischen den Punkten). Sie beruhen auf dem, was Sie über die Punkte angeben; Protokoll und Bericht nennen es.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tabellen:&lt;/b&gt; Volumen mit half_95, low_95 und high_95; random, drift, systematic und model sind Standardabweichungen, alle in m³. &lt;b&gt;Polygone:&lt;/b&gt; kind, from_m und to_m (Tiefe), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ein Versatz von 1 cm zwischen zwei Vermessungen sind 100 m³ auf einem Hektar: Prüfen Sie einige Punkte, die sich nicht bewegt haben. Wo nichts tiefer ist als das Rauschen, sind Abtrag und Auftrag beide zu groß. Dies ist kein Abrechnungsnachweis: Der Vertrag, örtliche Vorschriften und zugelassene Fachleute sagen, was gemessen wird. Orten Sie Leitungen im Boden, bevor jemand gräbt.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>&lt;p&gt;Computes what must be cut (ground above) and filled (ground below) to make the surface one plane: a &lt;b&gt;level&lt;/b&gt;; a &lt;b&gt;sloping plane&lt;/b&gt;, given by its height at a place, how steeply it falls and which way; or the plane through &lt;b&gt;three points&lt;/b&gt;. Exact, triangle by triangle, without side slopes; for a pad with slopes to the ground see “Grade a pad”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Polygons limit the ground. Heights are in the unit of the CRS, the direction is an azimuth: degrees clockwise from grid north.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; see “Volume between two surfaces”; the plane itself is exact, and the height offset is that between the survey and the datum of the level.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a polygon the whole surface is levelled, rim and all. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Berechnet, was abzutragen (Gelände darüber) und aufzutragen (Gelände darunter) ist, um die Oberfläche zu einer Ebene zu machen: ein &lt;b&gt;Niveau&lt;/b&gt;; eine &lt;b&gt;geneigte Ebene&lt;/b&gt;, gegeben durch ihre Höhe an einem Ort, ihr Gefälle und dessen Richtung; oder die Ebene durch &lt;b&gt;drei Punkte&lt;/b&gt;. Genau, Dreieck für Dreieck, ohne Böschungen; für ein Planum mit Böschungen zum Gelände siehe „Planum anlegen“.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Polygone begrenzen das Gelände. Höhen sind in der Einheit des KBS, die Richtung ist ein Richtungswinkel: Grad im Uhrzeigersinn von Gitternord.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sicher:&lt;/b&gt; siehe „Volumen zwischen zwei Oberflächen“; die Ebene selbst ist exakt, und der Höhenversatz ist der zwischen der Vermessung und dem Höhenbezug des Niveaus.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ohne Polygon wird die ganze Oberfläche eingeebnet, samt Rand. Dies ist kein Abrechnungsnachweis: Der Vertrag, örtliche Vorschriften und zugelassene Fachleute sagen, was gemessen wird. Orten Sie Leitungen im Boden, bevor jemand gräbt.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>&lt;p&gt;Cuts a surface, and a second one if you like, at right angles to a line: at whole multiples of an interval, at stations you name, at the line's ends and at its vertices. At a vertex the section halves the angle. You get the sections as lines with heights, their points with offset (right positive) and height, the areas of cut and fill, and sheets in PDF at true scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them and one line, all in one CRS. Heights are those of the triangles, with a point wherever a section crosses an edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Areas:&lt;/b&gt; cut is where the second surface is below the first, fill where it is above; exact between the surfaces as they are. Their standard deviations follow from the noise of the heights. Where both surfaces are within the noise of each other, cut and fill both come out too large; fill less cut does not.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; in tight bends wide sections cross and ground beyond counts twice, which is said. A section partly off a surface has areas only over the width covered, which a column tells. Quantities for payment are a matter of the contract and of licensed practice. Locate buried services before any excavation.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Schneidet eine Oberfläche, auf Wunsch auch eine zweite, rechtwinklig zu einer Linie: bei ganzen Vielfachen eines Schritts, bei Stationen, die Sie nennen, an den Enden der Linie und an ihren Stützpunkten. An einem Stützpunkt halbiert das Querprofil den Winkel. Sie erhalten die Querprofile als Linien mit Höhen, ihre Punkte mit Abstand (rechts positiv) und Höhe, die Flächen von Abtrag und Auftrag und Blätter als PDF im wahren Maßstab.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; 2DM-Meshes, wie „Oberfläche bilden“ sie schreibt, und eine Linie, alle in einem KBS. Höhen sind die der Dreiecke, mit einem Punkt überall, wo ein Querprofil eine Kante kreuzt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Flächen:&lt;/b&gt; Abtrag ist, wo die zweite Oberfläche unter der ersten liegt, Auftrag, wo sie darüber liegt; genau zwischen den Oberflächen, wie sie sind. Ihre Standardabweichungen folgen aus dem Rauschen der Höhen. Wo beide Oberflächen innerhalb ihres Rauschens beieinander liegen, werden Abtrag und Auftrag beide zu groß; Auftrag minus Abtrag nicht.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; In engen Kurven kreuzen sich breite Querprofile, und Gelände dahinter zählt doppelt, was gesagt wird. Ein Querprofil, das teils neben einer Oberfläche liegt, hat Flächen nur über die bedeckte Breite, die eine Spalte nennt. Mengen für die Abrechnung sind Sache des Vertrags und zugelassener Fachleute. Orten Sie Leitungen im Boden vor jedem Aushub.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>&lt;p&gt;Divides a line into windows and gives for each the grade along it and the crossfall across it, with the standard deviation that the noise of the points makes. Both layers are coloured by class of slope, steeper darker and wider.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. A grade is positive where the surface rises with the stations, a crossfall where it rises to the right. A grade is the straight line that fits the heights in the window best. A crossfall is that of sections half a metre apart, from one offset to the other, which all have one slope in the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (from 0, the flattest, by the size of the slope), label. Twice the standard deviation is the doubt at 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; crossfall over a kerb or a ditch is no crossfall: keep the offsets in the lane. Drift tilts a crossfall and counts only if you give it. A window that the surface does not cover has no slope. For limits use “Check a line against limits”.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Teilt eine Linie in Fenster und gibt für jedes die Längsneigung und die Querneigung an, mit der Standardabweichung, die das Rauschen der Punkte bewirkt. Beide Layer sind nach Neigungsklasse eingefärbt, steiler dunkler und breiter.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und eine Linie in seinem KBS. Eine Längsneigung ist positiv, wo die Oberfläche mit den Stationen steigt, eine Querneigung, wo sie nach rechts steigt. Eine Längsneigung ist die Gerade, die am besten zu den Höhen im Fenster passt. Eine Querneigung ist die von Querprofilen in Abständen von einem halben Meter, von einem Abstand zum anderen, die im Fenster alle eine Neigung haben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (ab 0, der flachsten, nach dem Betrag der Neigung), label. Die doppelte Standardabweichung ist die Unsicherheit bei 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Eine Querneigung über einen Bord oder Graben hinweg ist keine: Bleiben Sie mit den Abständen in der Fahrbahn. Drift verkippt eine Querneigung und zählt nur, wenn Sie sie angeben. Ein Fenster, das die Oberfläche nicht bedeckt, hat keine Neigung. Für Grenzwerte verwenden Sie „Linie gegen Grenzwerte prüfen“.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>&lt;p&gt;Divides the surface along lines of steepest descent by where its water goes: to an inlet, a pond, an outlet on the rim where a channel leaves, or over the rest of the rim. The areas add up to that of the surface. With it come the channels and, between their grounds, the ridges.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Inlets are points or lines; for the catchments of points on a line give the line and the length of its stretches: each has its own catchment.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; name (the inlet's; P1, P2 … ponds by depth; O1, O2 … outlets and H1, H2 … pits by area), drains_to (inlet, pond, outlet, rim, pit), area_m2 in plan and share_pct of the surface, nowhere_m2 and nowhere_pct, the part of it whose water stays in a pond until that is full, and out_x and out_y, where it goes, in the CRS. Channels have area_m2, the ground that drains through their end.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; ground beyond the rim was not measured, so its water is missing. The catchments of a noisy survey are no finer than its points; the noise given keeps pits of noise from dividing them. An inlet takes all that comes near it: whether it can swallow that is not asked.&lt;/p&gt;&lt;p&gt;Catchments are no drainage design: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Teilt die Oberfläche entlang von Linien des steilsten Gefälles danach, wohin ihr Wasser fließt: in einen Einlauf, einen Tümpel, einen Auslauf am Rand, wo eine Rinne austritt, oder über den übrigen Rand. Die Flächen ergeben zusammen die der Oberfläche. Dazu kommen die Rinnen und, zwischen deren Gebieten, die Rücken.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Einläufe sind Punkte oder Linien; für die Einzugsgebiete von Punkten auf einer Linie geben Sie die Linie und die Länge ihrer Stücke an: Jedes hat sein eigenes Einzugsgebiet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; name (der des Einlaufs; P1, P2 … Tümpel nach Tiefe; O1, O2 … Ausläufe und H1, H2 … Tiefpunkte nach Fläche), drains_to (inlet, pond, outlet, rim, pit), area_m2 im Grundriss und share_pct der Oberfläche, nowhere_m2 und nowhere_pct, der Teil, dessen Wasser in einem Tümpel bleibt, bis dieser voll ist, und out_x und out_y, wohin es fließt, im KBS. Rinnen haben area_m2, das Gelände, das durch ihr Ende abläuft.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Gelände jenseits des Rands wurde nicht gemessen, sein Wasser fehlt also. Die Einzugsgebiete einer verrauschten Vermessung sind nicht feiner als ihre Punkte; das angegebene Rauschen verhindert, dass Tiefpunkte aus Rauschen sie teilen. Ein Einlauf nimmt alles auf, was in seine Nähe kommt: Ob er es schlucken kann, wird nicht gefragt.&lt;/p&gt;&lt;p&gt;Einzugsgebiete sind keine Entwässerungsplanung: Örtliche Vorschriften und zugelassene Fachleute entscheiden.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>&lt;p&gt;Does the same on two surfaces, such as the ground and a design, and says what differs: ponds that are new, gone, deeper or shallower, ground whose water goes elsewhere, and paths before and after from the same places.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS that cover much the same ground, and the same inlets on both. A pond is the same one where the pit of one lies under the water of the other. All places of the rim are taken for one, and so are all ponds, when it is asked whether water goes elsewhere.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; of ponds: change (new, gone, deeper, shallower, unchanged), before and after (their numbers on each surface), and the change in depth_m, area_m2 and volume_m3; of moved ground: from_what, to_what, area_m2; of paths: when (before, after) and those of “Paths of water”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where only one surface reaches, nothing is compared; a design that ends in the middle of the site has its rim there. Put the design into the ground first. The noise given holds for both surfaces: a design has none of its own.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design. Water turned onto a neighbour's ground is a legal matter in most places: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Macht dasselbe auf zwei Oberflächen, etwa dem Gelände und einer Planung, und sagt, was sich unterscheidet: Tümpel, die neu, weg, tiefer oder flacher sind, Gelände, dessen Wasser anderswohin fließt, und Wege vorher und nachher von denselben Orten.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; zwei 2DM-Meshes in einem KBS, die weitgehend dasselbe Gelände bedecken, und dieselben Einläufe auf beiden. Ein Tümpel ist derselbe, wo der Tiefpunkt des einen unter dem Wasser des anderen liegt. Alle Orte des Rands gelten als einer, ebenso alle Tümpel, wenn gefragt wird, ob Wasser anderswohin fließt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; bei Tümpeln: change (new, gone, deeper, shallower, unchanged), before und after (ihre Nummern auf jeder Oberfläche) und die Änderung in depth_m, area_m2 und volume_m3; bei Gelände, dessen Wasser anderswohin fließt: from_what, to_what, area_m2; bei Wegen: when (before, after) und die von „Wasserwege“.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Wohin nur eine Oberfläche reicht, wird nichts verglichen; eine Planung, die mitten im Gelände endet, hat dort ihren Rand. Bringen Sie die Planung zuerst in das Gelände ein. Das angegebene Rauschen gilt für beide Oberflächen: Eine Planung hat kein eigenes.&lt;/p&gt;&lt;p&gt;Dies ist ein Hinweis und keine Entwässerungsplanung. Wasser auf das Grundstück eines Nachbarn zu lenken ist vielerorts eine Rechtsfrage: Örtliche Vorschriften und zugelassene Fachleute entscheiden.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>&lt;p&gt;Draws contours as a plan shows them: noise calmed, corners rounded, labels that read uphill on the straight places of the lines, and spot heights at summits, pits and saddles.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and the scale at which the plan will be printed: labels keep their size on the ground, so that they fit at that scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Calming&lt;/b&gt; moves no height by more than the tolerance you state; vertices on breaklines and on the rim stay. &lt;b&gt;Smoothing&lt;/b&gt; moves no place of a line by more than the distance you state; lines never cross each other or a breakline, rings stay closed, and each survey point stays on its side. The log says how much of both was used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For half-foot contours&lt;/b&gt; choose interval 0.5, feet, and an index contour every 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; these lines are for drawing. Take numbers, volumes and hand-over from the surface, or from “Contours of a surface”. Labels for another scale are too large or too small: run it again for that scale. Short or crowded lines get no label.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Zeichnet Höhenlinien, wie ein Lageplan sie zeigt: Rauschen geglättet, Ecken gerundet, Beschriftungen, die hangaufwärts auf den geraden Stellen der Linien zu lesen sind, und Höhenpunkte an Kuppen, Tiefpunkten und Sätteln.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und der Maßstab, in dem der Lageplan gedruckt wird: Beschriftungen behalten ihre Größe im Gelände, sodass sie in diesem Maßstab passen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Das Beruhigen&lt;/b&gt; verschiebt keine Höhe um mehr als die angegebene Toleranz; Stützpunkte auf Bruchkanten und am Rand bleiben. &lt;b&gt;Das Glätten&lt;/b&gt; verschiebt keinen Ort einer Linie um mehr als den angegebenen Abstand; Linien kreuzen nie einander oder eine Bruchkante, Ringe bleiben geschlossen, und jeder Vermessungspunkt bleibt auf seiner Seite. Das Protokoll sagt, wie viel von beidem gebraucht wurde.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Für Höhenlinien alle halben Fuß&lt;/b&gt; wählen Sie die Äquidistanz 0.5, Fuß und jede 2. Linie als Zähllinie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Diese Linien sind zum Zeichnen. Entnehmen Sie Zahlen, Volumen und Übergabe der Oberfläche oder „Höhenlinien einer Oberfläche“. Beschriftungen für einen anderen Maßstab sind zu groß oder zu klein: Führen Sie es für diesen Maßstab erneut aus. Kurze oder gedrängte Linien erhalten keine Beschriftung.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>&lt;p&gt;Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. Interval and base are in the unit you choose, which need not be that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; level in the chosen unit and in metres, index (drawn heavier), depression (a ring with the lower ground inside) and closed. Each line also carries its level as height.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours finer than the points allow show noise, not ground: with heights good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not smoothed: their corners are where they cross the edges of triangles.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Zeichnet die Linien gleicher Höhe auf den Dreiecken einer Oberfläche, bei Basis + k × Äquidistanz für ganze k. Jede Linie ist so lang wie möglich: ein geschlossener Ring oder von Rand zu Rand. Das höhere Gelände liegt links der Linie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, mit Höhen in der Einheit seines KBS. Äquidistanz und Basis sind in der gewählten Einheit, die nicht die des KBS sein muss.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; level in der gewählten Einheit und in Metern, index (kräftiger gezeichnet), depression (ein Ring mit dem tieferen Gelände innen) und closed. Jede Linie trägt ihr Niveau auch als Höhe.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Höhenlinien, feiner als die Punkte es zulassen, zeigen Rauschen, nicht Gelände: Bei Höhen, die auf 15 mm gut sind, überlegen Sie sich eine Äquidistanz unter 5 cm zweimal. Flaches Gelände gibt zerfranste Linien. Höhenlinien werden nicht geglättet: Ihre Ecken liegen, wo sie die Kanten von Dreiecken kreuzen.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>&lt;p&gt;Draws the topographic plan of a surface: contours with labels, spot heights that do not touch each other, your lines and parcels, grid marks with coordinates, north arrow, scale bar, legend, and what a reader must know: CRS, height datum, accuracy, contour interval, date. Where the site does not fit on one sheet at the scale, several are made, with a key map on each.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You get&lt;/b&gt; a PDF with lines and text as vectors and its fonts inside, a GeoPackage with the layers and their styles, and a print layout in the project to change by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Title and author come from the project’s properties (Project › Properties › Metadata) where you leave them empty here. The height datum is that of a compound CRS; for another CRS say it, else the plan says that it is not stated.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Accuracy:&lt;/b&gt; with check points the plan carries the sentences of the accuracy statement; otherwise it says that the heights were not tested.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours on the plan are calmed and smoothed within the limits you state; take numbers from the surface. Layers with transparency or blending turn the map into an image in the PDF. A second run for the same files replaces the layers and the layout of the first; duplicate a layout that you want to keep. Parcels on a plan are no boundary survey, buried services are not shown, and a plan is not for setting out without independent checks: local codes and licensed practice decide who may sign it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Zeichnet den topographischen Lageplan einer Oberfläche: Höhenlinien mit Beschriftungen, Höhenpunkte, die sich nicht berühren, Ihre Linien und Flurstücke, Gitterkreuze mit Koordinaten, Nordpfeil, Maßstabsleiste, Legende und was ein Leser wissen muss: KBS, Höhenbezug, Genauigkeit, Äquidistanz, Datum. Passt das Gelände im Maßstab nicht auf ein Blatt, entstehen mehrere, jedes mit einer Übersichtskarte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sie erhalten&lt;/b&gt; ein PDF mit Linien und Text als Vektoren und eingebetteten Schriften, ein GeoPackage mit den Layern und ihren Stilen und ein Drucklayout im Projekt zum Ändern von Hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Titel und Autor kommen aus den Projekteigenschaften (Projekt › Eigenschaften › Metadaten), wo Sie sie hier leer lassen. Der Höhenbezug ist der eines zusammengesetzten KBS; für ein anderes KBS geben Sie ihn an, sonst sagt der Lageplan, dass er nicht angegeben ist.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Genauigkeit:&lt;/b&gt; Mit Kontrollpunkten trägt der Lageplan die Sätze der Genauigkeitsaussage; sonst sagt er, dass die Höhen nicht geprüft wurden.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Höhenlinien auf dem Lageplan sind innerhalb der angegebenen Grenzen beruhigt und geglättet; entnehmen Sie Zahlen der Oberfläche. Layer mit Transparenz oder Mischmodus machen die Karte im PDF zum Bild. Ein zweiter Lauf für dieselben Dateien ersetzt die Layer und das Layout des ersten; duplizieren Sie ein Layout, das Sie behalten wollen. Flurstücke auf einem Lageplan sind keine Grenzvermessung, Leitungen im Boden sind nicht dargestellt, und ein Lageplan dient nicht zur Absteckung ohne unabhängige Kontrollen: Örtliche Vorschriften und zugelassene Fachleute entscheiden, wer ihn unterschreiben darf.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>&lt;p&gt;Fills every hollow of the surface to its brim and says which of them count: a hollow that the noise of the heights explains is no pond. Ponds that join as they rise are parts of a larger one.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, heights with independent normal errors of the standard deviation given, and ground that lets no water in. Water leaves over the rim of the surface and through inlets.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; pond (P1 is the deepest) and parent, the pond it is a part of; depth_m at the pit with sigma_m, its standard deviation from those of pit and spill point; chance_pct, the probability that noise alone makes such a hollow anywhere in the survey; area_m2 and volume_m3, exact on the triangles; level, the height of the full pond in the unit of the CRS; points, how many of the survey are under water; spills_to, a pond, an inlet or the rim.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; errors that neighbours share, as from one bad fix over a minute, make wider hollows than this allows for: set a least depth. At the rim of a survey a pond can run out over ground that nobody measured. Gullies and soakaways drain ponds only when they are given.&lt;/p&gt;&lt;p&gt;Ponds are an indication from the surface as surveyed, no drainage design: infiltration, pipes and local codes are matters of licensed practice.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Füllt jede Mulde der Oberfläche bis zum Rand und sagt, welche davon zählen: Eine Mulde, die das Rauschen der Höhen erklärt, ist kein Tümpel. Tümpel, die sich beim Steigen vereinigen, sind Teile eines größeren.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, Höhen mit unabhängigen normalverteilten Fehlern der angegebenen Standardabweichung und Gelände, das kein Wasser aufnimmt. Wasser läuft über den Rand der Oberfläche und durch Einläufe ab.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; pond (P1 ist der tiefste) und parent, der Tümpel, zu dem er gehört; depth_m am Tiefpunkt mit sigma_m, der Standardabweichung aus denen von Tiefpunkt und Überlaufpunkt; chance_pct, die Wahrscheinlichkeit, dass allein Rauschen irgendwo in der Vermessung eine solche Mulde erzeugt; area_m2 und volume_m3, genau auf den Dreiecken; level, die Höhe des vollen Tümpels in der Einheit des KBS; points, wie viele der Vermessung unter Wasser liegen; spills_to, ein Tümpel, ein Einlauf oder der Rand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Fehler, die Nachbarn gemeinsam haben, etwa aus einer schlechten Lösung über eine Minute, erzeugen weitere Mulden, als hier berücksichtigt ist: Setzen Sie eine kleinste Tiefe. Am Rand einer Vermessung kann ein Tümpel über Gelände auslaufen, das niemand gemessen hat. Straßenabläufe und Sickerschächte entwässern Tümpel nur, wenn sie angegeben sind.&lt;/p&gt;&lt;p&gt;Tümpel sind ein Hinweis aus der Oberfläche wie vermessen, keine Entwässerungsplanung: Versickerung, Rohre und örtliche Vorschriften sind Sache zugelassener Fachleute.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>&lt;p&gt;Finds the height at which cut, times the fill that one cubic metre of it makes, equals fill and a stated surplus: the level of a pad, one shift of several pads, or the shift of a strip's whole profile. Slopes are graded anew at each height. Give pads &lt;i&gt;or&lt;/i&gt; a centreline.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Result:&lt;/b&gt; the height with its 95 % interval, volumes there, and a table and figure of cut, fill and what is left over against height: flat curves mean that a little height moves much earth, and the other way round. To make the design itself use “Grade a pad” or “Grade a strip along a line” with the balance switched on.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what those assume. The interval comes from the doubt of the volumes; the factor from cut to fill is taken as given, though it is often the less certain of the two.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where no height balances, as with a surplus larger than there is earth, it says so. Where slopes run over a brow the volume jumps; what is left over is told. Quantities for payment, slopes that stand and safety need the contract, licensed practice and the local codes.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Findet die Höhe, bei der Abtrag mal dem Auftrag, den ein Kubikmeter davon ergibt, gleich Auftrag und einem angegebenen Überschuss ist: die Höhe eines Planums, eine gemeinsame Verschiebung mehrerer Plana oder die Verschiebung des ganzen Längsprofils eines Streifens. Böschungen werden bei jeder Höhe neu angelegt. Geben Sie Plana &lt;i&gt;oder&lt;/i&gt; eine Achse an.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ergebnis:&lt;/b&gt; die Höhe mit ihrem 95-%-Intervall, die Volumen dabei und eine Tabelle und Abbildung von Abtrag, Auftrag und Überschuss über der Höhe: Flache Kurven bedeuten, dass wenig Höhe viel Erde bewegt, und umgekehrt. Um die Planung selbst zu erzeugen, verwenden Sie „Planum anlegen“ oder „Streifen entlang einer Linie anlegen“ mit eingeschaltetem Ausgleich.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt;, was jene voraussetzen. Das Intervall kommt aus der Unsicherheit der Volumen; der Faktor von Abtrag zu Auftrag gilt wie angegeben, obwohl er oft der unsicherere von beiden ist.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Wo keine Höhe ausgleicht, etwa bei einem Überschuss, der größer ist als die vorhandene Erde, wird es gesagt. Wo Böschungen über eine Geländekante laufen, springt das Volumen; was übrig bleibt, wird angegeben. Mengen für die Abrechnung, standfeste Böschungen und Sicherheit brauchen den Vertrag, zugelassene Fachleute und die örtlichen Vorschriften.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>&lt;p&gt;Finds the pit of a basin and the lowest place where water leaves it, and computes area and volume of the water at even levels between them, exactly. Pits inside join as the water rises.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it that takes in the basin's whole rim. A void in the surface, and its edge, let water out. Without a place the basin is that of the lowest place of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the curve as a table (level in the unit of the CRS, the rest metric), the water at the spill level by depth, pit and spill as points, and a report with the curve.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points, ground between them, and the noise of the one height at which the basin spills, which counts over the whole water.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a wrong point on the rim sets the spill: look at it. This is the shape of the ground only, without inflow, outlets, seepage or freeboard; a licensed engineer designs storage.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Findet den Tiefpunkt eines Beckens und die niedrigste Stelle, an der Wasser es verlässt, und berechnet Fläche und Volumen des Wassers bei gleichmäßigen Pegeln dazwischen, genau. Tiefpunkte darin vereinigen sich, wenn das Wasser steigt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, das den ganzen Rand des Beckens umfasst. Eine Aussparung in der Oberfläche und ihr Rand lassen Wasser hinaus. Ohne einen Ort ist das Becken das der tiefsten Stelle der Oberfläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ausgaben:&lt;/b&gt; die Kurve als Tabelle (level in der Einheit des KBS, das übrige metrisch), das Wasser bei Überlaufhöhe nach Tiefe, Tiefpunkt und Überlauf als Punkte und ein Bericht mit der Kurve.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sicher:&lt;/b&gt; Rauschen der Punkte, Gelände zwischen ihnen und das Rauschen der einen Höhe, bei der das Becken überläuft; es zählt über das ganze Wasser.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ein falscher Punkt am Rand bestimmt den Überlauf: Sehen Sie ihn sich an. Dies ist nur die Form des Geländes, ohne Zufluss, Ausläufe, Versickerung oder Freibord; Speicher bemisst ein zugelassener Ingenieur.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>&lt;p&gt;Fits straight grades joined by parabolas to the heights along a line: where they begin and end, where two grades meet, and K, the length of curve for each percent that the grade changes. Grades, K and the heights that depart from the fit come with their standard deviations or residuals.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. Heights are taken at equal distances; those far off, at a cover or a kerb crossed, count little. As many curves are used as the heights are worth by the Bayesian information criterion.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Layers:&lt;/b&gt; grades and curves along the line; the points where grades meet, at the height where they do, which is not on the ground; and the residuals, surface less fit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; take about the distance of the survey's points for the spacing of heights: closer ones repeat the same points, and standard deviations come out too small. A short curve between points far apart cannot be told from a kink. This describes what is there; a design is the work of a licensed professional.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Passt den Höhen entlang einer Linie gerade Längsneigungen ein, durch Parabeln verbunden: wo sie beginnen und enden, wo zwei Längsneigungen sich treffen, und K, die Länge der Ausrundung je Prozent Neigungswechsel. Längsneigungen, K und die Höhen, die von der Einpassung abweichen, kommen mit ihren Standardabweichungen oder Restabweichungen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und eine Linie in seinem KBS. Höhen werden in gleichen Abständen genommen; weit abliegende, an einem Schachtdeckel oder einem gekreuzten Bord, zählen wenig. Es werden so viele Ausrundungen verwendet, wie die Höhen nach dem Bayes’schen Informationskriterium rechtfertigen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Layer:&lt;/b&gt; Längsneigungen und Ausrundungen entlang der Linie; die Punkte, wo Längsneigungen sich treffen, auf der Höhe dieses Schnitts, die nicht im Gelände liegt; und die Restabweichungen, Oberfläche minus Einpassung.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Nehmen Sie als Abstand der Höhen etwa den der Vermessungspunkte: Engere wiederholen dieselben Punkte, und Standardabweichungen werden zu klein. Eine kurze Ausrundung zwischen weit entfernten Punkten ist von einem Knick nicht zu unterscheiden. Dies beschreibt, was da ist; eine Planung ist die Arbeit einer zugelassenen Fachperson.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>&lt;p&gt;Follows water from places down the surface itself: across each triangle the steepest way, along a channel where two triangles fall into their edge, to a pit, an inlet or the rim. Level ground drains by the shortest way along its edges to where it goes down.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Paths start at points, along lines and inside areas at the spacing given, or all over the surface where no layer is. In another CRS they are brought into that of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; feature (of the starts), end (pit, pond, rim, inlet, or undecided where heights are equal to rounding), ends_in (the pond or inlet), length_m in plan, drop_m, and slope_pct, the mean of the path.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; noise makes pits: with its standard deviation given, paths pass hollows that noise explains, straight from the pit over the brim. Ponds are numbered from the deepest, P1, as in “Pits and ponds” with the same settings. What is not measured, such as a kerb between two passes or a pipe under a road, leads no water here.&lt;/p&gt;&lt;p&gt;Paths show where water runs on the surface as surveyed. They are no drainage design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Verfolgt Wasser von Orten aus auf der Oberfläche selbst hinab: über jedes Dreieck auf dem steilsten Weg, entlang einer Rinne, wo zwei Dreiecke zu ihrer Kante fallen, bis zu einem Tiefpunkt, einem Einlauf oder dem Rand. Ebenes Gelände entwässert auf dem kürzesten Weg entlang seiner Kanten dorthin, wo es abwärts geht.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Wege beginnen an Punkten, entlang von Linien und in Flächen im angegebenen Abstand oder, ohne Layer, auf der ganzen Oberfläche. In einem anderen KBS werden sie in das der Oberfläche gebracht.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; feature (der Starts), end (pit, pond, rim, inlet oder undecided, wo Höhen bis auf Rundung gleich sind), ends_in (der Tümpel oder Einlauf), length_m im Grundriss, drop_m und slope_pct, das Mittel des Wegs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Rauschen erzeugt Tiefpunkte: Mit angegebener Standardabweichung überqueren Wege Mulden, die Rauschen erklärt, gerade vom Tiefpunkt über den Muldenrand. Tümpel sind ab dem tiefsten, P1, nummeriert wie in „Tiefpunkte und Tümpel“ mit denselben Einstellungen. Was nicht gemessen ist, etwa ein Bord zwischen zwei Bahnen oder ein Rohr unter einer Straße, führt hier kein Wasser.&lt;/p&gt;&lt;p&gt;Wege zeigen, wo Wasser auf der Oberfläche wie vermessen läuft. Sie sind keine Entwässerungsplanung.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>&lt;p&gt;Given an area and what you want of the survey, a contour interval or a height error, it proposes how far apart to walk, draws the lines in walking order, and tells the number of points, distance and time.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a rover that stores a point by itself at the step given. The height error between passes is reasoned from the noise of one height and from how the ground bends; no standard says it. A contour interval asks for an RMSE of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lines:&lt;/b&gt; the perimeter first, then passes to and fro, then a few passes across: where those cross the others, the survey tells its own noise. Columns: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. To take them along save the layer as GPX or for your data collector (Export &gt; Save Features As).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; kerbs, ditches and banks narrower than two passes are missed: walk their edges as coded lines. The plan knows no fences, water, traffic or cattle. Links lead along the outline, but between parts of an area that do not touch they are straight.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Für eine Fläche und was Sie von der Vermessung wollen, eine Äquidistanz oder einen Höhenfehler, schlägt es vor, in welchen Abständen zu gehen ist, zeichnet die Linien in der Reihenfolge der Begehung und nennt Anzahl der Punkte, Strecke und Zeit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein Rover, der im angegebenen Schritt selbsttätig einen Punkt speichert. Der Höhenfehler zwischen Bahnen ist aus dem Rauschen einer Höhe und der Krümmung des Geländes hergeleitet; kein Standard nennt ihn. Eine Äquidistanz verlangt einen RMSE von einem Drittel davon (ASPRS Positional Accuracy Standards, 2014, Anhang B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Linien:&lt;/b&gt; zuerst der Umfang, dann Bahnen hin und her, dann einige Bahnen quer: Wo diese die anderen kreuzen, zeigt die Vermessung ihr eigenes Rauschen. Spalten: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. Um sie mitzunehmen, speichern Sie den Layer als GPX oder für Ihr Feldgerät (Export &gt; Objekte speichern als).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Borde, Gräben und Böschungen, die schmaler sind als zwei Bahnen, werden verfehlt: Gehen Sie ihre Kanten als codierte Linien ab. Der Plan kennt keine Zäune, kein Wasser, keinen Verkehr und kein Vieh. Verbindungen führen am Umriss entlang, zwischen Teilen einer Fläche, die sich nicht berühren, aber gerade.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>&lt;p&gt;Gives every point a &lt;b&gt;status&lt;/b&gt;: used, flagged (used, but look at it) or rejected (kept out of the surface), with every &lt;b&gt;reason&lt;/b&gt;. Nothing is deleted. The map tip of a point tells its reasons.&lt;/p&gt;&lt;p&gt;Single points are held to a &lt;b&gt;tolerance set&lt;/b&gt;: fixes, standard deviations, tilt, PDOP, age of the correction, observations. Heights are held against the walk, the passes beside it, places walked twice and coded lines: a pole lifted, dropped or of another height, a fix regained wrongly, points stored while standing still (one point with their mean stays), lines stored twice. How much noise is usual is found in the survey itself. Steps that several passes saw at one line are ground: kerbs, walls, ditches.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You decide:&lt;/b&gt; change the field status of a point in the output, and run this on that output again, or build the surface from it. Your decision stays: check_status and check_reason keep what the checks said, and the log reports where you overruled them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; points in the order of recording, such as the output of “Import survey points”, in a projected CRS. Statuses that points bring along without check_status count as decisions by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How heights repeat:&lt;/b&gt; where passes cross or run side by side, the log gives the standard deviation of a height found there, with its degrees of freedom, and what the receiver claims.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what no other pass and no line has seen can be a fault or a form of the ground: such points are flagged. Errors shared by the whole survey (base station, geoid, pole height) cannot show here: use check points. The tolerances are common practice, no standard.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Gibt jedem Punkt einen &lt;b&gt;Status&lt;/b&gt;: used (verwendet), flagged (markiert: verwendet, aber anzusehen) oder rejected (verworfen: nicht in der Oberfläche), mit jedem &lt;b&gt;Grund&lt;/b&gt;. Nichts wird gelöscht. Der Kartentipp eines Punkts nennt seine Gründe.&lt;/p&gt;&lt;p&gt;Einzelne Punkte werden an einem &lt;b&gt;Toleranzsatz&lt;/b&gt; gemessen: Lösungen, Standardabweichungen, Neigung des Stabs, PDOP, Alter der Korrektur, Beobachtungen. Höhen werden mit dem Weg, den Nachbarbahnen, zweimal begangenen Orten und codierten Linien verglichen: ein angehobener, abgesenkter oder verschieden hoher Stab, eine falsch wiedergewonnene Lösung, im Stillstand gespeicherte Punkte (ein Punkt mit ihrem Mittel bleibt), doppelt gespeicherte Linien. Wie viel Rauschen üblich ist, wird in der Vermessung selbst gefunden. Stufen, die mehrere Bahnen an einer Linie sahen, sind Gelände: Borde, Mauern, Gräben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sie entscheiden:&lt;/b&gt; Ändern Sie das Feld status eines Punkts in der Ausgabe und führen Sie dies mit dieser Ausgabe erneut aus, oder bilden Sie die Oberfläche daraus. Ihre Entscheidung bleibt: check_status und check_reason behalten, was die Prüfungen sagten, und das Protokoll berichtet, wo Sie sie überstimmt haben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; Punkte in der Reihenfolge der Aufzeichnung, etwa die Ausgabe von „Vermessungspunkte importieren“, in einem projizierten KBS. Status, die Punkte ohne check_status mitbringen, zählen als Entscheidungen von Hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sich Höhen wiederholen:&lt;/b&gt; Wo Bahnen sich kreuzen oder nebeneinander verlaufen, nennt das Protokoll die dort gefundene Standardabweichung einer Höhe, mit ihren Freiheitsgraden, und was der Empfänger angibt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Was keine andere Bahn und keine Linie gesehen hat, kann ein Fehler oder eine Geländeform sein: Solche Punkte werden markiert. Fehler, die die ganze Vermessung gemeinsam hat (Basisstation, Geoid, Stabhöhe), können sich hier nicht zeigen: Verwenden Sie Kontrollpunkte. Die Toleranzen sind gängige Praxis, kein Standard.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>&lt;p&gt;Grades each polygon to a level or a sloping plane, and from its edges slopes of cut up and slopes of fill down until they meet the ground (daylight). The result is an exact surface: the design, and the finished ground with it in.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Levels are heights in the unit of the CRS, at the middle of a pad's bounding box; slopes are 1 up or down in n out, square to the edge. Holes keep their ground but for the slopes into them. Several pads are graded one after another; where one reaches into another, that is said.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Slopes of single edges:&lt;/b&gt; lines along them, with the fields cut_run and fill_run. They can differ where edges meet at a corner sharp enough for the slopes to meet, on outlines whose slopes do not run back across the pad; else they are refused.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance:&lt;/b&gt; the height at which cut, times the fill one cubic metre of it makes, equals fill and a stated surplus, to a tenth of a millimetre, and how sure it is. For several pads: one shift of all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; volumes come with their 95 % interval from what you say of the points; see “Volume between two surfaces”. The page compares them with a grid, average end areas and the prismoidal formula.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where the survey ends before the slopes meet the ground it says so, and volumes stop there. This is no design for construction: whether slopes stand, drainage, walls, and safety while digging need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Legt jedes Polygon als Niveau oder geneigte Ebene an und von seinen Kanten Abtragsböschungen aufwärts und Auftragsböschungen abwärts, bis sie das Gelände treffen (Böschungsschnittlinie). Das Ergebnis ist eine genaue Oberfläche: die Planung und das fertige Gelände mit ihr darin.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Niveaus sind Höhen in der Einheit des KBS, in der Mitte des umgebenden Rechtecks eines Planums; Böschungen sind 1 auf- oder abwärts zu n nach außen, rechtwinklig zur Kante. Löcher behalten ihr Gelände bis auf die Böschungen hinein. Mehrere Plana werden nacheinander angelegt; wo eines in ein anderes reicht, wird es gesagt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Böschungen einzelner Kanten:&lt;/b&gt; Linien entlang von ihnen, mit den Feldern cut_run und fill_run. Sie dürfen sich unterscheiden, wo Kanten in einer Ecke zusammentreffen, die spitz genug ist, dass die Böschungen sich treffen, an Umrissen, deren Böschungen nicht über das Planum zurücklaufen; sonst werden sie abgelehnt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ausgleich:&lt;/b&gt; die Höhe, bei der Abtrag mal dem Auftrag, den ein Kubikmeter davon ergibt, gleich Auftrag und einem angegebenen Überschuss ist, auf ein Zehntel Millimeter, und wie sicher sie ist. Bei mehreren Plana: eine Verschiebung für alle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sicher:&lt;/b&gt; Volumen kommen mit ihrem 95-%-Intervall aus dem, was Sie über die Punkte angeben; siehe „Volumen zwischen zwei Oberflächen“. Die Seite vergleicht sie mit einem Raster, der Querprofilmethode (gemittelte Endflächen) und der Prismatoidformel.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Wo die Vermessung endet, bevor die Böschungen das Gelände treffen, wird es gesagt, und Volumen enden dort. Dies ist keine Ausführungsplanung: Ob Böschungen stehen, Entwässerung, Mauern und die Sicherheit beim Aushub brauchen zugelassene Fachleute und die örtlichen Vorschriften. Orten Sie Leitungen im Boden, bevor jemand gräbt.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>&lt;p&gt;Joins the triangles whose slope is below a limit to areas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The slope is that of the mean gradient, by area, of the triangles within the window around each one. The limit is yours: local codes and the kind of paving decide what is too flat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; number (1 is the largest), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles of a survey with points every half metre are as steep as its noise, some percent: with a window of 0 flat ground goes unseen. A wide window averages a ridge or a channel to level ground.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Verbindet die Dreiecke, deren Neigung unter einem Grenzwert liegt, zu Flächen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Die Neigung ist die des flächengewichteten mittleren Gradienten der Dreiecke im Fenster um jedes einzelne. Der Grenzwert ist Ihrer: Örtliche Vorschriften und die Art des Belags entscheiden, was zu flach ist.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; number (1 ist die größte), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Einzelne Dreiecke einer Vermessung mit Punkten alle halben Meter sind so steil wie ihr Rauschen, einige Prozent: Mit einem Fenster von 0 bleibt flaches Gelände unbemerkt. Ein weites Fenster mittelt einen Rücken oder eine Rinne zu ebenem Gelände.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>&lt;p&gt;Lays a typical section along a line: lanes and shoulders with their crossfalls, ditches where the ground is above, and slopes to daylight. Heights of the centreline come from the Z of the line or from a table of stations and heights, with vertical curves (parabolas) where the table gives their length.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Tables are in metres. Between stations the strip is straight; bends are made of chords, so set a short distance of stations there. Both sides have the same slopes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Mass diagram:&lt;/b&gt; exact cut and fill from station to station, usable cut less fill summed along the line, and how far earth is hauled between places where they balance: in the layer and on the page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance&lt;/b&gt; shifts the whole profile. &lt;b&gt;How sure&lt;/b&gt; the volumes are rests on what you say of the points; the page compares them with average end areas and the prismoidal formula along the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a bend tighter than the strip is wide there folds it over, which is refused. Ends without slopes stand as steep faces. This is no design for construction: alignment, sight, drainage, slopes that stand and traffic need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Legt einen Regelquerschnitt entlang einer Linie: Fahrstreifen und Bankette mit ihren Querneigungen, Gräben, wo das Gelände höher liegt, und Böschungen bis zum Gelände. Höhen der Achse kommen aus dem Z der Linie oder aus einer Tabelle von Stationen und Höhen, mit Ausrundungen (Parabeln), wo die Tabelle deren Länge angibt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Tabellen sind in Metern. Zwischen Stationen ist der Streifen gerade; Kurven bestehen aus Sehnen, setzen Sie dort also einen kurzen Abstand der Stationen. Beide Seiten haben dieselben Böschungen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Massenlinie:&lt;/b&gt; genauer Abtrag und Auftrag von Station zu Station, brauchbarer Abtrag minus Auftrag entlang der Linie summiert, und wie weit Erde zwischen Stellen des Ausgleichs transportiert wird: im Layer und auf der Seite.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Der Ausgleich&lt;/b&gt; verschiebt das ganze Längsprofil. &lt;b&gt;Wie sicher&lt;/b&gt; die Volumen sind, beruht auf dem, was Sie über die Punkte angeben; die Seite vergleicht sie mit der Querprofilmethode (gemittelte Endflächen) und der Prismatoidformel entlang der Linie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Eine Kurve, die enger ist, als der Streifen dort breit ist, faltet ihn, was abgelehnt wird. Enden ohne Böschung stehen als steile Wände. Dies ist keine Ausführungsplanung: Linienführung, Sicht, Entwässerung, standfeste Böschungen und Verkehr brauchen zugelassene Fachleute und die örtlichen Vorschriften. Orten Sie Leitungen im Boden, bevor jemand gräbt.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>&lt;p&gt;Lays lines on a surface. They keep their place and their vertices in plan and get a new vertex wherever they cross an edge of a triangle: heights are those of the surface all along the line, not only at its vertices.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Lines in another CRS are brought into the surface's; curves become chords. Heights that the lines have are not used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; part, the number of the piece of its line; start_m, its distance from the line's beginning, and plan_m and slope_m, its length in plan and on the ground, in metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what lies off the surface, over voids too, is left out: the line falls into several pieces. Each gap is a row of the second output. A line all off the surface gives none.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Legt Linien auf eine Oberfläche. Sie behalten Ort und Stützpunkte im Grundriss und erhalten überall dort einen neuen Stützpunkt, wo sie die Kante eines Dreiecks kreuzen: Höhen sind entlang der ganzen Linie die der Oberfläche, nicht nur an ihren Stützpunkten.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Linien in einem anderen KBS werden in das der Oberfläche gebracht; Bögen werden Sehnen. Höhen, die die Linien haben, werden nicht verwendet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hinzugefügte Spalten:&lt;/b&gt; part, die Nummer des Stücks seiner Linie; start_m, sein Abstand vom Linienanfang, und plan_m und slope_m, seine Länge im Grundriss und im Gelände, in Metern.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Was neben der Oberfläche liegt, auch über Aussparungen, bleibt weg: Die Linie zerfällt in mehrere Stücke. Jede Lücke ist eine Zeile der zweiten Ausgabe. Eine Linie ganz neben der Oberfläche ergibt keines.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>&lt;p&gt;Looks a surface over and marks each place that a surveyor would ask about: &lt;b&gt;level spots&lt;/b&gt;, whose corners all lie on one level line; &lt;b&gt;gaps&lt;/b&gt; in breaklines that triangles bridge; &lt;b&gt;long triangles&lt;/b&gt;, over ground that nobody walked; &lt;b&gt;spikes&lt;/b&gt;, points far above or below their neighbours; &lt;b&gt;points beside a line&lt;/b&gt; at another height than its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Give the survey's points, and the “Lines of the surface” with their labels, too: gaps are only found among lines, and file lines are only named for points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; kind, value and unit (an area, a width, a length or a height), text, and lines, the lines of the survey file behind the place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a finding is a question, no verdict: a wall is a spike to this search. A surface without findings can still be wrong, where nothing was measured or all of it is off. The limits are our own choice for points stored every half metre; no standard sets them.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Durchsieht eine Oberfläche und markiert jede Stelle, nach der ein Vermesser fragen würde: &lt;b&gt;ebene Stellen&lt;/b&gt;, deren Ecken alle auf einer Linie gleicher Höhe liegen; &lt;b&gt;Lücken&lt;/b&gt; in Bruchkanten, die Dreiecke überbrücken; &lt;b&gt;lange Dreiecke&lt;/b&gt; über Gelände, das niemand begangen hat; &lt;b&gt;Ausreißer&lt;/b&gt;, Punkte weit über oder unter ihren Nachbarn; &lt;b&gt;Punkte neben einer Linie&lt;/b&gt; auf anderer Höhe als deren Kante.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Geben Sie auch die Punkte der Vermessung und die „Linien der Oberfläche“ mit ihren Beschriftungen an: Lücken werden nur unter Linien gefunden, und Zeilen der Datei nur für Punkte genannt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; kind, value und unit (eine Fläche, eine Breite, eine Länge oder eine Höhe), text und lines, die Zeilen der Vermessungsdatei hinter der Stelle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ein Befund ist eine Frage, kein Urteil: Eine Mauer ist für diese Suche ein Ausreißer. Eine Oberfläche ohne Befunde kann trotzdem falsch sein, wo nichts gemessen wurde oder alles daneben liegt. Die Grenzen sind unsere eigene Wahl für Punkte alle halben Meter; kein Standard setzt sie.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>&lt;p&gt;Makes a lighter surface: vertices are dropped as long as every one of them stays within the tolerance of the new surface. The rim, breaklines and their heights are kept.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and a tolerance in metres whatever the CRS. The result is a 2DM file with its CRS beside it as .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What was reached&lt;/b&gt; is measured on the finished surface at every vertex of the given one and stands in the log and the results: the largest difference with its place, and the root of the mean square.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between the vertices, where an old edge crosses a new one, the surfaces may be farther apart than the tolerance. A tolerance below the noise of the heights drops little. Volumes of a thinned surface differ: compute them from the full one.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Erzeugt eine leichtere Oberfläche: Stützpunkte werden weggelassen, solange jeder von ihnen innerhalb der Toleranz zur neuen Oberfläche bleibt. Der Rand, Bruchkanten und ihre Höhen bleiben erhalten.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und eine Toleranz in Metern, gleich welches KBS. Das Ergebnis ist eine 2DM-Datei mit ihrem KBS als .prj daneben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was erreicht wurde&lt;/b&gt;, wird auf der fertigen Oberfläche an jedem Stützpunkt der gegebenen gemessen und steht im Protokoll und in den Ergebnissen: der größte Unterschied mit seinem Ort und das quadratische Mittel.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Zwischen den Stützpunkten, wo eine alte Kante eine neue kreuzt, können die Oberflächen weiter auseinander liegen als die Toleranz. Eine Toleranz unter dem Rauschen der Höhen lässt wenig weg. Volumen einer ausgedünnten Oberfläche weichen ab: Berechnen Sie sie aus der vollen.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>&lt;p&gt;Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary and voids become edges exactly; no points are added along lines with heights.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that plan and heights are in the unit of the points' CRS. Lines come from the field codes of the points, in recording order, and from layers. A line without heights takes them from the surface around it and keeps its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Points at the same place&lt;/b&gt; (equal to 0.1 mm) count once, with their mean height, and are reported.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Kerbs and walls&lt;/b&gt; are drawn as one line with heights and the height of the face; each becomes two breaklines a small offset apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Edits&lt;/b&gt; by hand come from layers that you draw and from a file; they are replayed in their order at each run, and those that no longer apply are reported. Keep the file of edits that is written beside the survey, and give it to the next run instead of the layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; lines that cross at different heights are refused unless you choose a rule. Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: their ground was not surveyed. A boundary drawn around nothing leaves no triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The mesh&lt;/b&gt; is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Bildet ein unregelmäßiges Dreiecksnetz (TIN) aus den Punkten, die nicht verworfen sind. Bruchkanten, Umring und Aussparungen werden genau zu Kanten; entlang von Linien mit Höhen kommen keine Punkte hinzu.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt;, dass Lage und Höhen in der Einheit des KBS der Punkte sind. Linien kommen aus den Feldcodes der Punkte, in der Reihenfolge der Aufzeichnung, und aus Layern. Eine Linie ohne Höhen übernimmt sie von der Oberfläche ringsum und behält ihre Kante.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Punkte am selben Ort&lt;/b&gt; (auf 0.1 mm gleich) zählen einmal, mit ihrer mittleren Höhe, und werden gemeldet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Borde und Mauern&lt;/b&gt; werden als eine Linie mit Höhen und der Höhe der Wand gezeichnet; jede wird zu zwei Bruchkanten in kleinem Abstand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Änderungen&lt;/b&gt; von Hand kommen aus Layern, die Sie zeichnen, und aus einer Datei; sie werden bei jedem Lauf in ihrer Reihenfolge wiederholt, und solche, die nicht mehr anwendbar sind, werden gemeldet. Bewahren Sie die Datei der Änderungen auf, die neben die Vermessung geschrieben wird, und geben Sie sie dem nächsten Lauf anstelle der Layer.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Linien, die sich auf verschiedenen Höhen kreuzen, werden abgelehnt, außer Sie wählen eine Regel. Ohne Umring oder längste Randkante überbrücken lange flache Dreiecke die Buchten des Geländeumrisses: Deren Gelände wurde nicht vermessen. Ein Umring um nichts herum lässt kein Dreieck übrig.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Das Mesh&lt;/b&gt; ist eine 2DM-Datei, Höhen in der Einheit des KBS. Das Format kann das KBS nicht aufnehmen, deshalb steht es in einer gleichnamigen .prj-Datei daneben; wenn Sie das Mesh von Hand hinzufügen, nennen Sie QGIS das KBS.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>&lt;p&gt;Makes points to set out from a layer: its points, the corners of its lines and polygons, a grid over its polygons, or offsets along its lines. Each gets a design height, the height of the existing ground, and cut or fill: the design less the ground, above 0 fill, below 0 cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh of the existing ground as “Build the surface” writes it, places in its CRS, and a design that whoever answers for it has released.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Design heights&lt;/b&gt; come from a field, or else from the Z of the layer where that is ticked, or else from a design surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Doubt:&lt;/b&gt; the standard deviation of cut and fill has two parts: the noise of the surveyed heights, carried through the triangle, and the doubt of set-out in plan times the slope of the ground. The design counts as exact, and ground between the survey's points may differ by more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table&lt;/b&gt; has the columns you name, in that order, in the unit you choose; the control points stand at its end with the code CONTROL. Names are unique, capitals or not: clashes are refused. Notes and cautions stand at its head and in a text beside it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; grid coordinates used as distances on the ground: check the combined factor. A data collector in another foot, another datum or another height system. An outdated design.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; check on control before, during and after the work. Have buried services located before anything is dug or driven in. This is no survey of boundaries: property marks, and set-out that others build on, are for a licensed professional under local rules. For machine guidance check at known points, away from the machine's path.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Erzeugt Absteckpunkte aus einem Layer: seinen Punkten, den Ecken seiner Linien und Polygone, einem Raster über seinen Polygonen oder Parallelen entlang seiner Linien. Jeder erhält eine Sollhöhe, die Höhe des vorhandenen Geländes und Abtrag oder Auftrag: Planung minus Gelände, über 0 Auftrag, unter 0 Abtrag.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh des vorhandenen Geländes, wie „Oberfläche bilden“ es schreibt, Orte in seinem KBS und eine Planung, die der Verantwortliche freigegeben hat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Sollhöhen&lt;/b&gt; kommen aus einem Feld oder sonst aus dem Z des Layers, wo dies angehakt ist, oder sonst aus einer Planungsoberfläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Unsicherheit:&lt;/b&gt; Die Standardabweichung von Abtrag und Auftrag hat zwei Anteile: das Rauschen der gemessenen Höhen, durch das Dreieck fortgepflanzt, und die Lageunsicherheit der Absteckung mal die Neigung des Geländes. Die Planung gilt als exakt, und Gelände zwischen den Punkten der Vermessung kann stärker abweichen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Die Tabelle&lt;/b&gt; hat die von Ihnen genannten Spalten in dieser Reihenfolge, in der gewählten Einheit; die Festpunkte stehen an ihrem Ende mit dem Code CONTROL. Namen sind eindeutig, ohne Rücksicht auf Groß- und Kleinschreibung: Doppelte werden abgelehnt. Anmerkungen und Vorbehalte stehen an ihrem Kopf und in einem Text daneben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Gitterkoordinaten, die als Strecken im Gelände verwendet werden: Prüfen Sie den Gesamtmaßstabsfaktor. Ein Feldgerät mit anderem Fuß, anderem Bezugssystem oder anderem Höhensystem. Eine veraltete Planung.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorsicht:&lt;/b&gt; Kontrollieren Sie vor, während und nach der Arbeit an Festpunkten. Lassen Sie Leitungen im Boden orten, bevor gegraben oder etwas eingerammt wird. Dies ist keine Grenzvermessung: Grenzzeichen und Absteckungen, auf die andere bauen, sind nach örtlichen Regeln Sache einer zugelassenen Fachperson. Für Maschinensteuerung prüfen Sie an bekannten Punkten abseits des Wegs der Maschine.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>&lt;p&gt;Multiplies the area of each catchment by its runoff coefficient and the intensity of the rain: the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; rain of constant intensity for as long as water takes from the farthest place to the outlet; find that intensity for the duration and the frequency that your code asks for. Catchments are polygons, as “Catchments” makes them. The runoff coefficient comes from polygons of ground cover, weighted by area, else from a field of the catchments, else it is one number for all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; runoff, the coefficient; area and area_unit; intensity and intensity_unit; flow and flow_unit (l/s, or ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the method is for small areas of one kind; beyond some 80 ha (200 acres) it is commonly not used. It knows no storage: a pond upstream makes the true peak smaller. Water from beyond the surveyed ground is not counted. The flow over “the rest of the rim” is that of many places, not of one.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design: coefficients, intensities and methods are set by local codes, and a licensed professional answers for a design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Multipliziert die Fläche jedes Einzugsgebiets mit seinem Abflussbeiwert und der Niederschlagsintensität: die rationale Methode, Q = C i A (E. Kuichling, „The relation between the rainfall and the discharge of sewers in populous districts“, Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; Regen konstanter Intensität, so lange, wie Wasser vom entferntesten Ort bis zum Auslauf braucht; ermitteln Sie diese Intensität für die Dauer und die Häufigkeit, die Ihr Regelwerk verlangt. Einzugsgebiete sind Polygone, wie „Einzugsgebiete“ sie erzeugt. Der Abflussbeiwert kommt aus Polygonen der Bodenbedeckung, flächengewichtet, sonst aus einem Feld der Einzugsgebiete, sonst ist er eine Zahl für alle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Hinzugefügte Spalten:&lt;/b&gt; runoff, der Beiwert; area und area_unit; intensity und intensity_unit; flow und flow_unit (l/s oder ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Das Verfahren ist für kleine Flächen einer Art; über etwa 80 ha (200 acres) wird es gewöhnlich nicht verwendet. Es kennt keine Speicherung: Ein Tümpel oberhalb macht den wahren Spitzenabfluss kleiner. Wasser von jenseits des vermessenen Geländes zählt nicht. Der Abfluss über „den übrigen Rand“ ist der vieler Orte, nicht eines einzigen.&lt;/p&gt;&lt;p&gt;Dies ist ein Hinweis und keine Entwässerungsplanung: Beiwerte, Intensitäten und Verfahren setzen örtliche Vorschriften, und für eine Planung steht eine zugelassene Fachperson ein.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>&lt;p&gt;Puts a point with the direction and the slope of the way down at the places of a square grid. The style turns an arrow by the direction and sizes it by the slope.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The direction is the mean gradient, by area, of the triangles around: within the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; direction, degrees clockwise from grid north, and slope_pct, the fall over run in percent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles between points half a metre apart are as steep as their noise, some percent; with a window of 0 the arrows show that. A wide window hides kerbs and ditches. On level ground there is no arrow.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Setzt an die Orte eines quadratischen Rasters einen Punkt mit Richtung und Neigung des Wegs hangabwärts. Der Stil dreht einen Pfeil nach der Richtung und bemisst ihn nach der Neigung.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Die Richtung ist der flächengewichtete mittlere Gradient der Dreiecke ringsum: innerhalb des Fensters.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; direction, Grad im Uhrzeigersinn von Gitternord, und slope_pct, Fall durch Strecke in Prozent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Einzelne Dreiecke zwischen Punkten im Abstand eines halben Meters sind so steil wie ihr Rauschen, einige Prozent; mit einem Fenster von 0 zeigen die Pfeile dies. Ein weites Fenster verdeckt Borde und Gräben. Auf ebenem Gelände gibt es keinen Pfeil.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>&lt;p&gt;Puts each triangle of a surface into a class by its slope and joins the triangles of a class to areas. A slope equal to a limit belongs to the class below it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Slopes are rise over run in percent, the steepest way down each triangle. Limits are written such as 1; 2; 5; 8.33; 20; 50: 5 is 1 in 20, 8.33 is 1 in 12. They are no standard: set those of your site.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; class (from 0, the flattest), from_pct and to_pct (empty for the last class), label, plan_m2 and slope_m2, the area in plan and on the slope, in square metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between points half a metre apart that are good to 15 mm the slope is only good to some 4 percent: noise speckles the map of nearly level ground. Thin the surface first, or judge larger areas. This map does not replace a check against the rules that apply to your site.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Ordnet jedes Dreieck einer Oberfläche nach seiner Neigung einer Klasse zu und verbindet die Dreiecke einer Klasse zu Flächen. Eine Neigung auf einer Grenze gehört zur Klasse darunter.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Neigungen sind Steigung durch Strecke in Prozent, der steilste Weg jedes Dreieck hinab. Grenzen werden etwa so geschrieben: 1; 2; 5; 8.33; 20; 50: 5 ist 1 zu 20, 8.33 ist 1 zu 12. Sie stammen aus keinem Standard: Setzen Sie die Ihres Geländes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; class (ab 0, der flachsten), from_pct und to_pct (leer bei der letzten Klasse), label, plan_m2 und slope_m2, die Fläche im Grundriss und auf der Neigung, in Quadratmetern.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Zwischen Punkten im Abstand eines halben Meters, die auf 15 mm gut sind, ist die Neigung nur auf etwa 4 Prozent gut: Rauschen sprenkelt die Karte fast ebenen Geländes. Dünnen Sie die Oberfläche zuerst aus oder beurteilen Sie größere Flächen. Diese Karte ersetzt keine Prüfung gegen die Regeln, die für Ihr Gelände gelten.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>&lt;p&gt;Reads the open standard LandXML 1.2 (and 1.0, 1.1): each surface becomes a 2DM mesh that all tools for surfaces take; points, source lines and alignments become layers. Units and CRS are those the file says; what you choose here wins.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; surfaces of triangles. Faces marked invisible are holes. Curves of alignments become chords that lie within 1 mm of them; heights of their lines are those of the first profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a file that is damaged, cut short, without units, with a corner that is missing or faces that overlap is refused, with the line and the reason: nothing of it is loaded. Files that declare entities or a document type are refused too: LandXML needs none. Faces without area in plan (walls) and spirals other than clothoids are left out and said. A file in one kind of feet with a CRS in the other is told: ask which is meant.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; a design from elsewhere is no better than its source: compare it with the ground and with its drawings before you set out from it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Liest den offenen Standard LandXML 1.2 (und 1.0, 1.1): Jede Oberfläche wird ein 2DM-Mesh, das alle Werkzeuge für Oberflächen annehmen; Punkte, Quelllinien und Achsen werden Layer. Einheiten und KBS sind die der Datei; was Sie hier wählen, geht vor.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; Oberflächen aus Dreiecken. Als unsichtbar gekennzeichnete Flächen sind Löcher. Bögen von Achsen werden Sehnen, die bis auf 1 mm an ihnen liegen; Höhen ihrer Linien sind die des ersten Längsprofils.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Eine Datei, die beschädigt, abgeschnitten oder ohne Einheiten ist, der eine Ecke fehlt oder deren Flächen sich überlappen, wird abgelehnt, mit Zeile und Grund: Nichts davon wird geladen. Dateien, die Entities oder einen Dokumenttyp erklären, werden ebenfalls abgelehnt: LandXML braucht keine. Flächen ohne Inhalt im Grundriss (Wände) und andere Übergangsbögen als Klothoiden bleiben weg und werden gemeldet. Eine Datei in einer Art von Fuß mit einem KBS in der anderen wird gemeldet: Fragen Sie, welche gemeint ist.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorsicht:&lt;/b&gt; Eine Planung von anderswo ist nicht besser als ihre Quelle: Vergleichen Sie sie mit dem Gelände und mit ihren Zeichnungen, bevor Sie danach abstecken.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>&lt;p&gt;Reads the survey file, checks it, builds the surface and its contours, and writes one report of it all: what came in and what was rejected and why, coordinates, how far the survey can be trusted, the surface, the contours, water, volumes, a road’s grades and a pad’s earthwork where you ask for them, and the files handed over, each with its SHA-256. HTML and PDF say the same.&lt;/p&gt;&lt;p&gt;It starts from the &lt;b&gt;file&lt;/b&gt;, so that each number can be traced to a line of it. Decisions that you took in QGIS come in by their file: “Survey desk” keeps it for you. A layer in place of the file comes with the statuses that its points have.&lt;/p&gt;&lt;p&gt;&lt;b&gt;More files&lt;/b&gt;, such as a plan or a drawing, are listed with the others and their SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what “Import survey points”, “Check the survey” and “Build the surface” assume, with their usual options. Where the file needs more to be read, say the columns and units here.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the report tells of this run, not of layers you changed by hand since. It is no certificate: licensed practice and local codes decide what a survey may be used for.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Liest die Vermessungsdatei, prüft sie, bildet die Oberfläche und ihre Höhenlinien und schreibt über alles einen Bericht: was hereinkam, was warum verworfen wurde, Koordinaten, wie weit der Vermessung zu trauen ist, die Oberfläche, die Höhenlinien, Wasser, Volumen, die Neigungen einer Straße und den Erdbau eines Planums, wo Sie danach fragen, und die übergebenen Dateien, jede mit ihrem SHA-256. HTML und PDF sagen dasselbe.&lt;/p&gt;&lt;p&gt;Es beginnt bei der &lt;b&gt;Datei&lt;/b&gt;, sodass sich jede Zahl auf eine Zeile darin zurückführen lässt. Entscheidungen, die Sie in QGIS getroffen haben, kommen über ihre Datei hinein: „Vermessungspult“ führt sie für Sie. Ein Layer anstelle der Datei bringt die Status seiner Punkte mit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Weitere Dateien&lt;/b&gt;, etwa ein Lageplan oder eine Zeichnung, werden mit den anderen und ihrem SHA-256 aufgelistet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt;, was „Vermessungspunkte importieren“, „Vermessung prüfen“ und „Oberfläche bilden“ mit ihren üblichen Optionen voraussetzen. Wo die Datei mehr braucht, um gelesen zu werden, geben Sie hier die Spalten und Einheiten an.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Der Bericht erzählt von diesem Lauf, nicht von Layern, die Sie seither von Hand geändert haben. Er ist kein Zertifikat: Zugelassene Fachleute und örtliche Vorschriften entscheiden, wofür eine Vermessung verwendet werden darf.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>&lt;p&gt;Reads what a rover wrote, delimited text (comma, semicolon, tab or blanks; point or comma as decimal sign; with or without a header; eastings and northings, or latitudes and longitudes) or a receiver log (NMEA 0183), into a layer of points with heights. Several files of one site become one layer that keeps the source of each point. A layer of points that is loaded already can take the place of a file, alone or merged with files and other layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns&lt;/b&gt; are recognised from header words in four languages, from the values, and from the area in which the CRS may be used. What stays open is asked, not guessed: “Preview” shows the first lines, the role of each column, the lines that would be rejected, and where the points would land.&lt;/p&gt;&lt;p&gt;Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line is in the second output with its reason.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the coordinates are in the CRS wanted unless another one is given for the file; then they are transformed by one operation that is named with its accuracy. Degrees without a CRS are taken as WGS 84. Heights are taken as they are unless a geoid separation is given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The status&lt;/b&gt; of a point is used, flagged or rejected. Only rejected points stay out of the surface. You can change it in the layer; later steps read it there. Plan and height are read from the geometry, so the columns easting, northing and height only inform.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; easting and northing can be swapped, and a wrong unit makes a surface of the right form and the wrong size. Points outside the area of use of the CRS are reported with the likely cause; nothing is corrected without your word. A ballpark operation, or one that lacks its grid file, is refused until you accept it by its name.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Liest, was ein Rover schrieb, Text mit Trennzeichen (Komma, Semikolon, Tabulator oder Leerzeichen; Punkt oder Komma als Dezimalzeichen; mit oder ohne Kopfzeile; Ost- und Nordwerte oder Breiten und Längen) oder ein Empfängerprotokoll (NMEA 0183), in einen Punktlayer mit Höhen. Mehrere Dateien eines Geländes werden ein Layer, der die Quelle jedes Punkts behält. Ein schon geladener Punktlayer kann an die Stelle einer Datei treten, allein oder mit Dateien und anderen Layern vereinigt.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten&lt;/b&gt; werden an Kopfzeilenwörtern in vier Sprachen, an den Werten und am Anwendungsbereich des KBS erkannt. Was offen bleibt, wird gefragt, nicht geraten: „Vorschau“ zeigt die ersten Zeilen, die Rolle jeder Spalte, die Zeilen, die verworfen würden, und wo die Punkte lägen.&lt;/p&gt;&lt;p&gt;Punkte, verworfene Zeilen, Kommentare und Leerzeilen ergeben zusammen die Zeilen der Datei; jede verworfene Zeile steht mit ihrem Grund in der zweiten Ausgabe.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt;, dass die Koordinaten im gewünschten KBS sind, außer für die Datei ist ein anderes angegeben; dann werden sie durch eine Operation transformiert, die mit ihrer Genauigkeit genannt wird. Grad ohne KBS gelten als WGS 84. Höhen gelten, wie sie sind, außer eine Geoidundulation ist angegeben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Der Status&lt;/b&gt; eines Punkts ist used (verwendet), flagged (markiert) oder rejected (verworfen). Nur verworfene Punkte bleiben aus der Oberfläche. Sie können ihn im Layer ändern; spätere Schritte lesen ihn dort. Lage und Höhe werden aus der Geometrie gelesen, die Spalten easting, northing und height informieren also nur.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ost- und Nordwert können vertauscht sein, und eine falsche Einheit ergibt eine Oberfläche der richtigen Form und der falschen Größe. Punkte außerhalb des Anwendungsbereichs des KBS werden mit der wahrscheinlichen Ursache gemeldet; ohne Ihr Wort wird nichts berichtigt. Eine genäherte Operation (ballpark) oder eine, der ihre Gitterdatei fehlt, wird abgelehnt, bis Sie sie namentlich annehmen.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>&lt;p&gt;Samples a surface at the centres of square cells, whose edges lie at whole multiples of the cell size. &lt;b&gt;Exact&lt;/b&gt;: the height on the triangle. &lt;b&gt;Smooth&lt;/b&gt;: a Clough-Tocher interpolant through the same vertices, sharp at breaklines: it is for drawing only, such as a hillshade, never for numbers; its largest difference from the surface is in the log.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Cells without the surface under their centre have no data (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; is a GeoTIFF of 32-bit numbers (rounded to 0.02 mm below 512 m, 0.3 mm below 8192 m), compressed without loss and tiled, with the CRS; the band names method and unit of the heights, which is that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a raster cannot hold a kerb: what is narrower than two cells is blurred. Take volumes and contours from the surface itself. Small cells make large files.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Tastet eine Oberfläche in den Mitten quadratischer Zellen ab, deren Ränder bei ganzen Vielfachen der Zellgröße liegen. &lt;b&gt;Genau&lt;/b&gt;: die Höhe auf dem Dreieck. &lt;b&gt;Glatt&lt;/b&gt;: eine Clough-Tocher-Interpolation durch dieselben Stützpunkte, scharf an Bruchkanten: nur zur Darstellung, etwa als Schummerung, nie für Zahlen; ihr größter Unterschied zur Oberfläche steht im Protokoll.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Zellen ohne Oberfläche unter ihrer Mitte sind Nodata (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Die Datei&lt;/b&gt; ist ein GeoTIFF mit 32-Bit-Zahlen (gerundet auf 0.02 mm unter 512 m, 0.3 mm unter 8192 m), verlustfrei komprimiert und gekachelt, mit dem KBS; das Band nennt Verfahren und Einheit der Höhen, die des KBS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ein Raster kann keinen Bord halten: Was schmaler ist als zwei Zellen, verwischt. Entnehmen Sie Volumen und Höhenlinien der Oberfläche selbst. Kleine Zellen ergeben große Dateien.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>&lt;p&gt;Spans a base inside each closed line (the toe of a stockpile, the rim of a pit) and computes what of the surface stands above it and what is missing below it, exactly. Bases: &lt;b&gt;triangles through the line&lt;/b&gt;, which follow uneven ground around; the &lt;b&gt;best-fit plane&lt;/b&gt; of the line, for a pad built even; a &lt;b&gt;level&lt;/b&gt; at its lowest or highest place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and lines drawn at the toe or rim itself, in a polygon or line layer, one feature each. A line is laid on the surface to get its heights, or keeps its own Z where you say so. Breaklines along toe and crest make the surface right.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; above_m3 and below_m3 with their ± (half of the 95 % interval), areas, the base's lowest and highest height, not_measured_m2 (ground inside the line without surface).&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points and of the base's line, ground between the points, and, for a line with its own heights, a height offset times the area.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the base under a heap is a guess, unless the ground was surveyed before it was heaped: then use “Volume between two surfaces”. A toe drawn too wide counts ground, too narrow leaves out the foot. This is no payment certificate; for tonnage measure the density.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Spannt in jeder geschlossenen Linie (dem Fuß einer Halde, dem Rand einer Grube) eine Basis auf und berechnet genau, was von der Oberfläche darüber steht und was darunter fehlt. Basen: &lt;b&gt;Dreiecke durch die Linie&lt;/b&gt;, die unebenem Gelände ringsum folgen; die &lt;b&gt;ausgleichende Ebene&lt;/b&gt; der Linie, für eine eben angelegte Fläche; ein &lt;b&gt;Niveau&lt;/b&gt; an ihrer tiefsten oder höchsten Stelle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und am Fuß oder Rand selbst gezeichnete Linien, in einem Polygon- oder Linienlayer, je ein Objekt. Eine Linie wird auf die Oberfläche gelegt, um ihre Höhen zu erhalten, oder behält ihr eigenes Z, wo Sie es angeben. Bruchkanten entlang von Fuß und Oberkante machen die Oberfläche richtig.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten:&lt;/b&gt; above_m3 und below_m3 mit ihrem ± (der Hälfte des 95-%-Intervalls), Flächen, die kleinste und größte Höhe der Basis, not_measured_m2 (Gelände innerhalb der Linie ohne Oberfläche).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Wie sicher:&lt;/b&gt; Rauschen der Punkte und der Linie der Basis, Gelände zwischen den Punkten und, bei einer Linie mit eigenen Höhen, ein Höhenversatz mal die Fläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Die Basis unter einer Halde ist eine Vermutung, außer das Gelände wurde vor dem Aufschütten vermessen: Dann verwenden Sie „Volumen zwischen zwei Oberflächen“. Ein zu weit gezeichneter Fuß zählt Gelände mit, ein zu enger lässt den Fuß aus. Dies ist kein Abrechnungsnachweis; für Tonnen messen Sie die Dichte.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>&lt;p&gt;Takes the heights of one or several surfaces along a line: as points at stations, as lines in a plane of their own, and as a sheet in PDF at true scale, with stations, heights, differences and grades below the profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them, all in one CRS, and one line in that CRS. Heights are those of the triangles all along, not of a grid. A grade is the straight line that fits the heights in its window best; its standard deviation follows from the noise of the points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns of the stations:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct, and for further surfaces height_2, diff_2 and so on. Save them as CSV by giving the output a file name that ends in .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The profile in its plane&lt;/b&gt; is no place on a map: to the right the distance along the line, up the height, exaggerated, both in the unit chosen. It has the CRS of the surface only so that files can hold it; look at it in a map view of its own.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; stretches off a surface are left out and said. Standard deviations know the noise of the heights you give, not errors in plan, nor ground that was not walked. Not for construction or setting out without independent checks.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Nimmt die Höhen einer oder mehrerer Oberflächen entlang einer Linie: als Punkte an Stationen, als Linien in einer eigenen Ebene und als Blatt im PDF im wahren Maßstab, mit Stationen, Höhen, Unterschieden und Längsneigungen unter dem Längsprofil.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; 2DM-Meshes, wie „Oberfläche bilden“ sie schreibt, alle in einem KBS, und eine Linie in diesem KBS. Höhen sind durchweg die der Dreiecke, nicht eines Rasters. Eine Längsneigung ist die Gerade, die am besten zu den Höhen in ihrem Fenster passt; ihre Standardabweichung folgt aus dem Rauschen der Punkte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Spalten der Stationen:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct und für weitere Oberflächen height_2, diff_2 und so weiter. Speichern Sie sie als CSV, indem Sie der Ausgabe einen Dateinamen geben, der auf .csv endet.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Das Längsprofil in seiner Ebene&lt;/b&gt; ist kein Ort auf einer Karte: nach rechts die Entfernung entlang der Linie, nach oben die Höhe, überhöht, beide in der gewählten Einheit. Es hat das KBS der Oberfläche nur, damit Dateien es aufnehmen können; sehen Sie es in einer eigenen Kartenansicht an.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Strecken neben einer Oberfläche bleiben weg und werden gemeldet. Standardabweichungen kennen das Rauschen der Höhen, das Sie angeben, nicht Fehler in der Lage und nicht Gelände, das nicht begangen wurde. Nicht zum Bauen oder Abstecken ohne unabhängige Kontrollen.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>&lt;p&gt;Tells how densely a site was recorded and where not: the largest &lt;b&gt;circles without a measured point&lt;/b&gt;, the &lt;b&gt;long triangles&lt;/b&gt;, their share of the site, and &lt;b&gt;places to walk again&lt;/b&gt; in walking order. With those places measured no ground is farther from a point than the limit. The log also names the smallest contour interval that the data support.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and the points that it was built from, in the order of recording and in the CRS of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For the data collector:&lt;/b&gt; the places can also be written as CSV (name, easting, northing, height, in the units of the CRS) and as GPX way points in WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Interval:&lt;/b&gt; three times the RMSE of the heights (ASPRS Positional Accuracy Standards, 2014, annex B). The RMSE is reasoned from the noise of a height (what “Check the survey” found, or else what the receiver states) and how the ground bends between passes; check points tell more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a limit an edge is long from about twice the distance of the passes: our own choice, no standard. A mesh does not hold which edges are lines, so a long straight breakline counts as a long edge. Ground under a building stays empty unless the surface was built with a void there.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Sagt, wie dicht ein Gelände aufgezeichnet wurde und wo nicht: die größten &lt;b&gt;Kreise ohne gemessenen Punkt&lt;/b&gt;, die &lt;b&gt;langen Dreiecke&lt;/b&gt;, ihr Anteil am Gelände und &lt;b&gt;nochmals abzugehende Orte&lt;/b&gt; in der Reihenfolge der Begehung. Sind diese Orte gemessen, ist kein Gelände weiter von einem Punkt entfernt als die Grenze. Das Protokoll nennt auch die kleinste Äquidistanz, die die Daten tragen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und die Punkte, aus denen es gebildet wurde, in der Reihenfolge der Aufzeichnung und im KBS der Oberfläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Für das Feldgerät:&lt;/b&gt; Die Orte lassen sich auch als CSV (name, easting, northing, height, in den Einheiten des KBS) und als GPX-Wegpunkte in WGS 84 schreiben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Äquidistanz:&lt;/b&gt; dreimal der RMSE der Höhen (ASPRS Positional Accuracy Standards, 2014, Anhang B). Der RMSE ist aus dem Rauschen einer Höhe (was „Vermessung prüfen“ gefunden hat, sonst aus den Angaben des Empfängers) und der Krümmung des Geländes zwischen Bahnen hergeleitet; Kontrollpunkte sagen mehr.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Ohne Grenze ist eine Kante ab etwa dem doppelten Bahnabstand lang: unsere eigene Wahl, kein Standard. Ein Mesh enthält nicht, welche Kanten Linien sind, eine lange gerade Bruchkante zählt also als lange Kante. Gelände unter einem Gebäude bleibt leer, außer die Oberfläche wurde dort mit einer Aussparung gebildet.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>&lt;p&gt;Writes one or several surfaces in the open standard LandXML 1.2: points and faces, and as source data the breaklines and the boundary. Points of a layer, and lines with stations and the ground's profile, can go into the same file.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; says its units and CRS; numbers are northing before easting, as the standard has it, plan with 4 decimals and heights with 6, all in the unit of the CRS's plan. Read again it is the same surface to the last decimal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Breaklines, boundary and voids are those the surface was held to, unless layers are given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; some programs ignore the faces and triangulate the source data anew: their surface differs where lines or the boundary are missing, so leave the rim in. Some ignore the CRS: tell it beside the file. In feet make sure which foot the receiver takes: international and US survey feet are 2 parts in a million apart, a metre or more at state-plane coordinates.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; before construction or machine guidance compare heights at points measured independently; what may be used for it is for the responsible licensed professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Schreibt eine oder mehrere Oberflächen im offenen Standard LandXML 1.2: Punkte und Flächen und als Quelldaten die Bruchkanten und den Umring. Punkte eines Layers und Linien mit Stationen und dem Längsprofil des Geländes können in dieselbe Datei.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Die Datei&lt;/b&gt; nennt ihre Einheiten und ihr KBS; Zahlen stehen als Nordwert vor Ostwert, wie der Standard es will, Lage mit 4 Nachkommastellen und Höhen mit 6, alle in der Lageeinheit des KBS. Wieder eingelesen ist es bis zur letzten Stelle dieselbe Oberfläche.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt wird&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt. Bruchkanten, Umring und Aussparungen sind die, die die Oberfläche einhalten sollte, außer es sind Layer angegeben.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; Manche Programme übergehen die Flächen und triangulieren die Quelldaten neu: Ihre Oberfläche weicht ab, wo Linien oder der Umring fehlen, lassen Sie den Rand also darin. Manche übergehen das KBS: Teilen Sie es neben der Datei mit. Stellen Sie bei Fuß sicher, welchen Fuß der Empfänger annimmt: Internationaler und US-Vermessungsfuß liegen 2 Millionstel auseinander, bei State-Plane-Koordinaten einen Meter oder mehr.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorsicht:&lt;/b&gt; Vergleichen Sie vor Bau oder Maschinensteuerung Höhen an unabhängig gemessenen Punkten; was dafür verwendet werden darf, entscheiden die verantwortliche zugelassene Fachperson und örtliche Regeln.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>&lt;p&gt;Writes one surface with its lines, contours and points into the files that others load, all from the same numbers, with a list of their SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: faces, breaklines, boundary, points; see “Surface to LandXML”.&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (release 12): 3D faces, contours and lines as 3D polylines, points with names and heights; layers by kind or by level. It has no CRS; unit and CRS stand in a comment.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: points (rejected ones too, marked), contours, lines, triangles and further layers, each with its style.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: heights on a grid, compressed and tiled, with CRS, unit and no data outside.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mesh&lt;/b&gt;: 2DM with its CRS in a .prj file.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and points in its CRS. A surface without a boundary is given its rim as one in LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a drawing read in another unit: millimetres are usual elsewhere. A grid cannot hold a kerb: volumes and levels come from faces. Files of the same names in the folder are replaced, each when it is whole; a run that is cancelled leaves the others as they were.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; say with the files when they were made, from which survey, and how accurate they are. They are no licence to build or dig: that is for the responsible professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Schreibt eine Oberfläche mit ihren Linien, Höhenlinien und Punkten in die Dateien, die andere laden, alle aus denselben Zahlen, mit einer Liste ihrer SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: Flächen, Bruchkanten, Umring, Punkte; siehe „Oberfläche als LandXML“.&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (Release 12): 3D-Flächen, Höhenlinien und Linien als 3D-Polylinien, Punkte mit Namen und Höhen; Layer nach Art oder nach Höhe. Es hat kein KBS; Einheit und KBS stehen in einem Kommentar.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: Punkte (auch verworfene, gekennzeichnet), Höhenlinien, Linien, Dreiecke und weitere Layer, jeder mit seinem Stil.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: Höhen auf einem Raster, komprimiert und gekachelt, mit KBS, Einheit und Nodata außerhalb.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mesh&lt;/b&gt;: 2DM mit seinem KBS in einer .prj-Datei.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;Vorausgesetzt werden&lt;/b&gt; ein 2DM-Mesh, wie „Oberfläche bilden“ es schreibt, und Punkte in seinem KBS. Eine Oberfläche ohne Umring erhält in LandXML ihren Rand als solchen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Was schiefgehen kann:&lt;/b&gt; eine in anderer Einheit gelesene Zeichnung: Anderswo sind Millimeter üblich. Ein Raster kann keinen Bord halten: Volumen und Höhen kommen aus Flächen. Gleichnamige Dateien im Ordner werden ersetzt, jede, sobald sie vollständig ist; ein abgebrochener Lauf lässt die anderen, wie sie waren.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Vorsicht:&lt;/b&gt; Sagen Sie zu den Dateien, wann und aus welcher Vermessung sie entstanden und wie genau sie sind. Sie sind keine Erlaubnis zum Bauen oder Graben: Das ist Sache der verantwortlichen Fachperson und örtlicher Regeln.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, or taken from the mesh layer.</source>
      <translation>Eine 2DM-Datei kann ihr KBS nicht aufnehmen. Ist hier keines angegeben, wird es aus der .prj-Datei neben dem Mesh gelesen oder vom Mesh-Layer übernommen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>A feature for each class of depth that occurs, with its exact area and volume.</source>
      <translation>Ein Objekt je vorkommender Tiefenklasse, mit genauer Fläche und genauem Volumen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>A feature for each class that occurs, from the flattest to the steepest.</source>
      <translation>Ein Objekt je vorkommender Klasse, von der flachsten zur steilsten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>A feature for each connected area, the largest first.</source>
      <translation>Ein Objekt je zusammenhängender Fläche, die größte zuerst.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A feature for each finding, at all of its points, the size in metres.</source>
      <translation>Ein Objekt je Befund, an allen seinen Punkten, die Größe in Metern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>A feature for each, the largest first.</source>
      <translation>Je ein Objekt, das größte zuerst.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A file of edits as this algorithm writes it; they come before those of the layers.</source>
      <translation>Eine Datei mit Änderungen, wie dieser Algorithmus sie schreibt; sie kommen vor denen der Layer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A grid file of geoid separations; it must cover the whole site.</source>
      <translation>Eine Gitterdatei mit Geoidundulationen; sie muss das ganze Gelände bedecken.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>A height; empty where a design is given.</source>
      <translation>Eine Höhe; leer, wo eine Planung angegeben ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A hollow counts as a pond only where noise alone makes one like it anywhere in the survey with a smaller probability than this. 100: every hollow counts.</source>
      <translation>Eine Mulde zählt nur dann als Tümpel, wenn Rauschen allein irgendwo in der Vermessung mit kleinerer Wahrscheinlichkeit als dieser eine solche erzeugt. 100: Jede Mulde zählt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>A hollow outline found from the points: triangles are taken off the rim while the circle through their corners is wider. About 1.5 times the distance of the passes follows the bays of a site.</source>
      <translation>Ein aus den Punkten gefundener eingebuchteter Umriss: Dreiecke werden vom Rand entfernt, solange der Kreis durch ihre Ecken weiter ist. Etwa das 1.5-Fache des Bahnabstands folgt den Buchten eines Geländes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>A layer is given twice; give each layer once.</source>
      <translation>Ein Layer ist zweimal angegeben; geben Sie jeden Layer einmal an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>A layer of exactly three points with Z, in the CRS of the surface.</source>
      <translation>Ein Layer mit genau drei Punkten mit Z, im KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>A layer with one line, or with one selected. Stations count from its first vertex.</source>
      <translation>Ein Layer mit einer Linie oder mit einer ausgewählten. Stationen zählen ab ihrem ersten Stützpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>A line for each start with a way down, in the direction of the water.</source>
      <translation>Eine Linie je Start mit einem Weg abwärts, in Fließrichtung des Wassers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A line for each surface, for a map view of its own or a print layout.</source>
      <translation>Eine Linie je Oberfläche, für eine eigene Kartenansicht oder ein Drucklayout.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A list of sets, each with a name; “Tolerances as a file to edit” writes one.</source>
      <translation>Eine Liste von Sätzen, jeder mit einem Namen; „Toleranzen als Datei zum Bearbeiten“ schreibt eine.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>A local grid: where it lies is not known.</source>
      <translation>Ein örtliches Gitter: Wo es liegt, ist nicht bekannt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>A map and a table of the ponds, with the method, its source and its limits.</source>
      <translation>Eine Karte und eine Tabelle der Tümpel, mit dem Verfahren, seiner Quelle und seinen Grenzen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>A mesh (2DM) for each surface, named after it, with its CRS beside it as .prj.</source>
      <translation>Ein Mesh (2DM) je Oberfläche, nach ihr benannt, mit ihrem KBS als .prj daneben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A mesh does not hold it. “Check the survey” finds it from the survey itself (how heights repeat); 0.015 m is usual for RTK in the open. 0: every hollow counts.</source>
      <translation>Ein Mesh enthält es nicht. „Vermessung prüfen“ findet es aus der Vermessung selbst (wie sich Höhen wiederholen); 0.015 m sind bei RTK im Freien üblich. 0: Jede Mulde zählt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A mesh layer or a mesh file, as “Build the surface” writes it.</source>
      <translation>Ein Mesh-Layer oder eine Mesh-Datei, wie „Oberfläche bilden“ sie schreibt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>A pad whose field is empty takes the value given for all.</source>
      <translation>Ein Planum mit leerem Feld übernimmt den für alle angegebenen Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>A page for each sheet.</source>
      <translation>Eine Seite je Blatt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>A place in the basin (empty: the lowest of the surface)</source>
      <translation>Ein Ort im Becken (leer: der tiefste der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A point at each station with heights, grade and their standard deviations.</source>
      <translation>Ein Punkt je Station mit Höhen, Längsneigung und deren Standardabweichungen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>A point for each arrow.</source>
      <translation>Ein Punkt je Pfeil.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>A point for each curve, with the height where its grades would meet.</source>
      <translation>Ein Punkt je Ausrundung, mit der Höhe, auf der ihre Längsneigungen sich träfen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A point for each edit: whether it applied, and if not, why.</source>
      <translation>Ein Punkt je Änderung: ob sie angewandt wurde und, wenn nicht, warum.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A point for each finding, on the surface.</source>
      <translation>Ein Punkt je Befund, auf der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>A point is stored every (m)</source>
      <translation>Ein Punkt wird gespeichert alle (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>A projected CRS, or a compound one with heights.</source>
      <translation>Ein projiziertes KBS oder ein zusammengesetztes mit Höhen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A projected CRS, or a compound one with heights; usually the one that the rover was set to. The file does not say it.</source>
      <translation>Ein projiziertes KBS oder ein zusammengesetztes mit Höhen; meist das, auf das der Rover eingestellt war. Die Datei sagt es nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>A projected CRS, which the fitted points get. Empty: that of the control layer.</source>
      <translation>Ein projiziertes KBS, das die eingepassten Punkte erhalten. Leer: das des Layers der Passpunkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A receiver log can give both; other files need a geoid separation to change them.</source>
      <translation>Ein Empfängerprotokoll kann beide angeben; andere Dateien brauchen eine Geoidundulation, um sie umzurechnen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>A road, path or bank from a typical section at given heights, with its haul.</source>
      <translation>Eine Straße, ein Weg oder ein Damm aus einem Regelquerschnitt auf gegebenen Höhen, mit Massentransport.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at each bend.</source>
      <translation>Ein Querprofil an jedem Knick.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at the beginning and at the end.</source>
      <translation>Ein Querprofil am Anfang und am Ende.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A spike is off its neighbours by more than this, and far more than they scatter.</source>
      <translation>Ein Ausreißer weicht um mehr als dies von seinen Nachbarn ab und weit mehr, als diese streuen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>A surface has one height at a place, so faces lean by this much.</source>
      <translation>Eine Oberfläche hat an einem Ort nur eine Höhe, Wände neigen sich daher um diesen Betrag.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of lines of the file to use, flag or reject: columns line, status and reason; of several files also source, the name of the file as in the field source of the points.</source>
      <translation>Eine Tabelle der Zeilen der Datei, die zu verwenden, zu markieren oder zu verwerfen sind: Spalten line, status und reason; bei mehreren Dateien auch source, der Name der Datei wie im Feld source der Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>A table of the ground that drains to each inlet, the rim and hollows, in m².</source>
      <translation>Eine Tabelle des Geländes, das zu jedem Einlauf, zum Rand und in Mulden entwässert, in m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of the lines that are no points: line number, reason and text.</source>
      <translation>Eine Tabelle der Zeilen, die keine Punkte sind: Zeilennummer, Grund und Text.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>A table of the stretches off the surface: feature, start and end along the line and length (m), and their places in the CRS.</source>
      <translation>Eine Tabelle der Strecken neben der Oberfläche: Objekt, Anfang und Ende entlang der Linie und Länge (m) und ihre Orte im KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, boundary, void, not_ground or check.</source>
      <translation>Eine Tabelle mit den Spalten code, kind, layer und close. Die Art (kind) sagt, was ein Code bedeutet: ground, breakline, boundary, void, not_ground oder check.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A table, a row for each section; only with a second surface.</source>
      <translation>Eine Tabelle, eine Zeile je Querprofil; nur mit einer zweiten Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A table: where a run met others (places_met, the degrees of freedom), the standard deviation of a height with its 95 % interval, and what the receiver claims, in millimetres.</source>
      <translation>Eine Tabelle: wo ein Lauf andere traf (places_met, die Freiheitsgrade), die Standardabweichung einer Höhe mit ihrem 95-%-Intervall und was der Empfänger angibt, in Millimetern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>About 4 walking; what you drive with a vehicle.</source>
      <translation>Etwa 4 zu Fuß; mit einem Fahrzeug, was Sie fahren.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>About so far from one label to the next; a line shorter than that has one at most.</source>
      <translation>Etwa so weit von einer Beschriftung zur nächsten; eine kürzere Linie hat höchstens eine.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>About the distance of the survey's points along the line.</source>
      <translation>Etwa der Abstand der Vermessungspunkte entlang der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>About the spacing of the survey's points shows all that they know.</source>
      <translation>Etwa der Abstand der Vermessungspunkte zeigt alles, was sie wissen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1.</source>
      <translation>Über 0 und höchstens 1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1: the share of the rain that runs off.</source>
      <translation>Über 0 und höchstens 1: der Anteil des Regens, der abfließt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Above the bases, all together (m³)</source>
      <translation>Über den Basen, alle zusammen (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Accept “{name}”</source>
      <translation>„{name}“ annehmen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy at 95 % by NSSDA (m)</source>
      <translation>Genauigkeit bei 95 % nach NSSDA (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy statement</source>
      <translation>Genauigkeitsaussage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Add the meshes to the map when done</source>
      <translation>Die Meshes nach Abschluss zur Karte hinzufügen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Add the surface to the map when done</source>
      <translation>Die Oberfläche nach Abschluss zur Karte hinzufügen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Add the surfaces to the map when done</source>
      <translation>Die Oberflächen nach Abschluss zur Karte hinzufügen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to ground coordinates, taken off on the way back.</source>
      <translation>Zu Geländekoordinaten addiert, auf dem Rückweg abgezogen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to the mean height of the points to get the ellipsoidal height.</source>
      <translation>Zur mittleren Höhe der Punkte addiert, um die ellipsoidische Höhe zu erhalten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Adds how far the ground departs from the straight lines between points, judged from the surface's own roughness. Switch it off where the existing surface is a design.</source>
      <translation>Berücksichtigt zusätzlich, wie weit das Gelände von den Geraden zwischen Punkten abweicht, beurteilt aus der eigenen Rauheit der Oberfläche. Schalten Sie es ab, wo die vorhandene Oberfläche eine Planung ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Adds the surface's height, slope, aspect and triangle to points.</source>
      <translation>Fügt Punkten Höhe, Neigung, Exposition und Dreieck der Oberfläche hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Add…</source>
      <translation>Hinzufügen …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments</source>
      <translation>Achsen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments read</source>
      <translation>Gelesene Achsen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Alignments written</source>
      <translation>Geschriebene Achsen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>All edits of this run in their order, for the next one, those that did not apply too.</source>
      <translation>Alle Änderungen dieses Laufs in ihrer Reihenfolge, für den nächsten, auch die nicht anwendbaren.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>All points of the survey in the CRS of the control.</source>
      <translation>Alle Punkte der Vermessung im KBS der Passpunkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>All points with their attributes; without a CRS where they are on the ground.</source>
      <translation>Alle Punkte mit ihren Attributen; ohne KBS, wo sie im Gelände sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>All points, with status, reason, check_status and check_reason.</source>
      <translation>Alle Punkte, mit status, reason, check_status und check_reason.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>All water that comes to a triangle no farther than this from the inlet. 0: the triangles it is in or touches. Between points far apart a triangle is large.</source>
      <translation>Alles Wasser, das zu einem Dreieck gelangt, das nicht weiter als dies vom Einlauf entfernt ist. 0: die Dreiecke, in denen er liegt oder die er berührt. Zwischen weit entfernten Punkten ist ein Dreieck groß.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Along its first feature the volume is also told by average end areas and by the prismoidal formula, in the HTML report.</source>
      <translation>Entlang ihres ersten Objekts wird das Volumen im HTML-Bericht auch mit der Querprofilmethode (gemittelte Endflächen) und der Prismatoidformel angegeben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Also as PDF</source>
      <translation>Auch als PDF</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Also at the corners of lines</source>
      <translation>Auch an den Ecken von Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the ends of the line</source>
      <translation>Auch an den Enden der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the vertices of the line</source>
      <translation>Auch an den Stützpunkten der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>An indication of the peak flow of catchments, Q = C i A.</source>
      <translation>Ein Hinweis auf den Spitzenabfluss von Einzugsgebieten, Q = C i A.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: to which edge the lane leads water.</source>
      <translation>Ein Hinweis: zu welchem Rand die Fahrbahn Wasser führt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: where water stands along the two offsets.</source>
      <translation>Ein Hinweis: wo Wasser entlang der beiden Abstände steht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Any lines, such as a centreline or the edges of parcels.</source>
      <translation>Beliebige Linien, etwa eine Achse oder die Grenzen von Flurstücken.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Any points; a multipoint counts as its points.</source>
      <translation>Beliebige Punkte; ein Multipunkt zählt als seine Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Applied</source>
      <translation>Angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Area</source>
      <translation>Fläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Area (m²)</source>
      <translation>Fläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area and volume of the water in a basin by its level, from the pit to the spill.</source>
      <translation>Fläche und Volumen des Wassers in einem Becken nach seinem Pegel, vom Tiefpunkt bis zum Überlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area at the spill level (m²)</source>
      <translation>Fläche bei Überlaufhöhe (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area compared (m²)</source>
      <translation>Verglichene Fläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of cut (m²)</source>
      <translation>Abtragsfläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of fill (m²)</source>
      <translation>Auftragsfläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area of the surface (m²)</source>
      <translation>Flächeninhalt der Oberfläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area that drains nowhere until ponds are full (m²)</source>
      <translation>Fläche, die nirgendwohin abläuft, bis die Tümpel voll sind (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Area under water when all are full (m²)</source>
      <translation>Fläche unter Wasser, wenn alle voll sind (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than a limit</source>
      <translation>Flächen, flacher als ein Grenzwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than {limit:g} %: {count}, together {area:.1f} m², {share:.1f} % of the surface.</source>
      <translation>Flächen, flacher als {limit:g} %: {count}, zusammen {area:.1f} m², {share:.1f} % der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Areas of cut and fill</source>
      <translation>Flächen von Abtrag und Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows down the slope at a stated spacing, larger where it is steeper.</source>
      <translation>Pfeile hangabwärts in angegebenem Abstand, größer, wo es steiler ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows of flow</source>
      <translation>Fließpfeile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows: {count}, {spacing:g} m apart.</source>
      <translation>Pfeile: {count}, Abstand {spacing:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>As in 1.5 or 1,5.</source>
      <translation>Wie in 1.5 oder 1,5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in the check of a road against limits.</source>
      <translation>Wie bei der Prüfung einer Straße gegen Grenzwerte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in “Import survey points”.</source>
      <translation>Wie in „Vermessungspunkte importieren“.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>As left.</source>
      <translation>Wie links.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>As left. One side may be negative for a walk that lies all on the other.</source>
      <translation>Wie links. Eine Seite darf negativ sein, für einen Weg, der ganz auf der anderen liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>As polygons with slope and area; they make it large.</source>
      <translation>Als Polygone mit Neigung und Fläche; sie machen die Datei groß.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>As the data collector takes it.</source>
      <translation>Wie das Feldgerät es einliest.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>As you look along the line from its first vertex.</source>
      <translation>In Blickrichtung der Linie von ihrem ersten Stützpunkt aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As “Check the survey” does.</source>
      <translation>Wie „Vermessung prüfen“ es tut.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>At the middle of each pad's bounding box. Where cut and fill are to balance: a first guess.</source>
      <translation>In der Mitte des umgebenden Rechtecks jedes Planums. Wo Abtrag und Auftrag sich ausgleichen sollen: ein erster Näherungswert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>At their design heights, coloured by cut and fill.</source>
      <translation>Auf ihren Sollhöhen, nach Abtrag und Auftrag eingefärbt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>At this scale labels have the size and spacing they need.</source>
      <translation>In diesem Maßstab haben Beschriftungen die nötige Größe und den nötigen Abstand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Balanced height (in the unit of the CRS)</source>
      <translation>Ausgleichshöhe (in der Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Base</source>
      <translation>Basis</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Base (in the unit above)</source>
      <translation>Basis (in der Einheit oben)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Bearing of the grid (degrees)</source>
      <translation>Richtung des Rasters (Grad)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Before numbers and stations</source>
      <translation>Vor Zahlen und Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Before or after</source>
      <translation>Vorher oder nachher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Below the bases, all together (m³)</source>
      <translation>Unter den Basen, alle zusammen (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Besides whole stations and the ends.</source>
      <translation>Zusätzlich zu ganzen Stationen und den Enden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Between cells</source>
      <translation>Zwischen Zellen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Between several codes on one point</source>
      <translation>Zwischen mehreren Codes an einem Punkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Between them the strip runs straight; corners of the line have stations of their own.</source>
      <translation>Dazwischen verläuft der Streifen gerade; Knicke der Linie haben eigene Stationen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Boundary</source>
      <translation>Umring</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Boundary (empty: that of the surface)</source>
      <translation>Umring (leer: der der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Breakline</source>
      <translation>Bruchkante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Breaklines (empty: those of the surface)</source>
      <translation>Bruchkanten (leer: die der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries</source>
      <translation>Bruchkanten und Grenzen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries read</source>
      <translation>Gelesene Bruchkanten und Grenzen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Breaklines of the design</source>
      <translation>Bruchkanten der Planung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines without heights</source>
      <translation>Bruchkanten ohne Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines, boundary and voids from code and line number of the points.</source>
      <translation>Bruchkanten, Umring und Aussparungen aus Code und Liniennummer der Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Breaklines, boundary and voids, such as the layer that “Build the surface” writes.</source>
      <translation>Bruchkanten, Umring und Aussparungen, etwa der Layer, den „Oberfläche bilden“ schreibt.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Build the surface</source>
      <translation>Oberfläche bilden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>By class of depth.</source>
      <translation>Nach Tiefenklasse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>By hand; the checks said:</source>
      <translation>Von Hand; die Prüfungen sagten:</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS</source>
      <translation>KBS</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>CRS (empty: as the file says)</source>
      <translation>KBS (leer: wie in der Datei angegeben)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>CRS of the control points</source>
      <translation>KBS der Passpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS of the coordinates in the file</source>
      <translation>KBS der Koordinaten in der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>CRS of the coordinates in the file, if another</source>
      <translation>KBS der Koordinaten in der Datei, falls ein anderes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>CRS of the grid (empty: that of the points)</source>
      <translation>KBS des Rasters (leer: das der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>CRS of the points wanted</source>
      <translation>KBS der gewünschten Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>CRS of the surface (empty: as stored with it)</source>
      <translation>KBS der Oberfläche (leer: wie mit ihr gespeichert)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>CSV files (*.csv)</source>
      <translation>CSV-Dateien (*.csv)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Calm noise: move heights by up to (m; 0: not at all)</source>
      <translation>Rauschen glätten: Höhen verschieben um bis zu (m; 0: gar nicht)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Cancel</source>
      <translation>Abbrechen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/gui/running.py" />
      <source>Cancelled.</source>
      <translation>Abgebrochen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Cancelled: there is no result.</source>
      <translation>Abgebrochen: Es gibt kein Ergebnis.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Catchment</source>
      <translation>Einzugsgebiet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Catchments</source>
      <translation>Einzugsgebiete</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Catchments before and after</source>
      <translation>Einzugsgebiete vorher und nachher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Catchments: {CATCHMENTS}, together {AREA:.1f} m²; {NOWHERE:.1f} m² of it drain nowhere.</source>
      <translation>Einzugsgebiete: {CATCHMENTS}, zusammen {AREA:.1f} m²; {NOWHERE:.1f} m² davon laufen nirgendwohin ab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cell size (in the unit of the surface's CRS)</source>
      <translation>Zellgröße (in der Einheit des KBS der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cell size of the depth raster (in the unit of the CRS)</source>
      <translation>Zellgröße des Tiefenrasters (in der Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Cells of the GeoTIFF (unit of the CRS)</source>
      <translation>Zellen des GeoTIFF (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cells on the surface</source>
      <translation>Zellen auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Centreline</source>
      <translation>Achse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Centreline (one line)</source>
      <translation>Achse (eine Linie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Chance of noise (%)</source>
      <translation>Wahrscheinlichkeit von Rauschen (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Change</source>
      <translation>Änderung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Change of grade (%)</source>
      <translation>Neigungswechsel (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Change of the water in full ponds (m³)</source>
      <translation>Änderung des Wassers in vollen Tümpeln (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Changed surface (2DM mesh)</source>
      <translation>Geänderte Oberfläche (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels</source>
      <translation>Rinnen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels: least ground that drains to them (m²)</source>
      <translation>Rinnen: kleinste Fläche, die zu ihnen abläuft (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Check a line against limits</source>
      <translation>Linie gegen Grenzwerte prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Check points</source>
      <translation>Kontrollpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (CSV file)</source>
      <translation>Kontrollpunkte (CSV-Datei)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (layer)</source>
      <translation>Kontrollpunkte (Layer)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points compared</source>
      <translation>Verglichene Kontrollpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points on the surface</source>
      <translation>Kontrollpunkte auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Check the coverage</source>
      <translation>Abdeckung prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Check the points automatically</source>
      <translation>Die Punkte automatisch prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Check the survey</source>
      <translation>Vermessung prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Check them</source>
      <translation>Prüfen Sie sie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Checked points</source>
      <translation>Geprüfte Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose a folder for the products.</source>
      <translation>Wählen Sie einen Ordner für die Ergebnisse.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Choose a survey file first; then it can be shown here.</source>
      <translation>Wählen Sie zuerst eine Vermessungsdatei; dann lässt sie sich hier zeigen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Choose a survey file or a layer of points, one of both.</source>
      <translation>Wählen Sie eine Vermessungsdatei oder einen Layer mit Punkten, eines von beiden.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose the CRS from a list</source>
      <translation>KBS aus einer Liste wählen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose the survey file.</source>
      <translation>Wählen Sie die Vermessungsdatei.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles without a measured point, the widest first; they do not overlap.</source>
      <translation>Kreise ohne gemessenen Punkt, die weitesten zuerst; sie überlappen sich nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: at most so many</source>
      <translation>Kreise: höchstens so viele</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: wider than this radius (m; empty: half of that)</source>
      <translation>Kreise: weiter als dieser Radius (m; leer: die Hälfte davon)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class</source>
      <translation>Klasse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class of slope (from 0)</source>
      <translation>Neigungsklasse (ab 0)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Classes that occur</source>
      <translation>Vorkommende Klassen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Clockwise from grid north.</source>
      <translation>Im Uhrzeigersinn von Gitternord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Code</source>
      <translation>Code</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Code field (empty: “code” where there is one)</source>
      <translation>Feld des Codes (leer: „code“, wo es eines gibt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Code field (of points)</source>
      <translation>Feld des Codes (der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code table (CSV; empty: the one that comes with Hummock)</source>
      <translation>Codetabelle (CSV; leer: die mit Hummock gelieferte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code tables (*.csv *.txt);;All files (*)</source>
      <translation>Codetabellen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Columns</source>
      <translation>Spalten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Columns (empty: as recognised)</source>
      <translation>Spalten (leer: wie erkannt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Columns of the table</source>
      <translation>Spalten der Tabelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns side (left, right, both), part (its name, or ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) and run (1 : n), rows from the centreline outward.</source>
      <translation>Spalten side (left, right, both), part (sein Name oder ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) und run (1 : n), Zeilen von der Achse nach außen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns station and height, in metres, and if wanted curve, the length of the vertical curve about the place. Straight between them.</source>
      <translation>Spalten station und height in Metern und, falls gewünscht, curve, die Länge der Ausrundung um die Stelle. Dazwischen gerade.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Columns: {roles}</source>
      <translation>Spalten: {roles}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor</source>
      <translation>Gesamtmaßstabsfaktor</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor (empty: computed at the origin)</source>
      <translation>Gesamtmaßstabsfaktor (leer: am Ursprung berechnet)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Comment lines start with</source>
      <translation>Kommentarzeilen beginnen mit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Compares ponds, catchments and paths on the ground and on a design.</source>
      <translation>Vergleicht Tümpel, Einzugsgebiete und Wege im Gelände und in einer Planung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Contour</source>
      <translation>Höhenlinie</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Contour interval</source>
      <translation>Äquidistanz</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Contour interval to expect (m)</source>
      <translation>Erwartete Äquidistanz (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Contour interval {interval:g} {unit}, index every {every}. For drawing, heights were moved by up to {moved:.3f} m and lines by up to {shifted:.2f} m in plan.</source>
      <translation>Äquidistanz {interval:g} {unit}, Zähllinie alle {every}. Für die Darstellung wurden Höhen um bis zu {moved:.3f} m und Linien um bis zu {shifted:.2f} m im Grundriss verschoben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contour labels</source>
      <translation>Beschriftungen der Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contours</source>
      <translation>Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours every {interval} {unit}</source>
      <translation>Höhenlinien alle {interval} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Contours for the sheet</source>
      <translation>Höhenlinien für das Blatt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours of a surface</source>
      <translation>Höhenlinien einer Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Contours, labels, spot heights and sheets, with their styles.</source>
      <translation>Höhenlinien, Beschriftungen, Höhenpunkte und Blätter mit ihren Stilen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours: {count}.</source>
      <translation>Höhenlinien: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Control point</source>
      <translation>Passpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Control points</source>
      <translation>Passpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points (CSV)</source>
      <translation>Passpunkte (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points left out of the fit</source>
      <translation>Bei der Einpassung ausgelassene Passpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points that do not fit</source>
      <translation>Passpunkte, die nicht passen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Coordinate operations accepted by name</source>
      <translation>Namentlich angenommene Koordinatenoperationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Coordinates: {crs}</source>
      <translation>Koordinaten: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Corners that lines or polygons share are set out once.</source>
      <translation>Ecken, die Linien oder Polygone gemeinsam haben, werden einmal abgesteckt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Cover field (empty: the field cover, if there is one)</source>
      <translation>Feld des Bewuchses (leer: das Feld cover, falls es eines gibt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Crest</source>
      <translation>Kuppe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Cross pass</source>
      <translation>Querbahn</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Cross passes: {length:.0f} m (lines: {count})</source>
      <translation>Querbahnen: {length:.0f} m (Linien: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cross-sections</source>
      <translation>Querprofile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Crossfall is taken from here to the right end; in the unit chosen. Keep both inside kerbs and edges.</source>
      <translation>Die Querneigung gilt von hier bis zum rechten Ende; in der gewählten Einheit. Bleiben Sie mit beiden innerhalb von Borden und Rändern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the lane (%; below 0 falls outward)</source>
      <translation>Querneigung der Fahrbahn (%; unter 0 fällt nach außen)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the shoulder (%)</source>
      <translation>Querneigung des Banketts (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Crossfall to the edges</source>
      <translation>Querneigung zu den Rändern</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Crossfalls</source>
      <translation>Querneigungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Curves at most</source>
      <translation>Ausrundungen höchstens</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut</source>
      <translation>Abtrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut (m³)</source>
      <translation>Abtrag (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance at {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</source>
      <translation>Abtrag und Auftrag gleichen sich aus bei {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance with the design shifted by {shift:+.3f} ± {half:.3f} m (95 %).</source>
      <translation>Abtrag und Auftrag gleichen sich aus, wenn die Planung um {shift:+.3f} ± {half:.3f} m verschoben wird (95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from it to the survey. Give a design or an earlier surface.</source>
      <translation>Abtrag und Auftrag von ihr zur Vermessung. Geben Sie eine Planung oder eine frühere Oberfläche an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from the survey to it.</source>
      <translation>Abtrag und Auftrag von der Vermessung zu ihr.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill of level pads, with slopes to the ground.</source>
      <translation>Abtrag und Auftrag ebener Plana, mit Böschungen zum Gelände.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Cut by region and material</source>
      <translation>Abtrag nach Gebiet und Material</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut or fill not known</source>
      <translation>Abtrag oder Auftrag nicht bekannt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Cut there (m³)</source>
      <translation>Abtrag dort (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Abtrag {value:.2f} ± {half:.2f} m³ (95 %) auf {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and net with their doubt.</source>
      <translation>Abtrag, Auftrag und Differenz mit ihrer Unsicherheit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Cut, fill and the running balance from station to station.</source>
      <translation>Abtrag, Auftrag und laufende Bilanz von Station zu Station.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and what is left over about the balanced height; empty without a balance.</source>
      <translation>Abtrag, Auftrag und Überschuss um die Ausgleichshöhe; leer ohne Ausgleich.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, half its 95 % interval (m³)</source>
      <translation>Abtrag, halbes 95-%-Intervall (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Cut, second surface below ({unit})</source>
      <translation>Abtrag, zweite Oberfläche darunter ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cuts surfaces square to a line, with areas of cut and fill, also as sheets.</source>
      <translation>Schneidet Oberflächen rechtwinklig zu einer Linie, mit Abtrags- und Auftragsflächen, auch als Blätter.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Daylight lines</source>
      <translation>Böschungsschnittlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Decimal sign</source>
      <translation>Dezimalzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Decimals</source>
      <translation>Nachkommastellen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Decimals of spot heights</source>
      <translation>Nachkommastellen der Höhenpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Decisions</source>
      <translation>Entscheidungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Decisions on points (CSV)</source>
      <translation>Entscheidungen über Punkte (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Deeper</source>
      <translation>Tiefer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Deepest cut (m)</source>
      <translation>Tiefster Abtrag (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Delimited text or a receiver log, as the rover or its software wrote it. It is only read.</source>
      <translation>Text mit Trennzeichen oder ein Empfängerprotokoll, wie der Rover oder seine Software es schrieb. Es wird nur gelesen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Delimited text or a receiver log. It is only read.</source>
      <translation>Text mit Trennzeichen oder ein Empfängerprotokoll. Es wird nur gelesen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Departure not worth a curve (m)</source>
      <translation>Abweichung, die keine Ausrundung lohnt (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Depression contour</source>
      <translation>Höhenlinie einer Senke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth (GeoTIFF)</source>
      <translation>Tiefe (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Depth (m)</source>
      <translation>Tiefe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Depth below the sill (m)</source>
      <translation>Tiefe unter der Überlaufschwelle (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth classes (m; empty: round ones)</source>
      <translation>Tiefenklassen (m; leer: runde)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/depthstyles.py" />
      <source>Depth of cut and fill</source>
      <translation>Tiefe von Abtrag und Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth of cut and fill (polygons)</source>
      <translation>Tiefe von Abtrag und Auftrag (Polygone)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Depth of the ditch below the edge (m; 0: none)</source>
      <translation>Tiefe des Grabens unter dem Rand (m; 0: keiner)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design (2DM mesh)</source>
      <translation>Planung (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Design height (unit of the CRS)</source>
      <translation>Sollhöhe (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Design heights are the Z of the layer</source>
      <translation>Sollhöhen sind die Z-Werte des Layers</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Design less existing height at the cell middles, in the unit of the CRS; fill above 0.</source>
      <translation>Sollhöhe minus vorhandene Höhe in den Zellmitten, in der Einheit des KBS; Auftrag über 0.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Design surface (2DM mesh)</source>
      <translation>Planungsoberfläche (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, for the next step</source>
      <translation>Planung, für den nächsten Schritt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, height</source>
      <translation>Planung, Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Design, or the later survey (2DM mesh)</source>
      <translation>Planung oder die spätere Vermessung (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Direction</source>
      <translation>Richtung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Direction (degrees from grid north)</source>
      <translation>Richtung (Grad von Gitternord)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Direction of the passes (degrees from grid north)</source>
      <translation>Richtung der Bahnen (Grad von Gitternord)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Distance (m)</source>
      <translation>Abstand (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Distance along the line (m)</source>
      <translation>Entfernung entlang der Linie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Distance between heights (m)</source>
      <translation>Abstand zwischen Höhen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Distance between stations</source>
      <translation>Abstand zwischen Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Distance of labels along a line on the plan (mm)</source>
      <translation>Abstand der Beschriftungen entlang einer Linie auf dem Plan (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Distance of stations (m)</source>
      <translation>Abstand der Stationen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Distance of the sections (m)</source>
      <translation>Abstand der Querprofile (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Divides a surface by where its water goes: inlets, ponds, outlets, the rim.</source>
      <translation>Teilt eine Oberfläche danach, wohin ihr Wasser fließt: Einläufe, Tümpel, Ausläufe, Rand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Divides a surface into areas by classes of slope.</source>
      <translation>Teilt eine Oberfläche in Flächen nach Neigungsklassen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Does the whole job from the survey file and tells it in HTML and PDF.</source>
      <translation>Erledigt die ganze Arbeit ab der Vermessungsdatei und berichtet darüber in HTML und PDF.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Done.</source>
      <translation>Fertig.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Doubt of the ground between the points</source>
      <translation>Unsicherheit des Geländes zwischen den Punkten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drained to</source>
      <translation>Abgelaufen nach</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains now to</source>
      <translation>Läuft jetzt ab nach</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until full</source>
      <translation>Läuft nirgendwohin ab, bis voll</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (%)</source>
      <translation>Läuft nirgendwohin ab, bis die Tümpel voll sind (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (m²)</source>
      <translation>Läuft nirgendwohin ab, bis die Tümpel voll sind (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains to</source>
      <translation>Läuft ab nach</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Draw the contours</source>
      <translation>Höhenlinien zeichnen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below all else, in the style that the layer has.</source>
      <translation>Unter allem anderen gezeichnet, im Stil des Layers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below the contours in their own styles, the first on top. QGIS places the labels they have; where labels crowd, not alike in every run.</source>
      <translation>Unter den Höhenlinien in ihren eigenen Stilen gezeichnet, der erste zuoberst. Ihre Beschriftungen setzt QGIS; wo Beschriftungen sich drängen, nicht in jedem Lauf gleich.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn by</source>
      <translation>Gezeichnet von</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Drawn from point to point (snap to them); they become edges. A column “edit” may say swap_edge: the line then lies on the edge to be replaced by the other diagonal.</source>
      <translation>Von Punkt zu Punkt gezeichnet (auf sie fangen); sie werden Kanten. Eine Spalte „edit“ darf swap_edge enthalten: Die Linie liegt dann auf der Kante, die durch die andere Diagonale zu ersetzen ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn on</source>
      <translation>Gezeichnet am</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Draws a plan at a scale as print layout and PDF, on one sheet or several.</source>
      <translation>Zeichnet einen Lageplan im Maßstab als Drucklayout und PDF, auf einem oder mehreren Blättern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Draws calm, smooth contours with labels and spot heights for a plan.</source>
      <translation>Zeichnet ruhige, glatte Höhenlinien mit Beschriftungen und Höhenpunkten für einen Lageplan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Draws contours exactly on the triangles of a surface.</source>
      <translation>Zeichnet Höhenlinien genau auf den Dreiecken einer Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Drift shared by neighbouring points (m, 1 sigma)</source>
      <translation>Gemeinsame Drift benachbarter Punkte (m, 1 Sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drop (m)</source>
      <translation>Fallhöhe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Drops vertices as long as the surface stays within a tolerance in height.</source>
      <translation>Lässt Stützpunkte weg, solange die Oberfläche innerhalb einer Höhentoleranz bleibt.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>E</source>
      <translation>E</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Each check point with the height of the surface there; off_m is surface less check.</source>
      <translation>Jeder Kontrollpunkt mit der Höhe der Oberfläche dort; off_m ist Oberfläche minus Kontrolle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Each line becomes two breaklines a small offset apart, a vertical face between them.</source>
      <translation>Jede Linie wird zu zwei Bruchkanten in kleinem Abstand, dazwischen eine senkrechte Wand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Each polygon feature is one region, with all its parts and holes.</source>
      <translation>Jedes Polygonobjekt ist ein Gebiet, mit allen Teilen und Löchern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Each polygon is graded to a level or a sloping plane; holes stay as they are, but slopes.</source>
      <translation>Jedes Polygon wird auf eine Höhe oder eine geneigte Ebene profiliert; Löcher bleiben, wie sie sind, bis auf Böschungen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Each stretch of a line, around its station, is an inlet of its own. Empty: each line is one inlet.</source>
      <translation>Jedes Stück einer Linie, um seine Station, ist ein eigener Einlauf. Leer: Jede Linie ist ein Einlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Each triangle as a polygon with its slope (%) and plan area (m²).</source>
      <translation>Jedes Dreieck als Polygon mit seiner Neigung (%) und Grundrissfläche (m²).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Earlier surface (2DM mesh)</source>
      <translation>Frühere Oberfläche (2DM-Mesh)</translation>
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
      <translation>Erdbau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Easting (unit of the CRS)</source>
      <translation>Ostwert (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Easting of the origin</source>
      <translation>Ostwert des Ursprungs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Edges and breaks of platform and slopes with their heights, by kind.</source>
      <translation>Kanten und Brüche von Krone und Böschungen mit ihren Höhen, nach Art.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Edges with slopes of their own (lines)</source>
      <translation>Kanten mit eigenen Böschungen (Linien)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json)</source>
      <translation>Änderungen (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json);;All files (*)</source>
      <translation>Änderungen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits applied</source>
      <translation>Angewandte Änderungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits applied: {applied}, not applied: {missed}.</source>
      <translation>Änderungen angewandt: {applied}, nicht angewandt: {missed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits kept from before (JSON)</source>
      <translation>Von früher behaltene Änderungen (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits that did not apply</source>
      <translation>Änderungen, die nicht anwendbar waren</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits to keep (JSON)</source>
      <translation>Zu behaltende Änderungen (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: a point is meant from up to (m)</source>
      <translation>Änderungen: Ein Punkt ist gemeint aus bis zu (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: lines to force an edge</source>
      <translation>Änderungen: Linien, die eine Kante erzwingen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: points to add or move</source>
      <translation>Änderungen: Punkte zum Hinzufügen oder Verschieben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: polygons to drop triangles</source>
      <translation>Änderungen: Polygone, die Dreiecke entfernen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ellipsoidal height of the site (m; empty: from the points)</source>
      <translation>Ellipsoidische Höhe des Geländes (m; leer: aus den Punkten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Empty where a point never has several codes.</source>
      <translation>Leer, wo ein Punkt nie mehrere Codes hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: as many as tell the noise of the survey to 15 %, at most five.</source>
      <translation>Leer: so viele, dass das Rauschen der Vermessung auf 15 % bestimmt ist, höchstens fünf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Empty: ground that only one surface covers is left out. A height, in the unit of the CRS, counts it against that level.</source>
      <translation>Leer: Gelände, das nur eine Oberfläche bedeckt, bleibt weg. Eine Höhe in der Einheit des KBS rechnet es gegen dieses Niveau.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <location filename="../plugin/processing/flowpaths.py" />
      <location filename="../plugin/processing/waterchange.py" />
      <source>Empty: one that suits the size of the site.</source>
      <translation>Leer: einer, der zur Größe des Geländes passt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: so that the fewest passes are needed.</source>
      <translation>Leer: so, dass die wenigsten Bahnen nötig sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.</source>
      <translation>Leer: das der gewünschten Punkte, WGS 84 bei Grad. Ein geographisches KBS für Breiten und Längen oder ein Empfängerprotokoll, ein projiziertes für Ost- und Nordwerte; die Koordinaten werden dann transformiert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the author in the project’s properties.</source>
      <translation>Leer: der Autor aus den Projekteigenschaften.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Empty: the finest class of whole centimetres that is met.</source>
      <translation>Leer: die feinste eingehaltene Klasse in ganzen Zentimetern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the title in the project’s properties.</source>
      <translation>Leer: der Titel aus den Projekteigenschaften.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends at</source>
      <translation>Endet bei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends in</source>
      <translation>Endet in</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Ends of lines farther apart are taken for different lines.</source>
      <translation>Linienenden, die weiter auseinander liegen, gelten als verschiedene Linien.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Even depth, wherever earth is moved; cut and fill are then told from the bared ground.</source>
      <translation>Gleichmäßige Tiefe, wo immer Erde bewegt wird; Abtrag und Auftrag gelten dann ab dem abgeschobenen Gelände.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Every height taken, and how far it is from the fit.</source>
      <translation>Jede verwendete Höhe und ihr Abstand von der Einpassung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Every point with section, offset and height; as CSV where the file ends in .csv.</source>
      <translation>Jeder Punkt mit Querprofil, Abstand und Höhe; als CSV, wenn die Datei auf .csv endet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Every rule along the whole line; as CSV where the file ends in .csv.</source>
      <translation>Jede Regel entlang der ganzen Linie; als CSV, wenn die Datei auf .csv endet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Every so many contours one is drawn heavier and labelled.</source>
      <translation>Jede sovielte Höhenlinie wird kräftiger gezeichnet und beschriftet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Every start with the same columns, also those in a pit or off the surface.</source>
      <translation>Jeder Start mit denselben Spalten, auch die in einem Tiefpunkt oder neben der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Exact cut and fill from one surface to another, with how sure they are.</source>
      <translation>Genauer Abtrag und Auftrag von einer Oberfläche zur anderen, mit ihrer Sicherheit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Exact cut and fill in each polygon of a layer, by depth and by material.</source>
      <translation>Genauer Abtrag und Auftrag in jedem Polygon eines Layers, nach Tiefe und Material.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Exact cut and fill to make a surface level, or an even slope.</source>
      <translation>Genauer Abtrag und Auftrag, um eine Oberfläche eben oder gleichmäßig geneigt zu machen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Exact for all work; smooth for hillshades and pictures.</source>
      <translation>Genau für alle Arbeit; glatt für Schummerungen und Bilder.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Exact volume above and below the base that a toe or rim line spans.</source>
      <translation>Genaues Volumen über und unter der Basis, die eine Fuß- oder Randlinie aufspannt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Exaggeration of heights in the plane</source>
      <translation>Überhöhung der Höhen in der Ebene</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Existing height (unit of the CRS)</source>
      <translation>Vorhandene Höhe (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Existing surface (2DM mesh)</source>
      <translation>Vorhandene Oberfläche (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Existing surface, or the earlier survey (2DM mesh)</source>
      <translation>Vorhandene Oberfläche oder die frühere Vermessung (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces name their neighbours</source>
      <translation>Flächen nennen ihre Nachbarn</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces written</source>
      <translation>Geschriebene Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Fail</source>
      <translation>Nicht erfüllt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Fall of the pads (%)</source>
      <translation>Gefälle der Plana (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Fall over run in percent.</source>
      <translation>Fall durch Strecke in Prozent.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the left edge (%)</source>
      <translation>Gefälle zum linken Rand (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the right edge (%)</source>
      <translation>Gefälle zum rechten Rand (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Falls towards (degrees from grid north)</source>
      <translation>Fällt in Richtung (Grad von Gitternord)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Feature of the start</source>
      <translation>Objekt des Starts</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Field of design heights</source>
      <translation>Feld der Sollhöhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field of the ground cover with its runoff coefficient</source>
      <translation>Feld der Bodenbedeckung mit ihrem Abflussbeiwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the line number (empty: it stands in the code)</source>
      <translation>Feld der Liniennummer (leer: Sie steht im Code)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the words (empty: they stand in the code)</source>
      <translation>Feld der Wörter (leer: Sie stehen im Code)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the direction of the fall (degrees)</source>
      <translation>Feld mit der Richtung des Gefälles (Grad)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the fall (%)</source>
      <translation>Feld mit dem Gefälle (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Field with the height of the face (m; empty: as above)</source>
      <translation>Feld mit der Höhe der Wand (m; leer: wie oben)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the intensity</source>
      <translation>Feld mit der Niederschlagsintensität</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the level</source>
      <translation>Feld mit der Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the pads' names</source>
      <translation>Feld mit den Namen der Plana</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the runoff coefficient</source>
      <translation>Feld mit dem Abflussbeiwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of cut (1 : n)</source>
      <translation>Feld mit der Neigung der Abtragsböschung (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of fill (1 : n)</source>
      <translation>Feld mit der Neigung der Auftragsböschung (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Field with their names (empty: numbers)</source>
      <translation>Feld mit ihren Namen (leer: Nummern)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Figures, verdicts, sources and cautions.</source>
      <translation>Zahlen, Urteile, Quellen und Vorbehalte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Files</source>
      <translation>Dateien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Files of any size; those in a zip are to be unpacked first.</source>
      <translation>Dateien jeder Größe; die in einem ZIP sind vorher zu entpacken.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Files written</source>
      <translation>Geschriebene Dateien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Fill</source>
      <translation>Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill (m³)</source>
      <translation>Auftrag (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Fill from one cubic metre of cut (m³ compacted)</source>
      <translation>Auftrag aus einem Kubikmeter Abtrag (m³ verdichtet)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut (m³)</source>
      <translation>Auftrag minus Abtrag (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill less cut ({unit})</source>
      <translation>Auftrag minus Abtrag ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² compared.</source>
      <translation>Auftrag minus Abtrag {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² verglichen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill less cut, half its 95 % interval (m³)</source>
      <translation>Auftrag minus Abtrag, halbes 95-%-Intervall (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Fill there (m³)</source>
      <translation>Auftrag dort (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill to be left over for use elsewhere, or to be had from there. Topsoil that is stripped first is not in the balance.</source>
      <translation>Auftrag, der für anderswo übrig bleiben oder von dort kommen soll. Zuvor abgetragener Oberboden ist nicht im Ausgleich.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Auftrag {value:.2f} ± {half:.2f} m³ (95 %) auf {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Fill, cut below 0 (unit of the CRS)</source>
      <translation>Auftrag, Abtrag unter 0 (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill, half its 95 % interval (m³)</source>
      <translation>Auftrag, halbes 95-%-Intervall (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill, second surface above ({unit})</source>
      <translation>Auftrag, zweite Oberfläche darüber ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Find the height that balances</source>
      <translation>Die Ausgleichshöhe suchen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Findings</source>
      <translation>Befunde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Findings of the checks</source>
      <translation>Befunde der Prüfungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Finds the grades and parabolas that an existing profile follows.</source>
      <translation>Findet die Längsneigungen und Parabeln, denen ein vorhandenes Längsprofil folgt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Finds what auto-recorded points get wrong: lifted poles, lost fixes, stops, repeats.</source>
      <translation>Findet, was bei automatisch aufgezeichneten Punkten falsch ist: angehobener Stab, verlorene Lösung, Stillstand, Wiederholung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Finds where water stands, how deep and how much, and where it spills to.</source>
      <translation>Findet, wo Wasser steht, wie tief und wie viel, und wohin es überläuft.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Finest class met (cm)</source>
      <translation>Feinste eingehaltene Klasse (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground (2DM mesh)</source>
      <translation>Fertiges Gelände (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, for the next step</source>
      <translation>Fertiges Gelände, für den nächsten Schritt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, height</source>
      <translation>Fertiges Gelände, Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>First line names the columns</source>
      <translation>Erste Zeile nennt die Spalten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First line of the table.</source>
      <translation>Erste Zeile der Tabelle.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>First lines of the file</source>
      <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First number</source>
      <translation>Erste Nummer</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>First say what is open: press one of the answers above, or choose the roles.</source>
      <translation>Klären Sie zuerst, was offen ist: Klicken Sie auf eine der Antworten oben oder wählen Sie die Rollen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>First surface</source>
      <translation>Erste Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>First surface, for the next step</source>
      <translation>Erste Oberfläche, für den nächsten Schritt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit</source>
      <translation>Einpassung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit a survey to control points</source>
      <translation>Vermessung in Passpunkte einpassen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Fit grades and vertical curves</source>
      <translation>Längsneigungen und Ausrundungen einpassen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fitted points</source>
      <translation>Eingepasste Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Flagged (used)</source>
      <translation>Markiert (verwendet)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat area (m²)</source>
      <translation>Flache Fläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat areas</source>
      <translation>Flache Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flatter than (%)</source>
      <translation>Flacher als (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Folder</source>
      <translation>Ordner</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Folder for the surfaces</source>
      <translation>Ordner für die Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Folder of the job</source>
      <translation>Ordner des Auftrags</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Folder of the products</source>
      <translation>Ordner der Ergebnisse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Follows water from points, lines or areas down a surface to where it ends.</source>
      <translation>Verfolgt Wasser von Punkten, Linien oder Flächen eine Oberfläche hinab bis an sein Ende.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>For a survey that is fitted to control points in a later step.</source>
      <translation>Für eine Vermessung, die in einem späteren Schritt in Passpunkte eingepasst wird.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>For drawing only: heights were moved by up to {moved:.3f} m, then lines by up to {shifted:.3f} m in plan. Contours: {count}.</source>
      <translation>Nur zur Darstellung: Höhen wurden um bis zu {moved:.3f} m verschoben, dann Linien um bis zu {shifted:.3f} m im Grundriss. Höhenlinien: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>For files that say one unit for lengths and another for elevations.</source>
      <translation>Für Dateien, die eine Einheit für Längen und eine andere für Höhen angeben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>For points and corners that were drawn in 3D; goes before the design surface.</source>
      <translation>Für Punkte und Ecken, die in 3D gezeichnet wurden; geht der Planungsoberfläche vor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>For points whose geometry has no heights. In the unit of the heights.</source>
      <translation>Für Punkte, deren Geometrie keine Höhen hat. In der Einheit der Höhen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>For surveys that keep it in a column of its own.</source>
      <translation>Für Vermessungen, die sie in einer eigenen Spalte führen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>For the accuracy in plan, and for the survey's own check shots.</source>
      <translation>Für die Lagegenauigkeit und für die eigenen Kontrollmessungen der Vermessung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>For the areas of cut and fill; in the CRS of the first.</source>
      <translation>Für die Flächen von Abtrag und Auftrag; im KBS der ersten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the contour interval: what “Check the survey” found. Empty: what the receiver claims, which may be less than there is.</source>
      <translation>Für den Höhenlinienabstand: was „Vermessung prüfen“ gefunden hat. Leer: was der Empfänger angibt, und das kann weniger sein, als da ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the data collector.</source>
      <translation>Für das Feldgerät.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>For the number of loads of waste and borrow; empty: none are told.</source>
      <translation>Für die Zahl der Fuhren an Überschuss und Fehlmenge; leer: keine Angabe.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>For the raster and the check by a grid only; volumes do not depend on it.</source>
      <translation>Nur für das Raster und die Prüfung mit einem Raster; Volumen hängen nicht davon ab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>For the time of concentration and the frequency that your code asks for.</source>
      <translation>Für die Konzentrationszeit und die Häufigkeit, die Ihr Regelwerk verlangt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From (m along the line)</source>
      <translation>Von (m entlang der Linie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>From here water runs down to the pit.</source>
      <translation>Von hier läuft Wasser zum Tiefpunkt hinab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>From offset, right positive ({unit})</source>
      <translation>Von Abstand, rechts positiv ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>From places that have a path on both surfaces and another one after the change.</source>
      <translation>Von Orten, die auf beiden Oberflächen einen Weg haben und nach der Änderung einen anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>From section to section along the line.</source>
      <translation>Von Querprofil zu Querprofil entlang der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From station</source>
      <translation>Von Station</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>From the drawn line to the second one, such as 0.12 for a kerb drawn at its foot.</source>
      <translation>Von der gezeichneten Linie zur zweiten, etwa 0.12 für einen Bord, der am Fuß gezeichnet ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>From the standard you work to. None comes with Hummock.</source>
      <translation>Aus der Norm, nach der Sie arbeiten. Hummock bringt keine mit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>From window to window (m; empty: no overlap)</source>
      <translation>Von Fenster zu Fenster (m; leer: keine Überlappung)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Further layers for the GeoPackage</source>
      <translation>Weitere Layer für das GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Further note</source>
      <translation>Weitere Anmerkung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Further stations</source>
      <translation>Weitere Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Further surfaces</source>
      <translation>Weitere Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>GPX files (*.gpx)</source>
      <translation>GPX-Dateien (*.gpx)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Gap in a breakline</source>
      <translation>Lücke in einer Bruchkante</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gaps of the lines</source>
      <translation>Lücken der Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>GeoPackage (*.gpkg)</source>
      <translation>GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Geoid separation</source>
      <translation>Geoidundulation</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Geoid separation (m)</source>
      <translation>Geoidundulation (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a constant (m)</source>
      <translation>Geoidundulation, eine Konstante (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a grid</source>
      <translation>Geoidundulation, ein Gitter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Give a design or a level to compare with: one of them, not both.</source>
      <translation>Geben Sie zum Vergleich eine Planung oder ein Niveau an: eines davon, nicht beide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Give a file of control points, or a layer in its place (not both).</source>
      <translation>Geben Sie eine Datei mit Passpunkten oder stattdessen einen Layer an (nicht beides).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Give a survey file, or a layer of points in its place (not both).</source>
      <translation>Geben Sie eine Vermessungsdatei oder stattdessen einen Punktlayer an (nicht beides).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Give check points as a layer or as a file, not as both.</source>
      <translation>Geben Sie Kontrollpunkte als Layer oder als Datei an, nicht beides.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Give pads or a centreline, one of both.</source>
      <translation>Geben Sie Plana oder eine Achse an, eines von beiden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Give the plane by a level or by three points: one of them, not both.</source>
      <translation>Geben Sie die Ebene durch ein Niveau oder durch drei Punkte an: eines davon, nicht beide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gives lines the surface's heights, with a vertex at every triangle edge.</source>
      <translation>Gibt Linien die Höhen der Oberfläche, mit einem Stützpunkt an jeder Dreieckskante.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Goes into the source data of the first surface.</source>
      <translation>Geht in die Quelldaten (source data) der ersten Oberfläche ein.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Gone</source>
      <translation>Weg</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Grade a pad</source>
      <translation>Planum anlegen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Grade a strip along a line</source>
      <translation>Streifen entlang einer Linie anlegen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grade along a line and crossfall across it, with standard deviations.</source>
      <translation>Längsneigung entlang einer Linie und Querneigung quer dazu, mit Standardabweichungen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade along the line (%)</source>
      <translation>Längsneigung (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade at the end (%)</source>
      <translation>Längsneigung am Ende (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade, of a curve the one it begins with (%)</source>
      <translation>Längsneigung, bei einer Ausrundung die am Anfang (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades</source>
      <translation>Längsneigungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades and crossfall</source>
      <translation>Längs- und Querneigung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Grades and crossfalls against a table of limits: pass, fail or too close to tell.</source>
      <translation>Längs- und Querneigungen gegen eine Tabelle von Grenzwerten: bestanden, nicht bestanden oder zu knapp.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Grades and curves</source>
      <translation>Längsneigungen und Ausrundungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid</source>
      <translation>Raster</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Grid distance over ground distance, where one is prescribed for the site.</source>
      <translation>Gitterstrecke durch Geländestrecke, wo ein Faktor für das Gelände vorgeschrieben ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid north</source>
      <translation>Gitternord</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Grid north is {angle:.2f}° {side} of true north here.</source>
      <translation>Gitternord liegt hier {angle:.2f}° {side} von Geographisch-Nord.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)</source>
      <translation>Gitter, die PROJ liest (*.gtx *.tif *.tiff *.gsb);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Ground</source>
      <translation>Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Ground cover</source>
      <translation>Bodenbedeckung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Ground taken by the design (m²)</source>
      <translation>Von der Planung beanspruchtes Gelände (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ground to grid and back</source>
      <translation>Gelände zu Gitter und zurück</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Gelände, dessen Wasser anderswohin fließt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere (m²)</source>
      <translation>Gelände, dessen Wasser anderswohin fließt (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Gullies and the like, where water leaves the surface.</source>
      <translation>Straßenabläufe und Ähnliches, wo Wasser die Oberfläche verlässt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>HTML files (*.html)</source>
      <translation>HTML-Dateien (*.html)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Half the 95 % interval of the shift (m)</source>
      <translation>Halbes 95-%-Intervall der Verschiebung (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Hand over files</source>
      <translation>Dateien übergeben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Hand-over</source>
      <translation>Übergabe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Height (unit of the CRS)</source>
      <translation>Höhe (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Height ({unit})</source>
      <translation>Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Height datum</source>
      <translation>Höhenbezug</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect (m)</source>
      <translation>Erwarteter Höhenfehler (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect: {error:.3f} m (RMSE), good for a contour interval of {interval:.2f} m or more.</source>
      <translation>Zu erwartender Höhenfehler: {error:.3f} m (RMSE), gut für einen Höhenlinienabstand von {interval:.2f} m oder mehr.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Height field (empty: Z)</source>
      <translation>Höhenfeld (leer: Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (empty: the points' Z)</source>
      <translation>Höhenfeld (leer: Z der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (in the unit of the CRS; empty: the points' Z)</source>
      <translation>Höhenfeld (in der Einheit des KBS; leer: Z der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of grades and curves ({unit})</source>
      <translation>Höhe aus Längsneigungen und Ausrundungen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of surface {number} ({unit})</source>
      <translation>Höhe der Oberfläche {number} ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Height of texts in DXF (m)</source>
      <translation>Texthöhe im DXF (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Height of the faces (m; below 0: the second line is lower)</source>
      <translation>Höhe der Wände (m; unter 0: Die zweite Linie liegt tiefer)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric.</source>
      <translation>Höhe des Geoids über dem Ellipsoid: Ellipsoidische Höhe minus sie ist die orthometrische.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Height of the pads (a number, or balance)</source>
      <translation>Höhe der Plana (eine Zahl oder balance)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Height of the pit (unit of the CRS)</source>
      <translation>Höhe des Tiefpunkts (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of the surface ({unit})</source>
      <translation>Höhe der Oberfläche ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Height offset between both (m, 1 sigma)</source>
      <translation>Höhenversatz zwischen beiden (m, 1 Sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Height that balances cut and fill</source>
      <translation>Höhe, bei der sich Abtrag und Auftrag ausgleichen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height where they meet ({unit})</source>
      <translation>Höhe ihres Schnittpunkts ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights (GeoTIFF)</source>
      <translation>Höhen (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Heights and grades along a line over one or several surfaces, also as a sheet.</source>
      <translation>Höhen und Längsneigungen entlang einer Linie über eine oder mehrere Oberflächen, auch als Blatt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Heights and slopes at points</source>
      <translation>Höhen und Neigungen an Punkten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Heights are</source>
      <translation>Höhen sind</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights between the points</source>
      <translation>Höhen zwischen den Punkten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights in the file are</source>
      <translation>Höhen in der Datei sind</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Heights of the first surface along the lines with stations.</source>
      <translation>Höhen der ersten Oberfläche entlang der Linien mit Stationen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Heights wander by this within a minute or two, so passes side by side differ by it. It hardly matters for a grade along the line, but it tilts a crossfall. 0 if every height has an error of its own.</source>
      <translation>Höhen wandern innerhalb von ein, zwei Minuten um diesen Betrag, sodass benachbarte Bahnen um ihn abweichen. Für eine Längsneigung ist das kaum von Belang, eine Querneigung aber verkippt es. 0, wenn jede Höhe einen eigenen Fehler hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights wanted</source>
      <translation>Gewünschte Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Heights were not tested against independent check points.</source>
      <translation>Höhen wurden nicht gegen unabhängige Kontrollpunkte geprüft.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights, smooth (drawing only)</source>
      <translation>Höhen, glatt (nur Darstellung)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Heights: {datum}</source>
      <translation>Höhen: {datum}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Highest fill (m)</source>
      <translation>Höchster Auftrag (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Highest height ({unit})</source>
      <translation>Größte Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Highest height of the first surface (m)</source>
      <translation>Größte Höhe der ersten Oberfläche (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>How far a summit stands above, or a pit below, the way to the next one.</source>
      <translation>Wie weit eine Kuppe über dem Weg zur nächsten herausragt oder ein Tiefpunkt darunter liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>How far an arc may stand off the chords that replace it.</source>
      <translation>Wie weit ein Bogen von den Sehnen abweichen darf, die ihn ersetzen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>How heights repeat, run by run</source>
      <translation>Wie sich Höhen wiederholen, Lauf für Lauf</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>How high a pad or a strip must lie for its cut to make its fill, and how sure that is.</source>
      <translation>Wie hoch ein Planum oder Streifen liegen muss, damit der Abtrag den Auftrag ergibt, und wie sicher das ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>How much the ground bends: our own choice of values, no standard.</source>
      <translation>Wie stark sich das Gelände krümmt: eigene Wahl der Werte, aus keinem Standard.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>How steeply the plane falls; 0 is level.</source>
      <translation>Wie steil die Ebene fällt; 0 ist waagerecht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>How sure it is that both have the same height datum: other base, other geoid, other pole. It moves the volume by itself times the area, and is mostly the largest part.</source>
      <translation>Wie sicher es ist, dass beide denselben Höhenbezug haben: andere Basisstation, anderes Geoid, anderer Stab. Er verschiebt das Volumen um sich selbst mal die Fläche und ist meist der größte Anteil.</translation>
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
      <translation>In Hummock ist ein eigener Fehler aufgetreten ({kind}: {reason}); das Protokollfenster enthält die Einzelheiten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock: from rover points to surface and contours</source>
      <translation>Hummock: von Rover-Punkten zu Oberfläche und Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Import survey points</source>
      <translation>Vermessungspunkte importieren</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>In DXF a layer for each level</source>
      <translation>Im DXF ein Layer je Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>In file order, such as name,easting,northing,height,code with - for a column to skip and +word to keep one as it is; or by header or number, such as easting=X,northing=Y,height=3. “Preview” fills it.</source>
      <translation>In der Reihenfolge der Datei, etwa name,easting,northing,height,code mit - für eine Spalte, die auszulassen ist, und +word, um eine unverändert zu behalten; oder nach Kopfzeile oder Nummer, etwa easting=X,northing=Y,height=3. „Vorschau“ füllt es aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>In place of the layer.</source>
      <translation>Anstelle des Layers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>In the CRS wanted. Points without a height do not count in height.</source>
      <translation>Im gewünschten KBS. Punkte ohne Höhe zählen in der Höhe nicht mit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>In the grid, or on the ground; these may have no CRS.</source>
      <translation>Im Gitter oder im Gelände; letztere dürfen ohne KBS sein.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>In the order of recording, such as the output of “Import survey points”.</source>
      <translation>In der Reihenfolge der Aufzeichnung, etwa die Ausgabe von „Vermessungspunkte importieren“.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>In the order of the line, with grade, K and their standard deviations.</source>
      <translation>In der Reihenfolge der Linie, mit Längsneigung, K und deren Standardabweichungen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the order wanted, of: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</source>
      <translation>In der gewünschten Reihenfolge, aus: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>In the unit chosen, right positive: 0 for the line itself, else its parallel.</source>
      <translation>In der gewählten Einheit, rechts positiv: 0 für die Linie selbst, sonst ihre Parallele.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen, seen in the way of rising stations.</source>
      <translation>In der gewählten Einheit, in Richtung steigender Stationen gesehen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen: sections at whole multiples of it; 0 for none.</source>
      <translation>In der gewählten Einheit: Querprofile bei ganzen Vielfachen davon; 0 für keine.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>In the unit chosen: whole multiples of it, and both ends of the line.</source>
      <translation>In der gewählten Einheit: ganze Vielfache davon und beide Enden der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the CRS; goes before Z and design surface.</source>
      <translation>In der Einheit des KBS; geht Z und Planungsoberfläche vor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>In the unit of the heights of the CRS.</source>
      <translation>In der Einheit der Höhen des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>In the unit of the interval.</source>
      <translation>In der Einheit der Äquidistanz.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table. Rows lie at whole multiples of the coordinates.</source>
      <translation>In der Einheit der Tabelle. Reihen liegen bei ganzen Vielfachen der Koordinaten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table: 1250 for 1+250.</source>
      <translation>In der Einheit der Tabelle: 1250 für 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>In walking order.</source>
      <translation>In der Reihenfolge der Begehung.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>In {crs} the points are nowhere on the Earth.</source>
      <translation>In {crs} liegen die Punkte nirgends auf der Erde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Independent check points in the CRS of the points.</source>
      <translation>Unabhängige Kontrollpunkte im KBS der Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Independent check points in the CRS of the surface, for the accuracy on the plan.</source>
      <translation>Unabhängige Kontrollpunkte im KBS der Oberfläche, für die Genauigkeit auf dem Lageplan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index contour</source>
      <translation>Zähllinie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Index contour every … contours</source>
      <translation>Zähllinie alle … Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index depression contour</source>
      <translation>Zähllinie einer Senke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Inlets</source>
      <translation>Einläufe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets and outlets</source>
      <translation>Einläufe und Ausläufe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets take water within (m)</source>
      <translation>Einläufe nehmen Wasser auf innerhalb von (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets without a name are numbered.</source>
      <translation>Einläufe ohne Namen werden nummeriert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Inner side of the ditch, 1 : n</source>
      <translation>Innere Seite des Grabens, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Inspect a surface</source>
      <translation>Oberfläche untersuchen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Intensity of the rain (mm/h or in/h)</source>
      <translation>Niederschlagsintensität (mm/h oder in/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Interval</source>
      <translation>Äquidistanz</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Interval (in the unit below)</source>
      <translation>Äquidistanz (in der Einheit unten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>It appears only when it is whole.</source>
      <translation>Sie erscheint erst, wenn sie vollständig ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>It holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², filled to {spill:.3f}.</source>
      <translation>Es fasst {volume:.2f} ± {half:.2f} m³ (95 %) auf {area:.1f} m², gefüllt bis {spill:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>It is taken away, whatever the balance.</source>
      <translation>Er wird abgetragen, wie auch immer die Bilanz ausfällt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its degrees of freedom</source>
      <translation>Ihre Freiheitsgrade</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its name; may be empty where the file holds one set.</source>
      <translation>Sein Name; darf leer sein, wenn die Datei einen Satz enthält.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation</source>
      <translation>Standardabweichung davon</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (%)</source>
      <translation>Standardabweichung davon (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (m)</source>
      <translation>Standardabweichung davon (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Its standard deviation ({unit})</source>
      <translation>Standardabweichung davon ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json)</source>
      <translation>JSON-Dateien (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json);;All files (*)</source>
      <translation>JSON-Dateien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Join lines by the field codes</source>
      <translation>Linien nach den Feldcodes verbinden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>K ({unit} for each percent)</source>
      <translation>K ({unit} je Prozent)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Kerbs and walls (lines with heights)</source>
      <translation>Borde und Mauern (Linien mit Höhen)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Key map</source>
      <translation>Übersichtskarte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Kind: grade, crest or sag</source>
      <translation>Art: Längsneigung (grade), Kuppe (crest) oder Wanne (sag)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Label</source>
      <translation>Beschriftung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Label index contours only</source>
      <translation>Nur Zähllinien beschriften</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML file</source>
      <translation>LandXML-Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML files (*.xml *.landxml);;All files (*)</source>
      <translation>LandXML-Dateien (*.xml *.landxml);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>LandXML files (*.xml)</source>
      <translation>LandXML-Dateien (*.xml)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the left of the line</source>
      <translation>Fahrstreifen links der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the right of the line</source>
      <translation>Fahrstreifen rechts der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Larger gives fewer curves.</source>
      <translation>Ein größerer Wert ergibt weniger Ausrundungen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest change of a height (m)</source>
      <translation>Größte Änderung einer Höhe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Largest crossfall, either way (%)</source>
      <translation>Größte Querneigung, in beide Richtungen (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Largest difference from the surface (m)</source>
      <translation>Größter Unterschied zur Oberfläche (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Largest difference in height (m)</source>
      <translation>Größter Höhenunterschied (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Largest empty circles</source>
      <translation>Größte leere Kreise</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Largest peak flow (l/s or ft³/s)</source>
      <translation>Größter Spitzenabfluss (l/s oder ft³/s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Largest residual (m)</source>
      <translation>Größte Restabweichung (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest shift of a line (m)</source>
      <translation>Größte Verschiebung einer Linie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lay lines on a surface</source>
      <translation>Linien auf eine Oberfläche legen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Layer of control points in place of the file</source>
      <translation>Layer mit Passpunkten anstelle der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Layer of points in place of the file</source>
      <translation>Punktlayer anstelle der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Layers of the plan</source>
      <translation>Layer des Lageplans</translation>
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <source>Leads through a survey, from its file to plan and report.</source>
      <translation>Führt durch eine Vermessung, von ihrer Datei bis zu Lageplan und Bericht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Least area (m²)</source>
      <translation>Kleinste Fläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Least depth of a pond (m)</source>
      <translation>Kleinste Tiefe eines Tümpels (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Least fall to an edge (%)</source>
      <translation>Kleinstes Gefälle zu einem Rand (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Least height of a spike (m)</source>
      <translation>Kleinste Höhe eines Ausreißers (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Least piece of moved ground (m²)</source>
      <translation>Kleinstes Stück bewegten Geländes (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Least prominence of spot heights (m; empty: the interval)</source>
      <translation>Kleinste Prominenz der Höhenpunkte (m; leer: die Äquidistanz)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Leave it empty to compare with a level.</source>
      <translation>Lassen Sie es leer, um mit einem Niveau zu vergleichen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Left empty, points are numbered, and offsets named by station and side.</source>
      <translation>Leer: Punkte werden nummeriert, Absteckversätze nach Station und Seite benannt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Left over (m³)</source>
      <translation>Überschuss (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Legend</source>
      <translation>Legende</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length ({unit})</source>
      <translation>Länge ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Length in plan (m)</source>
      <translation>Länge im Grundriss (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the curve ({unit})</source>
      <translation>Länge der Ausrundung ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Length of the gaps (m)</source>
      <translation>Länge der Lücken (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Length of the line (m)</source>
      <translation>Länge der Linie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the water along the line (m)</source>
      <translation>Länge des Wassers entlang der Linie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Level (height in the unit of the CRS)</source>
      <translation>Niveau (Höhe in der Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Level (height, in the unit of the CRS)</source>
      <translation>Niveau (Höhe, in der Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Level (unit of the CRS)</source>
      <translation>Niveau (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Level in place of a surface that is missing</source>
      <translation>Niveau anstelle einer fehlenden Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Level in the unit of the CRS, above_pit_m, area_m2 and volume_m3.</source>
      <translation>Niveau in der Einheit des KBS, above_pit_m, area_m2 und volume_m3.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Level instead of a design (in the unit of the CRS)</source>
      <translation>Niveau statt einer Planung (in der Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Level spot</source>
      <translation>Ebene Stelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Levels of the curve</source>
      <translation>Niveaus der Kurve</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Levels polygons, or slopes them, with slopes of cut and fill to daylight.</source>
      <translation>Legt Polygone eben oder geneigt an, mit Abtrags- und Auftragsböschungen bis zum Gelände.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Limit</source>
      <translation>Grenzwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Limit (%)</source>
      <translation>Grenzwert (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Limits as a file to edit</source>
      <translation>Grenzwerte als Datei zum Bearbeiten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <location filename="../plugin/processing/slopemap.py" />
      <source>Limits between the classes (%)</source>
      <translation>Grenzen zwischen den Klassen (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Limits of the road (CSV; empty: those that come with Hummock)</source>
      <translation>Grenzwerte der Straße (CSV; leer: die mit Hummock gelieferten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Line</source>
      <translation>Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Line for sections (check by other methods)</source>
      <translation>Linie für Querprofile (Prüfung mit anderen Verfahren)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Line of a road</source>
      <translation>Linie einer Straße</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Line of column names</source>
      <translation>Zeile der Spaltennamen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Line of the file</source>
      <translation>Zeile der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Lines</source>
      <translation>Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines drawn along edges of the pads. Edges within 0.1 m of a line take its slopes, from the fields cut_run and fill_run (1 : n) of the layer.</source>
      <translation>Linien, entlang von Kanten der Plana gezeichnet. Kanten innerhalb von 0.1 m um eine Linie übernehmen ihre Böschungen aus den Feldern cut_run und fill_run (1 : n) des Layers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Lines in the direction of the water.</source>
      <translation>Linien in Fließrichtung des Wassers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Lines in the file</source>
      <translation>Linien in der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Lines of no cut and no fill</source>
      <translation>Nulllinien (weder Abtrag noch Auftrag)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Lines of the surface</source>
      <translation>Linien der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines on the surface</source>
      <translation>Linien auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines or polygon outlines that must be edges of the surface.</source>
      <translation>Linien oder Polygonumrisse, die Kanten der Oberfläche sein müssen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Lines rejected</source>
      <translation>Verworfene Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that become edges and take their heights from the surface around them.</source>
      <translation>Linien, die Kanten werden und ihre Höhen von der Oberfläche ringsum übernehmen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Lines that begin with #; switch off for a data collector that cannot skip them.</source>
      <translation>Zeilen, die mit # beginnen; schalten Sie sie für ein Feldgerät ab, das sie nicht überspringen kann.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that cross are joined there by a new point; this gives its height.</source>
      <translation>Linien, die sich kreuzen, werden dort durch einen neuen Punkt verbunden; dies gibt seine Höhe an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines that follow no edge of a pad, not used: {count} of {total}.</source>
      <translation>Linien, die keiner Kante eines Planums folgen, nicht verwendet: {count} von {total}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Lines to walk</source>
      <translation>Abzugehende Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines whose heights differ by up to this are joined at their mean.</source>
      <translation>Linien, deren Höhen um höchstens diesen Betrag abweichen, werden auf ihrem Mittel verbunden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Lines with heights from left to right, one for each surface and part.</source>
      <translation>Linien mit Höhen von links nach rechts, eine je Oberfläche und Teil.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Lines with level, index and depression.</source>
      <translation>Linien mit Höhe, Zähllinie und Senke.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Lines with level, index and depression; for drawing only.</source>
      <translation>Linien mit Höhe, Zähllinie und Senke; nur zur Darstellung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Lines with stations</source>
      <translation>Linien mit Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines: {lines}, pieces on the surface: {pieces}.</source>
      <translation>Linien: {lines}, Stücke auf der Oberfläche: {pieces}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Link</source>
      <translation>Verbindung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Links between them: {length:.0f} m (lines: {count})</source>
      <translation>Verbindungen dazwischen: {length:.0f} m (Linien: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Load of a truck (m³ loose)</source>
      <translation>Ladung eines Lkw (m³ lose)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Loads: {waste} of waste, {borrow} of borrow.</source>
      <translation>Fuhren: {waste} Überschuss, {borrow} Fehlmenge.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Long edges: longer than (m; empty: from the spacing)</source>
      <translation>Lange Kanten: länger als (m; leer: aus dem Abstand)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Long edges: more than … times the distance of the passes</source>
      <translation>Lange Kanten: mehr als das …-Fache des Bahnabstands</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Long triangles</source>
      <translation>Lange Dreiecke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Longest edge at the rim (m; empty: no limit)</source>
      <translation>Längste Kante am Rand (m; leer: keine Grenze)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Look for gaps</source>
      <translation>Nach Lücken suchen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Loose from one cubic metre in the ground (m³)</source>
      <translation>Lose aus einem Kubikmeter im Boden (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points</source>
      <translation>Tiefpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points of the edges</source>
      <translation>Tiefpunkte der Ränder</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Lower it to see more of them.</source>
      <translation>Verringern Sie ihn, um mehr davon zu sehen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Lowest height ({unit})</source>
      <translation>Kleinste Höhe ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Lowest height of the first surface (m)</source>
      <translation>Kleinste Höhe der ersten Oberfläche (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Made if missing.</source>
      <translation>Wird angelegt, wenn er fehlt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Made only when asked for.</source>
      <translation>Nur auf Wunsch erzeugt.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Make the plan</source>
      <translation>Lageplan erstellen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Maps and tables of paths, ponds and catchments, with method, sources and limits.</source>
      <translation>Karten und Tabellen von Wegen, Tümpeln und Einzugsgebieten, mit Verfahren, Quellen und Grenzen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Maps before and after, tables of ponds and of moved ground, with limits.</source>
      <translation>Karten vorher und nachher, Tabellen der Tümpel und des bewegten Geländes, mit Grenzen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Marks ground that falls too little to shed water.</source>
      <translation>Markiert Gelände, das zu wenig fällt, um Wasser abzuführen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Marks what a surveyor would warn of: spikes, gaps, long and level triangles.</source>
      <translation>Markiert, wovor ein Vermesser warnen würde: Ausreißer, Lücken, lange und ebene Dreiecke.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Mass diagram (pieces of the centreline)</source>
      <translation>Massenlinie (Stücke der Achse)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Material at the surface</source>
      <translation>Material an der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of cut (m)</source>
      <translation>Mittlere Tiefe des Abtrags (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of fill (m)</source>
      <translation>Mittlere Tiefe des Auftrags (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Mean difference, the bias (m)</source>
      <translation>Mittlerer Unterschied, systematischer Anteil (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Mean gradient over (m)</source>
      <translation>Mittlere Neigung über (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Method: rational, Q = C i A ({source}).</source>
      <translation>Verfahren: rationale Methode, Q = C i A ({source}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre down.</source>
      <translation>Meter nach außen je Meter nach unten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre up. What stands depends on the soil: see the cautions.</source>
      <translation>Meter nach außen je Meter nach oben. Was steht, hängt vom Boden ab: siehe die Vorbehalte.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Middle: {lat}° {north}, {lon}° {east} in {crs}</source>
      <translation>Mitte: {lat}° {north}, {lon}° {east} in {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>More breaklines</source>
      <translation>Weitere Bruchkanten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>More files of the same site</source>
      <translation>Weitere Dateien desselben Geländes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>More files that are handed over</source>
      <translation>Weitere Dateien, die übergeben werden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>More findings, all in the layer of findings: {count}.</source>
      <translation>Weitere Befunde, alle im Layer der Befunde: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>More layers</source>
      <translation>Weitere Layer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>More layers of points of the same site</source>
      <translation>Weitere Punktlayer desselben Geländes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>More surfaces</source>
      <translation>Weitere Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>N</source>
      <translation>N</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Name</source>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Name field (empty: “name” where there is one)</source>
      <translation>Feld des Namens (leer: „name“, wo es eines gibt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Name field (of points)</source>
      <translation>Feld des Namens (der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Name of an inlet (empty: the field name, if there is one)</source>
      <translation>Name eines Einlaufs (leer: das Feld name, falls es eines gibt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Name of the files</source>
      <translation>Name der Dateien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Name of the surface</source>
      <translation>Name der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Names in more than one file</source>
      <translation>Namen in mehr als einer Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Names parted by commas. Their residuals are shown all the same.</source>
      <translation>Namen, durch Kommas getrennt. Ihre Restabweichungen werden trotzdem gezeigt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Names that come again get a number behind them.</source>
      <translation>Wiederkehrende Namen erhalten eine angehängte Nummer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Neighbours share drift within (m)</source>
      <translation>Nachbarn haben gemeinsame Drift innerhalb von (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>New pond</source>
      <translation>Neuer Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>No cell centre lies on the surface: the raster is empty. Choose smaller cells.</source>
      <translation>Keine Zellmitte liegt auf der Oberfläche: Das Raster ist leer. Wählen Sie kleinere Zellen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>No cut, no fill</source>
      <translation>Kein Abtrag, kein Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there are no contours. Choose a smaller interval.</source>
      <translation>Kein Niveau liegt zwischen der kleinsten ({low:.3f} {unit}) und der größten ({high:.3f} {unit}) Höhe: Es gibt keine Höhenlinien. Wählen Sie eine kleinere Äquidistanz.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No place of a line moves farther. In metres whatever the CRS.</source>
      <translation>Kein Ort einer Linie verschiebt sich weiter. In Metern, gleich welches KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>No place should be farther than this from a measured point.</source>
      <translation>Kein Ort soll weiter als dies von einem gemessenen Punkt entfernt sein.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>No surface</source>
      <translation>Keine Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>No vertex of the given surface is farther above or below the new one.</source>
      <translation>Kein Stützpunkt der gegebenen Oberfläche liegt weiter über oder unter der neuen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Noise from point to point {white:.1f} mm; no place was visited twice to tell more.</source>
      <translation>Rauschen von Punkt zu Punkt {white:.1f} mm; kein Ort wurde zweimal aufgesucht, um mehr zu sagen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Noise of a height: standard deviation (m)</source>
      <translation>Rauschen einer Höhe: Standardabweichung (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Noise of a surveyed height (m, 1 sigma)</source>
      <translation>Rauschen einer gemessenen Höhe (m, 1 Sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Noise: {count} of {vertices} vertices of the surface are points of {layer}.</source>
      <translation>Rauschen: {count} von {vertices} Stützpunkten der Oberfläche sind Punkte von {layer}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Northing (unit of the CRS)</source>
      <translation>Nordwert (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Northing of the origin</source>
      <translation>Nordwert des Ursprungs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Not a design for construction: whether slopes stand, and safety while they are dug, need licensed practice and the local codes.</source>
      <translation>Keine Ausführungsplanung: Ob Böschungen stehen, und die Sicherheit beim Aushub, erfordern zugelassene Fachleute und die örtlichen Vorschriften.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not a payment certificate: the contract says what is measured and by whom. Locate buried services before anyone digs.</source>
      <translation>Kein Abrechnungsnachweis: Der Vertrag sagt, was gemessen wird und von wem. Orten Sie Leitungen im Boden, bevor jemand gräbt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Not applied</source>
      <translation>Nicht angewandt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: design only (m²)</source>
      <translation>Nicht verglichen: nur Planung (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: existing surface only (m²)</source>
      <translation>Nicht verglichen: nur vorhandene Oberfläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Not for setting out without independent checks. Parcels are no boundary survey; buried services are not shown.</source>
      <translation>Nicht zur Absteckung ohne unabhängige Kontrollen. Flurstücke sind keine Grenzvermessung; Leitungen im Boden sind nicht dargestellt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Notes at the head of the table</source>
      <translation>Anmerkungen am Kopf der Tabelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Number of areas</source>
      <translation>Anzahl der Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Number of arrows</source>
      <translation>Anzahl der Pfeile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Number of catchments</source>
      <translation>Anzahl der Einzugsgebiete</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of contours</source>
      <translation>Anzahl der Höhenlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Number of cross-sections</source>
      <translation>Anzahl der Querprofile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Number of findings</source>
      <translation>Anzahl der Befunde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of gaps</source>
      <translation>Anzahl der Lücken</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Number of labels</source>
      <translation>Anzahl der Beschriftungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Number of paths</source>
      <translation>Anzahl der Wege</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of pieces on the surface</source>
      <translation>Anzahl der Stücke auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of pits, those of noise too</source>
      <translation>Anzahl der Tiefpunkte, auch der aus Rauschen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Number of places to walk again</source>
      <translation>Anzahl der nochmals abzugehenden Orte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Number of points</source>
      <translation>Anzahl der Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of ponds</source>
      <translation>Anzahl der Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of sheets</source>
      <translation>Anzahl der Blätter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of spot heights</source>
      <translation>Anzahl der Höhenpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the cross-section</source>
      <translation>Nummer des Querprofils</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the curve</source>
      <translation>Nummer der Ausrundung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the rule</source>
      <translation>Nummer der Regel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the surface</source>
      <translation>Nummer der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Number of triangles</source>
      <translation>Anzahl der Dreiecke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of vertical curves</source>
      <translation>Anzahl der Ausrundungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of a fit with four parameters. A plane takes up a slope of the geoid over the site.</source>
      <translation>Einer Einpassung mit vier Parametern. Eine Ebene nimmt eine Neigung des Geoids über dem Gelände auf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates and heights.</source>
      <translation>Von Koordinaten und Höhen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates, heights and stations in the table, and of the lengths given here.</source>
      <translation>Von Koordinaten, Höhen und Stationen in der Tabelle und der hier angegebenen Längen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Of each of its points by itself: 0 for a design, more for a second survey.</source>
      <translation>Von jedem ihrer Punkte für sich: 0 für eine Planung, mehr für eine zweite Vermessung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of easting, northing and height as they stand in the layer.</source>
      <translation>Von Ostwert, Nordwert und Höhe, wie sie im Layer stehen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of it the part that drifts (m)</source>
      <translation>Davon der driftende Anteil (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of its easting, northing and height.</source>
      <translation>Von Ostwert, Nordwert und Höhe darin.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of one surveyed height, its drift included. “Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>Einer gemessenen Höhe, einschließlich Drift. „Vermessung prüfen“ findet es; 15 mm sind bei RTK üblich (gängige Praxis, keine Quelle).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: a table of the points that share a name. All of them are kept.</source>
      <translation>Bei mehreren Dateien: eine Tabelle der Punkte mit gleichem Namen. Alle werden behalten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: pairs of points at one place whose heights differ.</source>
      <translation>Bei mehreren Dateien: Punktpaare an einem Ort, deren Höhen sich unterscheiden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of survey and control together. Empty: estimated from the residuals, which tells fewer errors.</source>
      <translation>Von Vermessung und Passpunkten zusammen. Leer: aus den Restabweichungen geschätzt, was weniger Fehler aufdeckt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Of the intensity and of the results. Nothing is rounded between them.</source>
      <translation>Der Intensität und der Ergebnisse. Dazwischen wird nichts gerundet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Of the plane; where it slopes, its height at the place below.</source>
      <translation>Der Ebene; wo sie geneigt ist, ihre Höhe am Ort unten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Of the profile as a layer; the sheet has scales of its own.</source>
      <translation>Des Längsprofils als Layer; das Blatt hat eigene Maßstäbe.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of the sheets in PDF. Print them at 100 %, without fitting to the page.</source>
      <translation>Der Blätter im PDF. Drucken Sie sie mit 100 %, ohne Anpassung an die Seite.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Of the value.</source>
      <translation>Des Werts.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of what is given and shown here. Coordinates of layers stay in the unit of the CRS.</source>
      <translation>Dessen, was hier angegeben und gezeigt wird. Koordinaten von Layern bleiben in der Einheit des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Off the surface</source>
      <translation>Neben der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Offset of the line whose grade is taken</source>
      <translation>Abstand der Linie, deren Längsneigung gilt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Offset of the second line in plan (m)</source>
      <translation>Abstand der zweiten Linie im Grundriss (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Offset, right above 0 (unit of the CRS)</source>
      <translation>Abstand, rechts über 0 (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Offset, right positive ({unit})</source>
      <translation>Abstand, rechts positiv ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Offsets from lines</source>
      <translation>Abstände von Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Offsets: “{text}” is no list of numbers, such as -3.5, 0, 3.5.</source>
      <translation>Abstände: „{text}“ ist keine Liste von Zahlen wie -3.5, 0, 3.5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>On a slope a pole held aside meets another height.</source>
      <translation>An einem Hang trifft ein seitlich gehaltener Stab eine andere Höhe.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>On the demo survey:</source>
      <translation>An der Demo-Vermessung:</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>One band of heights in the unit of the CRS; the file's name ends in .tif.</source>
      <translation>Ein Band mit Höhen in der Einheit des KBS; der Dateiname endet auf .tif.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>One line, such as a centreline, in the CRS of the surface. Stations grow in the way it was drawn. Of a layer with several lines select one and tick “Selected features only”.</source>
      <translation>Eine Linie, etwa eine Achse, im KBS der Oberfläche. Stationen wachsen in der Richtung, in der sie gezeichnet wurde. Wählen Sie aus einem Layer mit mehreren Linien eine aus und haken Sie „Nur gewählte Objekte“ an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>One page with numbers, doubt, map, histogram, other methods and cautions.</source>
      <translation>Eine Seite mit Zahlen, Unsicherheit, Karte, Histogramm, anderen Verfahren und Vorbehalten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>One page: plan, sections, volumes with their doubt, balance, other methods, cautions.</source>
      <translation>Eine Seite: Lageplan, Querprofile, Volumen mit ihrer Unsicherheit, Bilanz, andere Verfahren, Vorbehalte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>One row for each control point that was surveyed, at its known place.</source>
      <translation>Eine Zeile je gemessenem Passpunkt, an seinem bekannten Ort.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Only for points whose geometry has no heights.</source>
      <translation>Nur für Punkte, deren Geometrie keine Höhen hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Only inside these polygons</source>
      <translation>Nur innerhalb dieser Polygone</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Only the first part of a long file is shown and counted here.</source>
      <translation>Von einer langen Datei wird hier nur der erste Teil gezeigt und gezählt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Only where heights are in another unit than easting and northing.</source>
      <translation>Nur, wo Höhen in einer anderen Einheit als Ost- und Nordwert sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Only where the file does not say it and heights are to be changed.</source>
      <translation>Nur, wo die Datei es nicht sagt und Höhen zu ändern sind.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Open</source>
      <translation>Öffnen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Open: {question}.</source>
      <translation>Offen: {question}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Opens its dialog; what you run there becomes a step of the job.</source>
      <translation>Öffnet den Dialog; was Sie dort ausführen, wird ein Schritt des Auftrags.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Optional in the standard; makes the file larger.</source>
      <translation>Im Standard freigestellt; macht die Datei größer.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Options…</source>
      <translation>Optionen …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Origin</source>
      <translation>Ursprung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Origin in the grid (empty: the middle of the points)</source>
      <translation>Ursprung im Gitter (leer: die Mitte der Punkte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Other days or rovers.</source>
      <translation>Andere Tage oder Rover.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Other days or rovers. All points are kept with their file; names that occur twice and same places with different heights are reported.</source>
      <translation>Andere Tage oder Rover. Alle Punkte werden mit ihrer Datei behalten; doppelte Namen und gleiche Orte mit verschiedenen Höhen werden gemeldet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Other surface</source>
      <translation>Andere Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Otherwise contours lie on CONTOUR and CONTOUR_INDEX.</source>
      <translation>Sonst liegen Höhenlinien auf CONTOUR und CONTOUR_INDEX.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Otherwise the strip ends with a steep face where it is above or below the ground.</source>
      <translation>Sonst endet der Streifen mit einer steilen Wand, wo er über oder unter dem Gelände liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Otherwise they are laid on the surface. Z is in the unit of the CRS of the surface.</source>
      <translation>Sonst werden sie auf die Oberfläche gelegt. Z ist in der Einheit des KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Outlets on the rim: least catchment (m²)</source>
      <translation>Ausläufe am Rand: kleinstes Einzugsgebiet (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Outside the surface</source>
      <translation>Außerhalb der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>PDOP</source>
      <translation>PDOP</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used only when its name, as the refusal shows it, is written here; several are parted by |.</source>
      <translation>PROJ hat vielleicht nur eine genäherte Operation (ballpark), oder ihm fehlt die Gitterdatei einer besseren. Eine solche Operation wird nur verwendet, wenn ihr Name hier steht, wie die Ablehnung ihn zeigt; mehrere werden durch | getrennt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pad {name}: nothing says how high it is; give a level, or fill the field.</source>
      <translation>Planum {name}: Nichts sagt, wie hoch es liegt; geben Sie eine Höhe an oder füllen Sie das Feld aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pads (polygons)</source>
      <translation>Plana (Polygone)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Pads to be graded</source>
      <translation>Anzulegende Plana</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Page (HTML)</source>
      <translation>Seite (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pages.py" />
      <source>Page {page} of {pages}</source>
      <translation>Seite {page} von {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Pairs of cross-sections that cross</source>
      <translation>Paare von Querprofilen, die sich kreuzen</translation>
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
      <translation>Flurstücke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Parcels or phases whose volumes are told apart; the field name names them.</source>
      <translation>Flurstücke oder Bauabschnitte, deren Volumen getrennt ausgewiesen werden; das Feld name benennt sie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Part of pond</source>
      <translation>Teil eines Tümpels</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Part of the section on the surface</source>
      <translation>Teil des Querprofils auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Pass</source>
      <translation>Erfüllt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Pass walked</source>
      <translation>Begangene Bahn</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes across</source>
      <translation>Bahnen quer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are at most half of it apart.</source>
      <translation>Bahnen liegen höchstens halb so weit auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are {spacing:.2f} m apart.</source>
      <translation>Die Bahnen liegen {spacing:.2f} m auseinander.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes never farther apart than (m)</source>
      <translation>Bahnen nie weiter auseinander als (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Passes: {length:.0f} m (lines: {count})</source>
      <translation>Bahnen: {length:.0f} m (Linien: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path after</source>
      <translation>Weg nachher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path before</source>
      <translation>Weg vorher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Paths before and after</source>
      <translation>Wege vorher und nachher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths of water</source>
      <translation>Wasserwege</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Paths, ponds and catchments.</source>
      <translation>Wege, Tümpel und Einzugsgebiete.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths: {PATHS}. Starts whose water leaves over the rim: {TO_RIM}, comes to an inlet: {TO_INLETS}, stays in a pit or pond: {STAY}.</source>
      <translation>Wege: {PATHS}. Starts, deren Wasser über den Rand abläuft: {TO_RIM}, in einen Einlauf gelangt: {TO_INLETS}, in einem Tiefpunkt oder Tümpel bleibt: {STAY}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Pattern of a code (regular expression; empty: code, line number, words)</source>
      <translation>Muster eines Codes (regulärer Ausdruck; leer: Code, Liniennummer, Wörter)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flow (rational method)</source>
      <translation>Spitzenabfluss (rationale Methode)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flows</source>
      <translation>Spitzenabflüsse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per depth class.</source>
      <translation>Je Tiefenklasse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per material.</source>
      <translation>Je Material.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Perimeter</source>
      <translation>Umfang</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Perimeter: {length:.0f} m (lines: {count})</source>
      <translation>Umfang: {length:.0f} m (Linien: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pit</source>
      <translation>Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Pit and spill</source>
      <translation>Tiefpunkt und Überlauf</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and ponds</source>
      <translation>Tiefpunkte und Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and spill points</source>
      <translation>Tiefpunkte und Überlaufpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits: {PIT_COUNT}; ponds that noise does not explain: {PONDS}, {AREA:.1f} m² and {VOLUME:.2f} m³ when all are full.</source>
      <translation>Tiefpunkte: {PIT_COUNT}; Tümpel, die Rauschen nicht erklärt: {PONDS}, {AREA:.1f} m² und {VOLUME:.2f} m³, wenn alle voll sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Place that has the level (empty: middle of the surface)</source>
      <translation>Ort mit diesem Niveau (leer: Mitte der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again</source>
      <translation>Nochmals abzugehende Orte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as CSV</source>
      <translation>Nochmals abzugehende Orte als CSV</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as GPX</source>
      <translation>Nochmals abzugehende Orte als GPX</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/planlayout.py" />
      <source>Plan</source>
      <translation>Lageplan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Plan (PDF)</source>
      <translation>Lageplan (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area (m²)</source>
      <translation>Grundrissfläche (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area {area:.1f} m², heights {low:.3f} m to {high:.3f} m.</source>
      <translation>Grundrissfläche {area:.1f} m², Höhen {low:.3f} m bis {high:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Platform and slopes to daylight; the CRS is written beside it as .prj.</source>
      <translation>Krone und Böschungen bis zum Gelände; das KBS wird daneben als .prj geschrieben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform break</source>
      <translation>Bruch der Krone</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform edge</source>
      <translation>Rand der Krone</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Point beside a line</source>
      <translation>Punkt neben einer Linie</translation>
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
      <translation>Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Points (gullies, the end of a pipe, an outlet on the rim) or lines (a trench drain). Each takes all water that reaches a triangle near it. In another CRS they are brought into that of the surface.</source>
      <translation>Punkte (Straßenabläufe, ein Rohrende, ein Auslauf am Rand) oder Linien (eine Entwässerungsrinne). Jeder nimmt alles Wasser auf, das ein Dreieck in seiner Nähe erreicht. In einem anderen KBS werden sie in das der Oberfläche gebracht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: nearer in plan than (m)</source>
      <translation>Punkte neben einer Linie: im Grundriss näher als (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: off in height by more than (m)</source>
      <translation>Punkte neben einer Linie: Höhe weicht ab um mehr als (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points changed</source>
      <translation>Geänderte Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points decided by hand against the checks</source>
      <translation>Von Hand gegen die Prüfungen entschiedene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points flagged</source>
      <translation>Markierte Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points of lines were placed on purpose: they are held against their line only.</source>
      <translation>Punkte von Linien wurden absichtlich gesetzt: Sie werden nur an ihrer Linie gemessen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Points of the cross-sections</source>
      <translation>Punkte der Querprofile</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface</source>
      <translation>Punkte neben der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface or without a place, left empty: {count}.</source>
      <translation>Punkte neben der Oberfläche oder ohne Ort, leer gelassen: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points on the ground carry none, so it has to be given for the way to the grid.</source>
      <translation>Punkte im Gelände tragen keines, daher ist es für den Weg ins Gitter anzugeben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface</source>
      <translation>Punkte auf der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface: {count}.</source>
      <translation>Punkte auf der Oberfläche: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points outside the area of use of the CRS</source>
      <translation>Punkte außerhalb des Anwendungsbereichs des KBS</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Points read</source>
      <translation>Gelesene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points rejected</source>
      <translation>Verworfene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points so near to a breakline should have its height.</source>
      <translation>Punkte so nahe an einer Bruchkante sollten deren Höhe haben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points that may shape the surface</source>
      <translation>Punkte, die die Oberfläche formen dürfen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points to ask at</source>
      <translation>Abzufragende Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points to set out</source>
      <translation>Abzusteckende Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Points to use, flag or reject, by their line.</source>
      <translation>Zu verwendende, zu markierende oder zu verwerfende Punkte, nach ihrer Zeile.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Points under water</source>
      <translation>Punkte unter Wasser</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points used</source>
      <translation>Verwendete Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points used: {used}, flagged: {flagged}, rejected: {rejected}.</source>
      <translation>Punkte verwendet: {used}, markiert: {flagged}, verworfen: {rejected}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points used: {used}, rejected: {rejected}. Triangles: {triangles}; taken off outside the boundary or in voids: {outside}, at the rim: {trimmed}.</source>
      <translation>Punkte verwendet: {used}, verworfen: {rejected}. Dreiecke: {triangles}; außerhalb des Umrings oder in Aussparungen entfernt: {outside}, am Rand: {trimmed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Points with Z or with a height field, in the CRS of the surface.</source>
      <translation>Punkte mit Z oder mit einem Höhenfeld, im KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Points with Z or with a height field. Its CRS is that of its coordinates.</source>
      <translation>Punkte mit Z oder mit einem Höhenfeld. Ihr KBS ist das ihrer Koordinaten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Points with a name, in walking order; radius_m is how far anything measured was.</source>
      <translation>Punkte mit Namen, in der Reihenfolge der Begehung; radius_m sagt, wie weit der nächste Messpunkt entfernt war.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points with heights</source>
      <translation>Punkte mit Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Points with heights are added. A column “edit” may say move_point (a new height, or a “difference”), swap_edge, remove_triangle or add_triangle instead; “height” goes before Z, in the CRS's unit.</source>
      <translation>Punkte mit Höhen werden hinzugefügt. Eine Spalte „edit“ darf stattdessen move_point (eine neue Höhe oder eine „difference“), swap_edge, remove_triangle oder add_triangle enthalten; „height“ geht Z vor, in der Einheit des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points with heights in the unit of the CRS, all columns of the file, and a status.</source>
      <translation>Punkte mit Höhen in der Einheit des KBS, allen Spalten der Datei und einem Status.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points with heights, such as the output of “Import survey points”.</source>
      <translation>Punkte mit Höhen, etwa die Ausgabe von „Vermessungspunkte importieren“.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Points with text, rotation (degrees clockwise) and size, styled to show the text.</source>
      <translation>Punkte mit Text, Drehung (Grad im Uhrzeigersinn) und Größe, mit einem Stil, der den Text zeigt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points without design height</source>
      <translation>Punkte ohne Sollhöhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Points written</source>
      <translation>Geschriebene Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Points, lines or polygons in the CRS of the existing surface.</source>
      <translation>Punkte, Linien oder Polygone im KBS der vorhandenen Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points: {points}, control points: {control}. Fill up to {fill:.3f} m, cut up to {cut:.3f} m.</source>
      <translation>Punkte: {points}, Festpunkte: {control}. Auftrag bis {fill:.3f} m, Abtrag bis {cut:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons in a projected CRS.</source>
      <translation>Polygone in einem projizierten KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines that the surface leaves out, such as buildings.</source>
      <translation>Polygone oder geschlossene Linien, die die Oberfläche auslässt, etwa Gebäude.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines: the surface ends there. A ring in a ring is a hole.</source>
      <translation>Polygone oder geschlossene Linien: Dort endet die Oberfläche. Ein Ring in einem Ring ist ein Loch.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons, each with a runoff coefficient. Ground without one takes that of its catchment.</source>
      <translation>Polygone, jedes mit einem Abflussbeiwert. Gelände ohne einen übernimmt den seines Einzugsgebiets.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Polygons, in a projected CRS; holes are left out. Select features to plan some only.</source>
      <translation>Polygone in einem projizierten KBS; Löcher werden ausgelassen. Wählen Sie Objekte aus, um nur einige zu planen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Polygons, or lines that are closed; one feature a stockpile or pit.</source>
      <translation>Polygone oder geschlossene Linien; ein Objekt je Halde oder Grube.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond</source>
      <translation>Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond after</source>
      <translation>Tümpel nachher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond before</source>
      <translation>Tümpel vorher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Ponds</source>
      <translation>Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds compared</source>
      <translation>Verglichene Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds new: {NEW}, gone: {GONE}, deeper or shallower: {CHANGED}; {VOLUME:+.2f} m³ in full ponds; {MOVED_AREA:.1f} m² whose water goes elsewhere.</source>
      <translation>Tümpel neu: {NEW}, weg: {GONE}, tiefer oder flacher: {CHANGED}; {VOLUME:+.2f} m³ in vollen Tümpeln; {MOVED_AREA:.1f} m², deren Wasser anderswohin fließt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are deeper or shallower</source>
      <translation>Tümpel, die tiefer oder flacher sind</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are gone</source>
      <translation>Verschwundene Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are new</source>
      <translation>Neue Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Ponds: chance of noise at most (%)</source>
      <translation>Tümpel: Wahrscheinlichkeit von Rauschen höchstens (%)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview</source>
      <translation>Vorschau</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Preview of the survey</source>
      <translation>Vorschau der Vermessung</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview…</source>
      <translation>Vorschau …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Profile (CSV; empty: the Z of the line)</source>
      <translation>Längsprofil (CSV; leer: Z der Linie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile along a line</source>
      <translation>Längsprofil entlang einer Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile in its plane</source>
      <translation>Längsprofil in seiner Ebene</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Profile, sections and grades along it, checked against limits.</source>
      <translation>Längsprofil, Querprofile und Neigungen entlang davon, gegen Grenzwerte geprüft.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Profiles take the largest usual scale that fits, cross-sections that of the lengths.</source>
      <translation>Längsprofile nehmen den größten üblichen Maßstab, der passt, Querprofile den der Längen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Project</source>
      <translation>Projekt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Proposes where to walk on an area, how far and how long, before going out.</source>
      <translation>Schlägt vor dem Ausrücken vor, wo auf einer Fläche zu gehen ist, wie weit und wie lange.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Put layers and layout into the project</source>
      <translation>Layer und Layout ins Projekt aufnehmen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>QGIS knows no CRS of this code.</source>
      <translation>QGIS kennt kein KBS mit diesem Code.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Quality</source>
      <translation>Qualität</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Quantity</source>
      <translation>Größe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>RMSE (m)</source>
      <translation>RMSE (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Radius of the widest empty circle (m)</source>
      <translation>Radius des weitesten leeren Kreises (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Raise it where edits were drawn without snapping to the points.</source>
      <translation>Erhöhen Sie ihn, wo Änderungen ohne Fangen auf die Punkte gezeichnet wurden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Raises or lowers the whole design until cut, times the fill that a cubic metre of it makes, equals fill and the surplus.</source>
      <translation>Hebt oder senkt die ganze Planung, bis Abtrag mal dem Auftrag, den ein Kubikmeter davon ergibt, gleich Auftrag und Überschuss ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Read LandXML</source>
      <translation>LandXML lesen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Read coordinates outside the area of use as</source>
      <translation>Koordinaten außerhalb des Anwendungsbereichs lesen als</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Read the field codes</source>
      <translation>Die Feldcodes lesen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Read the points</source>
      <translation>Die Punkte lesen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Read them so: {cause}</source>
      <translation>So lesen: {cause}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Reads a survey file into a point layer and accounts for every line of it.</source>
      <translation>Liest eine Vermessungsdatei in einen Punktlayer und legt über jede ihrer Zeilen Rechenschaft ab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Reads surfaces, points, lines and alignments of a LandXML file.</source>
      <translation>Liest Oberflächen, Punkte, Linien und Achsen einer LandXML-Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Regions</source>
      <translation>Gebiete</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Regions of the volumes</source>
      <translation>Gebiete der Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Rejected (not in the surface)</source>
      <translation>Verworfen (nicht in der Oberfläche)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Rejected lines</source>
      <translation>Verworfene Zeilen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Remove</source>
      <translation>Entfernen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Report (HTML)</source>
      <translation>Bericht (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report (PDF)</source>
      <translation>Bericht (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Report of the change (HTML)</source>
      <translation>Bericht der Änderung (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Report of the ponds (HTML)</source>
      <translation>Bericht der Tümpel (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey</source>
      <translation>Bericht der Vermessung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey {file}</source>
      <translation>Bericht der Vermessung {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Report of the water (HTML)</source>
      <translation>Bericht des Wassers (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report, surface, contours and tables; files of these names there are replaced.</source>
      <translation>Bericht, Oberfläche, Höhenlinien und Tabellen; Dateien mit diesen Namen dort werden ersetzt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Residuals</source>
      <translation>Restabweichungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Residuals at control</source>
      <translation>Restabweichungen an Passpunkten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Ridges</source>
      <translation>Rücken</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Rim as boundary where there is no other</source>
      <translation>Rand als Umring, wo es keinen anderen gibt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rising depths such as 0.1; 0.25; 0.5; 1, used for cut and for fill.</source>
      <translation>Steigende Tiefen wie 0.1; 0.25; 0.5; 1, für Abtrag und Auftrag verwendet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Rising numbers with semicolons or blanks between them.</source>
      <translation>Steigende Zahlen mit Semikolons oder Leerzeichen dazwischen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Rising numbers with semicolons or blanks between them. They are no standard.</source>
      <translation>Steigende Zahlen mit Semikolons oder Leerzeichen dazwischen. Sie stammen aus keinem Standard.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Roads and lines</source>
      <translation>Straßen und Linien</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>Role of column {number}</source>
      <translation>Rolle der Spalte {number}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Root mean square difference (m)</source>
      <translation>Quadratisches Mittel der Unterschiede (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Round corners are cones in facets of 10 degrees; mitred ones carry both slopes on.</source>
      <translation>Runde Ecken sind Kegel in Facetten von 10 Grad; auf Gehrung führen beide Böschungen weiter.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Rows</source>
      <translation>Zeilen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rows of cut, fill and net (m³) with the ends of the 95 % interval and the standard deviations apart: random, drift, systematic and surface model.</source>
      <translation>Zeilen mit Abtrag, Auftrag und Differenz (m³), den Enden des 95-%-Intervalls und den einzelnen Standardabweichungen: zufällig, Drift, systematisch und Oberflächenmodell.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Rule</source>
      <translation>Regel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Rule does not apply</source>
      <translation>Regel gilt nicht</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Rules bring the window over which their slope is taken.</source>
      <translation>Regeln bringen das Fenster mit, über das ihre Neigung bestimmt wird.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Run</source>
      <translation>Ausführen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run everything</source>
      <translation>Alles ausführen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run what is out of date</source>
      <translation>Veraltetes ausführen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Runoff coefficient</source>
      <translation>Abflussbeiwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Runs that met others at {least} places or more: {met} of {count}, standard deviations {low:.1f} to {high:.1f} mm; claims outside the 95 % interval of their run: {off}.</source>
      <translation>Läufe, die andere an {least} oder mehr Stellen trafen: {met} von {count}, Standardabweichungen {low:.1f} bis {high:.1f} mm; Angaben außerhalb des 95-%-Intervalls ihres Laufs: {off}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>S</source>
      <translation>S</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>S makes S001, S002, …; give each job another one.</source>
      <translation>S ergibt S001, S002, …; geben Sie jedem Auftrag ein anderes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Saddle</source>
      <translation>Sattel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Sag</source>
      <translation>Wanne</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Same places with different heights</source>
      <translation>Gleiche Orte mit verschiedenen Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line in the grid (m)</source>
      <translation>Beispielstrecke im Gitter (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line on the ground (m)</source>
      <translation>Beispielstrecke im Gelände (m)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Say the CRS of the survey, such as EPSG:25832.</source>
      <translation>Geben Sie das KBS der Vermessung an, etwa EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Say which field of the ground cover holds its runoff coefficient.</source>
      <translation>Geben Sie an, welches Feld der Bodenbedeckung ihren Abflussbeiwert enthält.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Scale</source>
      <translation>Maßstab</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of heights (1 : N; empty: chosen)</source>
      <translation>Maßstab der Höhen (1 : N; leer: gewählt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of lengths (1 : N)</source>
      <translation>Maßstab der Längen (1 : N)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Scale of the plan, 1 : …</source>
      <translation>Maßstab des Lageplans, 1 : …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Scales points between ground distances and the grid of the CRS about an origin.</source>
      <translation>Skaliert Punkte um einen Ursprung zwischen Geländestrecken und dem Gitter des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Second line</source>
      <translation>Zweite Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Second surface</source>
      <translation>Zweite Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Second surface (2DM mesh), such as a design</source>
      <translation>Zweite Oberfläche (2DM-Mesh), etwa eine Planung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Sections reach to each side (m)</source>
      <translation>Querprofile reichen nach jeder Seite (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Separator</source>
      <translation>Trennzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Set of the file</source>
      <translation>Satz der Datei</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Set out</source>
      <translation>Abstecken</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Set-out points with design height, cut and fill, and a table for data collectors.</source>
      <translation>Absteckpunkte mit Sollhöhe, Abtrag und Auftrag und eine Tabelle für Feldgeräte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Seven parameters also tilt the survey; level instruments need four.</source>
      <translation>Sieben Parameter verkippen die Vermessung auch; horizontierte Instrumente brauchen vier.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Shallower</source>
      <translation>Flacher</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Shallower hollows do not count, however sure they are.</source>
      <translation>Flachere Mulden zählen nicht, wie sicher sie auch sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Share of cut that cannot be used as fill (%)</source>
      <translation>Anteil des Abtrags, der nicht als Auftrag taugt (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Share of the site in long triangles (%)</source>
      <translation>Anteil des Geländes in langen Dreiecken (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Share of the surface (%)</source>
      <translation>Anteil der Oberfläche (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Sheet</source>
      <translation>Blatt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>Sheets</source>
      <translation>Blätter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Sheets (PDF)</source>
      <translation>Blätter (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Sheets: {count}.</source>
      <translation>Blätter: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground eastings (unit of the CRS)</source>
      <translation>Verschiebung der Gelände-Ostwerte (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground northings (unit of the CRS)</source>
      <translation>Verschiebung der Gelände-Nordwerte (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Shift that balances (m)</source>
      <translation>Verschiebung für den Ausgleich (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Shorter than the window, windows overlap and neighbours share points.</source>
      <translation>Ist er kürzer als das Fenster, überlappen sich Fenster und Nachbarn teilen sich Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Shows the file, the role of each column, rejected lines, and where points would land</source>
      <translation>Zeigt die Datei, die Rolle jeder Spalte, verworfene Zeilen und wo die Punkte lägen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Shows where nothing was recorded, and lists the places to walk again.</source>
      <translation>Zeigt, wo nichts aufgezeichnet wurde, und listet die nochmals abzugehenden Orte auf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Shrinkage: 0.9 where ten cubic metres in the ground make nine of fill. It depends on the material; take it from tests or the contract.</source>
      <translation>Verdichtung: 0.9, wenn zehn Kubikmeter im Boden neun Auftrag ergeben. Sie hängt vom Material ab; entnehmen Sie sie Versuchen oder dem Vertrag.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Size of the labels on the plan (mm)</source>
      <translation>Größe der Beschriftungen auf dem Plan (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Slivers at the rim are taken off while it is wider; 165 is a good value.</source>
      <translation>Spitze Dreiecke am Rand werden entfernt, solange der Winkel größer ist; 165 ist ein guter Wert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Slope (%)</source>
      <translation>Neigung (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Slope break</source>
      <translation>Neigungsbruch</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope classes</source>
      <translation>Neigungsklassen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope map</source>
      <translation>Neigungskarte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Slopes at both ends too</source>
      <translation>Böschungen auch an beiden Enden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes at outer corners</source>
      <translation>Böschungen an Außenecken</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of cut, 1 : n</source>
      <translation>Abtragsböschungen, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of fill, 1 : n</source>
      <translation>Auftragsböschungen, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Slow errors of the receiver that points recorded near each other have in common.</source>
      <translation>Langsame Fehler des Empfängers, die nahe beieinander aufgezeichnete Punkte gemeinsam haben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Smaller areas are left out.</source>
      <translation>Kleinere Flächen bleiben weg.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller gives more channels, and ridges between them.</source>
      <translation>Ein kleinerer Wert ergibt mehr Rinnen und Rücken dazwischen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller ones are counted together with the rest of the rim.</source>
      <translation>Kleinere werden mit dem übrigen Rand zusammengezählt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Smaller pieces, as along edges that are drawn twice, are left out.</source>
      <translation>Kleinere Stücke, etwa entlang doppelt gezeichneter Kanten, bleiben weg.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Smallest contour interval supported (m)</source>
      <translation>Kleinste getragene Äquidistanz (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Smallest form to be shown (m wide)</source>
      <translation>Kleinste darzustellende Form (Breite in m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Smooth heights are for drawing only: they are up to {largest:.3f} m off the surface, most at E {easting:.3f} N {northing:.3f} (m).</source>
      <translation>Glatte Höhen dienen nur der Darstellung: Sie weichen bis zu {largest:.3f} m von der Oberfläche ab, am meisten bei E {easting:.3f} N {northing:.3f} (m).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Smooth: move lines by up to (m in plan; 0: not at all)</source>
      <translation>Glätten: Linien verschieben um bis zu (m im Grundriss; 0: gar nicht)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>So many even steps from the pit to the spill.</source>
      <translation>So viele gleiche Schritte vom Tiefpunkt zum Überlauf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>So that a program that triangulates anew ends where the surface ends.</source>
      <translation>Damit ein Programm, das neu trianguliert, dort endet, wo die Oberfläche endet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Source of the limit</source>
      <translation>Quelle des Grenzwerts</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Spacing along lines and in areas (m)</source>
      <translation>Abstand entlang von Linien und in Flächen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Spacing along the passes (m)</source>
      <translation>Punktabstand entlang der Bahnen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Spacing of the arrows (m)</source>
      <translation>Abstand der Pfeile (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Spacing of the grid, or interval along lines</source>
      <translation>Abstand des Rasters oder Schritt entlang von Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Spacing of the passes (m)</source>
      <translation>Abstand der Bahnen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Spacing of the starts of paths (m)</source>
      <translation>Abstand der Starts von Wegen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Speed (km/h)</source>
      <translation>Geschwindigkeit (km/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Speeds and least K of crests (CSV)</source>
      <translation>Geschwindigkeiten und kleinstes K von Kuppen (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Spike</source>
      <translation>Ausreißer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Spikes: more than … times the scatter of the neighbours</source>
      <translation>Ausreißer: mehr als das …-Fache der Streuung der Nachbarn</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Spill level (unit of the CRS)</source>
      <translation>Überlaufhöhe (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spill point</source>
      <translation>Überlaufpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spills to</source>
      <translation>Läuft über nach</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Spot heights</source>
      <translation>Höhenpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Stage, area and volume</source>
      <translation>Pegel, Fläche und Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of K ({unit}/%)</source>
      <translation>Standardabweichung von K ({unit}/%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Standard deviation of a height (m)</source>
      <translation>Standardabweichung einer Höhe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>Standard deviation of a height, found in the survey (m)</source>
      <translation>Standardabweichung einer Höhe, in der Vermessung gefunden (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Standard deviation of a height: {total:.1f} mm ({low:.1f} to {high:.1f} mm at 95 %, {freedom:.0f} degrees of freedom, {places} places visited twice).</source>
      <translation>Standardabweichung einer Höhe: {total:.1f} mm ({low:.1f} bis {high:.1f} mm bei 95 %, {freedom:.0f} Freiheitsgrade, {places} zweimal aufgesuchte Orte).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Standard deviation of a plan coordinate (m)</source>
      <translation>Standardabweichung einer Lagekoordinate (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of a surveyed height (m)</source>
      <translation>Standardabweichung einer gemessenen Höhe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Standard deviation of it (unit of the CRS)</source>
      <translation>Standardabweichung davon (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Standard deviation of one height of the rover (m)</source>
      <translation>Standardabweichung einer Höhe des Rovers (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of set-out in plan (m)</source>
      <translation>Standardabweichung der Absteckung in der Lage (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Standard deviation of the depth (m)</source>
      <translation>Standardabweichung der Tiefe (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of the grade (%)</source>
      <translation>Standardabweichung der Längsneigung (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Standard deviation of the height of one point of the existing surface, as repeated points or check points tell it. A mesh file does not hold it, so it is asked for.</source>
      <translation>Standardabweichung der Höhe eines Punkts der vorhandenen Oberfläche, wie wiederholte Punkte oder Kontrollpunkte sie zeigen. Eine Mesh-Datei enthält sie nicht, deshalb wird danach gefragt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Standard deviation of the residuals, robust (m)</source>
      <translation>Standardabweichung der Restabweichungen, robust (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Standard deviation of the second surface (m)</source>
      <translation>Standardabweichung der zweiten Oberfläche (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Start</source>
      <translation>Start</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts and their ends</source>
      <translation>Starts und ihre Enden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface</source>
      <translation>Starts neben der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface, without a path: {count}.</source>
      <translation>Starts neben der Oberfläche, ohne Weg: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water comes to an inlet</source>
      <translation>Starts, deren Wasser in einen Einlauf gelangt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water leaves over the rim</source>
      <translation>Starts, deren Wasser über den Rand abläuft</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water stays in a pit or pond</source>
      <translation>Starts, deren Wasser in einem Tiefpunkt oder Tümpel bleibt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts: points, lines or areas</source>
      <translation>Starts: Punkte, Linien oder Flächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement</source>
      <translation>Aussage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement (HTML)</source>
      <translation>Aussage (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Station</source>
      <translation>Station</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Station (unit of the table)</source>
      <translation>Station (Einheit der Tabelle)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station equations (back = ahead)</source>
      <translation>Stationssprünge (zurück = voraus)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the highest or lowest place</source>
      <translation>Station der höchsten oder tiefsten Stelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station of the line's beginning</source>
      <translation>Station des Linienanfangs</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Station of the lines' beginning</source>
      <translation>Station der Linienanfänge</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Station of the lines' beginning (unit of the CRS)</source>
      <translation>Station der Linienanfänge (Einheit des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the lowest place</source>
      <translation>Station der tiefsten Stelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the sill</source>
      <translation>Station der Überlaufschwelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the value</source>
      <translation>Station des Werts</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station where the grades meet</source>
      <translation>Station, wo die Längsneigungen sich treffen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Stations</source>
      <translation>Stationen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Steep end</source>
      <translation>Steiles Ende</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Steepest grade, either way (%)</source>
      <translation>Steilste Längsneigung, in beide Richtungen (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpile or pit volume</source>
      <translation>Volumen von Halde oder Grube</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits</source>
      <translation>Halden und Gruben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits on {name}</source>
      <translation>Halden und Gruben auf {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Stopping, turning, looking for the next line.</source>
      <translation>Anhalten, Wenden, die nächste Linie suchen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Storage of a basin</source>
      <translation>Inhalt eines Beckens</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Straight grade</source>
      <translation>Gerade Längsneigung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Straight grades and parabolas fitted to that profile, as “Fit grades and vertical curves” does, as the alignment's profile. It describes what is there; it is no design.</source>
      <translation>Gerade Neigungen und Parabeln, die in dieses Profil eingepasst sind, wie „Längsneigungen und Ausrundungen einpassen“ es tut, als Profil der Achse. Es beschreibt, was da ist; es ist kein Entwurf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Stretches of line inlets (m)</source>
      <translation>Stücke von Linieneinläufen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Stretches off the surface, left out: {count}, together {length:.2f} m of line.</source>
      <translation>Strecken neben der Oberfläche, ausgelassen: {count}, zusammen {length:.2f} m Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that fail</source>
      <translation>Strecken, die nicht bestehen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that pass</source>
      <translation>Strecken, die bestehen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches too close to tell</source>
      <translation>Strecken, die zu knapp sind</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches with verdicts</source>
      <translation>Strecken mit Urteilen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Such as -3.5, 0, 3.5 in the unit of the table: left is below 0, right above.</source>
      <translation>Etwa -3.5, 0, 3.5 in der Einheit der Tabelle: links ist unter 0, rechts darüber.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Such as 1+234.50; 1+300, parted by semicolons.</source>
      <translation>Etwa 1+234.50; 1+300, durch Semikolons getrennt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Such as 1+250.00 or 1250: a plus stands after kilometres, in feet after hundreds.</source>
      <translation>Etwa 1+250.00 oder 1250: Ein Plus steht nach Kilometern, in Fuß nach Hunderten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a centreline; stations grow in the way it was drawn.</source>
      <translation>Etwa eine Achse; Stationen wachsen in der Richtung, in der sie gezeichnet wurde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Such as a design. Differences are theirs less the first.</source>
      <translation>Etwa eine Planung. Unterschiede sind ihre Höhe minus die der ersten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a design; named by their files, in the CRS of the first surface.</source>
      <translation>Etwa eine Planung; nach ihren Dateien benannt, im KBS der ersten Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Such as a plan; the report lists them with their SHA-256.</source>
      <translation>Etwa ein Lageplan; der Bericht listet sie mit ihrem SHA-256 auf.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such as utf-8 or latin-1.</source>
      <translation>Etwa utf-8 oder latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Such as “Import survey points” makes them without a CRS.</source>
      <translation>Wie „Vermessungspunkte importieren“ sie ohne KBS erzeugt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such lines are counted, not read. With auto the sign is found from the file.</source>
      <translation>Solche Zeilen werden gezählt, nicht gelesen. Mit auto wird das Zeichen aus der Datei gefunden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Summit</source>
      <translation>Kuppe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Summits, pits and saddles with height and prominence, on the surface as measured.</source>
      <translation>Kuppen, Tiefpunkte und Sättel mit Höhe und Prominenz, auf der Oberfläche wie gemessen.</translation>
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
      <translation>Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>Surface (2DM mesh)</source>
      <translation>Oberfläche (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface above the check point</source>
      <translation>Oberfläche über dem Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface above the fit</source>
      <translation>Oberfläche über der Einpassung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Surface as a raster (DEM)</source>
      <translation>Oberfläche als Raster (DGM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface below the check point</source>
      <translation>Oberfläche unter dem Kontrollpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface below the fit</source>
      <translation>Oberfläche unter der Einpassung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface less fit (m)</source>
      <translation>Oberfläche minus Einpassung (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surface to LandXML</source>
      <translation>Oberfläche als LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface {number} less the first ({unit})</source>
      <translation>Oberfläche {number} minus die erste ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Surface, for the next step</source>
      <translation>Oberfläche, für den nächsten Schritt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, height</source>
      <translation>Oberfläche, Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces</source>
      <translation>Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces read</source>
      <translation>Gelesene Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surfaces written</source>
      <translation>Geschriebene Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces: {surfaces}, points: {points}, breaklines and boundaries: {lines}, alignments: {alignments}. Unit of the file: {unit}; CRS: {crs}.</source>
      <translation>Oberflächen: {surfaces}, Punkte: {points}, Bruchkanten und Grenzen: {lines}, Achsen: {alignments}. Einheit der Datei: {unit}; KBS: {crs}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Surplus of the balance (m³ of fill; below 0: brought in)</source>
      <translation>Überschuss der Bilanz (m³ Auftrag; unter 0: angeliefert)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/hummock.py" />
      <source>Survey desk</source>
      <translation>Vermessungspult</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Survey file</source>
      <translation>Vermessungsdatei</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Survey files</source>
      <translation>Vermessungsdateien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;All files (*)</source>
      <translation>Vermessungsdateien (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Survey or control points.</source>
      <translation>Vermessungs- oder Passpunkte.</translation>
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
      <translation>Vermessungspunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Survey points (for times and own deviations)</source>
      <translation>Vermessungspunkte (für Zeiten und eigene Abweichungen)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Survey points in local coordinates</source>
      <translation>Vermessungspunkte in örtlichen Koordinaten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Surveyed on</source>
      <translation>Vermessen am</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Swell: how much room dug earth takes on a truck, such as 1.25.</source>
      <translation>Auflockerung: wie viel Raum ausgehobene Erde auf einem Lkw einnimmt, etwa 1.25.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Switch it off for a step inside a model.</source>
      <translation>Schalten Sie es für einen Schritt in einem Modell ab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Switch it off to label every contour.</source>
      <translation>Schalten Sie es ab, um jede Höhenlinie zu beschriften.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off when the lines were drawn with heights of 0.</source>
      <translation>Schalten Sie es ab, wenn die Linien mit Höhen von 0 gezeichnet wurden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Table for the data collector</source>
      <translation>Tabelle für das Feldgerät</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Table of limits (CSV; empty: the one that comes with Hummock)</source>
      <translation>Tabelle der Grenzwerte (CSV; leer: die mit Hummock gelieferte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Tables (*.csv *.txt);;All files (*)</source>
      <translation>Tabellen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Tell where the water runs</source>
      <translation>Zeigen, wohin das Wasser läuft</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Test the accuracy</source>
      <translation>Die Genauigkeit prüfen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Tests a surface against check points, by NSSDA and ASPRS.</source>
      <translation>Prüft eine Oberfläche an Kontrollpunkten, nach NSSDA und ASPRS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Text encoding</source>
      <translation>Zeichenkodierung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Text encoding (empty: found)</source>
      <translation>Zeichenkodierung (leer: ermittelt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text files (*.csv *.txt)</source>
      <translation>Textdateien (*.csv *.txt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text in UTF-8; its notes stand in a second file, NAME_notes.txt.</source>
      <translation>Text in UTF-8; die Anmerkungen stehen in einer zweiten Datei, NAME_notes.txt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>That of the mesh where it is empty.</source>
      <translation>Der des Meshs, wo das Feld leer ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The catchments with their peak flow.</source>
      <translation>Die Einzugsgebiete mit ihrem Spitzenabfluss.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The changed surface is in {other}, the other in {crs}; bring both into one.</source>
      <translation>Die geänderte Oberfläche ist in {other}, die andere in {crs}; bringen Sie beide in eines.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The coordinates are local or assumed: no CRS</source>
      <translation>Die Koordinaten sind örtlich oder angenommen: kein KBS</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The day of the survey, as it shall be written.</source>
      <translation>Der Tag der Vermessung, wie er geschrieben werden soll.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The design, or a later survey, in the same CRS.</source>
      <translation>Die Planung oder eine spätere Vermessung, im selben KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The difference from the height of the line there.</source>
      <translation>Der Unterschied zur Höhe der Linie dort.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The difference in height between two neighbouring contours.</source>
      <translation>Der Höhenunterschied zwischen zwei benachbarten Höhenlinien.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The distance from pass to pass is found from the surface itself.</source>
      <translation>Der Abstand von Bahn zu Bahn wird aus der Oberfläche selbst ermittelt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The distance of the passes is measured from the triangles themselves; with 1.5, bays wider than three passes stay open. For surveys recorded while walking to and fro.</source>
      <translation>Der Bahnabstand wird aus den Dreiecken selbst gemessen; mit 1.5 bleiben Buchten offen, die breiter als drei Bahnen sind. Für Vermessungen, die beim Hin- und Hergehen aufgezeichnet wurden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The doubt of the heights, such as 0.015 for a fixed RTK solution. In metres.</source>
      <translation>Die Unsicherheit der Höhen, etwa 0.015 für eine fixierte RTK-Lösung. In Metern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>The existing surface with the design in it: what the ground will be.</source>
      <translation>Die vorhandene Oberfläche mit der Planung darin: das künftige Gelände.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that holds what the surveyor typed beside the point.</source>
      <translation>Das Feld mit dem, was der Vermesser zum Punkt eingegeben hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that names the points.</source>
      <translation>Das Feld mit den Namen der Punkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>The first line names the columns name, easting, northing and, where known, height.</source>
      <translation>Die erste Zeile nennt die Spalten name, easting, northing und, wo bekannt, height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The ground cover overlaps within a catchment ({over:.2f} map units² twice); mend it first.</source>
      <translation>Die Bodenbedeckung überlappt sich innerhalb eines Einzugsgebiets ({over:.2f} Karteneinheiten² doppelt); berichtigen Sie sie zuerst.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The ground inside each line with the volumes above and below its base.</source>
      <translation>Das Gelände innerhalb jeder Linie mit den Volumen über und unter ihrer Basis.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The height from which the levels are counted.</source>
      <translation>Die Höhe, ab der die Höhenstufen gezählt werden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The interval, error or spacing, in the unit below.</source>
      <translation>Äquidistanz, Fehler oder Abstand, in der Einheit unten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The layer of that name from “Build the surface”, with the columns kind and label.</source>
      <translation>Der gleichnamige Layer aus „Oberfläche bilden“, mit den Spalten kind und label.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The layout is then under Project › Layouts.</source>
      <translation>Das Layout steht dann unter Projekt › Layouts.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The length over which a grade is taken: shorter shows more, and more noise.</source>
      <translation>Die Länge, über die eine Längsneigung bestimmt wird: Kürzer zeigt mehr, auch mehr Rauschen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The length over which a slope is taken: shorter shows more, and more noise.</source>
      <translation>Die Länge, über die eine Neigung bestimmt wird: Kürzer zeigt mehr, auch mehr Rauschen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The levels of the contours are whole multiples in this unit.</source>
      <translation>Die Höhen der Höhenlinien sind ganze Vielfache in dieser Einheit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>The limits “{text}” are no list of numbers; write them such as 1; 2; 5; 8.33; 20.</source>
      <translation>Die Grenzen „{text}“ sind keine Liste von Zahlen; schreiben Sie sie etwa so: 1; 2; 5; 8.33; 20.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the crossfall; drawn beside the grades.</source>
      <translation>Die Linie in Fenstern, mit der Querneigung; neben den Längsneigungen gezeichnet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the grade along it.</source>
      <translation>Die Linie in Fenstern, mit ihrer Längsneigung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The lines have heights of their own (Z)</source>
      <translation>Die Linien haben eigene Höhen (Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The lines that the surface was asked to hold to, by kind.</source>
      <translation>Die Linien, die die Oberfläche einhalten sollte, nach Art.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>The lines with heights in the unit of the surface's CRS.</source>
      <translation>Die Linien mit Höhen in der Einheit des KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>The lowest place, and the place where water leaves.</source>
      <translation>Die tiefste Stelle und die Stelle, an der Wasser abläuft.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The lowest point of each pond and the one over which it spills.</source>
      <translation>Der tiefste Punkt jedes Tümpels und der, über den er überläuft.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>The memory of this machine does not suffice; take fewer points at a time.</source>
      <translation>Der Speicher dieses Rechners reicht nicht; nehmen Sie weniger Punkte auf einmal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj.</source>
      <translation>Die Mesh-Datei; ihr KBS wird daneben als .prj geschrieben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The name of a likely cause, such as swapped, as the warning shows it: the coordinates are then read so. Nothing is corrected without it.</source>
      <translation>Der Name einer wahrscheinlichen Ursache, etwa swapped, wie die Warnung ihn zeigt: Die Koordinaten werden dann so gelesen. Ohne ihn wird nichts berichtigt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The outermost ponds of both surfaces; those gone as they were.</source>
      <translation>Die äußersten Tümpel beider Oberflächen; die verschwundenen, wie sie waren.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>The output cannot be written ({reason}); choose another file.</source>
      <translation>Die Ausgabe lässt sich nicht schreiben ({reason}); wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The paper's long side upright.</source>
      <translation>Die lange Seite des Papiers senkrecht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>The place that keeps its coordinates. From ground to grid it has to be given.</source>
      <translation>Der Ort, der seine Koordinaten behält. Vom Gelände zum Gitter ist er anzugeben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>The plane needs a layer of exactly three points with Z; {count} were found.</source>
      <translation>Die Ebene braucht einen Layer mit genau drei Punkten mit Z; gefunden wurden {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>The points as they are, with the answers as columns.</source>
      <translation>Die Punkte, wie sie sind, mit den Antworten als Spalten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The points have no code field: no lines are joined by codes.</source>
      <translation>Die Punkte haben kein Feld mit Codes: Es werden keine Linien nach Codes verbunden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The points that the surface was built from, in the CRS of the surface.</source>
      <translation>Die Punkte, aus denen die Oberfläche gebildet wurde, im KBS der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The points that the surface was built from. Their times tell which drift together, their field sigma_v takes the place of the standard deviation above. Without them each strip of 1 m along the line counts as a pass of its own, which is cautious.</source>
      <translation>Die Punkte, aus denen die Oberfläche gebildet wurde. Ihre Zeiten sagen, welche zusammen driften; ihr Feld sigma_v ersetzt die Standardabweichung oben. Ohne sie zählt jeder Streifen von 1 m entlang der Linie als eigene Bahn, was vorsichtig ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The points that the surface was built from; rejected ones do not count.</source>
      <translation>Die Punkte, aus denen die Oberfläche gebildet wurde; verworfene zählen nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>The polygons with cut, fill, net, their ± (95 %), areas and mean depths.</source>
      <translation>Die Polygone mit Abtrag, Auftrag, Differenz, deren ± (95 %), Flächen und mittleren Tiefen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>The profile to scale with grades and K.</source>
      <translation>Das Längsprofil im Maßstab mit Längsneigungen und K.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The profile to scale with its table.</source>
      <translation>Das Längsprofil im Maßstab mit seiner Tabelle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>The project's name in the file.</source>
      <translation>Der Name des Projekts in der Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>The receiver claims {claimed:.1f} mm.</source>
      <translation>Der Empfänger gibt {claimed:.1f} mm an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The recording distance set in the receiver.</source>
      <translation>Der im Empfänger eingestellte Aufzeichnungsabstand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m)</source>
      <translation>Dasselbe für die zweite Oberfläche (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m; 0: a design)</source>
      <translation>Dasselbe für die zweite Oberfläche (m; 0: eine Planung)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The same radius in distances of the passes (empty: no limit)</source>
      <translation>Derselbe Radius in Bahnabständen (leer: keine Grenze)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>The sections to scale.</source>
      <translation>Die Querprofile im Maßstab.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The short side of the paper is below.</source>
      <translation>Die kurze Seite des Papiers liegt unten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The side of a square of ground in which drift is one and the same.</source>
      <translation>Die Seite eines Geländequadrats, in dem die Drift ein und dieselbe ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The size of a sheet.</source>
      <translation>Die Größe eines Blatts.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>The size of the typeface; figures are about 0.7 of it high.</source>
      <translation>Die Schriftgröße; Ziffern sind etwa 0.7 davon hoch.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>The statement with its statistics, a map and every check point.</source>
      <translation>Die Aussage mit ihrer Statistik, einer Karte und jedem Kontrollpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm above the check point.</source>
      <translation>Die Oberfläche liegt {off} mm über dem Kontrollpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm below the check point.</source>
      <translation>Die Oberfläche liegt {off} mm unter dem Kontrollpunkt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The two surfaces do not overlap; check that both belong to one site.</source>
      <translation>Die beiden Oberflächen überlappen sich nicht; prüfen Sie, ob beide zu einem Gelände gehören.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>The unit in the file. Empty: as found from the file, else that of the CRS.</source>
      <translation>Die Einheit in der Datei. Leer: wie aus der Datei ermittelt, sonst die des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The unit in the file. Empty: that of the CRS.</source>
      <translation>Die Einheit in der Datei. Leer: die des KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The water of each full pond; parts lie over the pond they are parts of.</source>
      <translation>Das Wasser jedes vollen Tümpels; Teile liegen über dem Tümpel, zu dem sie gehören.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The way of the overflow to the next pond, an inlet or the rim.</source>
      <translation>Der Weg des Überlaufs zum nächsten Tümpel, zu einem Einlauf oder zum Rand.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The widest ones are kept.</source>
      <translation>Die weitesten werden behalten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>The width of the window around each place. 0: the triangle there alone.</source>
      <translation>Die Breite des Fensters um jeden Ort. 0: nur das Dreieck dort.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>The width of the window around each triangle. 0: the triangle alone.</source>
      <translation>Die Breite des Fensters um jedes Dreieck. 0: nur das Dreieck.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>There are no check points; give a layer or a file of them, or the survey.</source>
      <translation>Es gibt keine Kontrollpunkte; geben Sie einen Layer oder eine Datei davon oder die Vermessung an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>Kein Weg ist lang genug, um zu zeigen, wie sich Höhen wiederholen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>There is no {what} for {count} catchments, the first is feature {feature}; give one.</source>
      <translation>Für {count} Einzugsgebiete fehlt {what}, das erste ist Objekt {feature}; geben Sie einen Wert an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>They are merged with the files and the layer above. Heights are their Z, or their field height where the points have none; name and code are taken from fields called so.</source>
      <translation>Sie werden mit den Dateien und dem Layer oben vereinigt. Höhen sind ihr Z oder ihr Feld height, wo die Punkte keines haben; name und code kommen aus gleichnamigen Feldern.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>They go in as they are, with the style they have in the project.</source>
      <translation>Sie gehen ein, wie sie sind, mit dem Stil, den sie im Projekt haben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thin a surface</source>
      <translation>Oberfläche ausdünnen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface (2DM mesh)</source>
      <translation>Ausgedünnte Oberfläche (2DM-Mesh)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface, height</source>
      <translation>Ausgedünnte Oberfläche, Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Three points of the plane (instead of a level)</source>
      <translation>Drei Punkte der Ebene (statt eines Niveaus)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time (minutes)</source>
      <translation>Zeit (Minuten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time for each turn (s)</source>
      <translation>Zeit je Wendung (s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Title</source>
      <translation>Titel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To (m along the line)</source>
      <translation>Bis (m entlang der Linie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pit</source>
      <translation>In einen Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pond</source>
      <translation>In einen Tümpel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To an inlet</source>
      <translation>In einen Einlauf</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>To begin one of your own, have the table written by “Limits as a file to edit”.</source>
      <translation>Um eine eigene zu beginnen, lassen Sie die Tabelle mit „Grenzwerte als Datei zum Bearbeiten“ schreiben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To both edges</source>
      <translation>Zu beiden Rändern</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>To go on where another table ended.</source>
      <translation>Um dort fortzufahren, wo eine andere Tabelle endete.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To neither edge</source>
      <translation>Zu keinem Rand</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>To offset ({unit})</source>
      <translation>Bis Abstand ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To station</source>
      <translation>Bis Station</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the left edge</source>
      <translation>Zum linken Rand</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the right edge</source>
      <translation>Zum rechten Rand</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To the rim</source>
      <translation>Zum Rand</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>To walk: {distance:.0f} m, {time}. Points: {points}, turns: {turns}.</source>
      <translation>Zu begehen: {distance:.0f} m, {time}. Punkte: {points}, Wenden: {turns}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Toe of fill</source>
      <translation>Fuß des Auftrags</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Toe or rim lines</source>
      <translation>Fuß- oder Randlinien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Tolerance at crossings (m)</source>
      <translation>Toleranz an Kreuzungen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Tolerance in height (m)</source>
      <translation>Höhentoleranz (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Tolerance of arcs (m)</source>
      <translation>Toleranz der Bögen (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerance sets of your own (JSON)</source>
      <translation>Eigene Toleranzsätze (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances</source>
      <translation>Toleranzen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances as a file to edit</source>
      <translation>Toleranzen als Datei zum Bearbeiten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Too close to tell</source>
      <translation>Zu knapp</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Top of cut</source>
      <translation>Oberkante des Abtrags</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Topographic plan</source>
      <translation>Topographischer Lageplan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Tops of layers below the ground, from above to below</source>
      <translation>Oberkanten der Schichten unter dem Gelände, von oben nach unten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Topsoil stripped first (m)</source>
      <translation>Zuerst abgeschobener Oberboden (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Topsoil {volume:.1f} m³ off {area:.1f} m².</source>
      <translation>Oberboden {volume:.1f} m³ von {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Triangle with an edge of {longest} m, {area} m²: straight over ground nobody walked.</source>
      <translation>Dreieck mit einer Kante von {longest} m, {area} m²: gerade über Gelände, das niemand begangen hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles</source>
      <translation>Dreiecke</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.</source>
      <translation>Dreiecke werden vom Rand entfernt, solange ihre Außenkante länger ist. In Metern, gleich welches KBS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles in the GeoPackage</source>
      <translation>Dreiecke im GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Triangles whose centre lies inside are left out. A column “edit” may say remove_triangle (the one inside) or add_triangle (take back one that boundary, void or rim left out) instead.</source>
      <translation>Dreiecke, deren Mitte innen liegt, werden ausgelassen. Eine Spalte „edit“ darf stattdessen remove_triangle (das eine darin) oder add_triangle enthalten (nimmt eines zurück, das Umring, Aussparung oder Rand ausließ).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Triangles with a longer edge are taken off the rim of the surface.</source>
      <translation>Dreiecke mit einer längeren Kante werden vom Rand der Oberfläche entfernt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with a longer edge count as ground that nobody walked.</source>
      <translation>Dreiecke mit einer längeren Kante zählen als Gelände, das niemand begangen hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with an edge over the limit.</source>
      <translation>Dreiecke mit einer Kante über der Grenze.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangulates survey points with breaklines, boundary and voids into a mesh.</source>
      <translation>Trianguliert Vermessungspunkte mit Bruchkanten, Umring und Aussparungen zu einem Mesh.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turn (degrees, counter-clockwise)</source>
      <translation>Drehung (Grad, gegen den Uhrzeigersinn)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turns, scales and shifts a local survey onto control points by least squares.</source>
      <translation>Dreht, skaliert und verschiebt eine örtliche Vermessung nach kleinsten Quadraten auf Passpunkte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Two geoid separations are given, a constant and a grid; give one of them.</source>
      <translation>Zwei Geoidundulationen sind angegeben, eine Konstante und ein Gitter; geben Sie eine davon an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Typical section (CSV; empty: from the values below)</source>
      <translation>Regelquerschnitt (CSV; leer: aus den Werten unten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>US survey feet (ftUS, 1200/3937 m)</source>
      <translation>US-Vermessungsfuß (ftUS, 1200/3937 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Unchanged</source>
      <translation>Unverändert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Undecided</source>
      <translation>Unentschieden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit</source>
      <translation>Einheit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit (empty: as the file says)</source>
      <translation>Einheit (leer: wie in der Datei angegeben)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit of &amp;heights:</source>
      <translation>Einheit der &amp;Höhen:</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Unit of easting and northing</source>
      <translation>Einheit von Ost- und Nordwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit of heights, if another</source>
      <translation>Einheit der Höhen, falls eine andere</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Unit of interval and base</source>
      <translation>Einheit von Äquidistanz und Basis</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Unit of stations, offsets and heights</source>
      <translation>Einheit der Stationen, Abstände und Höhen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the control file (empty: that of the CRS)</source>
      <translation>Einheit der Passpunktdatei (leer: die des KBS)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of the heights, if another</source>
      <translation>Einheit der Höhen, falls eine andere</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the survey's coordinates</source>
      <translation>Einheit der Koordinaten der Vermessung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Unit of the table</source>
      <translation>Einheit der Tabelle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Unit of the value</source>
      <translation>Einheit des Werts</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit: {unit}</source>
      <translation>Einheit: {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Units</source>
      <translation>Einheiten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Upright</source>
      <translation>Hochformat</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Use as shown</source>
      <translation>Wie gezeigt verwenden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Use the heights (Z) of the lines in these layers</source>
      <translation>Höhen (Z) der Linien in diesen Layern verwenden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Used</source>
      <translation>Verwendet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Value nearest to or farthest beyond the limit</source>
      <translation>Wert, der dem Grenzwert am nächsten oder am weitesten jenseits liegt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Value wanted</source>
      <translation>Gesuchter Wert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Verdict at 95 %</source>
      <translation>Urteil bei 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Vertical class wanted (cm RMSE)</source>
      <translation>Gewünschte Höhenklasse (cm RMSE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices dropped</source>
      <translation>Weggelassene Stützpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept</source>
      <translation>Behaltene Stützpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept: {kept}, dropped: {dropped}. Largest difference {largest:.4f} m at E {easting:.3f} N {northing:.3f} (m), root mean square {rms:.4f} m; asked for: {tolerance:g} m.</source>
      <translation>Stützpunkte behalten: {kept}, weggelassen: {dropped}. Größter Unterschied {largest:.4f} m bei E {easting:.3f} N {northing:.3f} (m), quadratisches Mittel {rms:.4f} m; verlangt: {tolerance:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Void</source>
      <translation>Aussparung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Voids</source>
      <translation>Aussparungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Volume (m³)</source>
      <translation>Volumen (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Volume at the spill level (m³)</source>
      <translation>Volumen bei Überlaufhöhe (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Volume between two surfaces</source>
      <translation>Volumen zwischen zwei Oberflächen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volume by region</source>
      <translation>Volumen nach Gebiet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Volume to a level or plane</source>
      <translation>Volumen zu Niveau oder Ebene</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Volumes</source>
      <translation>Volumen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes (table)</source>
      <translation>Volumen (Tabelle)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes by height (table)</source>
      <translation>Volumen nach Höhe (Tabelle)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region</source>
      <translation>Volumen nach Gebiet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and depth</source>
      <translation>Volumen nach Gebiet und Tiefe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and quantity</source>
      <translation>Volumen nach Gebiet und Größe</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>W</source>
      <translation>W</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walk the perimeter too</source>
      <translation>Auch den Umfang abgehen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walking plan</source>
      <translation>Begehungsplan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Wanted is</source>
      <translation>Gesucht ist</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Waste {waste:.1f} m³ ({waste_loose:.1f} m³ loose), borrow {borrow:.1f} m³ ({borrow_loose:.1f} m³ loose).</source>
      <translation>Überschuss {waste:.1f} m³ ({waste_loose:.1f} m³ lose), Fehlmenge {borrow:.1f} m³ ({borrow_loose:.1f} m³ lose).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water</source>
      <translation>Wasser</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Water at the spill level</source>
      <translation>Wasser bei Überlaufhöhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Water in all full ponds (m³)</source>
      <translation>Wasser in allen vollen Tümpeln (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water in hollows</source>
      <translation>Wasser in Mulden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Water runs to: left, right, both, neither, unsure</source>
      <translation>Wasser läuft nach: left, right, both, neither, unsure</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>What a change does to the water</source>
      <translation>Was eine Änderung mit dem Wasser macht</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>What became of the edits</source>
      <translation>Was aus den Änderungen wurde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>What becomes of water that comes to a place with nothing lower around it.</source>
      <translation>Was mit Wasser geschieht, das an einen Ort kommt, um den herum nichts tiefer liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>What each half of the lane should fall to its edge; common practice, no source.</source>
      <translation>Was jede Hälfte der Fahrbahn zu ihrem Rand fallen soll; gängige Praxis, keine Quelle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>What grows at the point, such as hard, short grass, tall grass.</source>
      <translation>Was am Punkt wächst, etwa hard, short grass, tall grass.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>What heights are measured from. Empty: as a compound CRS says it.</source>
      <translation>Wovon aus die Höhen gemessen sind. Leer: wie ein zusammengesetztes KBS es sagt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>What is above the first of these layers.</source>
      <translation>Was über der ersten dieser Schichten liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What is set out</source>
      <translation>Was abgesteckt wird</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>What lies beyond is not in that check.</source>
      <translation>Was jenseits liegt, ist nicht in dieser Prüfung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What lies under the heap, or lay over the pit.</source>
      <translation>Was unter der Halde liegt oder über der Grube lag.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>What parts the columns.</source>
      <translation>Was die Spalten trennt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>What single points are held to; a file of your own goes before.</source>
      <translation>Was einzelne Punkte einhalten müssen; eine eigene Datei geht vor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>What the coordinates are in, whatever the file says. Nothing is transformed.</source>
      <translation>Worin die Koordinaten sind, was auch immer die Datei sagt. Es wird nichts transformiert.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What the data collector shows with the point.</source>
      <translation>Was das Feldgerät beim Punkt zeigt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>What the points are, and what they become.</source>
      <translation>Was die Punkte sind und was sie werden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>What the receiver reads; the mesh's file name where it is empty.</source>
      <translation>Was der Empfänger liest; der Dateiname des Meshs, wo das Feld leer ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What the results call them.</source>
      <translation>Wie die Ergebnisse sie nennen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>What the surveyor types beside a code where a line begins, ends, closes, or runs in an arc through the point. Commas between them; leave one empty where the field has no word.</source>
      <translation>Was der Vermesser neben einen Code schreibt, wo eine Linie beginnt, endet, schließt oder in einem Bogen durch den Punkt verläuft. Kommas dazwischen; lassen Sie eines leer, wo das Feld kein Wort hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>What the value below means.</source>
      <translation>Was der Wert unten bedeutet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>What was done to coordinates</source>
      <translation>Was mit den Koordinaten geschah</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Whatever the formula allows.</source>
      <translation>Was auch immer die Formel zulässt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Where catchments differ; in place of the one for all.</source>
      <translation>Wo Einzugsgebiete sich unterscheiden; anstelle des einen für alle.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Where grades meet</source>
      <translation>Wo Längsneigungen sich treffen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Where it is known otherwise than from the points.</source>
      <translation>Wo es anders als aus den Punkten bekannt ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Where lines cross</source>
      <translation>Wo Linien sich kreuzen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Where lines differ. A line whose field is empty takes the height above.</source>
      <translation>Wo Linien sich unterscheiden. Eine Linie mit leerem Feld übernimmt die Höhe oben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where polygons overlap the ground counts once.</source>
      <translation>Wo Polygone sich überlappen, zählt das Gelände einmal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Where polygons overlap the ground counts once; for one row each see “Volume by region”.</source>
      <translation>Wo Polygone sich überlappen, zählt das Gelände einmal; für je eine eigene Zeile siehe „Volumen nach Gebiet“.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Where ponds spill to</source>
      <translation>Wohin Tümpel überlaufen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Where the design meets the ground: top of cut, toe of fill, and ends without slope.</source>
      <translation>Wo die Planung auf das Gelände trifft: Oberkante des Abtrags, Fuß des Auftrags und Enden ohne Böschung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Where the numbering jumps, such as 1+200 = 1+250; 3+000 = 0+000, in the order of the line.</source>
      <translation>Wo die Stationierung springt, etwa 1+200 = 1+250; 3+000 = 0+000, in der Reihenfolge der Linie.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <source>Where the points would land</source>
      <translation>Wo die Punkte lägen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Where the rule applies</source>
      <translation>Wo die Regel gilt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where the sloping plane has the height given as level.</source>
      <translation>Wo die geneigte Ebene die als Niveau angegebene Höhe hat.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Where the surfaces cross, with the height there.</source>
      <translation>Wo die Oberflächen sich kreuzen, mit der Höhe dort.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Where the water of two channels parts.</source>
      <translation>Wo sich das Wasser zweier Rinnen teilt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Where water starts. Empty: a square grid all over the surface.</source>
      <translation>Wo Wasser beginnt. Leer: ein quadratisches Raster über die ganze Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Where you come from. Empty: the south-west.</source>
      <translation>Woher Sie kommen. Leer: aus Südwest.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Whether the first line that is no comment is a header.</source>
      <translation>Ob die erste Zeile, die kein Kommentar ist, eine Kopfzeile ist.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Which are made.</source>
      <translation>Welche erzeugt werden.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest angle opposite to an outer edge (degrees; empty: no limit)</source>
      <translation>Weitester Winkel gegenüber einer Außenkante (Grad; leer: keine Grenze)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest circle of triangles at the rim (radius in m; empty: no limit)</source>
      <translation>Weitester Kreis von Dreiecken am Rand (Radius in m; leer: keine Grenze)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Widest gap in a breakline (m)</source>
      <translation>Weiteste Lücke in einer Bruchkante (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the ditch's bottom (m)</source>
      <translation>Breite der Grabensohle (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the lane on each side (m)</source>
      <translation>Breite der Fahrbahn auf jeder Seite (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width of the section ({unit})</source>
      <translation>Breite des Querprofils ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the shoulder on each side (m; 0: none)</source>
      <translation>Breite des Banketts auf jeder Seite (m; 0: keines)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the left</source>
      <translation>Breite nach links</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the right</source>
      <translation>Breite nach rechts</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width with both surfaces ({unit})</source>
      <translation>Breite mit beiden Oberflächen ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Window (m)</source>
      <translation>Fenster (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Window of a grade (m)</source>
      <translation>Fenster einer Längsneigung (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Window of the indications (m)</source>
      <translation>Fenster der Hinweise (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Windows that the surface does not cover, without a slope: {count} of {all}.</source>
      <translation>Fenster, die die Oberfläche nicht bedeckt, ohne Neigung: {count} von {all}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>With a field “name”; they stand at the end of the table and in the layer.</source>
      <translation>Mit einem Feld „name“; sie stehen am Ende der Tabelle und im Layer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With grades and vertical curves fitted</source>
      <translation>Mit eingepassten Neigungen und Ausrundungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>With the groups (?P&lt;code&gt;…) and, if there are any, (?P&lt;line&gt;…) and (?P&lt;words&gt;…), for codes that are written in another way.</source>
      <translation>Mit den Gruppen (?P&lt;code&gt;…) und, falls vorhanden, (?P&lt;line&gt;…) und (?P&lt;words&gt;…), für anders geschriebene Codes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With the profile of the surface</source>
      <translation>Mit dem Längsprofil der Oberfläche</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>With where its water went and where it goes.</source>
      <translation>Mit der Angabe, wohin ihr Wasser floss und wohin es nun fließt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Without a typical section out of a table. Ditches are dug where the ground is above.</source>
      <translation>Ohne Regelquerschnitt aus einer Tabelle. Gräben werden angelegt, wo das Gelände höher liegt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Without it the surface ends at the outermost passes.</source>
      <translation>Ohne ihn endet die Oberfläche an den äußersten Bahnen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Words for begin, end, close and arc</source>
      <translation>Wörter für Beginn, Ende, Schließen und Bogen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Write the report</source>
      <translation>Den Bericht schreiben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Writes a surface as LandXML, DXF, GeoPackage, GeoTIFF and mesh into one folder.</source>
      <translation>Schreibt eine Oberfläche als LandXML, DXF, GeoPackage, GeoTIFF und Mesh in einen Ordner.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Writes surfaces, points, breaklines and alignments as LandXML 1.2.</source>
      <translation>Schreibt Oberflächen, Punkte, Bruchkanten und Achsen als LandXML 1.2.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Writes the heights of a surface as a GeoTIFF, exact or smooth for drawing.</source>
      <translation>Schreibt die Höhen einer Oberfläche als GeoTIFF, genau oder glatt zur Darstellung.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Writes the set that was used. Change the numbers and give the file back above.</source>
      <translation>Schreibt den verwendeten Satz. Ändern Sie die Zahlen und geben Sie die Datei oben wieder an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Writes the table that was used. Change it and give the file back above.</source>
      <translation>Schreibt die verwendete Tabelle. Ändern Sie sie und geben Sie die Datei oben wieder an.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Written with the other notes on every sheet.</source>
      <translation>Mit den anderen Anmerkungen auf jedes Blatt geschrieben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Written: {file}</source>
      <translation>Geschrieben: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a contour interval</source>
      <translation>eine Äquidistanz</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>a grid over its polygons</source>
      <translation>ein Raster über seine Polygone</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a height error of the surface (RMSE)</source>
      <translation>ein Höhenfehler der Oberfläche (RMSE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a spacing of the passes</source>
      <translation>ein Abstand der Bahnen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>accuracy,check points,RMSE,bias,NSSDA,FGDC,ASPRS,vertical class,95 percent,test</source>
      <translation>Genauigkeit,Kontrollpunkte,RMSE,systematisch,NSSDA,FGDC,ASPRS,Höhenklasse,95 Prozent,Prüfung</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>age of the correction</source>
      <translation>Alter der Korrektur</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>all of the ground compared</source>
      <translation>alles verglichene Gelände</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>as found</source>
      <translation>wie gefunden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as in the file (with a geoid separation: orthometric)</source>
      <translation>wie in der Datei (mit Geoidundulation: orthometrisch)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>as recognised</source>
      <translation>wie erkannt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as the file says</source>
      <translation>wie die Datei sagt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>balance,cut,fill,level,grading,pad,strip,profile,surplus,shrinkage,earthwork</source>
      <translation>Massenausgleich,Abtrag,Auftrag,Höhe,Geländemodellierung,Planum,Streifen,Profil,Überschuss,Schwund,Erdbau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>balance: the height where cut makes up for fill.</source>
      <translation>balance: die Höhe, bei der Abtrag den Auftrag deckt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>base of {name}</source>
      <translation>Grundfläche von {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>basin,pond,storage,stage,volume,capacity,spill,water level,retention,detention</source>
      <translation>Becken,Tümpel,Speicher,Pegel,Volumen,Inhalt,Überlauf,Wasserstand,Rückhaltung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>best-fit plane of the line</source>
      <translation>ausgleichende Ebene der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>blank</source>
      <translation>Leerzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>blanks</source>
      <translation>Leerzeichen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>blunders,outliers,tolerances,pole height,fix,tilt,status,reject,flag,repeatability,noise</source>
      <translation>Fehler,Ausreißer,Toleranzen,Stabhöhe,Lösung,Neigung,Status,verwerfen,markieren,Wiederholgenauigkeit,Rauschen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>broken: banks, mounds, building sites</source>
      <translation>zerklüftet: Böschungen, Hügel, Baustellen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>check,limits,rules,accessible,running slope,cross slope,grade,crossfall,kerb,ponding,gutter,sight,crest</source>
      <translation>prüfen,Grenzwerte,Regeln,barrierefrei,Längsneigung,Querneigung,Gefälle,Bord,Pfützen,Rinne,Sicht,Kuppe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>check,quality,warnings,spikes,flat triangles,long triangles,gaps,breaklines,tin</source>
      <translation>prüfen,Qualität,Warnungen,Ausreißer,ebene Dreiecke,lange Dreiecke,Lücken,Bruchkanten,tin</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>code</source>
      <translation>Code</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>comma</source>
      <translation>Komma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>contour lines,isolines,levels,interval,tin,mesh,feet,metres</source>
      <translation>Höhenlinien,Isolinien,Stufen,Äquidistanz,tin,Mesh,Fuß,Meter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>contour lines,smooth,labels,spot heights,summit,pit,plan,drawing,feet,half foot</source>
      <translation>Höhenlinien,glatt,Beschriftungen,Höhenpunkte,Kuppe,Tiefpunkt,Lageplan,Zeichnung,Fuß</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>control,helmert,similarity,transformation,local,site,calibration,residuals,least squares,outlier</source>
      <translation>Passpunkte,Helmert,Ähnlichkeit,Transformation,lokal,Baustelle,Einpassung,Restklaffungen,kleinste Quadrate,Ausreißer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>control: several observations, points others are built on</source>
      <translation>Festpunkte: mehrere Beobachtungen, Punkte, auf die andere bauen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>cross section,sections,offset,cut,fill,area,road,sheet,pdf,csv,line</source>
      <translation>Querprofil,Schnitte,Abstand,Abtrag,Auftrag,Fläche,Straße,Blatt,pdf,csv,Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut over {low} m</source>
      <translation>Abtrag über {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut {low} to {high} m</source>
      <translation>Abtrag {low} bis {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>datum not stated</source>
      <translation>Bezug nicht angegeben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>dem,dtm,raster,grid,heights,elevation,geotiff,interpolate,hillshade,clough-tocher</source>
      <translation>dgm,Raster,Gitter,Höhen,geotiff,interpolieren,Schummerung,clough-tocher</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>done</source>
      <translation>fertig</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>drape,lines,height,elevation,profile,z values,centreline,tin</source>
      <translation>auflegen,Linien,Höhe,Profil,Z-Werte,Achse,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>east</source>
      <translation>Ost</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>easting</source>
      <translation>Ostwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>ellipsoidal</source>
      <translation>ellipsoidisch</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>ellipsoidal height</source>
      <translation>ellipsoidische Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>en</source>
      <translation>de</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>even: fields, car parks, pitches</source>
      <translation>gleichmäßig: Felder, Parkplätze, Spielfelder</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>exact: linear on the triangles</source>
      <translation>genau: linear auf den Dreiecken</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>export,dxf,cad,geopackage,gpkg,geotiff,dem,landxml,mesh,deliver,checksums</source>
      <translation>Export,dxf,cad,geopackage,gpkg,geotiff,dgm,landxml,Mesh,Abgabe,Prüfsummen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>failed</source>
      <translation>fehlgeschlagen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill over {low} m</source>
      <translation>Auftrag über {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill {low} to {high} m</source>
      <translation>Auftrag {low} bis {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>first: {steps}</source>
      <translation>zuerst: {steps}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>fitted</source>
      <translation>eingepasst</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>fix</source>
      <translation>Lösung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>found from the file</source>
      <translation>aus der Datei gefunden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>four parameters in plan, heights by themselves</source>
      <translation>vier Parameter in der Lage, Höhen für sich</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from grid to ground</source>
      <translation>vom Gitter auf den Boden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from ground to grid</source>
      <translation>vom Boden ins Gitter</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>gaps,density,spacing,empty circles,walk again,waypoints,gpx,contour interval</source>
      <translation>Lücken,Dichte,Punktabstand,leere Kreise,nochmals begehen,Wegpunkte,gpx,Äquidistanz</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>grade,gradient,crossfall,cross slope,superelevation,camber,slope,percent,road</source>
      <translation>Längsneigung,Gefälle,Querneigung,Quergefälle,Überhöhung,Neigung,Prozent,Straße</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>grading,pad,platform,yard,level,slope,batter,daylight,cut,fill,balance,earthwork</source>
      <translation>Geländemodellierung,Planum,Plattform,Hof,Höhe,Neigung,Böschung,Böschungsschnittlinie,Abtrag,Auftrag,Ausgleich,Erdbau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>grading,strip,road,path,bank,corridor,typical section,ditch,mass diagram,haul,cut,fill,earthwork</source>
      <translation>Geländemodellierung,Streifen,Straße,Weg,Damm,Korridor,Regelquerschnitt,Graben,Massenlinie,Transport,Abtrag,Auftrag,Erdbau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>ground,grid,scale factor,combined factor,projection,distance,elevation factor</source>
      <translation>Boden,Gitter,Maßstabsfaktor,kombinierter Faktor,Abbildung,Strecke,Höhenreduktion</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>height</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>height,elevation,slope,aspect,sample,query,check points,triangle,tin</source>
      <translation>Höhe,Neigung,Exposition,abfragen,Kontrollpunkte,Dreieck,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>in/h, acres, ft³/s</source>
      <translation>in/h, Acres, ft³/s</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>intensity</source>
      <translation>Intensität</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>international feet (ft, 0.3048 m)</source>
      <translation>internationale Fuß (ft, 0,3048 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>its points, or the corners of its lines and polygons</source>
      <translation>seine Punkte oder die Ecken seiner Linien und Polygone</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>kept as they are</source>
      <translation>bleiben, wie sie sind</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>landxml,xml,tin,surface,export,exchange,design,alignment,breaklines,machine</source>
      <translation>landxml,xml,tin,Oberfläche,Export,Austausch,Entwurf,Achse,Bruchkanten,Maschine</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>landxml,xml,tin,surface,import,design,alignment,breaklines,points</source>
      <translation>landxml,xml,tin,Oberfläche,Import,Entwurf,Achse,Bruchkanten,Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>lane</source>
      <translation>Fahrstreifen</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>latitude</source>
      <translation>Breite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>left of the line</source>
      <translation>links der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its highest place</source>
      <translation>Höhe ihres höchsten Ortes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its lowest place</source>
      <translation>Höhe ihres tiefsten Ortes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>level {level:.3f}</source>
      <translation>Höhe {level:.3f}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>line</source>
      <translation>Linie</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>longitude</source>
      <translation>Länge</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>mesh (2DM)</source>
      <translation>Mesh (2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>metres (m)</source>
      <translation>Meter (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>mitred</source>
      <translation>auf Gehrung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>mm/h, hectares, l/s</source>
      <translation>mm/h, Hektar, l/s</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>name</source>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>no</source>
      <translation>nein</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>no further details</source>
      <translation>keine weiteren Einzelheiten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <location filename="../plugin/processing/sinks.py" />
      <location filename="../plugin/processing/trustlayers.py" />
      <source>no reason given</source>
      <translation>kein Grund angegeben</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>northing</source>
      <translation>Nordwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumelayers.py" />
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>not part of this job</source>
      <translation>gehört nicht zu diesem Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>nothing yet</source>
      <translation>noch nichts</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>observations of a point</source>
      <translation>Beobachtungen eines Punktes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>offsets along its lines</source>
      <translation>Abstände entlang seiner Linien</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>orthometric (above a geoid)</source>
      <translation>orthometrisch (über einem Geoid)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>out of date</source>
      <translation>veraltet</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>over {low:.4g} %</source>
      <translation>über {low:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>over {low} m deep</source>
      <translation>über {low} m tief</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>plan,passes,lines,spacing,before the survey,distance,time,contour interval,rover</source>
      <translation>Plan,Bahnen,Linien,Abstand,vor der Vermessung,Strecke,Zeit,Äquidistanz,Rover</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>plan,sheet,pdf,print,layout,topographic,contours,spot heights,title block,key map,scale,paper</source>
      <translation>Lageplan,Blatt,pdf,Druck,Layout,topographisch,Höhenlinien,Höhenpunkte,Schriftfeld,Blattübersicht,Maßstab,Papier</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>plane of {level:.3f} at E {east:.2f} N {north:.2f}, {slope:g} % down to {towards:g}°</source>
      <translation>Ebene von {level:.3f} bei E {east:.2f} N {north:.2f}, {slope:g} % abwärts nach {towards:g}°</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>point</source>
      <translation>Punkt</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>pole height</source>
      <translation>Stabhöhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>profile,longitudinal section,line,centreline,station,heights,grade,sheet,pdf,csv</source>
      <translation>Längsprofil,Längsschnitt,Linie,Achse,Station,Höhen,Längsneigung,Blatt,pdf,csv</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>refuse when the heights differ by more than the tolerance</source>
      <translation>abweisen, wenn sich die Höhen um mehr als die Toleranz unterscheiden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report,documentation,pdf,html,sha-256,checksums,hand over,accuracy,rejects,whole job</source>
      <translation>Bericht,Dokumentation,pdf,html,sha-256,Prüfsummen,Übergabe,Genauigkeit,verworfene Zeilen,ganzer Auftrag</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf beside report.html.</source>
      <translation>report.pdf neben report.html.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf: {pages} pages.</source>
      <translation>report.pdf: {pages} Seiten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterlayers.py" />
      <source>rest of the rim</source>
      <translation>übriger Rand</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>right of the line</source>
      <translation>rechts der Linie</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>role</source>
      <translation>Rolle</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>rolling: parks, pastures</source>
      <translation>bewegt: Parks, Weiden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>round</source>
      <translation>rund</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>runoff coefficient</source>
      <translation>Abflussbeiwert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>runs on over full ponds, to the rim or an inlet</source>
      <translation>läuft über volle Tümpel weiter, zum Rand oder zu einem Einlauf</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>satellites</source>
      <translation>Satelliten</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>semicolon</source>
      <translation>Semikolon</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>set-out,stake out,staking,layout,grid,offsets,cut,fill,design,data collector,csv,control</source>
      <translation>Absteckung,abstecken,Achspunkte,Layout,Raster,Abstände,Abtrag,Auftrag,Entwurf,Feldrechner,csv,Festpunkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>seven parameters in space</source>
      <translation>sieben Parameter im Raum</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted</source>
      <translation>verschoben</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted and tilted (a plane)</source>
      <translation>verschoben und geneigt (eine Ebene)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>shoulder</source>
      <translation>Bankett</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in height</source>
      <translation>Sigma in der Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in plan</source>
      <translation>Sigma in der Lage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>slope,grade,gradient,steepness,classes,percent,areas,accessibility</source>
      <translation>Neigung,Gefälle,Gradient,Steilheit,Klassen,Prozent,Flächen,Barrierefreiheit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>smooth (Clough-Tocher): for drawing only</source>
      <translation>glatt (Clough-Tocher): nur zum Zeichnen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>soil</source>
      <translation>Boden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in every pit</source>
      <translation>bleibt in jedem Tiefpunkt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in ponds and passes hollows that noise explains</source>
      <translation>bleibt in Tümpeln und läuft durch Mulden, die das Rauschen erklärt</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>stockpile,heap,pile,pit,volume,toe,rim,base,inventory,tonnage,excavation,earthwork</source>
      <translation>Haufwerk,Halde,Haufen,Grube,Volumen,Fuß,Rand,Grundfläche,Bestand,Tonnage,Aushub,Erdbau</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load</source>
      <translation>Vermessung,gnss,gps,rtk,Rover,csv,Text,Koordinaten,lesen,laden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>tab</source>
      <translation>Tabulator</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the height of the first line</source>
      <translation>die Höhe der ersten Linie nehmen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the mean of the heights</source>
      <translation>das Mittel der Höhen nehmen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>the height that balances</source>
      <translation>die ausgleichende Höhe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>the plane through three points</source>
      <translation>die Ebene durch drei Punkte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>thin,simplify,reduce,decimate,fewer points,tolerance,tin,mesh</source>
      <translation>ausdünnen,vereinfachen,verringern,weniger Punkte,Toleranz,tin,Mesh</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>tilt</source>
      <translation>Neigung</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>time</source>
      <translation>Zeit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids</source>
      <translation>tin,Triangulation,Delaunay,Gelände,dgm,Mesh,Bruchkanten,Grenze,Aussparungen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>topographic: single observations while walking</source>
      <translation>topographisch: einzelne Beobachtungen im Gehen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>triangles through the line</source>
      <translation>Dreiecke durch die Linie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>unchanged</source>
      <translation>unverändert</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>vertical curve,parabola,K value,crest,sag,grade,profile,fit,alignment,road</source>
      <translation>Ausrundung,Parabel,K-Wert,Kuppe,Wanne,Längsneigung,Gradiente,einpassen,Achse,Straße</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>volume,earthwork,cut,fill,cut and fill,quantities,cubic metres,difference,excavation,uncertainty</source>
      <translation>Volumen,Erdbau,Abtrag,Auftrag,Mengen,Kubikmeter,Differenz,Aushub,Unsicherheit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>volume,earthwork,cut,fill,level,plane,slope,datum,levelling,platform,uncertainty</source>
      <translation>Volumen,Erdbau,Abtrag,Auftrag,Höhe,Ebene,Neigung,Horizont,Planie,Planum,Unsicherheit</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>volume,earthwork,cut,fill,region,parcel,phase,polygon,quantities,depth,material,rock,topsoil</source>
      <translation>Volumen,Erdbau,Abtrag,Auftrag,Gebiet,Flurstück,Bauphase,Polygon,Mengen,Tiefe,Material,Fels,Oberboden</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>water,catchment,watershed,basin,drainage area,inlet,gully,outlet,channel,ridge,divide,contributing area</source>
      <translation>Wasser,Einzugsgebiet,Becken,Entwässerungsgebiet,Einlauf,Gully,Auslauf,Gerinne,Wasserscheide</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>water,change,design,difference,compare,before,after,ponds,catchments,diversion,drainage,impact</source>
      <translation>Wasser,Änderung,Entwurf,Unterschied,vergleichen,vorher,nachher,Tümpel,Einzugsgebiete,Ableitung,Entwässerung,Wirkung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>water,flat,level,slope,fall,minimum slope,drainage,puddles</source>
      <translation>Wasser,flach,eben,Neigung,Gefälle,Mindestneigung,Entwässerung,Pfützen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>water,flow,direction,arrows,slope,aspect,downhill,drainage</source>
      <translation>Wasser,Abfluss,Richtung,Pfeile,Neigung,Exposition,bergab,Entwässerung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>water,flow,path,drainage,steepest descent,downhill,runoff,raindrop,trace,inlet</source>
      <translation>Wasser,Abfluss,Weg,Entwässerung,Fallinie,bergab,Oberflächenabfluss,Regentropfen,verfolgen,Einlauf</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>water,peak flow,runoff,rational method,rain,intensity,coefficient,stormwater,C i A</source>
      <translation>Wasser,Spitzenabfluss,Abfluss,rationales Verfahren,Regen,Intensität,Beiwert,Regenwasser,C i A</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>water,pond,puddle,pit,sink,depression,hollow,ponding,standing water,volume,spill,drainage</source>
      <translation>Wasser,Tümpel,Pfütze,Tiefpunkt,Senke,Mulde,Hohlform,stehendes Wasser,Volumen,Überlauf,Entwässerung</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>west</source>
      <translation>West</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>whole design</source>
      <translation>ganzer Entwurf</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>yes</source>
      <translation>ja</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>{columns} × {rows} cells, {filled} of them on the surface.</source>
      <translation>{columns} × {rows} Zellen, {filled} davon auf der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>{count} of the further surfaces cannot be loaded as meshes; check their files.</source>
      <translation>{count} der weiteren Oberflächen lassen sich nicht als Mesh laden; prüfen Sie ihre Dateien.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>{count} pads</source>
      <translation>{count} Plana</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{count} remarks, the first: {first}</source>
      <translation>{count} Hinweise, der erste: {first}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>{curves} vertical curves; the surface departs from them by {spread:.1f} mm (robust standard deviation) and {worst:.1f} mm at most.</source>
      <translation>{curves} Ausrundungen; die Oberfläche weicht davon um {spread:.1f} mm ab (robuste Standardabweichung), höchstens um {worst:.1f} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: cannot be read so.</source>
      <translation>{files}: so nicht lesbar.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: {lines} lines, {points} points, &lt;b&gt;{rejects} rejected&lt;/b&gt;, {others} others.</source>
      <translation>{files}: {lines} Zeilen, {points} Punkte, &lt;b&gt;{rejects} verworfen&lt;/b&gt;, {others} andere.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>{file}: cannot be opened again.</source>
      <translation>{file}: lässt sich nicht wieder öffnen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>{file}: cannot be written ({reason}); choose another file.</source>
      <translation>{file}: nicht schreibbar ({reason}); wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{file}: the file does not say its CRS; ask for it and choose it.</source>
      <translation>{file}: Die Datei nennt ihr KBS nicht; fragen Sie nach und wählen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <source>{file}: the layer {layer} cannot be written ({reason}).</source>
      <translation>{file}: Der Layer {layer} ist nicht schreibbar ({reason}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planproject.py" />
      <source>{file}: the plan cannot be written {reason}</source>
      <translation>{file}: Der Lageplan ist nicht schreibbar {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geotiff.py" />
      <source>{file}: the raster cannot be written ({reason}); choose another file.</source>
      <translation>{file}: Das Raster ist nicht schreibbar ({reason}); wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{file}: there is no such file.</source>
      <translation>{file}: Eine solche Datei gibt es nicht.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{file}: this makes a GeoTIFF; choose a name that ends in .tif.</source>
      <translation>{file}: Dies ergibt ein GeoTIFF; wählen Sie einen Namen, der auf .tif endet.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{folder}: the folder cannot be made ({reason}); choose another.</source>
      <translation>{folder}: Der Ordner lässt sich nicht anlegen ({reason}); wählen Sie einen anderen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{hours} h {minutes:02d} min</source>
      <translation>{hours} h {minutes:02d} min</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>{label}: the height of its face is not known; give one, or fill the field.</source>
      <translation>{label}: Die Höhe seiner Fläche ist nicht bekannt; geben Sie eine an oder füllen Sie das Feld.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{label}: {area:.1f} m² in plan, {share:.1f} % of the surface.</source>
      <translation>{label}: {area:.1f} m² im Grundriss, {share:.1f} % der Oberfläche.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: a grid is laid over polygons; choose a layer of them.</source>
      <translation>{layer}: Ein Raster wird über Polygone gelegt; wählen Sie einen Layer davon.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drawnsource.py" />
      <source>{layer}: all heights are 0. If the lines were drawn without heights, switch their use off.</source>
      <translation>{layer}: Alle Höhen sind 0. Wurden die Linien ohne Höhen gezeichnet, schalten Sie ihre Verwendung aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point {number} has no name; give it one, or choose the name field.</source>
      <translation>{layer}: Der Festpunkt {number} hat keinen Namen; geben Sie ihm einen oder wählen Sie das Namensfeld.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point “{name}” occurs twice; keep one.</source>
      <translation>{layer}: Der Festpunkt „{name}“ kommt zweimal vor; behalten Sie einen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: feature {id} has no geometry; delete or draw it.</source>
      <translation>{layer}: Das Objekt {id} hat keine Geometrie; löschen oder zeichnen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} has no heights (Z); switch their use off.</source>
      <translation>{layer}: Das Objekt {id} hat keine Höhen (Z); schalten Sie ihre Verwendung aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} is not one closed line (parts: {count}); close it, without holes.</source>
      <translation>{layer}: Das Objekt {id} ist nicht eine geschlossene Linie (Teile: {count}); schließen Sie es, ohne Löcher.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: features without a place or a height left out: {count}.</source>
      <translation>{layer}: weggelassene Objekte ohne Ort oder Höhe: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>{layer}: features without a usable geometry left out: {count}.</source>
      <translation>{layer}: weggelassene Objekte ohne verwendbare Geometrie: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>{layer}: features without a usable line left out: {count}.</source>
      <translation>{layer}: weggelassene Objekte ohne verwendbare Linie: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: is in {crs}, not in the CRS chosen; leave the CRS empty or reproject the layer.</source>
      <translation>{layer}: ist in {crs}, nicht im gewählten KBS; lassen Sie das KBS leer oder transformieren Sie den Layer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{layer}: it has neither a field cut_run nor fill_run; add one.</source>
      <translation>{layer}: hat weder ein Feld cut_run noch fill_run; fügen Sie eines hinzu.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{layer}: it has {count} lines; a strip follows one. Select it.</source>
      <translation>{layer}: hat {count} Linien; ein Streifen folgt einer. Wählen Sie sie aus.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>{layer}: its CRS is not that of the surface; its points are compared as they are.</source>
      <translation>{layer}: Sein KBS ist nicht das der Oberfläche; seine Punkte werden verglichen, wie sie sind.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: its CRS is {crs}, that of the first surface {other}.</source>
      <translation>{layer}: Sein KBS ist {crs}, das der ersten Oberfläche {other}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>{layer}: its CRS is {crs}, that of the surface {other}; reproject the layer first.</source>
      <translation>{layer}: Sein KBS ist {crs}, das der Oberfläche {other}; transformieren Sie zuerst den Layer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: no point has a height; give points with Z values or choose the height field.</source>
      <translation>{layer}: Kein Punkt hat eine Höhe; geben Sie Punkte mit Z-Werten an oder wählen Sie das Höhenfeld.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: offsets are laid along lines; choose a layer of them.</source>
      <translation>{layer}: Abstände werden entlang von Linien gelegt; wählen Sie einen Layer davon.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, left as checked: {count}.</source>
      <translation>{layer}: Punkte, deren Status keines von used, flagged, rejected ist, so belassen, wie geprüft: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.</source>
      <translation>{layer}: Punkte, deren Status weder used, flagged noch rejected ist, als verwendet genommen: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: rejected points that are not handed over: {count}.</source>
      <translation>{layer}: verworfene Punkte, die nicht übergeben werden: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: there are no lines in it; draw one around each stockpile or pit.</source>
      <translation>{layer}: Es sind keine Linien darin; zeichnen Sie eine um jedes Haufwerk oder jede Grube.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: there are no polygons in it; draw one or leave it out.</source>
      <translation>{layer}: Es sind keine Polygone darin; zeichnen Sie eines oder lassen Sie ihn weg.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: there is no field {field}; choose one of {fields}.</source>
      <translation>{layer}: Es gibt kein Feld {field}; wählen Sie eines von {fields}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{layer}: there is no line in it; draw one or leave it out.</source>
      <translation>{layer}: Es ist keine Linie darin; zeichnen Sie eine oder lassen Sie ihn weg.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>{layer}: {count} lines are in it; select one and tick “Selected features only”, or join them.</source>
      <translation>{layer}: Es sind {count} Linien darin; wählen Sie eine aus und haken Sie „Nur gewählte Objekte“ an, oder verbinden Sie sie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks, header and other sentences of a log.</source>
      <translation>{lines} Zeilen: {points} Punkte, {rejected} verworfene Zeilen, {others} Kommentare, Leerzeilen, Kopfzeile und andere Sätze eines Protokolls.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{low:.4g} to {high:.4g} %</source>
      <translation>{low:.4g} bis {high:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>{low} to {high} m deep</source>
      <translation>{low} bis {high} m tief</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{name}: the line has no heights; give it Z, or a profile.</source>
      <translation>{name}: Die Linie hat keine Höhen; geben Sie ihr Z oder ein Profil.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{name}: {above:.2f} ± {above_95:.2f} m³ above its base, {below:.2f} ± {below_95:.2f} m³ below.</source>
      <translation>{name}: {above:.2f} ± {above_95:.2f} m³ über der Grundfläche, {below:.2f} ± {below_95:.2f} m³ darunter.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{name}: {field} is “{value}”, which is no number; mend it.</source>
      <translation>{name}: {field} ist „{value}“, das ist keine Zahl; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>{order}: {use} &lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;{length} m long, {walked} m walked at its end</source>
      <translation>{order}: {use} &lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;{length} m lang, am Ende {walked} m begangen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>{rule}: pass {good:.1f} m, fail {bad:.1f} m, too close to tell {close:.1f} m.</source>
      <translation>{rule}: erfüllt {good:.1f} m, nicht erfüllt {bad:.1f} m, zu knapp {close:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{step} …</source>
      <translation>{step} …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>{what}: the CRS is not known; choose a projected one, such as EPSG:25832.</source>
      <translation>{what}: Das KBS ist nicht bekannt; wählen Sie ein projiziertes, etwa EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit needs a height; give a Z or fill the column height.</source>
      <translation>{where}: Die Änderung braucht eine Höhe; geben Sie ein Z an oder füllen Sie die Spalte height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit “{kind}” is none of {known}; correct the column edit.</source>
      <translation>{where}: Die Änderung „{kind}“ ist keine von {known}; berichtigen Sie die Spalte edit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: {value} in the column {name} is no number; correct it.</source>
      <translation>{where}: {value} in der Spalte {name} ist keine Zahl; berichtigen Sie es.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of cut, 95 % (m³)</source>
      <translation>± des Abtrags, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill less cut, 95 % (m³)</source>
      <translation>± von Auftrag minus Abtrag, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill, 95 % (m³)</source>
      <translation>± des Auftrags, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>± of it, 95 % (m³)</source>
      <translation>± davon, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>– (kept beside)</source>
      <translation>– (daneben behalten)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>“Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>„Vermessung prüfen“ findet es; 15 mm sind für RTK üblich (gängige Praxis, keine Quelle).</translation>
    </message>
  </context>
</TS>
