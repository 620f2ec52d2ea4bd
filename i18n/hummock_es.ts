<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
  <context>
    <name>core</name>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is in degrees; the surface needs a projected CRS in metres or feet, such as EPSG:25832.</source>
      <translation>'{crs}' ({name}) está en grados; la superficie necesita un SRC proyectado en metros o pies, como EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is no projected CRS; the surface needs one in metres or feet.</source>
      <translation>'{crs}' ({name}) no es un SRC proyectado; la superficie necesita uno en metros o pies.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is not in degrees; positions in degrees need a geographic CRS, such as EPSG:4326.</source>
      <translation>'{crs}' ({name}) no está en grados; las posiciones en grados necesitan un SRC geográfico, como EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is in {unit}; only metres, feet and US survey feet are read. Choose another CRS.</source>
      <translation>'{crs}' está en {unit}; solo se leen metros, pies y pies topográficos de EE. UU. Elija otro SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is not understood as a CRS; give an EPSG code such as EPSG:25832, or WKT.</source>
      <translation>'{crs}' no se reconoce como SRC; indique un código EPSG, como EPSG:25832, o WKT.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>'{name}' is to be left out, but is no matched control point.</source>
      <translation>'{name}' debe excluirse, pero no es ningún punto de apoyo emparejado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>'{word}' junto a un código de línea no es una palabra de la convención de campo; se ignora. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns is empty; name the columns in file order.</source>
      <translation>--columns está vacío; nombre las columnas en el orden del archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns lacks {roles}; a point needs easting, northing and height (or latitude, longitude and height).</source>
      <translation>En --columns falta {roles}; un punto necesita coordenadas este y norte y cota (o latitud, longitud y altura).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is given twice; give it once.</source>
      <translation>--columns: '{word}' aparece dos veces; indíquelo una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is no role{hint}; roles are {roles}. Use '-' to skip a column, '+{word}' to keep it as it is.</source>
      <translation>--columns: '{word}' no es un rol{hint}; los roles son {roles}. Use '-' para omitir una columna y '+{word}' para conservarla tal cual.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is not role=column; a column is a header word or a number from 1.</source>
      <translation>--columns: '{word}' no es rol=columna; una columna es una palabra del encabezado o un número a partir de 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' mixes two ways; give either all as role=column or all in file order.</source>
      <translation>--columns: '{word}' mezcla dos formas; indique todas como rol=columna o todas en el orden del archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>--depths must be rising numbers with commas between them, not {value}.</source>
      <translation>--depths debe ser una serie de números crecientes separados por comas, no {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>--geoid is empty; give metres, or a file with a grid of geoid separations.</source>
      <translation>--geoid está vacío; indique metros o un archivo con una malla de ondulaciones del geoide.</translation>
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
      <translation>Intervalo del 95 % (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>95 %: 1.96 times that</source>
      <translation>95 %: 1,96 veces ese valor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>95 in 100 are below</source>
      <translation>95 de cada 100 están por debajo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>95 in 100 records are nearer than</source>
      <translation>95 de cada 100 registros están más cerca que</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>95th percentile of the absolute values</source>
      <translation>Percentil 95 de los valores absolutos</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>A - A, along the line of the sections</source>
      <translation>A - A, a lo largo de la línea de las secciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>A bar along {name} for each of {count} rules with its verdicts.</source>
      <translation>Una barra por {name} para cada una de las {count} reglas, con sus veredictos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.</source>
      <translation>Un tamaño de celda de {cell} m da {columns} x {rows} celdas en esta superficie, más de {most}; indique una celda mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>A combined factor of {factor} cannot be right; it is a number close to 1.</source>
      <translation>Un factor combinado de {factor} no puede ser correcto; es un número próximo a 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A contour interval of {interval:g} m asks for a height error of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Una equidistancia de {interval:g} m exige un error altimétrico de un tercio de ella (ASPRS Positional Accuracy Standards, 2014, anexo B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} is too small to tell levels apart at heights near {high:.3f} m; give a larger interval.</source>
      <translation>Una equidistancia de {interval} {unit} es demasiado pequeña para distinguir los niveles a cotas cercanas a {high:.3f} m; indique una equidistancia mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} makes {count} levels from {low:.3f} m to {high:.3f} m, more than {most}; give a larger interval, or look for a wrong height.</source>
      <translation>Una equidistancia de {interval} {unit} da {count} niveles de {low:.3f} m a {high:.3f} m, más de {most}; indique una equidistancia mayor o busque una cota errónea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>A control point was not surveyed, and is not used: {names}.</source>
      <translation>Un punto de apoyo no se observó y no se usa: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A cross-section cannot reach {left} to the left and {right} to the right. Give widths of 0 or more.</source>
      <translation>Un perfil transversal no puede alcanzar {left} a la izquierda y {right} a la derecha. Indique anchuras de 0 o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>A curve of {count} steps cannot be made; give 1 to {most}.</source>
      <translation>No se puede hacer una curva de {count} pasos; indique de 1 a {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>A fault in the program, not in your file: {reason}. Please report it with what --debug shows.</source>
      <translation>Un fallo del programa, no de su archivo: {reason}. Comuníquelo junto con lo que muestra --debug.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>A file with another SHA-256 than here was changed afterwards; checksums.sha256 is the same list for programs that check it.</source>
      <translation>Un archivo con un SHA-256 distinto del de aquí se modificó después; checksums.sha256 es la misma lista para los programas que la comprueban.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A fit in space needs both standard deviations, in plan and in height, or neither.</source>
      <translation>Un ajuste en el espacio necesita ambas desviaciones típicas, en planta y en altura, o ninguna.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A four-parameter fit</source>
      <translation>Un ajuste de cuatro parámetros</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid grid needs to know where the points are; say their CRS, or give a constant.</source>
      <translation>Una malla del geoide necesita saber dónde están los puntos; indique su SRC o una constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid separation of '{value}' is no number; give metres.</source>
      <translation>Una ondulación del geoide de '{value}' no es un número; indique metros.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>A grid knows the depth at cell middles only. Along rims, breaklines and the line of no cut nor fill a cell is counted wholly or not at all: {area:.1f} m² were compared by the grid, {exact:.1f} m² exactly.</source>
      <translation>Una malla solo conoce el espesor en el centro de las celdas. A lo largo de bordes, líneas de rotura y la línea de paso, una celda se cuenta entera o no se cuenta: con la malla se compararon {area:.1f} m², exactamente {exact:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A height error of {error:.3f} m cannot be had with heights good to {sigma:.3f} m: their noise alone gives {least:.3f} m. Ask for less, or observe each point longer.</source>
      <translation>No se puede lograr un error altimétrico de {error:.3f} m con cotas de precisión {sigma:.3f} m: solo su ruido da {least:.3f} m. Pida menos u observe cada punto durante más tiempo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>A hollow counts as a pond when the noise of the heights, with a standard deviation of {sigma} mm, makes one like it anywhere in the survey with a probability below {chance} %, and it is at least {depth} deep. This takes errors as independent; what neighbours share, as one bad fix over a minute, can make a wider hollow.</source>
      <translation>Una hondonada cuenta como charco cuando el ruido de las cotas, con una desviación típica de {sigma} mm, produce otra igual en cualquier lugar del levantamiento con una probabilidad inferior al {chance} %, y tiene al menos {depth} de profundidad. Se toman los errores como independientes; lo que comparten los vecinos, como una mala solución durante un minuto, puede producir una hondonada más ancha.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A plane for heights</source>
      <translation>Un plano para las cotas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>A point of {first} and one of {second} lie within {distance_m} m and differ in height by {most_m} m, more than {height_m} m.</source>
      <translation>Un punto de {first} y uno de {second} están a menos de {distance_m} m y difieren en cota {most_m} m, más de {height_m} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>A profile needs heights at two stations or more.</source>
      <translation>Un perfil longitudinal necesita cotas en dos estaciones o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>A ring of the pad has {count} different corners; a ring needs three or more.</source>
      <translation>Un anillo de la plataforma tiene {count} vértices distintos; un anillo necesita tres o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/sheet_parts.py" />
      <source>A scale of 1 : {scale} cannot be. Give a number above 0.</source>
      <translation>Una escala de 1 : {scale} no es posible. Indique un número mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>A set-out table needs the columns name, easting and northing; “{word}” is missing.</source>
      <translation>Una tabla de replanteo necesita las columnas name, easting y northing; falta «{word}».</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A seven-parameter fit</source>
      <translation>Un ajuste de siete parámetros</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A shift of heights</source>
      <translation>Un desplazamiento de las cotas</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>A slope of {run} (metres out for each metre up) cannot be graded; give more than 0.</source>
      <translation>No se puede modelar un talud de {run} (metros en horizontal por cada metro en vertical); indique más de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A standard deviation of {value} m is none; give one above 0.</source>
      <translation>Una desviación típica de {value} m no es válida; indique una mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>A thin triangle along the rim, {area:.1f} m², spans {value:.1f} m at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation>Un triángulo delgado a lo largo del borde, {area:.1f} m², abarca {value:.1f} m en E {easting:.3f} N {northing:.3f}. Indique un contorno o haga recortar el borde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A window of {window} m with steps of {step} m does not fit a line of {length:.3f} m. Give a window above 0 and no longer than the line, and a step above 0.</source>
      <translation>Una ventana de {window} m con pasos de {step} m no cabe en una línea de {length:.3f} m. Indique una ventana mayor que 0 y no más larga que la línea, y un paso mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Above the heights, exaggerated; below the grade, the straight line that fits the heights of {window} best, with the interval in which it lies with 95 %.</source>
      <translation>Arriba, las cotas, exageradas; abajo, la pendiente: la recta que mejor se ajusta a las cotas de {window}, con el intervalo en el que se encuentra con el 95 %.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Above the pit ({unit})</source>
      <translation>Sobre el punto bajo ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Accuracy</source>
      <translation>Precisión</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one check point</source>
      <translation>Precisión RMSE {rmse:.3f} m, media {mean:+.3f} m respecto a un punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one own check shot; no test</source>
      <translation>Precisión RMSE {rmse:.3f} m, media {mean:+.3f} m respecto a una observación de comprobación propia; no es un ensayo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} check points</source>
      <translation>Precisión RMSE {rmse:.3f} m, media {mean:+.3f} m respecto a {count} puntos de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} own check shots; no test</source>
      <translation>Precisión RMSE {rmse:.3f} m, media {mean:+.3f} m respecto a {count} observaciones de comprobación propias; no es un ensayo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Accuracy statement: {file}</source>
      <translation>Declaración de precisión: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Accuracy: FGDC-STD-007.3-1998 (NSSDA) and ASPRS Positional Accuracy Standards, edition 2 (2023). Empty circles: G. Toussaint (1983, “Computing largest empty circles with location constraints”).</source>
      <translation>Precisión: FGDC-STD-007.3-1998 (NSSDA) y ASPRS Positional Accuracy Standards, edición 2 (2023). Círculos vacíos: G. Toussaint (1983, «Computing largest empty circles with location constraints»).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm (one checkpoint, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation>Se comprobó que la precisión VVA real es RMSEV = {rmse_cm:.1f} cm (un punto de comprobación, percentil 95 {percentile_cm:.1f} cm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation>Se comprobó que la precisión VVA real es RMSEV = {rmse_cm:.1f} cm ({count} puntos de comprobación, percentil 95 {percentile_cm:.1f} cm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After</source>
      <translation>Después</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After ({unit}²)</source>
      <translation>Después ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Against the limits</source>
      <translation>Respecto a los límites</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>All check points on the surface are in vegetated ground; no class can be stated without open ground.</source>
      <translation>Todos los puntos de comprobación de la superficie están en terreno con vegetación; sin terreno despejado no se puede declarar ninguna clase.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>All together: {lines} lines on {levels} levels, {length} {unit} long.</source>
      <translation>En total: {lines} líneas en {levels} niveles, {length} {unit} de longitud.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Along the edges of the lane no low point is deeper than the noise.</source>
      <translation>A lo largo de los bordes del carril ningún punto bajo es más profundo que el ruido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Along the line</source>
      <translation>A lo largo de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only one checkpoint in non-vegetated ground.</source>
      <translation>Aunque las normas exigen un mínimo de {needed} puntos de comprobación, este ensayo se realizó con un solo punto de comprobación en terreno sin vegetación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only {count} checkpoints in non-vegetated ground.</source>
      <translation>Aunque las normas exigen un mínimo de {needed} puntos de comprobación, este ensayo se realizó con solo {count} puntos de comprobación en terreno sin vegetación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Apart in plan</source>
      <translation>Separación en planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Applies</source>
      <translation>Se aplica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area ({unit})</source>
      <translation>Área ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Area ({unit}²)</source>
      <translation>Área ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Area a bar of {width} {unit} ({area})</source>
      <translation>Área por barra de {width} {unit} ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Area and volume by level; the dashed line is the level at which water leaves.</source>
      <translation>Área y volumen por nivel; la línea discontinua es el nivel al que sale el agua.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area by depth: cut to the left of 0, fill to the right; exact for each bar.</source>
      <translation>Área por espesor: desmonte a la izquierda del 0, terraplén a la derecha; exacta para cada barra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area in plan ({unit}²)</source>
      <translation>Área en planta ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area on the slope ({unit}²)</source>
      <translation>Área sobre el talud ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Areas</source>
      <translation>Áreas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>As it stands in the file</source>
      <translation>Tal como figura en el archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little to cover a site; choose a larger paper or another scale.</source>
      <translation>A 1 : {scale:g} una hoja muestra {width:.1f} m por {height:.1f} m, de los que {overlap:.1f} m se solapan: demasiado poco para cubrir una obra; elija un papel mayor u otra escala.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a larger paper.</source>
      <translation>A 1 : {scale:g} la obra necesitaría {count} hojas; se hacen como máximo {most}. Elija una escala menor o un papel mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} for heights the profile does not fit on {paper}: one sheet spans {range:.2f} m. Choose {fit} or a larger paper.</source>
      <translation>A la escala {scale} de cotas, el perfil longitudinal no cabe en {paper}: una hoja abarca {range:.2f} m. Elija {fit} o un papel mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} the sheets would be {count}; the most is {most}. Choose a smaller scale, such as {fit}.</source>
      <translation>A la escala {scale} las hojas serían {count}; el máximo es {most}. Elija una escala menor, como {fit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Automatic checks</source>
      <translation>Comprobaciones automáticas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Automatic checks: noise from the scatter about cubics through neighbouring points; offsets of stretches of the walk by iteratively reweighted least squares over all places where passes meet or run side by side; intervals of sigmas by chi-square. Limits are this program's own choice.</source>
      <translation>Comprobaciones automáticas: ruido a partir de la dispersión respecto a cúbicas por puntos vecinos; desfases de trechos del recorrido por mínimos cuadrados reponderados iterativamente en todos los lugares donde las pasadas se encuentran o discurren juntas; intervalos de las sigmas por chi cuadrado. Los límites son elección propia de este programa.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>B - B, across it</source>
      <translation>B - B, transversal a ella</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Balance   at {height:.3f} ± {sigma_95:.3f} {unit}, fill from one of cut {factor:g}</source>
      <translation>Compens. {height:.3f} ± {sigma_95:.3f} {unit}, terraplén obtenido de uno de desmonte {factor:g}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Balance of cut and fill</source>
      <translation>Compensación de desmonte y terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Base {height}</source>
      <translation>Base {height}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Basin     holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², spills at {level:.3f} {unit}</source>
      <translation>Balsa     contiene {volume:.2f} ± {half:.2f} m³ (95 %) en {area:.1f} m², rebosa a {level:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before</source>
      <translation>Antes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before ({unit}²)</source>
      <translation>Antes ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Beyond them lies what no receiver tells: heights are held against the walk itself, the passes beside it, places walked twice and coded lines, by the noise found in this survey. Steps that several passes saw at one line are ground: kerbs, walls, ditches.</source>
      <translation>Más allá queda lo que ningún receptor indica: las cotas se contrastan con el propio recorrido, las pasadas contiguas, los lugares recorridos dos veces y las líneas codificadas, según el ruido hallado en este levantamiento. Los escalones que varias pasadas vieron en una misma línea son terreno: bordillos, muros, cunetas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Boundaries here are the limits of the surface, not legal boundaries of land.</source>
      <translation>Los límites que aquí figuran son los de la superficie, no lindes legales de fincas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Buried services are not shown.</source>
      <translation>No se muestran los servicios enterrados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By depth: all the earth moved where it is so deep</source>
      <translation>Por profundidad: toda la tierra movida donde es así de profunda</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By hand</source>
      <translation>A mano</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is flagged or no longer flagged.</source>
      <translation>A mano, el punto de la línea {line} se ha marcado o desmarcado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is in the surface, which the checks rejected ({reasons}).</source>
      <translation>A mano, el punto de la línea {line}, que las comprobaciones rechazaron ({reasons}), está en la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is out of the surface, which the checks let pass.</source>
      <translation>A mano, el punto de la línea {line}, que las comprobaciones admitieron, está fuera de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are flagged or no longer flagged, the first in line {line}.</source>
      <translation>A mano, {count} puntos se han marcado o desmarcado, el primero en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are in the surface that the checks rejected, the first in line {line} ({reasons}).</source>
      <translation>A mano, {count} puntos que las comprobaciones rechazaron están en la superficie, el primero en la línea {line} ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are out of the surface that the checks let pass, the first in line {line}.</source>
      <translation>A mano, {count} puntos que las comprobaciones admitieron están fuera de la superficie, el primero en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By it ({unit})</source>
      <translation>En ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By region</source>
      <translation>Por región</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By that rule the survey supports the interval of {interval} {unit}.</source>
      <translation>Según esa regla, el levantamiento admite la equidistancia de {interval} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By the checks</source>
      <translation>Por las comprobaciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchment</source>
      <translation>Cuenca</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments are bounded by lines of steepest descent and found exactly, so their areas add up to that of the surface. Areas and volumes of ponds are exact on the triangles.</source>
      <translation>Las cuencas están limitadas por líneas de máxima pendiente y se hallan de forma exacta, de modo que sus áreas suman la de la superficie. Las áreas y los volúmenes de los charcos son exactos sobre los triángulos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Catchments before and after</source>
      <translation>Cuencas antes y después</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>Catchments without a runoff coefficient have no peak flow: {names}. Give one for all or for each inlet.</source>
      <translation>Las cuencas sin coeficiente de escorrentía no tienen caudal punta: {names}. Indique uno para todas o para cada sumidero.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments, the largest first</source>
      <translation>Cuencas, de mayor a menor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments; {merged} outlets on the rim that drain less than {least} {unit}² each are counted with the rest of the rim, which has no name here.</source>
      <translation>Cuencas; {merged} salidas en el borde que drenan menos de {least} {unit}² cada una se cuentan con el resto del borde, que aquí no tiene nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} doubles back on itself at station {station} (E {easting:.3f} N {northing:.3f}), so that left and right are not defined there. Remove the vertex or split the line there.</source>
      <translation>El eje {name} retrocede sobre sí mismo en la estación {station} (E {easting:.3f} N {northing:.3f}), de modo que allí la izquierda y la derecha no están definidas. Elimine el vértice o divida la línea en ese lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no length: all its {vertices} vertices are at one place. Draw the line again.</source>
      <translation>El eje {name} no tiene longitud: sus {vertices} vértices están en un mismo lugar. Dibuje la línea de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no station {station}; its stations are {ranges}. Give one of those.</source>
      <translation>El eje {name} no tiene la estación {station}; sus estaciones son {ranges}. Indique una de ellas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has station {station} more than once, in the numberings {parts}. Say which one is meant.</source>
      <translation>El eje {name} tiene la estación {station} más de una vez, en las numeraciones {parts}. Indique a cuál se refiere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} is nowhere on the surface {surface} (the line begins at E {easting:.1f} N {northing:.1f}, the surface reaches from E {west:.1f} N {south:.1f} to E {east:.1f} N {north:.1f}). Check that both are of one site and in one CRS.</source>
      <translation>El eje {name} no está en ninguna parte de la superficie {surface} (la línea empieza en E {easting:.1f} N {northing:.1f}; la superficie va de E {west:.1f} N {south:.1f} a E {east:.1f} N {north:.1f}). Compruebe que ambos son de la misma obra y están en el mismo SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself once, at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). That place has two stations; the lower one is given.</source>
      <translation>El eje {name} se corta a sí mismo una vez, en las estaciones {first} y {second} (E {easting:.3f} N {northing:.3f}). Ese lugar tiene dos estaciones; se da la menor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself {count} times, first at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). A place there has two stations; the lower one is given.</source>
      <translation>El eje {name} se corta a sí mismo {count} veces, la primera en las estaciones {first} y {second} (E {easting:.3f} N {northing:.3f}). Un lugar así tiene dos estaciones; se da la menor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: a repeated vertex (closer than 0.1 mm) was left out.</source>
      <translation>Eje {name}: se omitió un vértice repetido (a menos de 0,1 mm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: station equation {number} (back {back} = ahead {ahead}) is not on the line beyond the one before; the numbering there runs from {low} to {high}. Correct the back station or the order.</source>
      <translation>Eje {name}: la ecuación de estaciones {number} (atrás {back} = adelante {ahead}) no está en la línea más allá de la anterior; la numeración allí va de {low} a {high}. Corrija la estación de atrás o el orden.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: vertex {vertex} has no finite coordinates. Draw the line again or repair its layer.</source>
      <translation>Eje {name}: el vértice {vertex} no tiene coordenadas finitas. Dibuje la línea de nuevo o repare su capa.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out.</source>
      <translation>Eje {name}: se omitieron {count} vértices repetidos (a menos de 0,1 mm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Chance of noise (%)</source>
      <translation>Probabilidad de ruido (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Change ({unit}²)</source>
      <translation>Cambio ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Check on the control points before, during and after the work; set nothing out while they are off by more than the job's tolerance.</source>
      <translation>Compruebe sobre los puntos de apoyo antes, durante y después del trabajo; no replantee nada mientras se desvíen más de la tolerancia del trabajo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Check point</source>
      <translation>Punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Check shots kept out of the surface: {count}, first {point} (line {line}).</source>
      <translation>Observaciones de comprobación excluidas de la superficie: {count}, la primera {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report</source>
      <translation>Control   un hallazgo, en el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation>Control   un hallazgo, en el informe; las cotas se repiten con {sigma:.1f} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report</source>
      <translation>Control   {count} hallazgos, en el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation>Control   {count} hallazgos, en el informe; las cotas se repiten con {sigma:.1f} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Claimed (mm)</source>
      <translation>Declarado (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Classes of slope</source>
      <translation>Clases de pendiente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Closed</source>
      <translation>Cerrada</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Code {code} is not in the code table; taken as ground. Points: {count}, first {point} (line {line}).</source>
      <translation>El código {code} no está en la tabla de códigos; se toma como terreno. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Colours: ColorBrewer 2.0, schemes safe for colour-blind readers.</source>
      <translation>Colores: ColorBrewer 2.0, esquemas aptos para lectores daltónicos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor {projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature {radius} m).</source>
      <translation>Factor combinado {combined} en este {easting} m, norte {northing} m: factor de escala de la proyección {projection} x factor de altura {height} (altura elipsoidal {h} m, {h_origin}; radio medio de curvatura {radius} m).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined}, as given by the user.</source>
      <translation>Factor combinado {combined}, indicado por el usuario.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Compared with it</source>
      <translation>En comparación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Contents</source>
      <translation>Índice</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/labels.py" />
      <source>Contour labels {height} m high every {spacing} m cannot be placed; give two numbers of metres above 0.</source>
      <translation>No se pueden colocar etiquetas de curvas de nivel de {height} m de alto cada {spacing} m; indique dos números de metros mayores que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours</source>
      <translation>Curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Contours  {lines} lines on {levels} levels, every {interval:g} {unit}</source>
      <translation>Curvas    {lines} líneas en {levels} niveles, cada {interval:g} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours are exact on that surface. Ground exactly at a level counts as above it.</source>
      <translation>Las curvas de nivel son exactas en esa superficie. El terreno situado exactamente en un nivel se cuenta por encima de él.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level</source>
      <translation>Curvas de nivel por nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level; index contours only, as there are many levels</source>
      <translation>Curvas de nivel por nivel; solo las curvas maestras, pues hay muchos niveles</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours every {interval} {unit}, index contours every {index} {unit}. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Curvas de nivel cada {interval} {unit}, curvas maestras cada {index} {unit}. Relieve sombreado desde el noroeste, con cotas exageradas {times} veces solo para el sombreado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours of the sheet: low-pass filter of G. Taubin (1995, “A signal processing approach to fair surface design”), for heights with the weights of U. Pinkall and K. Polthier (1993); lines are then drawn as Bézier curves inside corridors that do not meet.</source>
      <translation>Curvas de nivel de la hoja: filtro de paso bajo de G. Taubin (1995, «A signal processing approach to fair surface design»), para las cotas con los pesos de U. Pinkall y K. Polthier (1993); las líneas se dibujan después como curvas de Bézier dentro de corredores que no se tocan.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Control point</source>
      <translation>Punto de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm from it, in height {height_mm} mm.</source>
      <translation>El punto de apoyo '{name}' se observó {count} veces; se usa la media; la más alejada en planta está a {plan_mm} mm de ella, en altura a {height_mm} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Coordinates and units</source>
      <translation>Coordenadas y unidades</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Coordinates in {crs}; lengths and heights in {unit} (1 {unit} = {metres} m); {decimals} decimals. Cut and fill are design less existing ground: above 0 fill, below 0 cut.</source>
      <translation>Coordenadas en {crs}; longitudes y cotas en {unit} (1 {unit} = {metres} m); {decimals} decimales. Desmonte y terraplén son proyecto menos terreno existente: por encima de 0 terraplén, por debajo de 0 desmonte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Count</source>
      <translation>Cantidad</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Cover</source>
      <translation>Cubierta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Coverage</source>
      <translation>Cobertura</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; one place to walk again</source>
      <translation>Cobertura cada {along:.2f} m, pasadas separadas {across:.1f} m; un lugar que volver a recorrer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; {count} places to walk again</source>
      <translation>Cobertura cada {along:.2f} m, pasadas separadas {across:.1f} m; {count} lugares que volver a recorrer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crest, stations</source>
      <translation>Punto alto, estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Cross-sections of {name}</source>
      <translation>Perfiles transversales de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall</source>
      <translation>Pendiente transversal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Crossfall (%)</source>
      <translation>Pendiente transversal (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Crossfall cannot be found from offset {low} m to {high} m. Give the lower one first.</source>
      <translation>No se puede hallar la pendiente transversal del desplazamiento {low} m al {high} m. Indique primero el menor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall from {left} left to {right} right of the line, positive where the surface rises to the right, over {window}, with its 95 % interval.</source>
      <translation>Pendiente transversal desde {left} a la izquierda hasta {right} a la derecha de la línea, positiva donde la superficie sube hacia la derecha, sobre {window}, con su intervalo del 95 %.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall over the stations of {name}.</source>
      <translation>Pendiente transversal según las estaciones de {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall towards the edges: does each half of the lane fall to its edge by {least} % for sure?</source>
      <translation>Pendiente transversal hacia los bordes: ¿cae cada mitad del carril hacia su borde al menos un {least} % con seguridad?</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Curves of the water's area and volume by its level, from the pit to the spill.</source>
      <translation>Curvas del área y el volumen del agua según su nivel, desde el punto bajo hasta el rebose.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut ({unit})</source>
      <translation>Desmonte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Cut and fill between stations, and the running balance along the line.</source>
      <translation>Desmonte y terraplén entre estaciones y balance acumulado a lo largo de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>Cut and fill jump at the balanced height, where slopes run on over a brow or reach other ground: {rest:.1f} m³ are left over.</source>
      <translation>El desmonte y el terraplén dan un salto a la cota de compensación, donde los taludes siguen más allá de una coronación o alcanzan otro terreno: sobran {rest:.1f} m³.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut area ({unit})</source>
      <translation>Área de desmonte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut by material</source>
      <translation>Desmonte por material</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Cut, fill and what is left over against the height of the design.</source>
      <translation>Desmonte, terraplén y sobrante según la cota del proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>DEM: the plane of the triangle under each cell's centre.</source>
      <translation>MDE: el plano del triángulo bajo el centro de cada celda.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Decisions by hand against the checks: {shown} of {count}</source>
      <translation>Decisiones a mano contrarias a las comprobaciones: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Decisions made by hand were read from {file}.</source>
      <translation>Las decisiones tomadas a mano se leyeron de {file}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Deeper by ({unit})</source>
      <translation>Más profundo en ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Depressions</source>
      <translation>Depresiones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth</source>
      <translation>Profundidad</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Depth (mm)</source>
      <translation>Profundidad (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth of cut (orange) and fill (purple), drawn from a grid of {cell} m. Numbers come from the triangles.</source>
      <translation>Profundidad de desmonte (naranja) y terraplén (morado), dibujada a partir de una malla de {cell} m. Las cifras proceden de los triángulos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Depth ± 1 sigma ({unit})</source>
      <translation>Profundidad ± 1 sigma ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Depth: cut below 0, fill above ({unit})</source>
      <translation>Profundidad: desmonte bajo 0, terraplén sobre 0 ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference (%)</source>
      <translation>Diferencia (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference ({unit})</source>
      <translation>Diferencia ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Differences are those at all {count} vertices of the full surface, checked on the finished one. Rim and breaklines are kept as they are.</source>
      <translation>Las diferencias son las de los {count} vértices de la superficie completa, comprobadas en la terminada. El borde y las líneas de rotura se conservan tal cual.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Differences of height (mm)</source>
      <translation>Diferencias de cota (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Distance ({unit})</source>
      <translation>Distancia ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Distance along the pass ({unit})</source>
      <translation>Distancia a lo largo de la pasada ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Distance to the point recorded before ({unit})</source>
      <translation>Distancia al punto registrado anteriormente ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Dots and intervals: the standard deviation of a height found for each of {shown} runs, from {low} to {high} mm, beside what the receiver claims; {off} claims lie outside the interval of their run.</source>
      <translation>Puntos e intervalos: la desviación típica de una cota hallada en cada uno de {shown} tramos, de {low} a {high} mm, junto a la que declara el receptor; {off} declaraciones quedan fuera del intervalo de su tramo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Doubtful points along the walk</source>
      <translation>Puntos dudosos a lo largo del recorrido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drained to</source>
      <translation>Drenaba a</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drains now to</source>
      <translation>Ahora drena a</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Drains to</source>
      <translation>Drena a</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>Drift over {value} m cannot be; give the metres within which points share it.</source>
      <translation>Una deriva sobre {value} m no es posible; indique los metros dentro de los cuales la comparten los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Each window is judged by itself with at most 5 in 100 wrong; of many windows near the limit a few will be judged wrongly. Drift of the receiver counts only where it was given.</source>
      <translation>Cada ventana se juzga por sí sola con un máximo de 5 errores de cada 100; de muchas ventanas cercanas al límite, algunas se juzgarán mal. La deriva del receptor solo cuenta donde se indicó.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Earthwork of the grading</source>
      <translation>Movimiento de tierras de la explanación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_page.py" />
      <source>Earthwork: {existing} to {design}</source>
      <translation>Movimiento de tierras: {existing} a {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>East, mm</source>
      <translation>Este, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Easting ({unit})</source>
      <translation>Coordenada este ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Easting and northing are as in the file. Heights too: this program has not changed their datum and does not know it.</source>
      <translation>Las coordenadas este y norte son las del archivo. Las cotas también: este programa no ha cambiado su dátum y no lo conoce.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edit</source>
      <translation>Edición</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is outside the outermost points; no triangle can be added there.</source>
      <translation>La edición {number} ({kind}) no se aplica: E {easting:.3f} N {northing:.3f} está fuera de los puntos exteriores; allí no se puede añadir ningún triángulo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is too far from the survey; a surface may measure 107 km.</source>
      <translation>La edición {number} ({kind}) no se aplica: E {easting:.3f} N {northing:.3f} está demasiado lejos del levantamiento; una superficie puede medir 107 km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: at E {easting:.3f} N {northing:.3f} there is a point already, of height {height:.3f} m. Move its height instead.</source>
      <translation>La edición {number} ({kind}) no se aplica: en E {easting:.3f} N {northing:.3f} ya hay un punto, de cota {height:.3f} m. Cambie su cota en lugar de añadirlo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: it would leave no triangle of the surface.</source>
      <translation>La edición {number} ({kind}) no se aplica: no dejaría ningún triángulo de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: its line stays at one point, E {easting:.3f} N {northing:.3f}.</source>
      <translation>La edición {number} ({kind}) no se aplica: su línea se queda en un solo punto, E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: its three corners are not the corners of one triangle, the first at E {easting:.3f} N {northing:.3f}. Force or swap edges first.</source>
      <translation>La edición {number} ({kind}) no se aplica: sus tres vértices no son los de un mismo triángulo, el primero en E {easting:.3f} N {northing:.3f}. Fuerce o intercambie antes las aristas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: no edge joins E {easting:.3f} N {northing:.3f} and E {end_easting:.3f} N {end_northing:.3f}.</source>
      <translation>La edición {number} ({kind}) no se aplica: ninguna arista une E {easting:.3f} N {northing:.3f} y E {end_easting:.3f} N {end_northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: no point with a height lies within {reach:.3f} m of E {easting:.3f} N {northing:.3f}.</source>
      <translation>La edición {number} ({kind}) no se aplica: ningún punto con cota se encuentra a menos de {reach:.3f} m de E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} belongs to a breakline, boundary, void or forced edge.</source>
      <translation>La edición {number} ({kind}) no se aplica: la arista en E {easting:.3f} N {northing:.3f} pertenece a una línea de rotura, contorno, hueco o arista forzada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} is on the rim; there are not two triangles to swap it in.</source>
      <translation>La edición {number} ({kind}) no se aplica: la arista en E {easting:.3f} N {northing:.3f} está en el borde; no hay dos triángulos en los que intercambiarla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: the edge from E {easting:.3f} N {northing:.3f} would cross {label}.</source>
      <translation>La edición {number} ({kind}) no se aplica: la arista desde E {easting:.3f} N {northing:.3f} cruzaría {label}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle at E {easting:.3f} N {northing:.3f}.</source>
      <translation>La edición {number} ({kind}) no se aplica: la superficie no tiene ningún triángulo en E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle with its centroid in the polygon at E {easting:.3f} N {northing:.3f}.</source>
      <translation>La edición {number} ({kind}) no se aplica: la superficie no tiene ningún triángulo con su centroide en el polígono en E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has the triangle at E {easting:.3f} N {northing:.3f} already.</source>
      <translation>La edición {number} ({kind}) no se aplica: la superficie ya tiene el triángulo en E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the two triangles at E {easting:.3f} N {northing:.3f} form no convex quadrilateral, so there is no other diagonal.</source>
      <translation>La edición {number} ({kind}) no se aplica: los dos triángulos en E {easting:.3f} N {northing:.3f} no forman un cuadrilátero convexo, así que no hay otra diagonal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edited.py" />
      <source>Edit {number} ({kind}): the added point at E {easting:.3f} N {northing:.3f} is no part of the surface; it is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>Edición {number} ({kind}): el punto añadido en E {easting:.3f} N {northing:.3f} no forma parte de la superficie; está fuera del contorno o del borde recortado, o dentro de un hueco.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Edits     {applied} of {count} applied</source>
      <translation>Ediciones {applied} de {count} aplicadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edits by hand from {file}: {applied} of {count} applied</source>
      <translation>Ediciones a mano de {file}: {applied} de {count} aplicadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.</source>
      <translation>Se piden alturas elipsoidales, pero {crs} cuenta las alturas desde otro nivel; indique un SRC sin alturas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Ellipsoidal heights changed to orthometric ones: height minus geoid separation.</source>
      <translation>Alturas elipsoidales convertidas en ortométricas: altura menos ondulación del geoide.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>End areas take the area to change evenly between sections. Where it grows faster or slower than that they count too much or too little; the prismoidal correction for cut is {cut:.1f} m³, for fill {fill:.1f} m³.</source>
      <translation>El método de las áreas medias supone que el área cambia uniformemente entre perfiles. Donde crece más rápido o más despacio, cuenta de más o de menos; la corrección prismoidal para el desmonte es {cut:.1f} m³, para el terraplén {fill:.1f} m³.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Every check point, largest differences first</source>
      <translation>Todos los puntos de comprobación, primero las mayores diferencias</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Every line of the file</source>
      <translation>Todas las líneas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Exact, same ground ({unit})</source>
      <translation>Exacto, mismo terreno ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Falls (%)</source>
      <translation>Cae (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811.</source>
      <translation>Pies: 0,3048 m (internacional) y 1200/3937 m (topográfico de EE. UU.), NIST SP 811.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Field codes were not read: the surface has no lines to hold to.</source>
      <translation>No se leyeron códigos de campo: la superficie no tiene líneas que respetar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>File</source>
      <translation>Archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>File and line</source>
      <translation>Archivo y línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>File: {file}</source>
      <translation>Archivo: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files</source>
      <translation>Archivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files handed over</source>
      <translation>Archivos entregados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill ({unit})</source>
      <translation>Terraplén ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill area ({unit})</source>
      <translation>Área de terraplén ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Filled to where it spills, {level} {rise}, the basin holds {volume} ± {half} {unit} (95 %) on {area} {area_unit}, {depth} {rise} deep at its pit.</source>
      <translation>Lleno hasta donde rebosa, {level} {rise}, la balsa contiene {volume} ± {half} {unit} (95 %) en {area} {area_unit}, con {depth} {rise} de profundidad en su punto bajo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  one place to look at, in the report</source>
      <translation>Hallazgos un lugar que revisar, en el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  {count} places to look at, in the report</source>
      <translation>Hallazgos {count} lugares que revisar, en el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Findings by kind, the greatest value first: {shown} of {count}</source>
      <translation>Hallazgos por tipo, primero el de mayor valor: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>First file, line</source>
      <translation>Primer archivo, línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>First line</source>
      <translation>Primera línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Fits</source>
      <translation>Ajusta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Flagged</source>
      <translation>Marcado</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>For a height error of {error:.3f} m with heights good to {sigma:.3f} m on ground that bends {curvature:.4f} 1/m, passes may be {spacing:.1f} m apart: error² = 2/3 sigma² + (bend × spacing² / (2 √30))² (reasoned here, no standard).</source>
      <translation>Para un error altimétrico de {error:.3f} m con cotas de precisión {sigma:.3f} m en un terreno que se curva {curvature:.4f} 1/m, las pasadas pueden estar separadas {spacing:.1f} m: error² = 2/3 sigma² + (curvatura × separación² / (2 √30))² (razonado aquí, no es una norma).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>For machine guidance: load it, then check at several points of known height, by a person who is not on the machine's path.</source>
      <translation>Para guiado de maquinaria: cárguelo y compruébelo después en varios puntos de cota conocida, por una persona que no esté en la trayectoria de la máquina.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Forms narrower than {narrow:.1f} m (kerbs, ditches, banks) fall between passes: walk their edges as coded lines.</source>
      <translation>Las formas de menos de {narrow:.1f} m de ancho (bordillos, cunetas, taludes) quedan entre pasadas: recorra sus bordes como líneas codificadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Found (mm)</source>
      <translation>Hallado (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>From E {easting:.3f} N {northing:.3f} water runs off the surface at once: there is no basin. Give a place inside the basin, or a surface that takes in its whole rim.</source>
      <translation>Desde E {easting:.3f} N {northing:.3f} el agua sale enseguida de la superficie: no hay balsa. Indique un lugar dentro de la balsa o una superficie que abarque todo su borde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>From station ({unit})</source>
      <translation>Desde la estación ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>From {existing} to {design}: cut {cut} ± {cut_doubt} {unit}, fill {fill} ± {fill_doubt} {unit}, net {net} ± {net_doubt} {unit} (95 %), over {area} {area_unit} that both have.</source>
      <translation>De {existing} a {design}: desmonte {cut} ± {cut_doubt} {unit}, terraplén {fill} ± {fill_doubt} {unit}, neto {net} ± {net_doubt} {unit} (95 %), sobre {area} {area_unit} comunes a ambas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and {lines} contour lines every {interval} {height_unit}.</source>
      <translation>A partir de {points} puntos de {file}, {used} de ellos usados, una superficie de {triangles} triángulos sobre {area} {unit}² y {lines} curvas de nivel cada {interval} {height_unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. Accept it by its name if that will do: '{name}'.</source>
      <translation>De {source} a {target} PROJ solo dispone aquí de una operación aproximada (ballpark), que puede errar en muchos metros. Acéptela por su nombre si le basta: '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: '{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: '{name}'.</source>
      <translation>De {source} a {target} PROJ solo dispone aquí de una operación aproximada (ballpark), que puede errar en muchos metros: '{best}' necesita {grids}, no instalado aquí. Instale el archivo o acepte la operación aproximada por su nombre: '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} every operation needs a file not installed here: {grids}. Install it.</source>
      <translation>De {source} a {target} toda operación necesita un archivo no instalado aquí: {grids}. Instálelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} the best operation needs {grids}, not installed here: '{best}' (accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used (accuracy {accuracy}): '{name}'.</source>
      <translation>De {source} a {target} la mejor operación necesita {grids}, no instalado aquí: '{best}' (precisión {best_accuracy}). Instale el archivo o acepte por su nombre la operación que se puede usar (precisión {accuracy}): '{name}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Further rejected lines, in the table of rejects: {count}.</source>
      <translation>Otras líneas rechazadas, en la tabla de rechazos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation as the receiver sent it with each point: {least_m} to {most_m} m, mean {mean_m} m; from which model is not known.</source>
      <translation>Ondulación del geoide tal como la envió el receptor con cada punto: de {least_m} a {most_m} m, media {mean_m} m; no se sabe de qué modelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation interpolated from the grid {grid}: {least_m} to {most_m} m, mean {mean_m} m, over the site. The accuracy of the grid is not known to PROJ.</source>
      <translation>Ondulación del geoide interpolada de la malla {grid}: de {least_m} a {most_m} m, media {mean_m} m, en la obra. PROJ no conoce la precisión de la malla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation {value_m} m for the whole site, a constant ({origin}); its slope is left out.</source>
      <translation>Ondulación del geoide {value_m} m para toda la obra, constante ({origin}); se omite su inclinación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Give one of: the contour interval, the height error or the pass spacing wanted.</source>
      <translation>Indique uno de estos valores: la equidistancia, el error altimétrico o la separación entre pasadas deseados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grade (%)</source>
      <translation>Pendiente longitudinal (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades and vertical curves fitted; residuals {spread} mm (robust), at most {worst} mm</source>
      <translation>Rasantes y acuerdos verticales ajustados; residuos {spread} mm (robusto), como máximo {worst} mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades meet at (station, height)</source>
      <translation>Las rasantes se cortan en (estación, cota)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Grading</source>
      <translation>Explanación</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Grading   pads: {count}; cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² taken</source>
      <translation>Explanac. plataformas: {count}; desmonte {cut:.1f} ± {cut_95:.1f} m³, terraplén {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² ocupados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_page.py" />
      <source>Grading: {name}</source>
      <translation>Explanación: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. Heights are untouched.</source>
      <translation>Coordenadas de cuadrícula convertidas a terreno: distancias desde el origen (este {easting} m, norte {northing} m) divididas por el factor combinado; después se suman {shift_e} m a las coordenadas este y {shift_n} m a las norte. Las cotas no se modifican.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground and grid need the CRS of the grid; give it as --crs, not a local grid.</source>
      <translation>Terreno y cuadrícula necesitan el SRC de la cuadrícula; indíquelo como --crs, no una cuadrícula local.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined factor. Heights are untouched.</source>
      <translation>Coordenadas de terreno convertidas a cuadrícula: se restan {shift_e} m de las coordenadas este y {shift_n} m de las norte; después, las distancias desde el origen (este {easting} m, norte {northing} m) se multiplican por el factor combinado. Las cotas no se modifican.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground coordinates need the origin about which they were made; give its easting and northing as --ground-origin.</source>
      <translation>Las coordenadas de terreno necesitan el origen respecto al cual se formaron; indique sus coordenadas este y norte como --ground-origin.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Terreno cuya agua va a otro lugar</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauled</source>
      <translation>Transportado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauls along the line</source>
      <translation>Transportes a lo largo de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Have buried services located before anything is dug or driven in; they are not in this table.</source>
      <translation>Haga localizar los servicios enterrados antes de excavar o hincar nada; no figuran en esta tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height</source>
      <translation>Cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Height ({unit})</source>
      <translation>Cota ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Height and grade over the stations of {name}.</source>
      <translation>Cota y pendiente longitudinal según las estaciones de {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height guessed ({unit})</source>
      <translation>Cota supuesta ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Height of the surface less that of the check point, in millimetres; those outside have no figure.</source>
      <translation>Cota de la superficie menos la del punto de comprobación, en milímetros; los que quedan fuera no llevan cifra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass at {shown} places, with used, flagged and rejected points.</source>
      <translation>Cota según la distancia a lo largo de la pasada en {shown} lugares, con puntos usados, marcados y rechazados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass: {shown} of {count} places with flagged or rejected points, each kind before a second of its kind, the longest first.</source>
      <translation>Cota según la distancia a lo largo de la pasada: {shown} de {count} lugares con puntos marcados o rechazados, cada tipo antes que un segundo del mismo tipo, primero el más largo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Height, mm</source>
      <translation>Cota, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Cota: desplazada {shift} m en el centro de {count} puntos de apoyo, con un plano que sube {east} mm por kilómetro hacia el este y {north} mm hacia el norte; redundancia {freedom}, desviación típica de una cota {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation>Cota: desplazada {shift} m, a partir de {count} puntos de apoyo; redundancia {freedom}, desviación típica de una cota {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are ellipsoidal and are taken over so; a geoid separation makes heights above the geoid of them.</source>
      <translation>Las alturas son elipsoidales y se toman así; una ondulación del geoide las convierte en alturas sobre el geoide.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are orthometric as sent and are taken over so.</source>
      <translation>Las alturas son ortométricas tal como se enviaron y se toman así.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Heights are taken over as they are.</source>
      <translation>Las cotas se toman tal cual.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are taken over as they are; only positions in plan are transformed.</source>
      <translation>Las cotas se toman tal cual; solo se transforman las posiciones en planta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are transformed too, by the same operation.</source>
      <translation>También se transforman las cotas, con la misma operación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Heights of the used points.</source>
      <translation>Cotas de los puntos usados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here all ponds are full: water runs on over them to the rim or an inlet.</source>
      <translation>Aquí todos los charcos están llenos: el agua pasa por encima de ellos hasta el borde o un sumidero.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here ponds keep their water, and hollows that noise explains let it pass as if they were full.</source>
      <translation>Aquí los charcos retienen su agua, y las hondonadas que el ruido explica la dejan pasar como si estuvieran llenas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here water stays in every pit, those of noise too.</source>
      <translation>Aquí el agua se queda en todos los puntos bajos, también en los debidos al ruido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Highest ({unit})</source>
      <translation>Máxima ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Histogram of the area by depth of cut and fill.</source>
      <translation>Histograma del área por profundidad de desmonte y terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Histogram of the distance between points recorded one after another; median {middle} {unit}.</source>
      <translation>Histograma de la distancia entre puntos registrados consecutivamente; mediana {middle} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Histogram of the heights of the used points, from {low} to {high} {unit}.</source>
      <translation>Histograma de las cotas de los puntos usados, de {low} a {high} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Holds</source>
      <translation>Contiene</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Holds more by ({unit}³)</source>
      <translation>Contiene más en ({unit}³)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Hollow outline: what is left is the alpha shape of Edelsbrunner, Kirkpatrick and Seidel (1983).</source>
      <translation>Contorno cóncavo: lo que queda es la forma alfa de Edelsbrunner, Kirkpatrick y Seidel (1983).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of the one mark found in both: RMSEH = {rmse_cm:.1f} cm (the check point's own error included).</source>
      <translation>Precisión posicional horizontal de la única marca hallada en ambos: RMSEH = {rmse_cm:.1f} cm (incluido el error propio del punto de comprobación).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own error included).</source>
      <translation>Precisión posicional horizontal de {count} marcas halladas en ambos: RMSEH = {rmse_cm:.1f} cm (incluido el error propio de los puntos de comprobación).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights of each run repeat where it met others, against the receiver's claim: {shown} of {count} runs. Grey: the whole survey.</source>
      <translation>Cómo se repiten las cotas de cada tramo donde se encontró con otros, frente a lo declarado por el receptor: {shown} de {count} tramos. Gris: todo el levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights repeat</source>
      <translation>Cómo se repiten las cotas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How the file was read</source>
      <translation>Cómo se leyó el archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>How this was found:</source>
      <translation>Cómo se halló:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How {file} was read</source>
      <translation>Cómo se leyó {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>In words</source>
      <translation>En palabras</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Index</source>
      <translation>Índice</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>Index contours are set to every {index_every} contours; give a whole number from 1 up.</source>
      <translation>Las curvas maestras están fijadas cada {index_every} curvas de nivel; indique un número entero a partir de 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Indications</source>
      <translation>Indicios</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>Inlets that take no water, because they are off the surface or another one is nearer: {names}.</source>
      <translation>Sumideros que no reciben agua, por estar fuera de la superficie o por haber otro más cercano: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against one check shot of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation>Comprobación interna, no un ensayo según una norma: respecto a una observación de comprobación del mismo receptor, RMSEz {rmse:.3f} m, media {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against {count} check shots of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation>Comprobación interna, no un ensayo según una norma: respecto a {count} observaciones de comprobación del mismo receptor, RMSEz {rmse:.3f} m, media {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Interval and noise: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), annex B, RMSE of heights = interval / 3.</source>
      <translation>Equidistancia y ruido: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edición 1 (2014), anexo B, RMSE de cotas = equidistancia / 3.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}, and {second}.</source>
      <translation>También podría ser que {cause}, y {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}.</source>
      <translation>También podría ser que {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Its height ({unit})</source>
      <translation>Su cota ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Its own sigma (mm)</source>
      <translation>Su propia sigma (mm)</translation>
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
      <translation>K de acuerdos convexos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of sags</source>
      <translation>K de acuerdos cóncavos</translation>
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
      <translation>Tipo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Larger by ({unit}²)</source>
      <translation>Mayor en ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Least redundancy</source>
      <translation>Redundancia mínima</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length ({unit})</source>
      <translation>Longitud ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Length in plan ({unit})</source>
      <translation>Longitud en planta ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of each verdict ({unit})</source>
      <translation>Longitud de cada veredicto ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of the water ({unit})</source>
      <translation>Longitud del agua ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Lengths in plan, and area</source>
      <translation>Longitudes en planta y área</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Level ({unit})</source>
      <translation>Nivel ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of a triangle lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation>Zona llana de {value:.1f} m² en E {easting:.3f} N {northing:.3f}: todos los vértices de un triángulo están en una línea de cota {height:.3f} m. Si el terreno no es llano allí, añada un punto acotado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of {count} triangles lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation>Zona llana de {value:.1f} m² en E {easting:.3f} N {northing:.3f}: todos los vértices de {count} triángulos están en una línea de cota {height:.3f} m. Si el terreno no es llano allí, añada un punto acotado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}, and {second}.</source>
      <translation>Causa probable: {cause}, y {second}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}.</source>
      <translation>Causa probable: {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Limit</source>
      <translation>Límite</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Limits and cautions</source>
      <translation>Límites y advertencias</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Line</source>
      <translation>Línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Line {first}: {reason}</source>
      <translation>Línea {first}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lines</source>
      <translation>Líneas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Lines     {lines} from field codes, {edges} edges of the surface held</source>
      <translation>Líneas    {lines} de códigos de campo, {edges} aristas de la superficie respetadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at one place; they were joined there. Difference of heights {spread:.3f} m.</source>
      <translation>Las líneas se cruzan en un lugar; allí se unieron. Diferencia de cotas {spread:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at {count} places; they were joined there. Largest difference of heights {spread:.3f} m.</source>
      <translation>Las líneas se cruzan en {count} lugares; allí se unieron. Mayor diferencia de cotas {spread:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes</source>
      <translation>Líneas de códigos de campo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/run_figures.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lines of the file</source>
      <translation>Líneas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines that are</source>
      <translation>Líneas que son</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} (line {line}).</source>
      <translation>Líneas que nunca se terminaron; acaban en su último punto. Líneas: {count}, la primera {label} en {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines the surface holds to</source>
      <translation>Líneas que la superficie respeta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Lines {first} to {last}: {reason}</source>
      <translation>Líneas {first} a {last}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Local codes and licensed practice decide on drainage, and on where water may be led: turning it onto a neighbour's ground is a legal matter in most places.</source>
      <translation>La normativa local y un profesional habilitado deciden sobre el drenaje y sobre adónde puede conducirse el agua: desviarla al terreno de un vecino es una cuestión legal en la mayoría de los lugares.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Local codes, the contract and a licensed professional decide; this report does not.</source>
      <translation>Deciden la normativa local, el contrato y un profesional habilitado; no este informe.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them.</source>
      <translation>Localice los servicios enterrados antes de que nadie excave: ningún levantamiento de la superficie los muestra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them. Setting out and machine guidance need independent checks.</source>
      <translation>Localice los servicios enterrados antes de que nadie excave: ningún levantamiento de la superficie los muestra. El replanteo y el guiado de maquinaria necesitan comprobaciones independientes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Low points along the edges, where water stands</source>
      <translation>Puntos bajos a lo largo de los bordes, donde se estanca el agua</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Low points are found along the line alone: water may leave sideways, over a lowered kerb or into an inlet. The deepest place of a noisy profile is a little too deep; depths below 2 standard deviations are not told.</source>
      <translation>Los puntos bajos se hallan solo a lo largo de la línea: el agua puede salir lateralmente, por un bordillo rebajado o hacia un sumidero. El lugar más profundo de un perfil con ruido es algo demasiado profundo; no se indican profundidades inferiores a 2 desviaciones típicas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lowest ({unit})</source>
      <translation>Mínima ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Map of cut and fill by depth, with {count} lines of no cut and no fill and the rims of both surfaces.</source>
      <translation>Mapa de desmonte y terraplén por profundidad, con {count} líneas de paso y los bordes de ambas superficies.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the slopes in {count} classes, the steeper the darker, with rim and breaklines.</source>
      <translation>Mapa de las pendientes en {count} clases, más oscuro cuanto más empinado, con borde y líneas de rotura.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark.</source>
      <translation>Mapa de los puntos del levantamiento: {used} usados, {flagged} marcados y {rejected} rechazados, cada uno con su símbolo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Map of the used points with {circles} empty circles and {places} places to walk again.</source>
      <translation>Mapa de los puntos usados con {circles} círculos vacíos y {places} lugares que volver a recorrer.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the {count} places to look at over the shaded surface, by kind and number.</source>
      <translation>Mapa de los {count} lugares que revisar sobre la superficie sombreada, por tipo y número.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} catchments with channels and ridges.</source>
      <translation>Mapa de {count} cuencas con cauces y divisorias.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Map of {count} check points over the shaded surface with their differences.</source>
      <translation>Mapa de {count} puntos de comprobación sobre la superficie sombreada con sus diferencias.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Map of {count} contour lines every {interval} {unit} over the shaded surface, with their heights, spot heights, rim and breaklines.</source>
      <translation>Mapa de {count} curvas de nivel cada {interval} {unit} sobre la superficie sombreada, con sus cotas, puntos acotados, borde y líneas de rotura.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} ponds by depth with pits, spill points and where they spill to.</source>
      <translation>Mapa de {count} charcos por profundidad con puntos bajos, puntos de rebose y adónde rebosan.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Map of {count} ponds that are new, changed or gone.</source>
      <translation>Mapa de {count} charcos nuevos, modificados o desaparecidos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {paths} paths of water, channels, ponds and inlets over the shaded surface.</source>
      <translation>Mapa de {paths} caminos del agua, cauces, charcos y sumideros sobre la superficie sombreada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mass diagram: the lower line rises in cut and falls in fill; between places where it is 0 the earth balances.</source>
      <translation>Diagrama de masas: la línea inferior sube en desmonte y baja en terraplén; entre los lugares donde vale 0 las tierras se compensan.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Material ({unit} of cut)</source>
      <translation>Material ({unit} de desmonte)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean cut ({unit})</source>
      <translation>Desmonte medio ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean depth ({unit})</source>
      <translation>Profundidad media ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Mean fall to the left (%)</source>
      <translation>Caída media hacia la izquierda (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean fill ({unit})</source>
      <translation>Terraplén medio ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mean haul ({unit})</source>
      <translation>Distancia media de transporte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Mean, used ({unit})</source>
      <translation>Media, usada ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Median</source>
      <translation>Mediana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Method</source>
      <translation>Método</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Method and sources</source>
      <translation>Método y fuentes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Middle height ({unit})</source>
      <translation>Cota central ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Much of the ground is no deeper than the noise of the points: noise alone makes about {excess:.1f} m³ of cut and as much fill. The net volume is not touched by it.</source>
      <translation>Gran parte del terreno no es más profunda que el ruido de los puntos: el ruido por sí solo produce unos {excess:.1f} m³ de desmonte y otros tantos de terraplén. El volumen neto no se ve afectado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Name</source>
      <translation>Nombre</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS.</source>
      <translation>Ni columnas intercambiadas ni otra unidad, huso o falso origen los llevan allí; compruebe el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Net ({unit})</source>
      <translation>Neto ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none.</source>
      <translation>No se indica ningún SRC; use --crs con un código EPSG como EPSG:25832, o 'local' si no hay ninguno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>No check point states its own height error, so none is added; edition 2 asks for it. Give a column sigma_v.</source>
      <translation>Ningún punto de comprobación declara su propio error altimétrico, así que no se suma ninguno; la edición 2 lo exige. Añada una columna sigma_v.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>No contour interval can be vouched for: neither check points nor repeats nor stated errors are known.</source>
      <translation>No se puede avalar ninguna equidistancia: no se conocen puntos de comprobación, repeticiones ni errores declarados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>No crest was fitted, so nothing is said of sight.</source>
      <translation>No se ajustó ningún acuerdo convexo, así que nada se dice de la visibilidad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>No decisions were made by hand.</source>
      <translation>No se tomaron decisiones a mano.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>No ground drains nowhere: all water comes to the rim or to an inlet.</source>
      <translation>Ningún terreno queda sin desagüe: toda el agua llega al borde o a un sumidero.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>No ground has its water go elsewhere.</source>
      <translation>En ningún terreno el agua va a otro lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>No height between {low:.1f} m and {high:.1f} m balances cut and fill with a surplus of {surplus:.1f} m³. Check the surplus.</source>
      <translation>Ninguna cota entre {low:.1f} m y {high:.1f} m compensa desmonte y terraplén con un excedente de {surplus:.1f} m³. Compruebe el excedente.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>No level meets the surface; choose a smaller interval or another base.</source>
      <translation>Ningún nivel corta la superficie; elija una equidistancia menor u otra base.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>No line was rejected.</source>
      <translation>No se rechazó ninguna línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>No pass fits into the area: none would be {step:g} m long, the distance at which points are stored. Have the perimeter walked too, or give a larger area.</source>
      <translation>Ninguna pasada cabe en la zona: ninguna mediría {step:g} m, la distancia a la que se guardan puntos. Haga recorrer también el perímetro o indique una zona mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No place needs to be walked again.</source>
      <translation>No hace falta volver a recorrer ningún lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out.</source>
      <translation>Ningún punto queda fuera del área de uso de su SRC, así que '{name}' no se aplica; omita --correct.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No point was flagged or rejected for anything but its code.</source>
      <translation>Ningún punto se marcó ni se rechazó por nada que no fuera su código.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No two used points have the same place.</source>
      <translation>No hay dos puntos usados en el mismo lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No.</source>
      <translation>N.º</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Noise moves a contour sideways by the noise of the height over the slope: at the median slope of {slope} % a standard deviation of {shift} {unit}; on flatter ground more.</source>
      <translation>El ruido desplaza lateralmente una curva de nivel en el ruido de la cota dividido por la pendiente: con la pendiente mediana del {slope} %, una desviación típica de {shift} {unit}; en terreno más llano, más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Noise of the used points as the receiver claims it</source>
      <translation>Ruido de los puntos usados según lo declara el receptor</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>None of the {count} cross-sections is on the surface {surface}. Check line and CRS.</source>
      <translation>Ninguno de los {count} perfiles transversales está en la superficie {surface}. Compruebe la línea y el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>None of the {count} points lies at a vertex of the surface, so they cannot tell its noise. Give the points that the surface was built from.</source>
      <translation>Ninguno de los {count} puntos está en un vértice de la superficie, así que no pueden indicar su ruido. Indique los puntos con los que se construyó la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>None of these is a proof.</source>
      <translation>Ninguno de ellos es una prueba.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>North, mm</source>
      <translation>Norte, mm</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Northing ({unit})</source>
      <translation>Coordenada norte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Not compared ({unit})</source>
      <translation>No comparado ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Not compared: {existing:.1f} m² that only {existing_name} covers, {design:.1f} m² that only {design_name} covers.</source>
      <translation>No comparado: {existing:.1f} m² que solo cubre {existing_name}, {design:.1f} m² que solo cubre {design_name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Not for construction or setting out without independent checks on the ground.</source>
      <translation>No apto para construcción ni replanteo sin comprobaciones independientes sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Not for construction or setting out without independent checks; see the limits and cautions at the end.</source>
      <translation>No apto para construcción ni replanteo sin comprobaciones independientes; véanse los límites y advertencias al final.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Not for construction, traffic or setting out without independent checks.</source>
      <translation>No apto para construcción, tráfico ni replanteo sin comprobaciones independientes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation>No ensayado según FGDC-STD-007.3-1998: pide {needed} puntos de comprobación y hay {count}. Lo que muestran es 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there is one. What it shows is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation>No ensayado según FGDC-STD-007.3-1998: pide {needed} puntos de comprobación y hay uno. Lo que muestra es 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Note</source>
      <translation>Nota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing measured within ({unit})</source>
      <translation>Nada medido en ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing was deleted: every point is in points.csv with its status and reasons. Where you know better, decide by hand with --decisions.</source>
      <translation>No se borró nada: todos los puntos están en points.csv con su estado y sus motivos. Donde usted sepa más, decida a mano con --decisions.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation>No se registró nada en hasta {value:.1f} m en E {easting:.3f} N {northing:.3f} (un triángulo, {area:.0f} m²); en el resto, las pasadas están separadas {passes:.1f} m y los puntos {spacing:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation>No se registró nada en hasta {value:.1f} m en E {easting:.3f} N {northing:.3f} (un triángulo, {area:.0f} m²); en el resto, las pasadas están separadas {passes:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation>No se registró nada en hasta {value:.1f} m en E {easting:.3f} N {northing:.3f} ({count} triángulos, {area:.0f} m²); en el resto, las pasadas están separadas {passes:.1f} m y los puntos {spacing:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation>No se registró nada en hasta {value:.1f} m en E {easting:.3f} N {northing:.3f} ({count} triángulos, {area:.0f} m²); en el resto, las pasadas están separadas {passes:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>Noticed on the way:</source>
      <translation>Advertido durante el proceso:</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Nowhere to walk again: no place of the surface is farther than {limit:.1f} m from a measured one.</source>
      <translation>Nada que volver a recorrer: ningún lugar de la superficie está a más de {limit:.1f} m de uno medido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of it drains nowhere ({unit}²)</source>
      <translation>De ella sin desagüe ({unit}²)</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.</source>
      <translation>De ello, {bend:.3f} m procede del terreno entre pasadas separadas {spacing:.1f} m (estimado aquí a partir de las curvaturas vistas a lo largo de las pasadas, sin norma alguna); las formas de menos de unos {narrow:.0f} m de ancho no están en los datos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of {count} places on the surface the water of {rim} leaves over the rim, of {inlets} comes to an inlet, and of {stay} stays in a pond or pit.</source>
      <translation>De {count} lugares de la superficie, el agua de {rim} sale por el borde, la de {inlets} llega a un sumidero y la de {stay} se queda en un charco o punto bajo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Offset</source>
      <translation>Desplazamiento</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Offset, right of the line above 0 ({unit})</source>
      <translation>Desplazamiento, a la derecha de la línea sobre 0 ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>On the user's word the coordinates were read otherwise: {cause}.</source>
      <translation>Por indicación del usuario, las coordenadas se leyeron de otro modo: {cause}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>One catchment is larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation>Una cuenca es mayor de 80 ha; el método racional no suele usarse para áreas así.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>One check point has the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' if it is not.</source>
      <translation>Un punto de comprobación tiene la cubierta 'grass', que se toma por hierba corta y, por tanto, por terreno sin vegetación; escriba 'tall grass' si no lo es.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One check point states no height error of its own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation>Un punto de comprobación no declara error altimétrico propio; se cuenta {sigma:.3f} m, como en los demás.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>One crossing of passes tells next to nothing of the noise of the survey; plan more passes across.</source>
      <translation>Un solo cruce de pasadas no dice casi nada del ruido del levantamiento; planee más pasadas transversales.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One of {all} check points lies outside the surface and was not used: {names}.</source>
      <translation>Uno de {all} puntos de comprobación está fuera de la superficie y no se usó: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>One of {total} points lies outside the area the operation is made for ({area}).</source>
      <translation>Uno de {total} puntos está fuera del área para la que se hizo la operación ({area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place to walk again; with it no place is farther than {limit:.1f} m from a measured one.</source>
      <translation>Un lugar que volver a recorrer; con él ningún lugar está a más de {limit:.1f} m de uno medido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point has no name; choose another name field or number the points.</source>
      <translation>Un punto no tiene nombre; elija otro campo de nombre o numere los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the design surface: it has no design height.</source>
      <translation>Un punto está fuera de la superficie de proyecto: no tiene cota de proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the existing surface: cut and fill are not known there.</source>
      <translation>Un punto está fuera de la superficie existente: allí no se conocen desmonte ni terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>One point shares its name “{name}” with another; both are kept.</source>
      <translation>Un punto comparte su nombre «{name}» con otro; se conservan ambos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One position was recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation>Una posición se registró más de una vez (igual a 0,1 mm); la superficie toma la cota media. Mayor diferencia {spread:.3f} m, en E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>One status was set by hand against the automatic checks, in line {line}.</source>
      <translation>Un estado se fijó a mano en contra de las comprobaciones automáticas, en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One vertex is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>Un vértice está fuera del contorno o del borde recortado, o dentro de un hueco.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Orthometric heights changed to ellipsoidal ones: height plus geoid separation.</source>
      <translation>Alturas ortométricas convertidas en elipsoidales: altura más ondulación del geoide.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Outcome</source>
      <translation>Resultado</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to {worst_mm} mm.</source>
      <translation>En la obra el factor va de {least} a {most}; con un solo factor, una línea de 100 m tiene un error de hasta {worst_mm} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>PDOP, at most</source>
      <translation>PDOP, como máximo</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>PROJ knows no way from {source} to {target}; choose another CRS.</source>
      <translation>PROJ no conoce ningún camino de {source} a {target}; elija otro SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Pad</source>
      <translation>Plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Part of</source>
      <translation>Parte de</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Passes {spacing:.2f} m apart would be {count} on this area; ask for less or plan parts of it.</source>
      <translation>Con una separación de {spacing:.2f} m, las pasadas serían {count} en esta área; pida menos o planifíquela por partes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flow ({unit})</source>
      <translation>Caudal punta ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>Peak flows by the rational method (Kuichling 1889) are an indication: they hold as far as the runoff coefficients, the intensity and its duration do that were given, and do not replace a drainage design.</source>
      <translation>Los caudales punta por el método racional (Kuichling 1889) son orientativos: valen tanto como los coeficientes de escorrentía, la intensidad y su duración que se indicaron, y no sustituyen un proyecto de drenaje.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flows by the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889), with an intensity of {intensity} {unit}. They hold as far as the coefficients, the intensity and its duration do, which were given, not found here; they are an indication.</source>
      <translation>Caudales punta por el método racional, Q = C i A (E. Kuichling, «The relation between the rainfall and the discharge of sewers in populous districts», Transactions of the American Society of Civil Engineers 20, 1889), con una intensidad de {intensity} {unit}. Valen tanto como los coeficientes, la intensidad y su duración, que se indicaron y no se hallaron aquí; son orientativos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Place     {statement}</source>
      <translation>Lugar     {statement}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Places</source>
      <translation>Lugares</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Places met</source>
      <translation>Lugares de encuentro</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once (equal to 0.1 mm in plan): {count}. Rule: the surface takes the mean height.</source>
      <translation>Lugares registrados más de una vez (iguales a 0,1 mm en planta): {count}. Regla: la superficie toma la cota media.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once, largest differences first: {shown} of {count}</source>
      <translation>Lugares registrados más de una vez, primero las mayores diferencias: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at</source>
      <translation>Lugares que revisar</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at, numbered as in the table.</source>
      <translation>Lugares que revisar, numerados como en la tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places to walk again, in walking order: {shown} of {count}</source>
      <translation>Lugares que volver a recorrer, en el orden del recorrido: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places with flagged or rejected points: {shown} of {count}</source>
      <translation>Lugares con puntos marcados o rechazados: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan</source>
      <translation>Planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole numbers exactly. Heights are never rounded. Where rounding could decide, bounds of J. R. Shewchuk (1997, “Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates”) tell when whole numbers must.</source>
      <translation>Las coordenadas en planta son décimas de milímetro enteras; qué puntos forman triángulos se decide exactamente sobre estos números enteros. Las cotas nunca se redondean. Donde el redondeo pudiera decidir, las cotas de error de J. R. Shewchuk (1997, «Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates») indican cuándo deben hacerlo los números enteros.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design over the shaded ground, with slopes and daylight lines.</source>
      <translation>Planta del proyecto sobre el terreno sombreado, con taludes y líneas de encuentro con el terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design: arrows and ticks point downhill; slopes are told as 1 up or down in so many out, falls of the platform in per cent.</source>
      <translation>Planta del proyecto: las flechas y los trazos señalan cuesta abajo; los taludes se indican como 1 en vertical por tantos en horizontal, las caídas de la plataforma en tanto por ciento.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Planta: ajuste de cuatro parámetros a {count} puntos de apoyo; girado {turn} grados (antihorario; desviación típica {turn_sd} segundos de arco), escala {scale} ({ppm} ppm, desviación típica {scale_sd} ppm), después desplazado {shift_e} m al este y {shift_n} m al norte en el centro de los puntos. Redundancia {freedom}, desviación típica de una coordenada {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points</source>
      <translation>Puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Points    {points} from {lines} lines ({rejects} lines rejected); {used} used, {flagged} flagged, {rejected} rejected</source>
      <translation>Puntos    {points} de {lines} líneas ({rejects} líneas rechazadas); {used} usados, {flagged} marcados, {rejected} rechazados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Points a bar of {width} {unit}</source>
      <translation>Puntos por barra de {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points and decisions</source>
      <translation>Puntos y decisiones</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Points kept out of the surface because their code is not ground: {count}, first {point} (line {line}).</source>
      <translation>Puntos excluidos de la superficie porque su código no es terreno: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Points on a local grid cannot be transformed; say their CRS, or fit them to control points.</source>
      <translation>Los puntos en una cuadrícula local no se pueden transformar; indique su SRC o ajústelos a puntos de apoyo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points rejected</source>
      <translation>Puntos rechazados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points still used</source>
      <translation>Puntos aún usados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Points that have another status by hand than the checks gave them: {changed}. Decisions that agree with the checks: {same}.</source>
      <translation>Puntos que a mano tienen otro estado que el que dieron las comprobaciones: {changed}. Decisiones que concuerdan con las comprobaciones: {same}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Points to set out: {count}, control points: {control}.</source>
      <translation>Puntos que replantear: {count}, puntos de apoyo: {control}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points with a value</source>
      <translation>Puntos con valor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Pond</source>
      <translation>Charco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>Ponds</source>
      <translation>Charcos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds after the change, those that are gone, and ground whose water goes elsewhere, over the changed surface.</source>
      <translation>Charcos tras el cambio, los que han desaparecido y el terreno cuya agua va a otro lugar, sobre la superficie modificada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds before and after, the largest change first: {shown} of {count}</source>
      <translation>Charcos antes y después, primero el mayor cambio: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds that noise does not explain: {count}, of {pits} pits. Full, they hold {volume} {unit}³ under {area} {unit}² of water.</source>
      <translation>Charcos que el ruido no explica: {count}, de {pits} puntos bajos. Llenos, contienen {volume} {unit}³ bajo {area} {unit}² de agua.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds when full, by depth, with the way of the overflow.</source>
      <translation>Charcos llenos, por profundidad, con el camino del agua que rebosa.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds, the deepest first: {shown} of {count}</source>
      <translation>Charcos, primero el más profundo: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: {accuracy}.</source>
      <translation>Posiciones transformadas de {source} a {target} con la operación de PROJ '{name}'; precisión declarada por PROJ: {accuracy}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Profile and grades</source>
      <translation>Perfil longitudinal y pendientes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Profile of {name}</source>
      <translation>Perfil longitudinal de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Quantity</source>
      <translation>Magnitud</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSE</source>
      <translation>RMSE</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSEV with that error in quadrature (mm)</source>
      <translation>RMSEV con ese error en cuadratura (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reason</source>
      <translation>Motivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Reasons</source>
      <translation>Motivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reasons (a point can have several)</source>
      <translation>Motivos (un punto puede tener varios)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Reasons given</source>
      <translation>Motivos indicados</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass.</source>
      <translation>Registrado cada {along:.2f} m a lo largo de las pasadas, {across:.1f} m de pasada a pasada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Region</source>
      <translation>Región</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/partition.py" />
      <source>Region {name} has a ring of {count} corners with coordinates; a ring needs three.</source>
      <translation>La región {name} tiene un anillo de {count} vértices con coordenadas; un anillo necesita tres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Regions overlap over {area:.1f} m² ({names}): each of them counts that ground, the total counts it once.</source>
      <translation>Las regiones se solapan en {area:.1f} m² ({names}): cada una de ellas cuenta ese terreno, el total lo cuenta una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Rejected</source>
      <translation>Rechazado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Rejected lines</source>
      <translation>Líneas rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Remark</source>
      <translation>Observación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   {count}, all of them in the report</source>
      <translation>Observac. {count}, todas en el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Repeated records with line codes, left out of the lines together with their words. Points: {count}, first {point} (line {line}).</source>
      <translation>Registros repetidos con códigos de línea, excluidos de las líneas junto con sus palabras. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Residuals at the control points: fitted minus control</source>
      <translation>Residuos en los puntos de apoyo: ajustado menos apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area encloses nothing: {count} corners; draw a polygon of three corners or more.</source>
      <translation>El anillo {number} del área no encierra nada: {count} vértices; dibuje un polígono de tres vértices o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area has a corner without finite coordinates; draw it again.</source>
      <translation>El anillo {number} del área tiene un vértice sin coordenadas finitas; dibújelo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/road.py" />
      <source>Road      {name}, {length:.1f} {unit}; stretches by the limits: {passed} pass, {failed} fail, {close} too close to tell</source>
      <translation>Carretera {name}, {length:.1f} {unit}; tramos según los límites: {passed} cumplen, {failed} no cumplen, {close} demasiado ajustados para decidir</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Road: {name}</source>
      <translation>Carretera: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Rule</source>
      <translation>Regla</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the height of the line that comes first.</source>
      <translation>Regla: la cota de la línea que va primero.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights, however much they differ.</source>
      <translation>Regla: la media de las dos cotas, por mucho que difieran.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights; a larger difference than the tolerance would have been refused.</source>
      <translation>Regla: la media de las dos cotas; una diferencia mayor que la tolerancia se habría rechazado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Run by run, where a run met others at {least} places or more: {shown} of {count} runs</source>
      <translation>Tramo a tramo, donde un tramo se encontró con otros en {least} lugares o más: {shown} de {count} tramos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Runoff coefficient</source>
      <translation>Coeficiente de escorrentía</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Same place, different heights: the largest differences</source>
      <translation>Mismo lugar, cotas distintas: las mayores diferencias</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart ({ppm} ppm).</source>
      <translation>Línea de ejemplo de {start} a {end}: {grid_m} m en la cuadrícula, {ground_m} m en el terreno, {difference_mm} mm de diferencia ({ppm} ppm).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second file, line</source>
      <translation>Segundo archivo, línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Second line</source>
      <translation>Segunda línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second minus first</source>
      <translation>Segunda menos primera</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Section {name}. Heights are exact all along, at every edge of both surfaces.</source>
      <translation>Sección {name}. Las cotas son exactas en toda su longitud, en cada arista de ambas superficies.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/sections.py" />
      <source>Sections of {width} m to each side cannot be drawn; give a width above 0.</source>
      <translation>No se pueden dibujar secciones de {width} m a cada lado; indique una anchura mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation>Ajuste de siete parámetros en el espacio a {count} puntos de apoyo; girado {turn} grados en torno al eje (este {x}, norte {y}, arriba {z}), escala {scale} ({ppm} ppm). Redundancia {freedom}, desviación típica de una coordenada {sigma}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Share of the plan (%)</source>
      <translation>Parte de la planta (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Share of the site (%)</source>
      <translation>Parte de la obra (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Sheet     contours shifted by at most {shifted:.3f} m, {labels} labels for 1 : {scale:g}, {spots} spots</source>
      <translation>Hoja      curvas de nivel desplazadas como máximo {shifted:.3f} m, {labels} etiquetas para 1 : {scale:g}, {spots} puntos acotados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/paper.py" />
      <source>Sheet {page} of {pages}</source>
      <translation>Hoja {page} de {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Shift of the design ({unit})</source>
      <translation>Desplazamiento del proyecto ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sight on crests by your table of speeds and least K</source>
      <translation>Visibilidad en acuerdos convexos según su tabla de velocidades y K mínima</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Sight on crests is an indication only: it compares the K of a fitted curve with your table. It knows nothing of bends, walls, hedges, or the eye and object heights that your table assumes.</source>
      <translation>La visibilidad en acuerdos convexos es solo orientativa: compara la K de un acuerdo ajustado con su tabla. No sabe nada de curvas, muros, setos ni de las alturas de ojo y de objeto que supone su tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Signs: cut is ground to be taken away (existing above design), fill ground to be placed (design above existing), both positive; net is fill less cut, above 0 where earth must be brought in. Volumes are as the ground lies, without shrink or swell, unless a table says otherwise.</source>
      <translation>Signos: desmonte es terreno que se ha de retirar (existente por encima del proyecto), terraplén terreno que se ha de colocar (proyecto por encima del existente), ambos positivos; neto es terraplén menos desmonte, mayor que 0 donde hay que aportar tierras. Los volúmenes son los del terreno en banco, sin merma ni esponjamiento, salvo que una tabla diga otra cosa.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sill at station</source>
      <translation>Umbral en la estación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Size (bytes)</source>
      <translation>Tamaño (bytes)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size (mm)</source>
      <translation>Tamaño (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size / its sigma</source>
      <translation>Tamaño / su sigma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope</source>
      <translation>Pendiente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope of the triangles; a slope on a limit belongs to the flatter class.</source>
      <translation>Pendiente de los triángulos; una pendiente que coincide con un límite pertenece a la clase más llana.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Slopes of cut, fill</source>
      <translation>Taludes de desmonte, terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation>Menor equidistancia que admiten los datos: {interval:g} {unit} (RMSEz {rmse:.3f} m a partir de {basis}; RMSEz = equidistancia / 3, ASPRS Positional Accuracy Standards, 2014, anexo B).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Source of the limit</source>
      <translation>Fuente del límite</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Space</source>
      <translation>Espacio</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end.</source>
      <translation>Separación a lo largo de las pasadas. {count} pasos más largos, de hasta {longest} {unit}, quedan más allá del extremo derecho.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Spacing and gaps</source>
      <translation>Separación y vacíos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Speed reached for sure</source>
      <translation>Velocidad alcanzada con seguridad</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the plane of its {count:.0f} neighbours, {ratio:.0f} times the scatter there.</source>
      <translation>Pico en E {easting:.3f} N {northing:.3f}: {value:+.3f} m fuera del plano de sus {count:.0f} vecinos, {ratio:.0f} veces la dispersión de allí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike on a line at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the straight between its neighbours on the line, {ratio:.0f} times the scatter of lines.</source>
      <translation>Pico en una línea en E {easting:.3f} N {northing:.3f}: {value:+.3f} m fuera de la recta entre sus vecinos de la línea, {ratio:.0f} veces la dispersión de las líneas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spikes: points off the plane through their neighbours by several times the scatter of the survey, estimated from the median of absolute residuals (Rousseeuw and Croux 1993). The limits of all findings are this program's own choice, from no standard.</source>
      <translation>Picos: puntos fuera del plano que pasa por sus vecinos en varias veces la dispersión del levantamiento, estimada a partir de la mediana de los residuos absolutos (Rousseeuw y Croux 1993). Los límites de todos los hallazgos son elección propia de este programa, de ninguna norma.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Spills to</source>
      <translation>Rebosa a</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spot heights: summits, pits and saddles by T. Banchoff (1967, “Critical points and curvature for embedded polyhedra”); shown is what stands out by an interval or more.</source>
      <translation>Puntos acotados: cimas, puntos bajos y collados según T. Banchoff (1967, «Critical points and curvature for embedded polyhedra»); se muestra lo que destaca en una equidistancia o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Stage, area and volume</source>
      <translation>Nivel, área y volumen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Standard deviation ({unit})</source>
      <translation>Desviación típica ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>Standard deviation of a height (mm)</source>
      <translation>Desviación típica de una cota (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Standard deviation of a height, found in this survey (mm)</source>
      <translation>Desviación típica de una cota, hallada en este levantamiento (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {own} mm, each with an error of its own; no drift.</source>
      <translation>Las desviaciones típicas proceden de cotas de precisión {own} mm, cada una con su propio error; sin deriva.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {total} mm: {own} mm of each point's own and {drift} mm that drift within {time} s, common to points recorded together.</source>
      <translation>Las desviaciones típicas proceden de cotas de precisión {total} mm: {own} mm propios de cada punto y {drift} mm que derivan en {time} s, comunes a los puntos registrados juntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Standard deviations of what it holds</source>
      <translation>Desviaciones típicas de lo que contiene</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Station</source>
      <translation>Estación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Station ({unit})</source>
      <translation>Estación ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Station {station}</source>
      <translation>Estación {station}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stations</source>
      <translation>Estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>Stations every {step} m cannot be set along {length:.1f} m; give a step above 0.</source>
      <translation>No se pueden fijar estaciones cada {step} m a lo largo de {length:.1f} m; indique un paso mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Status</source>
      <translation>Estado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Steps a bar of {width} {unit}</source>
      <translation>Pasos por barra de {width} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>Stopped; no file is half written.</source>
      <translation>Detenido; no queda ningún archivo a medio escribir.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Storage of a basin: {name}</source>
      <translation>Almacenamiento de una balsa: {name}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Storage of the basin</source>
      <translation>Almacenamiento de la balsa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stretches, each with its value nearest to the limit or farthest beyond it ± one standard deviation: {shown} of {count}</source>
      <translation>Tramos, cada uno con su valor más próximo al límite o más allá de él ± una desviación típica: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Surface</source>
      <translation>Superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}</source>
      <translation>Superf.   {triangles} triángulos, {area:.1f} m², cotas de {low:.3f} a {high:.3f} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface ({unit})</source>
      <translation>Superficie ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check (mm)</source>
      <translation>Superficie menos comprobación (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check point</source>
      <translation>Superficie menos punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}” has no visible faces; its points ({points}) and lines ({lines}) are read. Build the surface from them.</source>
      <translation>La superficie «{name}» no tiene caras visibles; se leen sus puntos ({points}) y líneas ({lines}). Construya la superficie con ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: a face is marked invisible and is left out.</source>
      <translation>Superficie «{name}»: una cara está marcada como invisible y se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: one of {total} segments of its breaklines and boundaries is no edge of its faces; it comes as a line only.</source>
      <translation>Superficie «{name}»: uno de {total} segmentos de sus líneas de rotura y contornos no es arista de sus caras; se lee solo como línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: the face in line {line} has no area in plan (upright or none at all) and is left out.</source>
      <translation>Superficie «{name}»: la cara de la línea {line} no tiene área en planta (vertical o nula) y se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces are marked invisible and are left out.</source>
      <translation>Superficie «{name}»: {count} caras están marcadas como invisibles y se omiten.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces without area in plan (upright or none at all) are left out, the first in line {line}.</source>
      <translation>Superficie «{name}»: se omiten {count} caras sin área en planta (verticales o nulas), la primera en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} of {total} segments of its breaklines and boundaries are no edges of its faces; they come as lines only.</source>
      <translation>Superficie «{name}»: {count} de {total} segmentos de sus líneas de rotura y contornos no son aristas de sus caras; se leen solo como líneas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Survey report: {file}</source>
      <translation>Informe del levantamiento: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Tested {accuracy:.3f} {unit} vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check points, RMSEz {rmse:.3f} {symbol}).</source>
      <translation>Precisión vertical ensayada de {accuracy:.3f} {unit} con un nivel de confianza del 95 % (FGDC-STD-007.3-1998; {count} puntos de comprobación, RMSEz {rmse:.3f} {symbol}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>That would be {count} points to set out, more than {most}; choose a wider spacing.</source>
      <translation>Serían {count} puntos que replantear, más de {most}; elija una separación mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/grid.py" />
      <source>The DEM of {columns} x {rows} cells is a text of about {size:.0f} MB; a larger cell makes it smaller.</source>
      <translation>El MDE de {columns} x {rows} celdas es un texto de unos {size:.0f} MB; una celda mayor lo reduce.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The arc tolerance {value} m cannot be used. Give at least {least} m.</source>
      <translation>No se puede usar la tolerancia de arco {value} m. Indique al menos {least} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The area is too small for a pass: its perimeter is all there is to walk, and no place is far from it.</source>
      <translation>La zona es demasiado pequeña para una pasada: solo hay que recorrer su perímetro, y ningún lugar está lejos de él.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The base of the contour levels is {base} {unit}; give a number near the heights.</source>
      <translation>La base de los niveles de las curvas es {base} {unit}; indique un número cercano a las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The basin spills at the edge of the surface (E {easting:.3f} N {northing:.3f}); its true brim may be elsewhere. Survey beyond it.</source>
      <translation>La balsa rebosa en el límite de la superficie (E {easting:.3f} N {northing:.3f}); su verdadero labio puede estar en otro lugar. Levante más allá.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>The cell size is {cell} m; give a number above 0.</source>
      <translation>El tamaño de celda es {cell} m; indique un número mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline has {count} different places; it needs two or more.</source>
      <translation>El eje tiene {count} lugares distintos; necesita dos o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The centreline is in {line} but the surface in {surface}. Reproject the line's layer to the surface's CRS.</source>
      <translation>El eje está en {line}, pero la superficie en {surface}. Reproyecte la capa de la línea al SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline turns back on itself at E {easting:.3f} N {northing:.3f}; redraw it.</source>
      <translation>El eje retrocede sobre sí mismo en E {easting:.3f} N {northing:.3f}; dibújelo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA suggests 20 % or more). Nearer to another one than a tenth of the site's diagonal ({distance:.0f} m): {near}.</source>
      <translation>Los puntos de comprobación están mal repartidos: el cuarto más vacío de la obra contiene el {least:.0f} % (la NSSDA sugiere el 20 % o más). Más cerca de otro que una décima parte de la diagonal de la obra ({distance:.0f} m): {near}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points' own error is {sigma_cm:.1f} cm; for the {class_cm:g}-cm class they should be good to {needed_cm:.1f} cm.</source>
      <translation>El error propio de los puntos de comprobación es {sigma_cm:.1f} cm; para la clase de {class_cm:g} cm deberían tener una precisión de {needed_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The check shots were taken with the receiver of the survey: an error they share (base station, pole height, geoid) does not show. Points from an independent, better source are needed for a statement by a standard.</source>
      <translation>Las observaciones de comprobación se tomaron con el receptor del levantamiento: un error que compartan (estación base, altura del jalón, geoide) no se aprecia. Para una declaración según norma se necesitan puntos de una fuente independiente y mejor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The checks found nothing.</source>
      <translation>Las comprobaciones no hallaron nada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The claim</source>
      <translation>Lo declarado</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The coded point of line {line} stands {size:+.3f} m off its line on either side.</source>
      <translation>El punto codificado de la línea {line} está {size:+.3f} m fuera de su línea a ambos lados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>The column “{word}” is asked for twice.</source>
      <translation>La columna «{word}» se pide dos veces.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The columns for line number and words do not fit the number of codes; not joined. Points: {count}, first {point} (line {line}).</source>
      <translation>Las columnas de número de línea y de palabras no concuerdan con el número de códigos; no se une. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The contour interval is {interval} {unit}; give a number above 0.</source>
      <translation>La equidistancia es {interval} {unit}; indique un número mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The contours are no better than the survey: where nobody walked, the surface is a straight guess between the points around.</source>
      <translation>Las curvas de nivel no son mejores que el levantamiento: donde nadie pasó, la superficie es una suposición recta entre los puntos de alrededor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of one check point is not stated; it counts as non-vegetated.</source>
      <translation>No se indica la cubierta de un punto de comprobación; cuenta como sin vegetación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of {count} check points is not stated; they count as non-vegetated.</source>
      <translation>No se indica la cubierta de {count} puntos de comprobación; cuentan como sin vegetación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>The cross-section at station {station} does not fit on {paper} at {scale} (it is {width:.1f} m wide and {height:.1f} m high). Choose {fit} or a larger paper.</source>
      <translation>El perfil transversal de la estación {station} no cabe en {paper} a {scale} (mide {width:.1f} m de ancho y {height:.1f} m de alto). Elija {fit} o un papel mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The cross-sections at stations {first} and {second} cross each other in a tight bend, {offset:.2f} m to the {side}. Ground beyond the crossing is counted twice: make the sections narrower there or fewer.</source>
      <translation>Los perfiles transversales de las estaciones {first} y {second} se cruzan en una curva cerrada, a {offset:.2f} m hacia la {side}. El terreno más allá del cruce se cuenta dos veces: haga allí los perfiles más estrechos o en menor número.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/depths.py" />
      <source>The depth limits {limits} (metres) must be above 0 and rise; mend their list.</source>
      <translation>Los límites de profundidad {limits} (metros) deben ser mayores que 0 y crecientes; corrija su lista.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The depth of topsoil (m)</source>
      <translation>El espesor de tierra vegetal (m)</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The drift of heights is {value} m; give a standard deviation of 0 or more.</source>
      <translation>La deriva de las cotas es {value} m; indique una desviación típica de 0 o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>The drift of {drift:g} m is larger than the standard deviation of a height, {sigma:g} m, of which it is a part. Give a smaller drift or a larger standard deviation.</source>
      <translation>La deriva de {drift:g} m es mayor que la desviación típica de una cota, {sigma:g} m, de la que forma parte. Indique una deriva menor o una desviación típica mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to compacted volume</source>
      <translation>El factor de volumen en banco a compactado</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to loose volume</source>
      <translation>El factor de volumen en banco a suelto</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>The factor from cut to fill is {factor}; give a number above 0 (1 where volumes do not change).</source>
      <translation>El factor de desmonte a terraplén es {factor}; indique un número mayor que 0 (1 donde los volúmenes no cambian).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The file gives no standard deviations, so this report cannot say how uncertain a single height is. Independent check shots can.</source>
      <translation>El archivo no da desviaciones típicas, así que este informe no puede decir cuán incierta es una cota aislada. Pueden hacerlo observaciones de comprobación independientes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The files of the survey</source>
      <translation>Los archivos del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>The height at which cut times the factor equals fill and the surplus asked for. Its ± (95 %) is the doubt of the volumes over the area that a metre of height moves; the factor's own doubt is not in it, and is often larger.</source>
      <translation>La cota a la que el desmonte por el factor iguala el terraplén más el excedente pedido. Su ± (95 %) es la incertidumbre de los volúmenes dividida por el área que mueve un metro de cota; la incertidumbre del propio factor no está incluida y suele ser mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The height offset between both surfaces has {value} m; give a standard deviation of 0 or more.</source>
      <translation>El desfase de cotas entre ambas superficies es {value} m; indique una desviación típica de 0 o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/soften.py" />
      <source>The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up.</source>
      <translation>La tolerancia de cota para dibujar las curvas de nivel es {tolerance} m; indique un número de metros a partir de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change distances by 5 mm in a kilometre.</source>
      <translation>Las alturas se tomaron como elipsoidales sin ondulación del geoide; 30 m de ondulación cambiarían las distancias 5 mm por kilómetro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The interval of cross-sections is {interval}; give a length above 0 that makes at most {most} of them.</source>
      <translation>El intervalo entre perfiles transversales es {interval}; indique una longitud mayor que 0 que dé como máximo {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The interval of {interval} {unit} is finer than the survey can support. Choose a larger one.</source>
      <translation>La equidistancia de {interval} {unit} es más fina de lo que admite el levantamiento. Elija una mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/contours/smooth.py" />
      <source>The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up.</source>
      <translation>El desplazamiento máximo para suavizar las curvas de nivel es {max_shift} m; indique un número de metros a partir de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The level or plane has a value that is no number ({values}); give numbers.</source>
      <translation>El nivel o plano tiene un valor que no es un número ({values}); indique números.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <location filename="../plugin/core/surface/findings.py" />
      <source>The limit {option} is {value}; give a number above 0.</source>
      <translation>El límite {option} es {value}; indique un número mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The limits were compared with their sources only as the table says; check them against your copy. Exceptions in the sources, such as landings, lengths and crossings, are not checked here.</source>
      <translation>Los límites se cotejaron con sus fuentes solo como dice la tabla; compruébelos con su ejemplar. Las excepciones de las fuentes, como descansillos, longitudes y cruces, no se comprueban aquí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The load of a truck (m³ loose)</source>
      <translation>La carga de un camión (m³ sueltos)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the contours of the sheet: heights were moved by at most {moved} (allowed: {calm}) and then lines by at most {shifted} m in plan (allowed: {smooth} m). No line crosses another or a breakline. They are for drawing only; lengths, areas and the table below are of the exact contours.</source>
      <translation>El mapa muestra las curvas de nivel de la hoja: las cotas se movieron como máximo {moved} (permitido: {calm}) y después las líneas como máximo {shifted} m en planta (permitido: {smooth} m). Ninguna línea cruza otra ni una línea de rotura. Son solo para dibujo; las longitudes, áreas y la tabla siguiente son de las curvas exactas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the exact contours, which are not smoothed.</source>
      <translation>El mapa muestra las curvas de nivel exactas, sin suavizar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” is that of a control point and of a point to set out; choose another prefix.</source>
      <translation>El nombre «{name}» es el de un punto de apoyo y el de un punto que replantear; elija otro prefijo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” would stand for {count} points ({names} names in all are used more than once); a data collector would mix them up. Choose another prefix or another name field.</source>
      <translation>El nombre «{name}» correspondería a {count} puntos (en total, {names} nombres se usan más de una vez); una libreta de campo los confundiría. Elija otro prefijo u otro campo de nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or accept another one.</source>
      <translation>La operación aceptada por su nombre, '{accepted}', necesita {grids}, no instalado aquí. Instale el archivo o acepte otra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>The outline of the pad crosses or touches itself or a hole; draw it as rings without loops, holes inside.</source>
      <translation>El contorno de la plataforma se cruza o se toca a sí mismo o a un agujero; dibújelo como anillos sin bucles, con los agujeros dentro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} cannot be used ({reason}). Write a regular expression with a group named code.</source>
      <translation>No se puede usar el patrón {pattern} ({reason}). Escriba una expresión regular con un grupo llamado code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} has no group named code. Write (?P&lt;code&gt;...) around the code.</source>
      <translation>El patrón {pattern} no tiene ningún grupo llamado code. Escriba (?P&lt;code&gt;...) alrededor del código.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The place of the basin, E {easting:.3f} N {northing:.3f}, is outside the surface. Give one inside.</source>
      <translation>El lugar de la balsa, E {easting:.3f} N {northing:.3f}, está fuera de la superficie. Indique uno dentro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The platform is wholly outside the existing surface. Check its place and the CRS.</source>
      <translation>La plataforma está totalmente fuera de la superficie existente. Compruebe su posición y el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_beside.py" />
      <source>The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off its height.</source>
      <translation>El punto en E {easting:.3f} N {northing:.3f} está a {distance:.3f} m de una línea de rotura y a {value:+.3f} m de su cota.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>The point name '{name}' occurs in more than one file; all points are kept.</source>
      <translation>El nombre de punto '{name}' aparece en más de un archivo; se conservan todos los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} is beyond the tolerances '{set}' ({reasons}).</source>
      <translation>El punto de la línea {line} supera las tolerancias '{set}' ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} lies {size:+.3f} m off the ground around it: pole lifted or of another height.</source>
      <translation>El punto de la línea {line} está {size:+.3f} m fuera del terreno que lo rodea: jalón levantado o de otra altura.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation>El punto de la línea {line} puede estar {size:+.3f} m fuera, o el terreno tiene allí un escalón: revíselo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} repeats an earlier one.</source>
      <translation>El punto de la línea {line} repite otro anterior.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line}, next to a loss of the fix, lies {size:+.3f} m off the ground around it: ambiguities fixed wrongly.</source>
      <translation>El punto de la línea {line}, junto a una pérdida de la solución, está {size:+.3f} m fuera del terreno que lo rodea: ambigüedades mal fijadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, is nowhere on the Earth in {crs} (its area of use: {area}).</source>
      <translation>El punto de la línea {line}, uno de {total}, no está en ningún lugar de la Tierra en {crs} (su área de uso: {area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, lies outside the area of use of {crs} ({area}), by {distance_km} km.</source>
      <translation>El punto de la línea {line}, uno de {total}, está fuera del área de uso de {crs} ({area}), a {distance_km} km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked (--no-check): what the receiver got wrong is in the surface.</source>
      <translation>Los puntos no se comprobaron (--no-check): los errores del receptor están en la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked, so nothing is said of how heights repeat.</source>
      <translation>Los puntos no se comprobaron, así que nada se dice de cómo se repiten las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>The prismoidal formula is exact where the ground between sections is ruled; what is left comes from ground that changes between the sections, and from bends ({overlap:.1f} m² of the strip lie in several sections).</source>
      <translation>La fórmula prismoidal es exacta donde el terreno entre perfiles es reglado; lo que queda procede del terreno que cambia entre los perfiles y de las curvas ({overlap:.1f} m² de la franja están en varios perfiles).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The profile is too short to fit grades and vertical curves to.</source>
      <translation>El perfil longitudinal es demasiado corto para ajustarle rasantes y acuerdos verticales.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The profile must give heights at rising stations that cover the centreline from 0 to {length:.2f} m; it covers {low:.2f} to {high:.2f} m.</source>
      <translation>El perfil longitudinal debe dar cotas en estaciones crecientes que cubran el eje de 0 a {length:.2f} m; cubre de {low:.2f} a {high:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims less noise than there is: do not rely on its claims.</source>
      <translation>El receptor declara menos ruido del que hay: no se fíe de lo que declara.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims more noise than was found: its claims are on the safe side.</source>
      <translation>El receptor declara más ruido del hallado: lo que declara queda del lado de la seguridad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims nothing to compare with.</source>
      <translation>El receptor no declara nada con lo que comparar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The rules, where their limits come from, and how they apply</source>
      <translation>Las reglas, de dónde proceden sus límites y cómo se aplican</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The same by other methods</source>
      <translation>Lo mismo por otros métodos</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The scale of a local grid is not known; say the CRS of the points to compute it.</source>
      <translation>No se conoce la escala de una cuadrícula local; indique el SRC de los puntos para calcularla.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The sentences follow the standards in meaning; compare their wording with your copy before you sign them.</source>
      <translation>Las frases siguen el sentido de las normas; coteje su redacción con su ejemplar antes de firmarlas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The share of cut that cannot be used</source>
      <translation>La parte del desmonte que no se puede aprovechar</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/slopes.py" />
      <source>The slope limits {limits} (percent) must rise and be 0 or more; mend their list.</source>
      <translation>Los límites de pendiente {limits} (por ciento) deben ser crecientes y de 0 o más; corrija su lista.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slope of the edge near E {easting:.3f} N {northing:.3f} would run across the platform itself, and slopes of several grades were asked for. Give this outline one slope, or grade its arms as platforms of their own.</source>
      <translation>El talud del borde próximo a E {easting:.3f} N {northing:.3f} atravesaría la propia plataforma, y se pidieron taludes de varias inclinaciones. Dé un solo talud a este contorno o explane sus brazos como plataformas propias.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The slopes do not meet the ground along {length:.1f} m, since the surface ends there, first near E {easting:.3f} N {northing:.3f}. Volumes stop at its rim; survey farther out or use steeper slopes.</source>
      <translation>Los taludes no encuentran el terreno a lo largo de {length:.1f} m, pues la superficie acaba allí, primero cerca de E {easting:.3f} N {northing:.3f}. Los volúmenes se detienen en su borde; levante más lejos o use taludes más empinados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slopes of two edges differ near E {easting:.3f} N {northing:.3f}, where the edges meet at an angle too flat for the slopes to meet. Let the slope change at a sharper corner.</source>
      <translation>Los taludes de dos bordes difieren cerca de E {easting:.3f} N {northing:.3f}, donde los bordes se encuentran con un ángulo demasiado llano para que los taludes se corten. Haga que el talud cambie en una esquina más marcada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The spacing is held at {spacing:.1f} m: {widest:.1f} m by the formula would miss forms a surveyor is expected to show.</source>
      <translation>La separación se mantiene en {spacing:.1f} m: los {widest:.1f} m de la fórmula pasarían por alto formas que se espera que un topógrafo muestre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The spacing must be above 0 m, not {spacing} m; mend it.</source>
      <translation>La separación debe ser mayor que 0 m, no {spacing} m; corríjala.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The stations of the profile must rise; station {station:.2f} m does not.</source>
      <translation>Las estaciones del perfil longitudinal deben crecer; la estación {station:.2f} m no lo hace.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The strip folds over itself: a bend of the centreline is tighter than the strip is wide there. Ease the bend or narrow the section.</source>
      <translation>La franja se pliega sobre sí misma: una curva del eje es más cerrada que la anchura de la franja allí. Suavice la curva o estreche la sección.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface (TIN)</source>
      <translation>La superficie (TIN)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check points of {file}.</source>
      <translation>La superficie frente a los puntos de comprobación de {file}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check shots in {file}, which did not shape it.</source>
      <translation>La superficie frente a las observaciones de comprobación de {file}, que no intervinieron en ella.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it (constrained Delaunay triangulation), with no points added along them but where lines cross. Tiles of points are triangulated by Qhull, joined, and corrected by Lawson's flips until every edge is right. Between points the surface is plane.</source>
      <translation>La superficie es la triangulación de Delaunay de los puntos usados; las líneas que debe respetar son aristas de ella (triangulación de Delaunay con restricciones), sin puntos añadidos a lo largo de ellas salvo donde se cruzan líneas. Qhull triangula los puntos por teselas, que se unen y se corrigen con los intercambios de Lawson hasta que todas las aristas son correctas. Entre puntos la superficie es plana.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.</source>
      <translation>La superficie se separa de los puntos de comprobación {mean:+.3f} m de media (p = {p:.2g}), el {share:.0f} % del RMSE. Busque la causa (altura del jalón, geoide, coordenadas de la base) antes de usar 1.9600 × RMSE.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface was searched for level spots, gaps in lines, ground where nothing was recorded, spikes, and points beside lines at another height: none were found.</source>
      <translation>Se buscaron en la superficie zonas llanas, interrupciones en líneas, terreno donde no se registró nada, picos y puntos junto a líneas a otra cota: no se halló ninguno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The survey points by what became of them.</source>
      <translation>Los puntos del levantamiento según lo que fue de ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The thinned surface</source>
      <translation>La superficie aligerada</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The three points of the plane lie on one straight line; give others.</source>
      <translation>Los tres puntos del plano están en una misma recta; indique otros.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has no heights; it was laid on the surface ({count} vertices).</source>
      <translation>La línea de pie o de borde no tiene cotas; se apoyó en la superficie ({count} vértices).</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has {count} different corners; a ring needs three or more.</source>
      <translation>La línea de pie o de borde tiene {count} vértices distintos; un anillo necesita tres o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line itself lies from {low:.3f} m below to {high:.3f} m above the base taken.</source>
      <translation>La propia línea de pie o de borde va de {low:.3f} m por debajo a {high:.3f} m por encima de la base tomada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line leaves the surface for {length:.2f} m, first near E {easting:.3f} N {northing:.3f}, and has no heights of its own there. Draw it on the surface or give it heights.</source>
      <translation>La línea de pie o de borde sale de la superficie en {length:.2f} m, primero cerca de E {easting:.3f} N {northing:.3f}, y allí no tiene cotas propias. Dibújela sobre la superficie o déle cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The typical section needs widths above 0 on both sides and a ditch of depth above 0.</source>
      <translation>La sección tipo necesita anchuras mayores que 0 a ambos lados y una cuneta de profundidad mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The unit of the heights was left as it was read.</source>
      <translation>La unidad de las cotas se dejó tal como se leyó.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The vertical class wanted is {value} cm; give a number above 0.</source>
      <translation>La clase vertical deseada es {value} cm; indique un número mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The vertical curve of {length:.2f} m at station {station:.2f} m runs into its neighbour or past the end of the profile; shorten it.</source>
      <translation>El acuerdo vertical de {length:.2f} m en la estación {station:.2f} m invade el contiguo o rebasa el final del perfil longitudinal; acórtelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/thin.py" />
      <source>The vertical tolerance is {tolerance} m; give a number of 0 or more.</source>
      <translation>La tolerancia vertical es {tolerance} m; indique un número de 0 o más.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The volumes of this page are exact for the two surfaces: every triangle of the one is cut along those of the other. Other methods take samples, so they differ:</source>
      <translation>Los volúmenes de esta página son exactos para las dos superficies: cada triángulo de una se corta por los de la otra. Otros métodos toman muestras, así que difieren:</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; no other is wider than {limit:.1f} m.</source>
      <translation>El círculo más ancho sin punto medido tiene un radio de {radius:.1f} m, en E {easting:.3f} N {northing:.3f}; ningún otro es más ancho que {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; {count} circles are wider than {limit:.1f} m.</source>
      <translation>El círculo más ancho sin punto medido tiene un radio de {radius:.1f} m, en E {easting:.3f} N {northing:.3f}; {count} círculos son más anchos que {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word for {meaning} is '{word}'; it must be one word without spaces or separator.</source>
      <translation>La palabra para {meaning} es '{word}'; debe ser una sola palabra sin espacios ni separador.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The word for {word} stands on a point without a line code; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation>La palabra para {word} está en un punto sin código de línea; se ignora. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word {word} means both {first} and {second}. Give each its own word.</source>
      <translation>La palabra {word} significa tanto {first} como {second}. Dé a cada uno su propia palabra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The words '{words}' must be four, with commas between: for begin, end, close and arc, in this order. Leave one empty where the field has none.</source>
      <translation>Las palabras '{words}' deben ser cuatro, separadas por comas: para inicio, fin, cierre y arco, en este orden. Deje una vacía donde en campo no haya ninguna.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Their reasons</source>
      <translation>Sus motivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>There are no check points on the surface, so nothing here tests it. Measure at least 30 points with an independent, better method and give them with --check-points.</source>
      <translation>No hay puntos de comprobación en la superficie, así que nada la ensaya aquí. Mida al menos 30 puntos con un método independiente y mejor e indíquelos con --check-points.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>There are no points to set out in what was given.</source>
      <translation>No hay puntos que replantear en lo indicado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>There is no area to walk; give a polygon.</source>
      <translation>No hay área que recorrer; indique un polígono.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>There is no pad to grade; give a polygon.</source>
      <translation>No hay plataforma que explanar; indique un polígono.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>There is no pond on either surface.</source>
      <translation>No hay ningún charco en ninguna de las dos superficies.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>There is no pond: noise explains every one of the {pits} pits, or they are shallower than asked.</source>
      <translation>No hay ningún charco: el ruido explica todos los {pits} puntos bajos, o son menos profundos de lo pedido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>There is no survey file to merge; give at least one.</source>
      <translation>No hay archivo de levantamiento que combinar; indique al menos uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>There is no survey to read; give at least one file.</source>
      <translation>No hay levantamiento que leer; indique al menos un archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>No hay ningún recorrido bastante largo para saber cómo se repiten las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>There is not enough memory for this survey; split the file.</source>
      <translation>No hay memoria suficiente para este levantamiento; divida el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. Only independent check shots measure the accuracy of the surface.</source>
      <translation>Son declaraciones, no ensayos: no incluyen jalón, inclinación, dátum ni desfases del receptor. Solo las observaciones de comprobación independientes miden la precisión de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>These are coordinates of the grid: a distance measured on the ground differs from theirs by the combined factor of the site.</source>
      <translation>Son coordenadas de la cuadrícula: una distancia medida en el terreno difiere de la suya por el factor combinado de la obra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Thinned   {kept} of {vertices} vertices, at most {off:.3f} m off in height</source>
      <translation>Aligerada {kept} de {vertices} vértices, como máximo {off:.3f} m de diferencia en cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Thinning: greedy insertion by M. Garland and P. S. Heckbert (1995, “Fast Polygonal Approximation of Terrains and Height Fields”), many points a round.</source>
      <translation>Aligeramiento: inserción voraz de M. Garland y P. S. Heckbert (1995, «Fast Polygonal Approximation of Terrains and Height Fields»), muchos puntos por ronda.</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>This Python has no package {package}; install {packages}, or run the Python that QGIS uses.</source>
      <translation>Este Python no tiene el paquete {package}; instale {packages} o ejecute el Python que usa QGIS.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested and does not meet the {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class of the ASPRS Positional Accuracy Standards, Edition 2 (2023). Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Este conjunto de datos se ensayó y no cumple la clase de precisión posicional vertical RMSEV de {class_cm:g} cm de ASPRS Positional Accuracy Standards, edición 2 (2023). Se comprobó que la precisión NVA real es RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested to meet ASPRS Positional Accuracy Standards for Digital Geospatial Data, Edition 2 (2023) for a {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class. Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation>Este conjunto de datos se ensayó y cumple ASPRS Positional Accuracy Standards for Digital Geospatial Data, edición 2 (2023), para una clase de precisión posicional vertical RMSEV de {class_cm:g} cm. Se comprobó que la precisión NVA real es RMSEV = {rmse_cm:.1f} cm.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>This is a computation, not a certificate: a licensed professional decides what may be stated for a contract.</source>
      <translation>Esto es un cálculo, no un certificado: un profesional habilitado decide qué puede declararse para un contrato.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>This is a computation, not a payment certificate: quantities for payment are measured as the contract says, by whom it says. It defers to the contract, local codes and licensed practice.</source>
      <translation>Esto es un cálculo, no una certificación de obra: las mediciones para el pago se hacen como dice el contrato y por quien este dice. Se subordina al contrato, la normativa local y el ejercicio profesional habilitado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>This is a study of grades and quantities, not a design for construction: levels, drainage, retaining works and the grades that local codes and accessibility rules ask for are the work of a licensed professional.</source>
      <translation>Esto es un estudio de rasantes y mediciones, no un proyecto de construcción: los niveles, el drenaje, las obras de contención y las pendientes que exigen la normativa local y las reglas de accesibilidad son labor de un profesional habilitado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>This is an indication from a survey, not an approval. Whether a road, walk or ramp meets its limits is decided by the codes that apply where it lies and by a licensed professional.</source>
      <translation>Esto es una indicación a partir de un levantamiento, no una aprobación. Si una carretera, una senda o una rampa cumple sus límites lo deciden la normativa aplicable en el lugar y un profesional habilitado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>This is how far the heights of this survey scatter about their common error, on even ground. Errors that all visits share (base station, geoid, pole height) do not show here; check points show them.</source>
      <translation>Esto es cuánto se dispersan las cotas de este levantamiento en torno a su error común, en terreno uniforme. Los errores que comparten todas las visitas (estación base, geoide, altura del jalón) no se ven aquí; los muestran los puntos de comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>This is no survey of boundaries. Marks of property, and set-out that others build on, are for a licensed professional under local rules, who also checks the design against the issued drawings.</source>
      <translation>Esto no es un deslinde. Los hitos de propiedad y el replanteo sobre el que otros construyen corresponden a un profesional habilitado según las reglas locales, que también coteja el proyecto con los planos emitidos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>This is the shape of the ground only: it knows nothing of inflow, outlets, seepage or freeboard. A licensed engineer designs and approves storage by the rules of the place.</source>
      <translation>Esto es solo la forma del terreno: nada sabe de aportaciones, desagües, filtraciones ni resguardo. Un ingeniero habilitado proyecta y aprueba el almacenamiento según las reglas del lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>This operation is not the best one known; the user accepted it by its name.</source>
      <translation>Esta operación no es la mejor conocida; el usuario la aceptó por su nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>This shows where water runs on the surface as surveyed. It is no drainage design: pipes, infiltration, ground beyond the survey and what was not measured are not in it.</source>
      <translation>Esto muestra por dónde corre el agua en la superficie levantada. No es un proyecto de drenaje: no incluye tuberías, infiltración, terreno fuera del levantamiento ni lo que no se midió.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>To be known with it:</source>
      <translation>Debe saberse además:</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>To have it read so, repeat with --correct {name}.</source>
      <translation>Para que se lea así, repita con --correct {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>To station ({unit})</source>
      <translation>Hasta la estación ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Too few places were visited twice to say how far heights wander. Walk a few passes across the others.</source>
      <translation>Se visitaron dos veces demasiados pocos lugares para decir cuánto vagan las cotas. Haga algunas pasadas transversales a las demás.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>U.S. survey feet</source>
      <translation>pies de agrimensura de EE. UU.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Used</source>
      <translation>Usado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Value</source>
      <translation>Valor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdict</source>
      <translation>Veredicto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdicts at 95 % along the line, by the number of the rule. A stretch passes or fails when the whole interval of its slope does; else it is too close to tell, and more or better points are needed.</source>
      <translation>Veredictos al 95 % a lo largo de la línea, por número de regla. Un tramo cumple o no cumple cuando lo hace todo el intervalo de su pendiente; si no, está demasiado ajustado para decidir y hacen falta más puntos o mejores.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Vertical section {name}: existing ground and design.</source>
      <translation>Sección vertical {name}: terreno existente y proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Vertices</source>
      <translation>Vértices</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volume    {existing} to {design}: cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³, net {net:.1f} ± {net_95:.1f} m³ (95 %)</source>
      <translation>Volumen   {existing} a {design}: desmonte {cut:.1f} ± {cut_95:.1f} m³, terraplén {fill:.1f} ± {fill_95:.1f} m³, neto {net:.1f} ± {net_95:.1f} m³ (95 %)</translation>
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
      <translation>Volumen compactado ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volumes</source>
      <translation>Volúmenes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Volumes as the design is raised or lowered, slopes graded anew at each height.</source>
      <translation>Volúmenes al subir o bajar el proyecto, con los taludes modelados de nuevo a cada cota.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volumes: {existing} to {design}</source>
      <translation>Volúmenes: {existing} a {design}</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <source>Water     ponds: {ponds}, {volume:.1f} m³ when full; catchments: {catchments}; {nowhere:.0f} of {area:.0f} m² drain nowhere</source>
      <translation>Agua      charcos: {ponds}, {volume:.1f} m³ llenos; cuencas: {catchments}; {nowhere:.0f} de {area:.0f} m² sin desagüe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Water level ({unit})</source>
      <translation>Nivel del agua ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Water runs</source>
      <translation>El agua corre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Water takes the steepest way down on the triangles themselves, not on a grid: along the gradient across a triangle, along an edge into which both its triangles fall, and on level ground the shortest way along edges to where it goes down (after S. Yu, M. van Kreveld and J. Snoeyink, “Drainage queries in TINs: from local to global and back again”, 1996).</source>
      <translation>El agua toma el camino de máxima pendiente sobre los propios triángulos, no sobre una malla: según el gradiente a través de un triángulo, a lo largo de una arista en la que caen sus dos triángulos y, en terreno llano, por el camino más corto a lo largo de aristas hasta donde desciende (según S. Yu, M. van Kreveld y J. Snoeyink, «Drainage queries in TINs: from local to global and back again», 1996).</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ways of water from places {spacing} {unit} apart; channels where more than {channel} {unit}² drain. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation>Caminos del agua desde lugares separados {spacing} {unit}; cauces donde drenan más de {channel} {unit}². Relieve sombreado desde el noroeste, con cotas exageradas {times} veces solo para el sombreado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What</source>
      <translation>Qué</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What a surveyor would look at again before handing this surface on. Each may be right: the ground decides, and nothing was changed.</source>
      <translation>Lo que un topógrafo volvería a mirar antes de entregar esta superficie. Todo puede ser correcto: decide el terreno, y no se cambió nada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>What became of the points</source>
      <translation>Qué fue de los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What came in</source>
      <translation>Qué entró</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth</source>
      <translation>Qué se hace con las tierras</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth, once the topsoil is off</source>
      <translation>Qué se hace con las tierras, una vez retirada la tierra vegetal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>What is graded</source>
      <translation>Qué se explana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What single points are held to: the set “{name}”</source>
      <translation>A qué se someten los puntos aislados: el conjunto «{name}»</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>What the change does to the water</source>
      <translation>Qué le hace el cambio al agua</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the checks found, in the order of recording: {shown} of {count}</source>
      <translation>Lo que hallaron las comprobaciones, en el orden de registro: {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>What the class rests on</source>
      <translation>En qué se basa la clase</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What the doubt rests on</source>
      <translation>En qué se basa la incertidumbre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the receiver claims agrees with what was found.</source>
      <translation>Lo que declara el receptor concuerda con lo hallado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What was done to the coordinates of the file, in this order:</source>
      <translation>Qué se hizo con las coordenadas del archivo, en este orden:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What was found</source>
      <translation>Qué se halló</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Where both surfaces reach, full ponds hold {before} {unit}³ before and {after} {unit}³ after the change. Of each whole surface {kept} {unit}² drained nowhere before, {keeps} {unit}² do after.</source>
      <translation>Donde llegan ambas superficies, los charcos llenos contienen {before} {unit}³ antes y {after} {unit}³ después del cambio. De cada superficie completa, {kept} {unit}² no tenían desagüe antes y {keeps} {unit}² no lo tienen después.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Where lines cross and were joined; {shown} of {count}</source>
      <translation>Dónde se cruzan líneas y se unieron; {shown} de {count}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Where the doubt comes from</source>
      <translation>De dónde procede la incertidumbre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Where the ground was measured, and where not. Circles hold no measured point and are wider than {limit} m in radius; triangles are marked from an edge of {edge} m.</source>
      <translation>Dónde se midió el terreno y dónde no. Los círculos no contienen ningún punto medido y tienen más de {limit} m de radio; los triángulos se marcan a partir de una arista de {edge} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Where the surface lies</source>
      <translation>Dónde está la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <location filename="../plugin/core/report/water_page.py" />
      <source>Where the water runs</source>
      <translation>Por dónde corre el agua</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Whether slopes stand, in the end and while they are dug, is not checked here: it depends on soil, water and loads. Slope stability and excavation safety need licensed practice and the local codes.</source>
      <translation>Aquí no se comprueba si los taludes aguantan, al final y mientras se excavan: depende del suelo, el agua y las cargas. La estabilidad de taludes y la seguridad de la excavación requieren ejercicio profesional habilitado y la normativa local.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Why the columns were taken so:</source>
      <translation>Por qué se tomaron así las columnas:</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Window</source>
      <translation>Ventana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a triangle has a standard deviation of {middle} from noise alone. What the ground does between points comes on top.</source>
      <translation>Con el ruido declarado de {sigma} (desviación típica mediana de una cota), la cota en el centro de un triángulo tiene una desviación típica de {middle} solo por el ruido. A ello se suma lo que haga el terreno entre puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Written to {folder}:</source>
      <translation>Escrito en {folder}:</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a ditch needs a depth above 0.</source>
      <translation>una cuneta necesita una profundidad mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>a drawing of faces, lines, contours and points (DXF)</source>
      <translation>un dibujo de caras, líneas, curvas de nivel y puntos (DXF)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>a grid file</source>
      <translation>un archivo de malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a list of fixes from 0 to 8, such as [4] or [4, 5]</source>
      <translation>una lista de soluciones de 0 a 8, como [4] o [4, 5]</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/earthwork/comparison.py" />
      <location filename="../plugin/core/points/merge.py" />
      <source>a local grid</source>
      <translation>una cuadrícula local</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a number above 0, without quotation marks</source>
      <translation>un número mayor que 0, sin comillas</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a part needs a width above 0.</source>
      <translation>una parte necesita una anchura mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a pond</source>
      <translation>un charco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>a pond or pit</source>
      <translation>un charco o punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a quote is opened and not closed, or closed too early</source>
      <translation>se abre una comilla y no se cierra, o se cierra demasiado pronto</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a side has one ditch at most; remove this row.</source>
      <translation>un lado tiene como máximo una cuneta; elimine esta fila.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a single pit</source>
      <translation>un solo punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a slope needs a run above 0.</source>
      <translation>un talud necesita una base mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a whole number from 1 up, without quotation marks</source>
      <translation>un número entero desde 1, sin comillas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>age of the correction, at most</source>
      <translation>edad de la corrección, como máximo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>agrees</source>
      <translation>concuerda</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>all</source>
      <translation>todo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>all of the ground compared</source>
      <translation>todo el terreno comparado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>all of the ground with the pads in it as a mesh</source>
      <translation>todo el terreno con las plataformas incluidas, como malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>always</source>
      <translation>siempre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an inlet</source>
      <translation>un sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an outlet on the rim</source>
      <translation>una salida en el borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>and perhaps</source>
      <translation>y quizá</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>applied</source>
      <translation>aplicada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>area and volume of the basin by level</source>
      <translation>área y volumen de la balsa según el nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>area in plan</source>
      <translation>área en planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <location filename="../plugin/core/georeference/heights.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>as given</source>
      <translation>según lo indicado</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>average end areas every {step:g} m</source>
      <translation>áreas medias cada {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>back</source>
      <translation>hacia atrás</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balance point</source>
      <translation>punto de compensación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced height</source>
      <translation>cota de compensación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balanced height ± 95 %</source>
      <translation>cota de compensación ± 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced shift of the design</source>
      <translation>desplazamiento de compensación del proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>blank lines</source>
      <translation>líneas en blanco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, as it lies in the ground</source>
      <translation>préstamo, en banco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, loose on trucks</source>
      <translation>préstamo, suelto en camión</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>boundaries</source>
      <translation>contornos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>breakline</source>
      <translation>línea de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines</source>
      <translation>líneas de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>building the surface</source>
      <translation>construyendo la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>by edge</source>
      <translation>por borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>catchments with their areas</source>
      <translation>cuencas con sus áreas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>channel</source>
      <translation>cauce</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points</source>
      <translation>puntos de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points' own error (mm)</source>
      <translation>error propio de los puntos de comprobación (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>check shot</source>
      <translation>observación de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>check shot, kept out to test the surface</source>
      <translation>observación de comprobación, excluida para ensayar la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>checking the points</source>
      <translation>comprobando los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>claimed by the receiver</source>
      <translation>declarado por el receptor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>claimed by the receiver, root mean square</source>
      <translation>declarado por el receptor, media cuadrática</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {columns} may be the height, but its header word '{word}' is not known</source>
      <translation>la columna {columns} puede ser la cota, pero no se conoce su encabezado '{word}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the code: a few texts repeat</source>
      <translation>la columna {column} es el código: se repiten unos pocos textos</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {column} is the height: no other column can be</source>
      <translation>la columna {column} es la cota: no puede serlo ninguna otra</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: all texts differ</source>
      <translation>la columna {column} es el nombre: todos los textos son distintos</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: whole numbers that only grow</source>
      <translation>la columna {column} es el nombre: números enteros siempre crecientes</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>column {column} is {role}: its angles have the letters {letters}</source>
      <translation>la columna {column} es {role}: sus ángulos llevan las letras {letters}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/reading.py" />
      <source>column {column} is {role}: its header word is '{word}'</source>
      <translation>la columna {column} es {role}: su encabezado es '{word}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>columns read</source>
      <translation>columnas leídas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside</source>
      <translation>las columnas {first} y {second} llevan ambas el encabezado {role}; la primera se lee como tal, la otra se conserva aparte</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use of the CRS ({area})</source>
      <translation>las columnas {first} y {second} son {first_role} y {second_role}: ninguna otra lectura cae en el área de uso del SRC ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} look like degrees but may be lengths</source>
      <translation>las columnas {first} y {second} parecen grados, pero pueden ser longitudes</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} make a compact cloud</source>
      <translation>las columnas {first} y {second} forman una nube compacta</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} may be easting and northing or the other way round</source>
      <translation>las columnas {first} y {second} pueden ser coordenadas este y norte o al revés</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comma</source>
      <translation>coma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comment lines</source>
      <translation>líneas de comentario</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>comparing surfaces</source>
      <translation>comparando superficies</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>contour</source>
      <translation>curva de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>contour lines with level, index and depression; exact</source>
      <translation>curvas de nivel con nivel, maestra y depresión; exactas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>coordinate system</source>
      <translation>sistema de coordenadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them</source>
      <translation>las coordenadas están en {unit}: los puntos se suceden cada {step}, como los guarda un rover a pie</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: read so they land in the area of use of the CRS, else not</source>
      <translation>las coordenadas están en {unit}: leídas así caen en el área de uso del SRC; de otro modo, no</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>corners mitred</source>
      <translation>esquinas a inglete</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>correction too old</source>
      <translation>corrección demasiado antigua</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the design only, not compared</source>
      <translation>cubierto solo por el proyecto, no comparado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the existing surface only, not compared</source>
      <translation>cubierto solo por la superficie existente, no comparado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crest</source>
      <translation>acuerdo convexo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crossfall</source>
      <translation>pendiente transversal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut</source>
      <translation>desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut over {low} {unit}</source>
      <translation>desmonte de más de {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut placed as fill</source>
      <translation>desmonte colocado como terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut that this fill takes</source>
      <translation>desmonte que requiere este terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>cut there</source>
      <translation>desmonte allí</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>cut {cut} {unit}²   fill {fill} {unit}²</source>
      <translation>desmonte {cut} {unit}²   terraplén {fill} {unit}²</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut {low} to {high} {unit}</source>
      <translation>desmonte de {low} a {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut, as it lies in the ground</source>
      <translation>desmonte, en banco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>cut, fill and net with their doubt</source>
      <translation>desmonte, terraplén y neto con su incertidumbre</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>decided by hand</source>
      <translation>decidido a mano</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decimal mark</source>
      <translation>separador decimal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>deeper</source>
      <translation>más profundo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>degrees of freedom</source>
      <translation>grados de libertad</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>delimiter</source>
      <translation>delimitador</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>design</source>
      <translation>proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>drains nowhere until full</source>
      <translation>sin desagüe hasta llenarse</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>drift: what neighbouring points share</source>
      <translation>deriva: lo que comparten puntos vecinos</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>easting and northing are exchanged</source>
      <translation>las coordenadas este y norte están intercambiadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so they are of another CRS or exchanged</source>
      <translation>las coordenadas este y norte no caen donde caen longitud y latitud en este SRC, sino a {distance_km} km, así que son de otro SRC o están intercambiadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>easting of the surface</source>
      <translation>coordenada este de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edge swapped</source>
      <translation>arista intercambiada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges and breaks of the pads and their slopes, by kind</source>
      <translation>bordes y quiebros de las plataformas y sus taludes, por tipo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges forced</source>
      <translation>aristas forzadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by boundaries</source>
      <translation>aristas fijadas por contornos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by breaklines</source>
      <translation>aristas fijadas por líneas de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by voids</source>
      <translation>aristas fijadas por huecos</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>ellipsoidal</source>
      <translation>elipsoidal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>empty circle</source>
      <translation>círculo vacío</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point with its status and reasons</source>
      <translation>todos los puntos con su estado y sus motivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>exact</source>
      <translation>exacto</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>existing ground</source>
      <translation>terreno existente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>factors: loose {loose}, compacted {compacted}, unusable share {unusable} %</source>
      <translation>factores: suelto {loose}, compactado {compacted}, parte no aprovechable {unusable} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>fail</source>
      <translation>no cumple</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>feet</source>
      <translation>pies</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill</source>
      <translation>terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill from one of cut</source>
      <translation>terraplén obtenido de uno de desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill over {low} {unit}</source>
      <translation>terraplén de más de {low} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill there</source>
      <translation>terraplén allí</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill {low} to {high} {unit}</source>
      <translation>terraplén de {low} a {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill, compacted</source>
      <translation>terraplén, compactado</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>filling the basin</source>
      <translation>llenando la balsa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>finest class met (cm)</source>
      <translation>clase más fina cumplida (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>finishing contours for the sheet</source>
      <translation>acabando las curvas de nivel para la hoja</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>fixes accepted (numbers of NMEA 0183 GGA)</source>
      <translation>soluciones aceptadas (números de NMEA 0183 GGA)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>flagged, still used</source>
      <translation>marcado, aún usado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>flatter than {limit} %</source>
      <translation>más llano que {limit} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>following the water</source>
      <translation>siguiendo el agua</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>format</source>
      <translation>formato</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>forward</source>
      <translation>hacia delante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>found, with its 95 % interval</source>
      <translation>hallado, con su intervalo del 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from pass to pass</source>
      <translation>de pasada a pasada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from record to record, median</source>
      <translation>de registro a registro, mediana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>gap in a line</source>
      <translation>interrupción en una línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>gone</source>
      <translation>desaparecido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>grade</source>
      <translation>pendiente longitudinal</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>grades and vertical curves fitted</source>
      <translation>rasantes y acuerdos verticales ajustados</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>grading pads</source>
      <translation>explanando plataformas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>grid north</source>
      <translation>norte de cuadrícula</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>grid of {cell:g} m</source>
      <translation>malla de {cell:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points as designed</source>
      <translation>terreno entre los puntos según el proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points judged from the surface's own roughness</source>
      <translation>terreno entre los puntos estimado por la propia rugosidad de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ground by depth of cut and fill</source>
      <translation>terreno según la profundidad del desmonte y del terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground compared</source>
      <translation>terreno comparado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>ground taken by the design, in plan</source>
      <translation>terreno ocupado por el proyecto, en planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>ground that several sections count, in bends</source>
      <translation>terreno que cuentan varios perfiles, en curvas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>header lines</source>
      <translation>líneas de encabezado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height doubtful: look at it</source>
      <translation>cota dudosa: revísela</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height less certain than allowed</source>
      <translation>cota menos segura de lo admitido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>height of a point changed</source>
      <translation>cota de un punto modificada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height of the surface</source>
      <translation>cota de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>height offset between the surfaces, standard deviation</source>
      <translation>desfase de cotas entre las superficies, desviación típica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights of the surface on a grid (DEM) of {columns} x {rows} cells</source>
      <translation>cotas de la superficie en una malla (MDE) de {columns} x {rows} celdas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>heights {scale}</source>
      <translation>cotas {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights, grades and crossfalls at the stations of the road</source>
      <translation>cotas, pendientes longitudinales y transversales en las estaciones de la carretera</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>holding the surface to its lines</source>
      <translation>ajustando la superficie a sus líneas</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>independent check points</source>
      <translation>puntos de comprobación independientes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>index contour</source>
      <translation>curva maestra</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>inlet</source>
      <translation>sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; coordinates are read in {unit}, the unit of the CRS</source>
      <translation>el pie internacional y el topográfico de EE. UU. no se distinguen por los valores, difieren 2 mm por kilómetro; las coordenadas se leen en {unit}, la unidad del SRC</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>its 95 % interval</source>
      <translation>su intervalo del 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its coordinate system</source>
      <translation>su sistema de coordenadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its cross-sections to scale</source>
      <translation>sus perfiles transversales a escala</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its profile to scale</source>
      <translation>su perfil longitudinal a escala</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its stretches against the limits, with verdicts</source>
      <translation>sus tramos frente a los límites, con veredictos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>jump at loss or regain of the fix</source>
      <translation>salto al perder o recuperar la solución</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>labels of the index contours, for a sheet at 1 : {scale}</source>
      <translation>etiquetas de las curvas maestras, para una hoja a 1 : {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands in the area of use of the CRS ({area})</source>
      <translation>cae en el área de uso del SRC ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands outside the area of use of the CRS ({area})</source>
      <translation>cae fuera del área de uso del SRC ({area})</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>largest difference found</source>
      <translation>mayor diferencia hallada</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>left</source>
      <translation>izquierda</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>left at the end (below 0: to be brought in)</source>
      <translation>restante al final (bajo 0: por aportar)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>left over: cut × factor less fill less surplus</source>
      <translation>sobrante: desmonte × factor menos terraplén menos excedente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>lengths {scale}</source>
      <translation>longitudes {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>level</source>
      <translation>nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>level in place of the surface that is missing</source>
      <translation>nivel en lugar de la superficie que falta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>level spot</source>
      <translation>zona llana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>limit {limit}</source>
      <translation>límite {limit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>line of the sections</source>
      <translation>línea de las secciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines along which there is no cut and no fill</source>
      <translation>líneas sin desmonte ni terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines where the slopes of the pads meet the ground</source>
      <translation>líneas donde los taludes de las plataformas encuentran el terreno</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>loads of {load} {unit}: waste, borrow</source>
      <translation>cargas de {load} {unit}: vertedero, préstamo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>local grid, metres</source>
      <translation>cuadrícula local, metros</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>long triangle</source>
      <translation>triángulo alargado</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking along the road</source>
      <translation>mirando a lo largo de la carretera</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking at accuracy and coverage</source>
      <translation>examinando precisión y cobertura</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking the surface over</source>
      <translation>revisando la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>mean (bias)</source>
      <translation>media (sesgo)</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points</source>
      <translation>media de los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points plus geoid separation</source>
      <translation>media de los puntos más ondulación del geoide</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>median</source>
      <translation>mediana</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>median slope, by area</source>
      <translation>pendiente mediana, por área</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>median {value} {unit}</source>
      <translation>mediana {value} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>metres</source>
      <translation>metros</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>moved beyond the ends of the line, not in the diagram</source>
      <translation>movido más allá de los extremos de la línea, fuera del diagrama</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>names that stand in more than one file</source>
      <translation>nombres que están en más de un archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>net (fill less cut)</source>
      <translation>neto (terraplén menos desmonte)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>new</source>
      <translation>nuevo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>new at every point, along the passes</source>
      <translation>nuevo en cada punto, a lo largo de las pasadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>no</source>
      <translation>no</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>no column can be the height</source>
      <translation>ninguna columna puede ser la cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>no cut, no fill</source>
      <translation>línea de paso</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>no fixed ambiguities</source>
      <translation>sin ambigüedades fijadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>no geoid separation was sent, so the ellipsoidal height is unknown</source>
      <translation>no se envió ondulación del geoide, así que no se conoce la altura elipsoidal</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>no grid of a kind it knows</source>
      <translation>ninguna malla de un tipo que conozca</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>no surface</source>
      <translation>sin superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>no surface here</source>
      <translation>aquí no hay superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>noise of a point's height {sigma} mm, drift {drift} mm within {length} m, {ground}</source>
      <translation>ruido de la cota de un punto {sigma} mm, deriva {drift} mm en {length} m, {ground}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>non-vegetated</source>
      <translation>sin vegetación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>none over the limit</source>
      <translation>ninguno sobre el límite</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>normalised median absolute deviation</source>
      <translation>desviación absoluta mediana normalizada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>northing of the surface</source>
      <translation>coordenada norte de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>not UTF-8</source>
      <translation>no es UTF-8</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>not applied</source>
      <translation>no aplicada</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>not known (a layer's surface is missing)</source>
      <translation>desconocido (falta la superficie de una capa)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>not on the ground, by its code</source>
      <translation>no está en el terreno, según su código</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>nothing recorded</source>
      <translation>nada registrado</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says for sure whether coordinates are in {units}</source>
      <translation>nada dice con seguridad si las coordenadas están en {units}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>nothing says for sure which columns are which</source>
      <translation>nada dice con seguridad qué columna es cuál</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is</source>
      <translation>nada dice en qué unidad están las coordenadas; se leen en {unit}, como las de una cuadrícula local</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are</source>
      <translation>nada dice si las alturas son elipsoidales o sobre un geoide; se toman tal cual</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>observations, at least</source>
      <translation>observaciones, al menos</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>of a kind that nothing says</source>
      <translation>de un tipo que nada indica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it not fit for fill</source>
      <translation>de ello no apto para terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it unchanged</source>
      <translation>de ello sin cambios</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>off the line it is coded for</source>
      <translation>fuera de la línea para la que está codificado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>offsets and heights of its cross-sections</source>
      <translation>desplazamientos y cotas de sus perfiles transversales</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>on {paper}, printed at 100 %</source>
      <translation>en {paper}, impreso al 100 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>one height, both together</source>
      <translation>una cota, ambas juntas</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>orthometric</source>
      <translation>ortométrica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>other sentences of a receiver log</source>
      <translation>otras sentencias de un registro del receptor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>outside the interval</source>
      <translation>fuera del intervalo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>outside the regions</source>
      <translation>fuera de las regiones</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>outside the surface</source>
      <translation>fuera de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>over {low} %</source>
      <translation>más de {low} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>over {width} {unit} of {whole}</source>
      <translation>en {width} {unit} de {whole}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>pass</source>
      <translation>cumple</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>path of water</source>
      <translation>camino del agua</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>paths of the water and its channels</source>
      <translation>caminos del agua y sus cauces</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pit</source>
      <translation>punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places of the surface to look at</source>
      <translation>lugares de la superficie que revisar</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places to walk again, for the data collector</source>
      <translation>lugares que volver a recorrer, para la libreta de campo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>places visited twice</source>
      <translation>lugares visitados dos veces</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>plan less certain than allowed</source>
      <translation>planta menos segura de lo admitido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>platform</source>
      <translation>plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform break</source>
      <translation>quiebro de plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform edge</source>
      <translation>borde de plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>point</source>
      <translation>punto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>point added</source>
      <translation>punto añadido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>point beside a line</source>
      <translation>punto junto a una línea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>points</source>
      <translation>puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>points follow each other at {step} in columns {first} and {second}</source>
      <translation>los puntos se suceden cada {step} en las columnas {first} y {second}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points kept out</source>
      <translation>puntos excluidos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points that shape it</source>
      <translation>puntos que la definen</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole lifted or its height wrong</source>
      <translation>jalón levantado o con altura errónea</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole tilted</source>
      <translation>jalón inclinado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond</source>
      <translation>charco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond after the change</source>
      <translation>charco tras el cambio</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond gone</source>
      <translation>charco desaparecido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ponds with depth, volume and where they spill to</source>
      <translation>charcos con su profundidad, su volumen y adónde rebosan</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>prismoidal formula every {step:g} m</source>
      <translation>fórmula prismoidal cada {step:g} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>radius of the widest empty circle</source>
      <translation>radio del círculo vacío más ancho</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>random: noise of single points</source>
      <translation>aleatoria: ruido de puntos aislados</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>reading points</source>
      <translation>leyendo puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>receiver log, NMEA 0183</source>
      <translation>registro del receptor, NMEA 0183</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>recorded while standing still</source>
      <translation>registrado estando parado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>region</source>
      <translation>región</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>rejected</source>
      <translation>rechazado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>rejected lines</source>
      <translation>líneas rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>rejected lines with their reasons</source>
      <translation>líneas rechazadas con sus motivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>repeated ground</source>
      <translation>terreno repetido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>repeats another point</source>
      <translation>repite otro punto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>residuals at the control points</source>
      <translation>residuos en los puntos de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>ridge</source>
      <translation>divisoria</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>right</source>
      <translation>derecha</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the design</source>
      <translation>borde del proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the existing surface</source>
      <translation>borde de la superficie existente</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>rim of the surface</source>
      <translation>borde de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: longest edge allowed</source>
      <translation>borde: arista más larga admitida</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: the same in distances of the passes</source>
      <translation>borde: lo mismo en distancias entre pasadas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest angle allowed opposite an outer edge</source>
      <translation>borde: mayor ángulo admitido frente a una arista exterior</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest circumcircle allowed (radius)</source>
      <translation>borde: mayor círculo circunscrito admitido (radio)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>root mean square of all differences</source>
      <translation>media cuadrática de todas las diferencias</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>rule does not apply</source>
      <translation>la regla no se aplica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>running balance: usable cut less fill</source>
      <translation>balance acumulado: desmonte aprovechable menos terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>saddle</source>
      <translation>collado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>sag</source>
      <translation>acuerdo cóncavo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>same places of several files whose heights differ</source>
      <translation>mismos lugares de varios archivos cuyas alturas difieren</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>satellites badly spread (PDOP)</source>
      <translation>satélites mal distribuidos (PDOP)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>scale {scale}</source>
      <translation>escala {scale}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>section line</source>
      <translation>línea de sección</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>seen in the way of rising stations; offsets and heights in {unit}</source>
      <translation>visto en el sentido de las estaciones crecientes; desplazamientos y cotas en {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>semicolon</source>
      <translation>punto y coma</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>several columns may be the height: {columns}</source>
      <translation>varias columnas pueden ser la cota: {columns}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>shallower</source>
      <translation>menos profundo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>share in the SW, SE, NW and NE quarter (%)</source>
      <translation>parte en el cuadrante SO, SE, NO y NE (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>share of the site in triangles with a long edge</source>
      <translation>parte de la obra en triángulos con una arista larga</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>shift from the first height</source>
      <translation>desplazamiento respecto a la primera cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>six digits before the mark, then seven, as eastings and northings often</source>
      <translation>seis cifras antes del separador decimal y luego siete, como suelen tener las coordenadas este y norte</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>slope break</source>
      <translation>quiebro de talud</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>slope by window, with its 95 % interval</source>
      <translation>pendiente por ventana, con su intervalo del 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of cut</source>
      <translation>talud de desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of fill</source>
      <translation>talud de terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>smallest and largest</source>
      <translation>menor y mayor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>spaces</source>
      <translation>espacios</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>spike</source>
      <translation>pico</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>spill level: noise of its height, times the area</source>
      <translation>nivel de rebose: ruido de su cota, por el área</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>spill point and way of the overflow</source>
      <translation>punto de rebose y camino del agua que rebosa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>spills at {level}</source>
      <translation>rebosa a {level}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>spot heights at summits, pits and saddles</source>
      <translation>puntos acotados en cimas, puntos bajos y collados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>standard deviation</source>
      <translation>desviación típica</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation in plan</source>
      <translation>desviación típica en planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation in plan, at most</source>
      <translation>desviación típica en planta, como máximo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation of a height</source>
      <translation>desviación típica de una cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation of the height, at most</source>
      <translation>desviación típica de la cota, como máximo</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>station {station:.1f} m</source>
      <translation>estación {station:.1f} m</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>steep end</source>
      <translation>extremo empinado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>summit</source>
      <translation>cima</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface above the check point</source>
      <translation>superficie por encima del punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface below the check point</source>
      <translation>superficie por debajo del punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>surface from the used points</source>
      <translation>superficie a partir de los puntos usados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>surface model: ground between the points</source>
      <translation>modelo de superficie: terreno entre los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>surface, its lines and the points used, in LandXML 1.2</source>
      <translation>superficie, sus líneas y los puntos usados, en LandXML 1.2</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>surplus asked for</source>
      <translation>excedente pedido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>systematic: height offset between the surfaces</source>
      <translation>sistemática: desfase de cotas entre las superficies</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>tab</source>
      <translation>tabulador</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>text encoding</source>
      <translation>codificación del texto</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the checksum is {found}, but the characters give {right}: damaged on its way</source>
      <translation>la suma de comprobación es {found}, pero los caracteres dan {right}: dañado por el camino</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the coordinate system of the mesh</source>
      <translation>el sistema de coordenadas de la malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are in {unit}, not in {assumed}</source>
      <translation>las coordenadas están en {unit}, no en {assumed}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another system: {crs}</source>
      <translation>las coordenadas son de otro sistema: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of another zone: {crs}</source>
      <translation>las coordenadas son de otro huso: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the coordinates are of the other hemisphere: {crs}</source>
      <translation>las coordenadas son del otro hemisferio: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the easting is usually written first</source>
      <translation>la coordenada este suele escribirse primero</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the eastings have a zone number, {prefix}, before them</source>
      <translation>las coordenadas este llevan delante un número de huso, {prefix}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the false origin is left out of the coordinates (east {easting} m, north {northing} m)</source>
      <translation>el falso origen se omite en las coordenadas (este {easting} m, norte {northing} m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>the feature has no place or no height</source>
      <translation>el objeto espacial no tiene lugar o no tiene cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the file ends within the line, in column {count} of {width}</source>
      <translation>el archivo acaba dentro de la línea, en la columna {count} de {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the graded pads with their slopes as a mesh</source>
      <translation>las plataformas explanadas con sus taludes, como malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it</source>
      <translation>el encabezado nombra las columnas {first} y {second} como {first_role} y {second_role}, pero leídas así los puntos caen fuera del área de uso del SRC ({area}), e intercambiadas o leídas de otro modo, dentro</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the header says that coordinates are in {unit}</source>
      <translation>el encabezado dice que las coordenadas están en {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place</source>
      <translation>la letra O de la columna {column} puede ser este (Ost) u oeste (Ouest, Oeste); escriba E o W en su lugar</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns instead of {width}</source>
      <translation>la línea tiene {count} columnas en lugar de {width}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns; {role} is column {column}</source>
      <translation>la línea tiene {count} columnas; {role} es la columna {column}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the line is no NMEA sentence</source>
      <translation>la línea no es una sentencia NMEA</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings contain the 10,000,000 m added in the southern hemisphere</source>
      <translation>las coordenadas norte contienen los 10 000 000 m que se suman en el hemisferio sur</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the northings lack the 10,000,000 m added in the southern hemisphere</source>
      <translation>a las coordenadas norte les faltan los 10 000 000 m que se suman en el hemisferio sur</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS</source>
      <translation>los puntos caen fuera del área de uso del SRC en cualquier unidad; se leen en {unit}, la unidad del SRC</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver had no position</source>
      <translation>el receptor no tenía posición</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver sent a position without a height</source>
      <translation>el receptor envió una posición sin altura</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rest of the rim</source>
      <translation>el resto del borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rim</source>
      <translation>el borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the same epoch as line {line}, which is used</source>
      <translation>la misma época que la línea {line}, que se usa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the same finished for the sheet; for drawing only</source>
      <translation>lo mismo acabado para la hoja; solo para dibujo</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the same zone is meant, with the eastings written as in {crs}</source>
      <translation>se refiere al mismo huso, con las coordenadas este escritas como en {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>the sentence has no checksum</source>
      <translation>la sentencia no tiene suma de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>the slope is the same left and right; write both, once.</source>
      <translation>el talud es el mismo a izquierda y derecha; escriba ambos, una vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface as a mesh</source>
      <translation>la superficie como malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted</source>
      <translation>el levantamiento está realmente más allá del límite del huso; transfórmelo a {crs} si es el deseado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the thinned surface as a mesh</source>
      <translation>la superficie aligerada como malla</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the tolerances of single points; edit them for --tolerances</source>
      <translation>las tolerancias de puntos sueltos; edítelas para --tolerances</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are latitude and longitude in degrees; read them as such</source>
      <translation>los valores son latitud y longitud en grados; léalos como tales</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the values are longitude and latitude in degrees; read them as such</source>
      <translation>los valores son longitud y latitud en grados; léalos como tales</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>the values of column {column} are such as {role} has</source>
      <translation>los valores de la columna {column} son como los que tiene {role}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>the whole survey, with its 95 % interval</source>
      <translation>todo el levantamiento, con su intervalo del 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area_causes.py" />
      <source>the zone number {prefix} before the eastings is missing</source>
      <translation>falta el número de huso {prefix} delante de las coordenadas este</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>thinning the surface</source>
      <translation>aligerando la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>tilt, at most</source>
      <translation>inclinación, como máximo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to both edges</source>
      <translation>hacia ambos bordes</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to neither edge</source>
      <translation>hacia ningún borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the left edge</source>
      <translation>hacia el borde izquierdo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right (%)</source>
      <translation>hacia la derecha (%)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right edge</source>
      <translation>hacia el borde derecho</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>toe of fill</source>
      <translation>pie de terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>together</source>
      <translation>en conjunto</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>together (root of the sum of squares)</source>
      <translation>en conjunto (raíz de la suma de cuadrados)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>together, the lines of the file</source>
      <translation>en conjunto, las líneas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>tolerance in height</source>
      <translation>tolerancia en cota</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>too close to tell</source>
      <translation>demasiado ajustado para decidir</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>too few observations</source>
      <translation>demasiado pocas observaciones</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>top of cut</source>
      <translation>cabeza de desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>topsoil, {depth} {unit} off {area} {area_unit}</source>
      <translation>tierra vegetal, {depth} {unit} sobre {area} {area_unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>tracing contours</source>
      <translation>trazando curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle added</source>
      <translation>triángulo añadido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle removed</source>
      <translation>triángulo eliminado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles</source>
      <translation>triángulos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles in a polygon dropped</source>
      <translation>triángulos de un polígono eliminados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles outside the boundary or in voids</source>
      <translation>triángulos fuera del contorno o en huecos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles taken off the rim</source>
      <translation>triángulos recortados del borde</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>true RMSE, 95 % confidence</source>
      <translation>RMSE verdadero, 95 % de confianza</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>unchanged</source>
      <translation>sin cambios</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>undecided</source>
      <translation>sin decidir</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of heights</source>
      <translation>unidad de las cotas</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of plan coordinates</source>
      <translation>unidad de las coordenadas en planta</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <location filename="../plugin/core/georeference/operations.py" />
      <source>unknown</source>
      <translation>desconocido</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>used</source>
      <translation>usado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>used point</source>
      <translation>punto usado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>vegetated</source>
      <translation>con vegetación</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices</source>
      <translation>vértices</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices kept</source>
      <translation>vértices conservados</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>voids</source>
      <translation>huecos</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>walk again</source>
      <translation>volver a recorrer</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>wandering, from one visit to another</source>
      <translation>vagabundeo, de una visita a otra</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, as it lies in the ground</source>
      <translation>vertedero, en banco</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, loose on trucks</source>
      <translation>vertedero, suelto en camión</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>water goes elsewhere</source>
      <translation>el agua va a otro lugar</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>way down, longer where steeper</source>
      <translation>cuesta abajo, más larga donde es más empinado</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>what the checks found: points, size, reasons, place</source>
      <translation>lo que hallaron las comprobaciones: puntos, tamaño, motivos, lugar</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>what the receiver states</source>
      <translation>lo que declara el receptor</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>where it spills</source>
      <translation>donde rebosa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>whole site</source>
      <translation>toda la obra</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>whole surface</source>
      <translation>superficie completa</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>widths {along}   heights {up}</source>
      <translation>anchuras {along}   cotas {up}</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing files</source>
      <translation>escribiendo archivos</translation>
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing the report</source>
      <translation>escribiendo el informe</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>yes</source>
      <translation>sí</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>{area:.1f} m² of the platform are outside the existing surface; no volume is counted there.</source>
      <translation>{area:.1f} m² de la plataforma están fuera de la superficie existente; allí no se cuenta ningún volumen.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{area} {unit}², {share} % of the site, drain nowhere: their water stays in a pond or pit until that is full.</source>
      <translation>{area} {unit}², el {share} % de la obra, no tienen desagüe: su agua se queda en un charco o punto bajo hasta que se llena.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{back} back = {ahead} ahead</source>
      <translation>{back} atrás = {ahead} adelante</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} areas of at least {least} {unit}², together {area} {unit}², fall less than {limit} % in the mean over {window} {unit}.</source>
      <translation>{count} áreas de al menos {least} {unit}², en conjunto {area} {unit}², caen menos del {limit} % de media en {window} {unit}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{count} catchments are larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation>{count} cuencas son mayores de 80 ha; el método racional no suele usarse para áreas así.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{count} check points have the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' where it is not.</source>
      <translation>{count} puntos de comprobación tienen la cubierta 'grass', que se toma por hierba corta y, por tanto, por terreno sin vegetación; escriba 'tall grass' donde no lo sea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} check points state no height error of their own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation>{count} puntos de comprobación no declaran error altimétrico propio; se cuenta {sigma:.3f} m, como en los demás.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{count} control points were not surveyed, and are not used: {names}.</source>
      <translation>{count} puntos de apoyo no se observaron y no se usan: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{count} crossings of passes will tell the noise of the survey to about {percent:.0f} % (95 %, independent differences).</source>
      <translation>{count} cruces de pasadas darán a conocer el ruido del levantamiento con un {percent:.0f} % aproximadamente (95 %, diferencias independientes).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} heights are too few to fit grades and vertical curves to; at least {least} are needed. Take a shorter spacing or a longer part of the line.</source>
      <translation>{count} cotas son demasiado pocas para ajustarles rasantes y acuerdos verticales; se necesitan al menos {least}. Tome una separación menor o una parte más larga de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} of {all} check points lie outside the surface and were not used: {names}.</source>
      <translation>{count} de {all} puntos de comprobación están fuera de la superficie y no se usaron: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in line {line}.</source>
      <translation>{count} de {total} puntos no están en ningún lugar de la Tierra en {crs} (su área de uso: {area}); el primero está en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; the first is in line {line}.</source>
      <translation>{count} de {total} puntos están fuera del área de uso de {crs} ({area}), el más lejano a {distance_km} km; el primero está en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{count} of {total} points lie outside the area the operation is made for ({area}).</source>
      <translation>{count} de {total} puntos están fuera del área para la que se hizo la operación ({area}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} pairs of cross-sections cross each other in tight bends, first those at stations {first} and {second}, {offset:.2f} m to the {side}. Ground beyond the crossings is counted twice: make the sections narrower there or fewer.</source>
      <translation>{count} pares de perfiles transversales se cruzan en curvas cerradas, primero los de las estaciones {first} y {second}, a {offset:.2f} m hacia la {side}. El terreno más allá de los cruces se cuenta dos veces: haga allí los perfiles más estrechos o en menor número.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} pairs of points of {first} and {second} lie within {distance_m} m and differ in height by more than {height_m} m, on average by {mean_m} m, at most by {most_m} m.</source>
      <translation>{count} pares de puntos de {first} y {second} están a menos de {distance_m} m y difieren en cota más de {height_m} m, de media {mean_m} m, como máximo {most_m} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one.</source>
      <translation>{count} lugares que volver a recorrer; con ellos ningún lugar está a más de {limit:.1f} m de uno medido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} point names occur in more than one file, such as '{name}'; all points are kept.</source>
      <translation>{count} nombres de punto aparecen en más de un archivo, como '{name}'; se conservan todos los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the design surface: they have no design height.</source>
      <translation>{count} puntos están fuera de la superficie de proyecto: no tienen cota de proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the existing surface: cut and fill are not known there.</source>
      <translation>{count} puntos están fuera de la superficie existente: allí no se conocen desmonte ni terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} are beyond the tolerances '{set}' ({reasons}).</source>
      <translation>{count} puntos de la línea {line} a la {last} superan las tolerancias '{set}' ({reasons}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} lie {size:+.3f} m off the ground around them: pole lifted or of another height.</source>
      <translation>{count} puntos de la línea {line} a la {last} están {size:+.3f} m fuera del terreno que los rodea: jalón levantado o de otra altura.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation>{count} puntos de la línea {line} a la {last} pueden estar {size:+.3f} m fuera, o el terreno tiene allí un escalón: revíselo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} repeat earlier ones.</source>
      <translation>{count} puntos de la línea {line} a la {last} repiten otros anteriores.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last}, next to a loss of the fix, lie {size:+.3f} m off the ground around them: ambiguities fixed wrongly.</source>
      <translation>{count} puntos de la línea {line} a la {last}, junto a una pérdida de la solución, están {size:+.3f} m fuera del terreno que los rodea: ambigüedades mal fijadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points have no name; choose another name field or number them.</source>
      <translation>{count} puntos no tienen nombre; elija otro campo de nombre o numérelos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{count} points share a name with another, such as “{name}”; all are kept.</source>
      <translation>{count} puntos comparten nombre con otro, como «{name}»; se conservan todos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>{count} ponds lie where only one of the surfaces reaches and are not compared.</source>
      <translation>{count} charcos están donde solo llega una de las superficies y no se comparan.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation>{count} posiciones se registraron más de una vez (iguales a 0,1 mm); la superficie toma la cota media. Mayor diferencia {spread:.3f} m, en E {easting:.3f} N {northing:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} smaller ones</source>
      <translation>{count} más pequeños</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} statuses were set by hand against the automatic checks, the first in line {line}.</source>
      <translation>{count} estados se fijaron a mano en contra de las comprobaciones automáticas, el primero en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>{count} thin triangles along the rim, {area:.1f} m² in all, span up to {value:.1f} m, the longest at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation>{count} triángulos delgados a lo largo del borde, {area:.1f} m² en total, abarcan hasta {value:.1f} m, el más largo en E {easting:.3f} N {northing:.3f}. Indique un contorno o haga recortar el borde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} vertices are outside the boundary or the trimmed rim, or inside a void.</source>
      <translation>{count} vértices están fuera del contorno o del borde recortado, o dentro de un hueco.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0), and no value stands in. Give the standard deviation of a height of this survey.</source>
      <translation>{count} vértices de la superficie no tienen desviación típica de la cota (o tienen una menor que 0) y ningún valor la sustituye. Indique la desviación típica de una cota de este levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0). Give the standard deviation of a height of this survey.</source>
      <translation>{count} vértices de la superficie no tienen desviación típica de la cota (o tienen una menor que 0). Indique la desviación típica de una cota de este levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{crs} does not say where it may be used; whether the points lie there is not checked.</source>
      <translation>{crs} no dice dónde puede usarse; no se comprueba si los puntos están allí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their geometric mean is used; distances depend on direction.</source>
      <translation>{crs} no es conforme: la escala aquí es {along_meridian} hacia el norte y {along_parallel} hacia el este. Se usa su media geométrica; las distancias dependen de la dirección.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs}: easting {easting} m, northing {northing} m is no place on the Earth; mend it.</source>
      <translation>{crs}: este {easting} m, norte {northing} m no es ningún lugar de la Tierra; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes ({axes}) make a mirrored plan; choose the variant of this CRS with axes to east and north.</source>
      <translation>{crs}: sus ejes ({axes}) dan una planta especular; elija la variante de este SRC con ejes hacia el este y el norte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are.</source>
      <translation>{crs}: sus ejes van hacia {first} y {second}; las columnas easting y northing los contienen tal cual.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common inside the regions given: there is nothing to compare. Check the regions and their coordinate system.</source>
      <translation>{existing} y {design} no tienen terreno común dentro de las regiones indicadas: no hay nada que comparar. Compruebe las regiones y su sistema de coordenadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common: there is nothing to compare. Check that both are of one place.</source>
      <translation>{existing} y {design} no tienen terreno común: no hay nada que comparar. Compruebe que ambas son del mismo lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} is in {existing_crs}, {design} in {design_crs}: volumes need both in one coordinate system. Bring one of them into that of the other first.</source>
      <translation>{existing} está en {existing_crs}, {design} en {design_crs}: los volúmenes necesitan ambas en un mismo sistema de coordenadas. Lleve primero una de ellas al de la otra.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>{field} cannot be read: '{value}'</source>
      <translation>no se puede leer {field}: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file} holds several tolerance sets; say by its name which one counts: {names}.</source>
      <translation>{file} contiene varios juegos de tolerancias; diga por su nombre cuál vale: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other.</source>
      <translation>{file} está en {crs}, el levantamiento en una cuadrícula local: nada dice cómo se sitúan entre sí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file} is in {unit}, its CRS {crs} in {other}: read as it says. If that is a slip of who wrote it, places are up to {shift:.3f} m off; ask, and choose the unit if so.</source>
      <translation>{file} está en {unit}, su SRC {crs} en {other}: se lee como dice. Si es un desliz de quien lo escribió, los lugares se desvían hasta {shift:.3f} m; pregunte y, si es así, elija la unidad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: control point '{name}' stands in line {first} already; keep one.</source>
      <translation>{file} línea {line}: el punto de apoyo '{name}' ya figura en la línea {first}; conserve uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line names the columns name, easting, northing and, where known, runoff.</source>
      <translation>{file} línea {line}: falta la columna '{column}'; la primera línea nombra las columnas name, easting, northing y, si se conoce, runoff.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns name, easting, northing and, where known, height.</source>
      <translation>{file} línea {line}: falta la columna '{column}'; la primera línea de un archivo de puntos de apoyo nombra las columnas name, easting, northing y, si se conoce, height.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the point has no name; give it one.</source>
      <translation>{file} línea {line}: el punto no tiene nombre; déle uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: this is no text; save it as CSV.</source>
      <translation>{file} línea {line}: esto no es texto; guárdelo como CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: this point lies outside the geoid grid {grid}; give a grid that covers the site, or a constant.</source>
      <translation>{file} línea {line}: este punto está fuera de la malla del geoide {grid}; indique una malla que cubra la obra o una constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: this position cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation>{file} línea {line}: esta posición no se puede transformar de {source} a {target}; compruebe el SRC y las coordenadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: {column} '{found}' is no number; mend it.</source>
      <translation>{file} línea {line}: {column} '{found}' no es un número; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: {count} points lie outside the geoid grid {grid}, the first in this line; give a grid that covers the site, or a constant.</source>
      <translation>{file} línea {line}: {count} puntos están fuera de la malla del geoide {grid}, el primero en esta línea; indique una malla que cubra la obra o una constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: {count} positions cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation>{file} línea {line}: {count} posiciones no se pueden transformar de {source} a {target}; compruebe el SRC y las coordenadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {kind} is no polygon of coordinates; give polygons only.</source>
      <translation>{file}, objeto espacial {number}: {kind} no es un polígono de coordenadas; indique solo polígonos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {name} is “{value}”, which is no number; mend it.</source>
      <translation>{file}, objeto espacial {number}: {name} es «{value}», que no es un número; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file.</source>
      <translation>{file}, línea 1: esto no es una malla 2DM, que empieza por MESH2D; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, column {column}: no valid JSON ({reason}). Mend the file.</source>
      <translation>{file}, línea {line}, columna {column}: JSON no válido ({reason}). Corrija el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: the kind in "edit" is {value}; it must be one of {known}.</source>
      <translation>{file}, línea {line}, edición {number}: el tipo en "edit" es {value}; debe ser uno de {known}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {field} must be {wanted}, not {value}.</source>
      <translation>{file}, línea {line}, edición {number}: {field} debe ser {wanted}, no {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} has no field {field}. Remove it or correct its name.</source>
      <translation>{file}, línea {line}, edición {number}: {kind} no tiene ningún campo {field}. Elimínelo o corrija su nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} needs {fields}, exactly one of them.</source>
      <translation>{file}, línea {line}, edición {number}: {kind} necesita {fields}, exactamente uno de ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: "edits" must be a list of edits, and nothing may stand beside it.</source>
      <translation>{file}, línea {line}: "edits" debe ser una lista de ediciones, y nada puede ir a su lado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' is none of the files of this survey ({sources}); the decision has no effect.</source>
      <translation>{file}, línea {line}: '{source}' no es ninguno de los archivos de este levantamiento ({sources}); la decisión no tiene efecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{source}' may be any of {sources}; write the name as it stands there.</source>
      <translation>{file}, línea {line}: '{source}' puede ser cualquiera de {sources}; escriba el nombre como figura allí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ...</source>
      <translation>{file}, línea {line}: '{word}' no es un número de línea de un levantamiento; use 1, 2, ...</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'.</source>
      <translation>{file}, línea {line}: '{word}' no es un motivo; use {words}, varios unidos por '+'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no status; use {words}.</source>
      <translation>{file}, línea {line}: '{word}' no es un estado; use {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; holds a coordinate that is no number or no place on Earth; mend it.</source>
      <translation>{file}, línea {line}: &lt;{element}&gt; contiene una coordenada que no es un número o no es un lugar de la Tierra; corríjala.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; lacks its {attribute}; have the file written anew.</source>
      <translation>{file}, línea {line}: a &lt;{element}&gt; le falta su {attribute}; haga escribir el archivo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; needs {needed} numbers (northing before easting) but holds “{found}”; mend it.</source>
      <translation>{file}, línea {line}: &lt;{element}&gt; necesita {needed} números (norte antes que este), pero contiene «{found}»; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; refers to the point “{found}”, which the file does not hold just once.</source>
      <translation>{file}, línea {line}: &lt;{element}&gt; se refiere al punto «{found}», que el archivo no contiene exactamente una vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: LandXML of version “{found}” is not read; have it written as LandXML 1.2.</source>
      <translation>{file}, línea {line}: no se lee LandXML de la versión «{found}»; hágalo escribir como LandXML 1.2.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a curve of alignment “{name}” does not fit: its ends lie {start:.3f} m and {end:.3f} m from its centre.</source>
      <translation>{file}, línea {line}: una curva de la alineación «{name}» no concuerda: sus extremos están a {start:.3f} m y {end:.3f} m de su centro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has the corner {number}, but there is no such point; the file is damaged, have it written anew.</source>
      <translation>{file}, línea {line}: una cara de la superficie «{name}» tiene el vértice {number}, pero no existe tal punto; el archivo está dañado, hágalo escribir de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has {count} corners; only triangles are read, have the surface written as a TIN.</source>
      <translation>{file}, línea {line}: una cara de la superficie «{name}» tiene {count} vértices; solo se leen triángulos, haga escribir la superficie como TIN.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” lies on the same side of an edge as another; the surface overlaps itself, have it written anew.</source>
      <translation>{file}, línea {line}: una cara de la superficie «{name}» está al mismo lado de una arista que otra; la superficie se solapa a sí misma, hágala escribir de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: a quote is not closed; mend the line.</source>
      <translation>{file}, línea {line}: una comilla no se cierra; corrija la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a spiral of alignment “{name}” ends {gap:.3f} m beside the place that the file gives.</source>
      <translation>{file}, línea {line}: una clotoide de la alineación «{name}» acaba a {gap:.3f} m del lugar que da el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first.</source>
      <translation>{file}, línea {line}: una celda {record} no es un triángulo; divida antes las celdas en triángulos (E3T).</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a gap of {gap:.3f} m before this element; its elements must follow each other.</source>
      <translation>{file}, línea {line}: la alineación «{name}» tiene un vacío de {gap:.3f} m antes de este elemento; sus elementos deben sucederse.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a spiral ({kind}) that is not read; it is left out as a whole.</source>
      <translation>{file}, línea {line}: la alineación «{name}» tiene una espiral ({kind}) que no se lee; se omite entera.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has no lines or curves; it is left out.</source>
      <translation>{file}, línea {line}: la alineación «{name}» no tiene líneas ni curvas; se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: applies is {value}. Write "always", "grade &gt; 1:20" or "grade &lt;= 1:20".</source>
      <translation>{file}, línea {line}: applies es {value}. Escriba "always", "grade &gt; 1:20" o "grade &lt;= 1:20".</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: close is {close} for code {code}. Write yes, no or nothing.</source>
      <translation>{file}, línea {line}: close es {close} para el código {code}. Escriba yes, no o nada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} already stands in line {first}. Keep one of them (case does not matter).</source>
      <translation>{file}, línea {line}: el código {code} ya figura en la línea {first}. Conserve uno de ellos (no se distinguen mayúsculas).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} is a {kind} and always closes. Leave close empty or write yes.</source>
      <translation>{file}, línea {line}: el código {code} es {kind} y siempre se cierra. Deje close vacío o escriba yes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} makes no line, so it cannot close. Leave close empty or change the kind.</source>
      <translation>{file}, línea {line}: el código {code} no forma línea, así que no puede cerrarse. Deje close vacío o cambie el tipo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read as {role}, as --columns says.</source>
      <translation>{file}, línea {line}: la columna {column} lleva el encabezado '{word}', pero se lee como {role}, según --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read in {unit}; check the unit.</source>
      <translation>{file}, línea {line}: la columna {column} lleva el encabezado '{word}', pero se lee en {unit}; compruebe la unidad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs code, kind and layer; close is optional.</source>
      <translation>{file}, línea {line}: falta la columna {column}. El encabezado necesita code, kind y layer; close es opcional.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs {columns}.</source>
      <translation>{file}, línea {line}: falta la columna {column}. El encabezado necesita {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close.</source>
      <translation>{file}, línea {line}: la columna {column} es desconocida o está dos veces. Las columnas son code, kind, layer y close.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are {columns}.</source>
      <translation>{file}, línea {line}: la columna {column} es desconocida o está dos veces. Las columnas son {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: column {column} is unknown, missing or twice. The columns are {columns}.</source>
      <translation>{file}, línea {line}: la columna {column} es desconocida, falta o está dos veces. Las columnas son {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, cannot be read in any line; check --columns.</source>
      <translation>{file}, línea {line}: la columna {column}, leída como {role}, no se puede leer en ninguna línea; compruebe --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, holds no number in any line (here '{value}'); check --columns and --decimal (read with delimiter {delimiter}, decimal mark '{decimal}').</source>
      <translation>{file}, línea {line}: la columna {column}, leída como {role}, no contiene un número en ninguna línea (aquí '{value}'); compruebe --columns y --decimal (leído con delimitador {delimiter}, separador decimal '{decimal}').</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: columns {first} and {second} are both headed {role}; give --columns, such as name,easting,northing,height,code.</source>
      <translation>{file}, línea {line}: las columnas {first} y {second} llevan ambas el encabezado {role}; indique --columns, como name,easting,northing,height,code.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: elements within elements, over {most} deep; this is no sound LandXML.</source>
      <translation>{file}, línea {line}: elementos dentro de elementos, a más de {most} niveles; esto no es LandXML correcto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: give either at_least or at_most, one of them and not both.</source>
      <translation>{file}, línea {line}: indique at_least o at_most, uno de los dos y no ambos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}.</source>
      <translation>{file}, línea {line}: el tipo {kind} del código {code} es desconocido. Use uno de {kinds}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: lengths are in {unit} but elevations are said to be in “{found}”; programs read this either way. Ask for it, and choose the unit of the heights.</source>
      <translation>{file}, línea {line}: las longitudes están en {unit}, pero se dice que las elevaciones están en «{found}»; los programas lo leen de las dos maneras. Pregúntelo y elija la unidad de las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: line {survey_line} of {source} holds no point; the decision has no effect.</source>
      <translation>{file}, línea {line}: la línea {survey_line} de {source} no contiene ningún punto; la decisión no tiene efecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: more cells than columns. Put quotes around text that contains the separator.</source>
      <translation>{file}, línea {line}: más celdas que columnas. Ponga entre comillas el texto que contenga el separador.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: more cells than columns. Use one separator all through.</source>
      <translation>{file}, línea {line}: más celdas que columnas. Use un mismo separador en todo el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}.</source>
      <translation>{file}, línea {line}: ninguna columna lleva el encabezado '{word}', que nombra --columns; el encabezado tiene {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter.</source>
      <translation>{file}, línea {line}: no hay tres columnas con el delimitador {tried} ('{start}'); indique --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} is not in the file; it may have been cut short, write it anew.</source>
      <translation>{file}, línea {line}: el nodo {node} no está en el archivo; puede estar truncado, escríbalo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} was given before; number each node once.</source>
      <translation>{file}, línea {line}: el nodo {node} ya se dio antes; numere cada nodo una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: none of the {count} data lines is a point with delimiter {delimiter} and decimal mark '{decimal}' (here: {reason}); check --columns, --delimiter and --decimal.</source>
      <translation>{file}, línea {line}: ninguna de las {count} líneas de datos es un punto con delimitador {delimiter} y separador decimal '{decimal}' (aquí: {reason}); compruebe --columns, --delimiter y --decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: point {number} of surface “{name}” was given before; keep one.</source>
      <translation>{file}, línea {line}: el punto {number} de la superficie «{name}» ya se dio antes; conserve uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: quantity {value} is unknown. Use one of {known}.</source>
      <translation>{file}, línea {line}: la magnitud {value} es desconocida. Use una de {known}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: side is “{value}”; write left, right or both.</source>
      <translation>{file}, línea {line}: side es «{value}»; escriba left, right o both.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: surface “{name}” is {width:.0f} km wide; a surface may measure 107 km.</source>
      <translation>{file}, línea {line}: la superficie «{name}» tiene {width:.0f} km de ancho; una superficie puede medir 107 km.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect.</source>
      <translation>{file}, línea {line}: la línea del levantamiento {survey_line} no contiene ningún punto; la decisión no tiene efecto.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is a point in several files ({sources}); say which file is meant in a column 'source' of the decisions.</source>
      <translation>{file}, línea {line}: la línea del levantamiento {survey_line} es un punto en varios archivos ({sources}); indique a qué archivo se refiere en una columna 'source' de las decisiones.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one.</source>
      <translation>{file}, línea {line}: la línea del levantamiento {survey_line} ya se decide en la línea {before}; conserve una.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the CRS “{found}” is not understood or not one in metres or feet; choose the CRS.</source>
      <translation>{file}, línea {line}: el SRC «{found}» no se reconoce o no está en metros o pies; elija el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: the code is empty. Fill it in or remove the row.</source>
      <translation>{file}, línea {line}: el código está vacío. Rellénelo o elimine la fila.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file declares a document type or entities, which LandXML does not need and which can do harm; it is not read. Have it written anew without them.</source>
      <translation>{file}, línea {line}: el archivo declara un tipo de documento o entidades, que LandXML no necesita y que pueden causar daño; no se lee. Hágalo escribir de nuevo sin ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file is no LandXML but holds &lt;{found}&gt;; choose another file.</source>
      <translation>{file}, línea {line}: el archivo no es LandXML, sino que contiene &lt;{found}&gt;; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma a decimal comma? Give --delimiter and --decimal, or mend the header.</source>
      <translation>{file}, línea {line}: el encabezado tiene {header} columnas, pero la mayoría de las líneas tienen {count}; ¿es la coma una coma decimal? Indique --delimiter y --decimal o corrija el encabezado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: the header lacks {column}; it needs line, status and reason.</source>
      <translation>{file}, línea {line}: al encabezado le falta {column}; necesita line, status y reason.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the profile “{name}” has a vertical curve &lt;{element}&gt;, which is not read; it is left out.</source>
      <translation>{file}, línea {line}: el perfil longitudinal «{name}» tiene un acuerdo vertical &lt;{element}&gt; que no se lee; se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the stations of profile “{name}” do not rise, or its curves overlap; mend it.</source>
      <translation>{file}, línea {line}: las estaciones del perfil longitudinal «{name}» no son crecientes, o sus acuerdos se solapan; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle has no area in plan; remove it.</source>
      <translation>{file}, línea {line}: el triángulo no tiene área en planta; elimínelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle lies on the same side of an edge as another; remove one of them.</source>
      <translation>{file}, línea {line}: el triángulo está al mismo lado de una arista que otro; elimine uno de ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the units are said a second time, and otherwise; keep one.</source>
      <translation>{file}, línea {line}: las unidades se indican por segunda vez y de otro modo; conserve una.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: there is a header but no data line; export the survey again.</source>
      <translation>{file}, línea {line}: hay un encabezado, pero ninguna línea de datos; exporte el levantamiento de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file.</source>
      <translation>{file}, línea {line}: esto no es GeoJSON ({reason}); indique un archivo GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}, line {line}: this is no JSON ({reason}); mend the line.</source>
      <translation>{file}, línea {line}: esto no es JSON ({reason}); corrija la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: this is no whole XML ({reason}); the file is damaged or cut short, have it written anew.</source>
      <translation>{file}, línea {line}: esto no es XML completo ({reason}); el archivo está dañado o truncado, hágalo escribir de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: this is not a list of edits; "format" must be "{format}".</source>
      <translation>{file}, línea {line}: esto no es una lista de ediciones; "format" debe ser "{format}".</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: this is not a text table. Save it as CSV.</source>
      <translation>{file}, línea {line}: esto no es una tabla de texto. Guárdela como CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: this is not a text table. Save the code table as CSV.</source>
      <translation>{file}, línea {line}: esto no es una tabla de texto. Guarde la tabla de códigos como CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: this is not a text table. Save the table of limits as CSV.</source>
      <translation>{file}, línea {line}: esto no es una tabla de texto. Guarde la tabla de límites como CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}, line {line}: this point has no plan position (easting or northing is not a number), nor have {others} others. Reject such points.</source>
      <translation>{file}, línea {line}: este punto no tiene posición en planta (la coordenada este o norte no es un número), ni la tienen otros {others}. Rechace esos puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: version {version} of the list of edits is not known here (known: up to {known}). Update the plugin.</source>
      <translation>{file}, línea {line}: aquí no se conoce la versión {version} de la lista de ediciones (conocidas: hasta la {known}). Actualice el complemento.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: window is {value}. Write metres above 0.</source>
      <translation>{file}, línea {line}: window es {value}. Escriba metros mayores que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: {attribute}=“{found}” of &lt;{element}&gt; cannot be; mend it.</source>
      <translation>{file}, línea {line}: {attribute}=«{found}» de &lt;{element}&gt; no es posible; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is empty. Fill it in.</source>
      <translation>{file}, línea {line}: {column} está vacío. Rellénelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a number above 0 with a decimal point.</source>
      <translation>{file}, línea {line}: {column} es {value}. Escriba un número mayor que 0 con punto decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a ratio such as 1:20, a percentage such as 5%, or a number, not negative.</source>
      <translation>{file}, línea {line}: {column} es {value}. Escriba una razón como 1:20, un porcentaje como 5% o un número, no negativo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: {column} is “{value}”, which is no number here. Mend the cell.</source>
      <translation>{file}, línea {line}: {column} es «{value}», que aquí no es un número. Corrija la celda.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter and as decimal mark? Give --delimiter or --decimal, or name every column.</source>
      <translation>{file}, línea {line}: {count} columnas y ningún punto decimal en una coordenada: ¿coma como delimitador y como separador decimal? Indique --delimiter o --decimal, o nombre todas las columnas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: {count} points are of survey line {survey_line}, and it cannot be told which is meant; decide on them in the layer, or import the points again.</source>
      <translation>{file}, línea {line}: {count} puntos son de la línea del levantamiento {survey_line} y no se puede saber a cuál se refiere; decida sobre ellos en la capa o importe los puntos de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {name} already stands in line {first}. Rename or remove one of them.</source>
      <translation>{file}, línea {line}: {name} ya figura en la línea {first}. Cambie el nombre o elimine uno de ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: {reason}</source>
      <translation>{file}, línea {line}: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: {role} is column {column}, but the lines have {count} columns with delimiter {delimiter}; check --delimiter and --columns.</source>
      <translation>{file}, línea {line}: {role} es la columna {column}, pero las líneas tienen {count} columnas con delimitador {delimiter}; compruebe --delimiter y --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: “{found}” is no {system} unit of length of LandXML (such as {known}); mend it, or choose the unit.</source>
      <translation>{file}, línea {line}: «{found}» no es una unidad de longitud {system} de LandXML (como {known}); corríjala o elija la unidad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line.</source>
      <translation>{file}, línea {line}: «{found}» no es un registro {record} completo; escriba la malla de nuevo o corrija esta línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{decimal}' cannot be a decimal mark; use '.' or ','.</source>
      <translation>{file}: '{decimal}' no puede ser un separador decimal; use '.' o ','.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space or one sign such as '|'.</source>
      <translation>{file}: '{delimiter}' no puede ser un delimitador; use coma, punto y coma, tabulador, espacio o un signo como '|'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: '{key}' stands twice in one set; keep one of them.</source>
      <translation>{file}: '{key}' figura dos veces en un juego; deje uno solo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.</source>
      <translation>{file}: '{name}' no es una causa que explique dónde están los puntos; las causas halladas son: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: '{name}' needs the file to be read or transformed otherwise: name the columns latitude and longitude in --columns, or give the CRS of the file as --source-crs and the one wanted as --crs.</source>
      <translation>{file}: '{name}' exige que el archivo se lea o se transforme de otro modo: nombre las columnas latitude y longitude en --columns, o indique el SRC del archivo como --source-crs y el deseado como --crs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: --columns names column {column} ({role}), but no line has more than {count} columns; check --columns and --delimiter.</source>
      <translation>{file}: --columns nombra la columna {column} ({role}), pero ninguna línea tiene más de {count} columnas; compruebe --columns y --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot open a grid whose path contains {sign}; move or rename the file.</source>
      <translation>{file}: PROJ no puede abrir una malla cuya ruta contiene {sign}; mueva el archivo o cambie su nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot read this as a grid of geoid separations ({reason}); give a GTX or GeoTIFF grid, or a constant.</source>
      <translation>{file}: PROJ no puede leer esto como malla de ondulaciones del geoide ({reason}); indique una malla GTX o GeoTIFF, o una constante.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: a list of tolerance sets is expected, each with a name; write [ and ] around them.</source>
      <translation>{file}: se espera una lista de conjuntos de tolerancias, cada uno con un nombre; póngala entre [ y ].</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: all usable points are at one place; a surface needs at least three different ones.</source>
      <translation>{file}: todos los puntos utilizables están en un mismo lugar; una superficie necesita al menos tres distintos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: all {count} points lie on one straight line, which spans no surface. Check the column mapping (the same column for easting and northing?) or add points beside the line.</source>
      <translation>{file}: los {count} puntos están todos en una misma recta, que no forma superficie. Compruebe la asignación de columnas (¿la misma columna para este y norte?) o añada puntos fuera de la recta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: brackets within brackets too deep for a list of tolerance sets; mend the file.</source>
      <translation>{file}: corchetes demasiado anidados para una lista de juegos de tolerancias; corrija el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/checksums.py" />
      <source>{file}: cannot be read ({reason}), so it cannot be listed among the files handed over.</source>
      <translation>{file}: no se puede leer ({reason}), así que no se puede incluir entre los archivos entregados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: cannot be read ({reason}); check its permissions and whether it is in use.</source>
      <translation>{file}: no se puede leer ({reason}); compruebe sus permisos y si está en uso.</translation>
    </message>
    <message>
      <location filename="../plugin/core/files.py" />
      <source>{file}: cannot be written ({reason}); check the folder, its permissions and the space left.</source>
      <translation>{file}: no se puede escribir ({reason}); compruebe la carpeta, sus permisos y el espacio libre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} contains a space or the separator '{separator}', so it can never be found. Rename it.</source>
      <translation>{file}: el código {code} contiene un espacio o el separador '{separator}', así que nunca se podrá encontrar. Cámbiele el nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} is also the word for {meaning}. Change one of them.</source>
      <translation>{file}: el código {code} es también la palabra para {meaning}. Cambie uno de los dos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file}: las columnas {first} y {second} son longitud y latitud en grados, pero aquí se necesitan coordenadas planas; transfórmelas antes a un SRC proyectado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of the check point of line {line} is no known word; it counts as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation>{file}: la cubierta '{word}' del punto de comprobación de la línea {line} no es una palabra conocida; cuenta como sin vegetación. Escriba hard, bare, short grass, o tall grass, crops, brush, forest.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation>{file}: la cubierta '{word}' de {count} puntos de comprobación no es una palabra conocida (el primero en la línea {line}); cuentan como sin vegetación. Escriba hard, bare, short grass, o tall grass, crops, brush, forest.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again.</source>
      <translation>{file}: no tiene líneas de datos, solo {comments} líneas de comentario y {blanks} en blanco; exporte el levantamiento de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has no header line, but --columns names the header word '{word}'; use column numbers.</source>
      <translation>{file}: no tiene línea de encabezado, pero --columns nombra la palabra de encabezado '{word}'; use números de columna.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has over {most} columns with delimiter {delimiter}; check --delimiter.</source>
      <translation>{file}: tiene más de {most} columnas con delimitador {delimiter}; compruebe --delimiter.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are above mean sea level as the receiver sent them.</source>
      <translation>{file}: las alturas son sobre el nivel medio del mar, tal como las envió el receptor.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: heights are ellipsoidal: height above mean sea level plus geoid separation.</source>
      <translation>{file}: las alturas son elipsoidales: altura sobre el nivel medio del mar más ondulación del geoide.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: holds positions in degrees and {first} in lengths, or the other way round; transform the degrees before they are merged.</source>
      <translation>{file}: contiene posiciones en grados y {first} en longitudes, o al revés; transforme los grados antes de combinarlos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a binary file, not text; export the survey as delimited text (CSV).</source>
      <translation>{file}: es un archivo binario, no de texto; exporte el levantamiento como texto delimitado (CSV).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a folder; give the survey file inside it.</source>
      <translation>{file}: es una carpeta; indique el archivo de levantamiento que contiene.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/survey.py" />
      <source>{file}: is a receiver log with latitudes and longitudes, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation>{file}: es un registro de receptor con latitudes y longitudes, pero aquí se necesitan coordenadas planas; transfórmelas antes a un SRC proyectado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is empty; export the survey again.</source>
      <translation>{file}: está vacío; exporte el levantamiento de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is given twice; give each file once.</source>
      <translation>{file}: se indica dos veces; indique cada archivo una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is in {crs}, but {first} is in {first_crs}; transform one of them before they are merged.</source>
      <translation>{file}: está en {crs}, pero {first} está en {first_crs}; transforme uno de ellos antes de combinarlos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not UTF-8 text; it was read as {encoding}. Check accented letters.</source>
      <translation>{file}: no es texto UTF-8; se leyó como {encoding}. Compruebe las letras acentuadas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not {encoding} text ({reason}); give the encoding it was written in.</source>
      <translation>{file}: no es texto {encoding} ({reason}); indique la codificación en que se escribió.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: it cannot be read ({reason}); give a GeoJSON file.</source>
      <translation>{file}: no se puede leer ({reason}); indique un archivo GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: its EPSG code means {epsg}, its WKT {wkt}; the code is taken. Choose the CRS if that is wrong.</source>
      <translation>{file}: su código EPSG significa {epsg}, su WKT {wkt}; se toma el código. Elija el SRC si es erróneo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its columns hold eastings and northings, but {crs}, given as --source-crs, is in degrees; give the projected CRS they are in, or name the columns latitude and longitude in --columns.</source>
      <translation>{file}: sus columnas contienen coordenadas este y norte, pero {crs}, indicado como --source-crs, está en grados; indique el SRC proyectado en que están o nombre las columnas latitude y longitude en --columns.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: its coordinate system “{crs}” is not understood here; write it anew.</source>
      <translation>{file}: aquí no se reconoce su sistema de coordenadas «{crs}»; escríbalo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs.</source>
      <translation>{file}: sus coordenadas no se pueden transformar a una cuadrícula local; indique un SRC proyectado como --crs.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said, though the file itself says {found}.</source>
      <translation>{file}: sus alturas se toman como {heights}, según lo indicado, aunque el propio archivo dice {found}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are taken as {heights}, as said.</source>
      <translation>{file}: sus alturas se toman como {heights}, según lo indicado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its heights are {heights} already, so the geoid separation would be counted twice; leave --geoid out, or say with --heights-are what they are.</source>
      <translation>{file}: sus alturas ya son {heights}, así que la ondulación del geoide se contaría dos veces; omita --geoid o indique con --heights-are qué son.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: its heights are {heights}, those of {first} {first_heights}; bring them to one kind first.</source>
      <translation>{file}: sus alturas son {heights}, las de {first} {first_heights}; llévelas antes a un mismo tipo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its positions are in degrees, but {crs}, given as --source-crs, is projected; give a geographic CRS, such as EPSG:4326.</source>
      <translation>{file}: sus posiciones están en grados, pero {crs}, indicado como --source-crs, es proyectado; indique un SRC geográfico, como EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are in degrees; give the projected CRS they are wanted in, not a local grid.</source>
      <translation>{file}: sus posiciones están en grados; indique el SRC proyectado en que se desean, no una cuadrícula local.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are taken as {source}, as receivers send them; a correction service may work in another datum, which the file does not tell.</source>
      <translation>{file}: sus posiciones se toman como {source}, tal como las envían los receptores; un servicio de correcciones puede trabajar en otro dátum, que el archivo no indica.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: line {line} is no point; the rejects give its reason.</source>
      <translation>{file}: la línea {line} no es un punto; los rechazos dan su motivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting them at their crossings makes new ones. Remove one of them.</source>
      <translation>{file}: hay líneas tan juntas cerca de E {easting:.3f} N {northing:.3f} que dividirlas en sus cruces crea otros nuevos. Elimine una de ellas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines with different heights cross at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation>{file}: líneas con cotas distintas se cruzan en E {easting:.3f} N {northing:.3f}: {first} a {first_height:.3f} m y {second} a {second_height:.3f} m. Corrija las líneas o elija una regla para los cruces (mean, first).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01.</source>
      <translation>{file}: ninguna sentencia RMC o ZDA da una fecha; las horas son del día, como si fuera el 1970-01-01.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{file}: no point is left to compute a scale from.</source>
      <translation>{file}: no queda ningún punto con el que calcular una escala.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.</source>
      <translation>{file}: ningún punto observado lleva el nombre de un punto de apoyo (como '{name}'); los nombres deben escribirse igual.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: no tolerance set is called '{name}'; there are {names}.</source>
      <translation>{file}: ningún conjunto de tolerancias se llama '{name}'; hay {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. Check the boundary's place and the maximum rim edge.</source>
      <translation>{file}: no queda ningún triángulo dentro del contorno y fuera de los huecos con aristas de borde hasta el límite. Compruebe la posición del contorno y la arista máxima del borde.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum.</source>
      <translation>{file}: ninguna de sus {lines} líneas es una sentencia NMEA 0183 con suma de comprobación correcta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.</source>
      <translation>{file}: ninguna de sus {sentences} sentencias NMEA da una posición; registre sentencias GGA o GNS con solución.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: none of the {count} check points lies on the surface (the first is line {line}); check their coordinate system, units and the order of easting and northing.</source>
      <translation>{file}: ninguno de los {count} puntos de comprobación está en la superficie (el primero es la línea {line}); compruebe su sistema de coordenadas, las unidades y el orden de este y norte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: not all of its coordinates can be brought from {source} to {target}; write it anew in the CRS of the survey (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file}: no todas las coordenadas se pueden llevar de {source} a {target}; escriba el archivo de nuevo en el SRC del levantamiento (en QGIS: Exportar, Guardar objetos espaciales como, con ese SRC y la opción RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); give --columns, such as {options}.</source>
      <translation>{file}: nada dice con seguridad qué columnas son este, norte y cota (primera línea: {words}); indique --columns, como {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>{file}: nothing says how high {name} is; give --pad-level, a height or “balance”, or a property level.</source>
      <translation>{file}: nada dice a qué altura está {name}; indique --pad-level, una cota o «balance», o una propiedad level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local for a local grid in metres.</source>
      <translation>{file}: nada dice qué sistema de coordenadas es este; indique su código, como en --crs EPSG:25832, o --crs local para una cuadrícula local en metros.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: one of {total} positions has no GST sentence; its accuracy is unknown.</source>
      <translation>{file}: una de {total} posiciones no tiene sentencia GST; se desconoce su precisión.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: read as {columns} with delimiter {delimiter}.</source>
      <translation>{file}: leído como {columns} con delimitador {delimiter}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': '{key}' is no tolerance; use {keys}.</source>
      <translation>{file}: conjunto '{name}': '{key}' no es una tolerancia; use {keys}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': {key} is {value}; it must be {wanted}.</source>
      <translation>{file}: conjunto '{name}': {key} es {value}; debe ser {wanted}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1.</source>
      <translation>{file}: no se conoce la codificación de texto '{encoding}'; use utf-8, utf-16 o latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the LandXML file cannot be read ({reason}); check the path.</source>
      <translation>{file}: no se puede leer el archivo LandXML ({reason}); compruebe la ruta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: the check point of line {line} does not lie on the surface; check its coordinate system, units and the order of easting and northing.</source>
      <translation>{file}: el punto de comprobación de la línea {line} no está en la superficie; compruebe su sistema de coordenadas, las unidades y el orden de este y norte.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: no se puede leer la tabla de códigos ({reason}). Compruebe la ruta y el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table has no codes. Give a header code,kind,layer,close and rows.</source>
      <translation>{file}: la tabla de códigos no tiene códigos. Ponga un encabezado code,kind,layer,close y filas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: the comma cannot be delimiter and decimal mark both, unless fields are quoted; give another --delimiter or --decimal.</source>
      <translation>{file}: la coma no puede ser a la vez delimitador y separador decimal, salvo que los campos vayan entre comillas; indique otro --delimiter o --decimal.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: the control file cannot be read ({reason}); check path and encoding (UTF-8).</source>
      <translation>{file}: no se puede leer el archivo de puntos de apoyo ({reason}); compruebe la ruta y la codificación (UTF-8).</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: the coordinates look like degrees, and the file names no other system. Save the line in the survey's CRS (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation>{file}: las coordenadas parecen grados y el archivo no nombra otro sistema. Guarde la línea en el SRC del levantamiento (en QGIS: Exportar, Guardar objetos espaciales como, con ese SRC y la opción RFC7946 = NO).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}: the decision in line {line} names no file of the survey; it is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation>{file}: la decisión de la línea {line} no nombra ningún archivo del levantamiento; se toma para el único punto de su línea. Una columna 'source' indica a qué archivo se refiere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}: the edits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: no se pueden leer las ediciones ({reason}). Compruebe la ruta y el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the file does not say its unit of length (element Units); ask for it and choose it here.</source>
      <translation>{file}: el archivo no indica su unidad de longitud (elemento Units); pregúntela y elíjala aquí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/job/write.py" />
      <source>{file}: the folder cannot be made ({reason}); choose another one for --out.</source>
      <translation>{file}: no se puede crear la carpeta ({reason}); elija otra para --out.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets are in {found}, the surface in {wanted}; reproject them or give them as CSV.</source>
      <translation>{file}: los sumideros están en {found}, la superficie en {wanted}; reproyéctelos o indíquelos como CSV.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets cannot be read ({reason}); check the path.</source>
      <translation>{file}: no se pueden leer los sumideros ({reason}); compruebe la ruta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh file cannot be read ({reason}); check the path.</source>
      <translation>{file}: no se puede leer el archivo de malla ({reason}); compruebe la ruta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh has no triangles; choose another file or write it anew.</source>
      <translation>{file}: la malla no tiene triángulos; elija otro archivo o escríbalo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the point of line {line} has fewer columns than the rest; what is missing counts as unknown.</source>
      <translation>{file}: el punto de la línea {line} tiene menos columnas que el resto; lo que falta cuenta como desconocido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. Check the column mapping, the units and single points far off.</source>
      <translation>{file}: los puntos están separados hasta {distance_km:.0f} km; una superficie puede medir 107 km. Compruebe la asignación de columnas, las unidades y los puntos aislados muy alejados.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the runoff coefficient of inlet '{name}' is {found}; it is above 0 and at most 1.</source>
      <translation>{file}: el coeficiente de escorrentía del sumidero '{name}' es {found}; es mayor que 0 y como máximo 1.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code table that is shipped) and use field codes.</source>
      <translation>{file}: el levantamiento no contiene observaciones de comprobación; indique un archivo de puntos de comprobación o codifique observaciones de comprobación (CK en la tabla de códigos incluida) y use códigos de campo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: no se puede leer la tabla ({reason}). Compruebe la ruta y el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table has no rows. Give a header with the columns {columns}, and rows.</source>
      <translation>{file}: la tabla no tiene filas. Ponga un encabezado con las columnas {columns}, y filas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table has no rows. Give a header with {columns} and at least one row.</source>
      <translation>{file}: la tabla no tiene filas. Ponga un encabezado con {columns} y al menos una fila.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table of limits cannot be read ({reason}). Check the path and the file.</source>
      <translation>{file}: no se puede leer la tabla de límites ({reason}). Compruebe la ruta y el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances are no text in UTF-8; save the file in that encoding.</source>
      <translation>{file}: las tolerancias no son un texto en UTF-8; guarde el archivo con esa codificación.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances cannot be read ({reason}); check the path and the file.</source>
      <translation>{file}: no se pueden leer las tolerancias ({reason}); compruebe la ruta y el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the value of {role} in line {line} cannot be read and counts as unknown.</source>
      <translation>{file}: el valor de {role} en la línea {line} no se puede leer y cuenta como desconocido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}: there are no polygons in it; give a file of polygons.</source>
      <translation>{file}: no contiene polígonos; indique un archivo de polígonos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: there are no surfaces, points or alignments in this file that could be read; choose another.</source>
      <translation>{file}: en este archivo no hay superficies, puntos ni alineaciones que se puedan leer; elija otro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there are {count} lines in it ({names}). Give a file with one; join the parts of a line first.</source>
      <translation>{file}: contiene {count} líneas ({names}). Indique un archivo con una; una antes las partes de una línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: there is no column {column} for the linework. Columns kept: {columns}.</source>
      <translation>{file}: no hay ninguna columna {column} para las líneas. Columnas conservadas: {columns}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: there is no control point in this file.</source>
      <translation>{file}: no hay ningún punto de apoyo en este archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: there is no inlet in this file.</source>
      <translation>{file}: no hay ningún sumidero en este archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there is no line in it. Give a file with one LineString.</source>
      <translation>{file}: no contiene ninguna línea. Indique un archivo con una LineString.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: there is no such file; check the path.</source>
      <translation>{file}: no existe tal archivo; compruebe la ruta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: this is no GeoJSON of points or lines ({reason}); export the layer of inlets as GeoJSON.</source>
      <translation>{file}: esto no es GeoJSON de puntos o líneas ({reason}); exporte la capa de sumideros como GeoJSON.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: two sets are called '{name}'; rename one.</source>
      <translation>{file}: dos conjuntos se llaman '{name}'; cambie el nombre de uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: {count} crossings of lines with different heights, the first at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation>{file}: {count} cruces de líneas con cotas distintas, el primero en E {easting:.3f} N {northing:.3f}: {first} a {first_height:.3f} m y {second} a {second_height:.3f} m. Corrija las líneas o elija una regla para los cruces (mean, first).</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}: {count} decisions name no file of the survey, the first in line {line}; each is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation>{file}: {count} decisiones no nombran ningún archivo del levantamiento, la primera en la línea {line}; cada una se toma para el único punto de su línea. Una columna 'source' indica a qué archivo se refiere.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.</source>
      <translation>{file}: {count} líneas no son puntos, la primera es la línea {line}; los rechazos dan cada línea con su motivo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/nmea.py" />
      <source>{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown.</source>
      <translation>{file}: {count} de {total} posiciones no tienen sentencia GST; se desconoce su precisión.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} points have fewer columns than the rest, the first in line {line}; what is missing counts as unknown.</source>
      <translation>{file}: {count} puntos tienen menos columnas que el resto, el primero en la línea {line}; lo que falta cuenta como desconocido.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {count} usable points at different places; a surface needs at least three.</source>
      <translation>{file}: {count} puntos utilizables en lugares distintos; una superficie necesita al menos tres.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}.</source>
      <translation>{file}: {count} valores de {role} no se pueden leer y cuentan como desconocidos, el primero en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: {found} {record} records found but {expected} announced; the file is cut short, write it anew.</source>
      <translation>{file}: se hallaron {found} registros {record}, pero se anuncian {expected}; el archivo está truncado, escríbalo de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {label}, vertex {vertex}, has no plan position (easting or northing is not a number). Mend the line.</source>
      <translation>{file}: {label}, vértice {vertex}, no tiene posición en planta (la coordenada este o norte no es un número). Corrija la línea.</translation>
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
      <translation>{file}: {question}; escriba una de estas opciones: {options}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>{file}: {said}</source>
      <translation>{file}: {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: {wanted} heights are wanted and those of the file are {heights}; give the geoid separation as --geoid.</source>
      <translation>{file}: se desean alturas {wanted} y las del archivo son {heights}; indique la ondulación del geoide como --geoid.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: {what} has no list of coordinates as GeoJSON asks for. Save the layer again.</source>
      <translation>{file}: {what} no tiene una lista de coordenadas como la que exige GeoJSON. Guarde la capa de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is one line, join it there.</source>
      <translation>{first} acaba y {second} empieza {value:.2f} m más allá en E {easting:.3f} N {northing:.3f}, y un triángulo salva el vacío. Si es una sola línea, únala allí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is one line, join it there.</source>
      <translation>{first} acaba y {second} empieza {value:.2f} m más allá en E {easting:.3f} N {northing:.3f}, y {count} triángulos salvan el vacío. Si es una sola línea, únala allí.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is a ring, close it.</source>
      <translation>{first} se detiene {value:.2f} m antes de su propio inicio en E {easting:.3f} N {northing:.3f}, y un triángulo salva el vacío. Si es un anillo, ciérrelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is a ring, close it.</source>
      <translation>{first} se detiene {value:.2f} m antes de su propio inicio en E {easting:.3f} N {northing:.3f}, y {count} triángulos salvan el vacío. Si es un anillo, ciérrelo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station equation. Write back = ahead, such as 1+200 = 1+250; part several by semicolons.</source>
      <translation>{given} no es una ecuación de estaciones. Escriba atrás = adelante, como 1+200 = 1+250; separe varias con punto y coma.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station. Write it such as 1+234.50 or 1234.5; part several by semicolons.</source>
      <translation>{given} no es una estación. Escríbala como 1+234.50 o 1234.5; separe varias con punto y coma.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).</source>
      <translation>{label} aún continuaba cuando {point} (línea {line}) la empezó de nuevo; la línea anterior acaba en {last} (línea {last_line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: a part has {places} of the {needed} places that it needs; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label}: una parte tiene {places} de los {needed} lugares que necesita; se omite. Cerca de {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: un anillo necesita tres lugares y tiene {places}; se omite. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a height at every vertex, and {count} have none. Give heights, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label}: una cara vertical necesita una cota en cada vértice, y {count} no tienen. Indique cotas, primero en {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a line of two places or more. Mend or remove the line.</source>
      <translation>{label}: una cara vertical necesita una línea de dos lugares o más. Corrija o elimine la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: all points of the ring lie on one straight line; left out. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: todos los puntos del anillo están en una misma recta; se omite. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation>{label}: todos los vértices de un anillo están en una misma recta; se omite. Cerca de {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: fewer than three places, so it stays open. It ends at {point} (line {line}).</source>
      <translation>{label}: menos de tres lugares, así que queda abierta. Acaba en {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: it has no vertices; left out.</source>
      <translation>{label}: no tiene vértices; se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a circle between each two; straight.</source>
      <translation>{label}: ningún arco pasa por {point} (línea {line}) y los puntos contiguos con media circunferencia como máximo entre cada dos; recta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no point of it can be used; no line. It began at {point} (line {line}).</source>
      <translation>{label}: no se puede usar ningún punto suyo; no hay línea. Empezaba en {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: only one place, {point} (line {line}); no line, the point stays a ground point.</source>
      <translation>{label}: un solo lugar, {point} (línea {line}); no hay línea, el punto queda como punto de terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points at the place of the one before them left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: se omitieron de la línea puntos en el mismo lugar que el anterior. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: se omitieron de la línea puntos sin posición completa. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: rejected points left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation>{label}: se omitieron de la línea puntos rechazados. Puntos: {count}, el primero {point} (línea {line}).</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second line: {count}, first at {x:.3f}, {y:.3f}.</source>
      <translation>{label}: segmentos demasiado cortos o esquinas demasiado estrechas para el desplazamiento {offset} m, omitidos de la segunda línea: {count}, el primero en {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; the first one is used there.</source>
      <translation>{label}: el arco en {point} (línea {line}) y un arco contiguo difieren entre sus puntos; allí se usa el primero.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the face height {value} m cannot be used. Give a height other than 0.</source>
      <translation>{label}: no se puede usar la altura de cara {value} m. Indique una altura distinta de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it.</source>
      <translation>{label}: la línea retrocede sobre sí misma en {x:.3f}, {y:.3f}; la segunda línea la rodea.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there.</source>
      <translation>{label}: no se puede usar el punto medio de un arco, {point} (línea {line}); allí no hay arco.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the offset {value} m of the face cannot be used. Give at least {least} m.</source>
      <translation>{label}: no se puede usar el desplazamiento {value} m de la cara. Indique al menos {least} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: the ring was open and is closed by a straight edge of {gap:.3f} m from {x:.3f}, {y:.3f}.</source>
      <translation>{label}: el anillo estaba abierto y se cierra con una arista recta de {gap:.3f} m desde {x:.3f}, {y:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the two lines of the face cross or touch near {x:.3f}, {y:.3f}. Use a smaller offset there or draw the line anew.</source>
      <translation>{label}: las dos líneas de la cara se cruzan o se tocan cerca de {x:.3f}, {y:.3f}. Use allí un desplazamiento menor o dibuje la línea de nuevo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: there is no room for a second line {offset} m beside it. Use a smaller offset or the other side.</source>
      <translation>{label}: no hay sitio para una segunda línea a {offset} m. Use un desplazamiento menor o el otro lado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: vertices dropped because they repeat the place before them: {count}.</source>
      <translation>{label}: vértices descartados porque repiten el lugar anterior: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: {count} of its vertices have no usable coordinates; the part is left out.</source>
      <translation>{label}: {count} de sus vértices no tienen coordenadas utilizables; la parte se omite.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight.</source>
      <translation>{label}: {point} (línea {line}) está marcado como punto medio de un arco, pero es un extremo de la línea; recta.</translation>
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label}: {point} (line {line}) starts a new line without a word for it, after the line of that number had ended.</source>
      <translation>{label}: {point} (línea {line}) empieza una línea nueva sin palabra para ello, después de que la línea de ese número hubiera terminado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} or its slopes take {area:.1f} m² of the platform of {earlier}. Move the pads apart, or plan a wall.</source>
      <translation>{later} o sus taludes ocupan {area:.1f} m² de la plataforma de {earlier}. Separe las plataformas o prevea un muro.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} reaches into the grading of {earlier} ({area:.1f} m²): it is graded into the ground as the other leaves it, so some earth is counted with both. The total is that of the finished ground.</source>
      <translation>{later} invade la explanación de {earlier} ({area:.1f} m²): se explana en el terreno tal como lo deja la otra, así que parte de las tierras se cuenta con ambas. El total es el del terreno terminado.</translation>
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{length:.1f} m of centreline {name} are outside the surface {surface} (stretches: {count}, the first from station {first} to {last}); nothing is said about them.</source>
      <translation>{length:.1f} m del eje {name} están fuera de la superficie {surface} (tramos: {count}, el primero de la estación {first} a la {last}); nada se dice de ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>{lines} ({count} places)</source>
      <translation>{lines} ({count} lugares)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>{low} to {high} %</source>
      <translation>{low} a {high} %</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{low} to {high} {unit}</source>
      <translation>{low} a {high} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} is not determined by these control points ({names}): they lie together or on one line. Add one.</source>
      <translation>{model} no queda determinado por estos puntos de apoyo ({names}): están juntos o en una misma línea. Añada uno.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} needs {needed} control points or more; {count} can be used: {names}.</source>
      <translation>{model} necesita {needed} puntos de apoyo o más; se pueden usar {count}: {names}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>{name}   (heights {times} times)</source>
      <translation>{name}   (cotas {times} veces)</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>{name} is {length} long, from station {begin} to {end}, seen in the way of rising stations.</source>
      <translation>{name} mide {length}, de la estación {begin} a la {end}, visto en el sentido de las estaciones crecientes.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{name} is {value}: a runoff coefficient is above 0 and at most 1, an intensity is above 0. Correct it.</source>
      <translation>{name} es {value}: un coeficiente de escorrentía es mayor que 0 y como máximo 1, una intensidad es mayor que 0. Corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/ponds.py" />
      <source>{name} is {value}: ponds need a standard deviation and a least depth of 0 m or more, and a chance between 0 and 1. Correct it.</source>
      <translation>{name} es {value}: los charcos necesitan una desviación típica y una profundidad mínima de 0 m o más, y una probabilidad entre 0 y 1. Corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/level_ground.py" />
      <source>{name} is {value}: the slope limit and the window for flat areas must be finite and not negative. Correct it.</source>
      <translation>{name} es {value}: el límite de pendiente y la ventana para zonas llanas deben ser finitos y no negativos. Corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>{name} is {value}; give a number {least} or more, up to {most}.</source>
      <translation>{name} es {value}; indique un número de {least} o más, hasta {most}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>{name} is {value}; it must be a number from 0 up. Correct it.</source>
      <translation>{name} es {value}; debe ser un número a partir de 0. Corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{name}: {said}</source>
      <translation>{name}: {said}</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>{off}, at E {easting} N {northing}</source>
      <translation>{off}, en E {easting} N {northing}</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/road.py" />
      <source>{option} is about a road, whose line is given with --line; give that too.</source>
      <translation>{option} se refiere a una carretera, cuya línea se indica con --line; indíquela también.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for grading; give the polygon with --pad too.</source>
      <translation>{option} es para la explanación; indique también el polígono con --pad.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for peak flows; give the intensity with --rain too.</source>
      <translation>{option} es para los caudales punta; indique también la intensidad con --rain.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing.</source>
      <translation>{option} es para la hoja, que se hace con --smooth; indíquelo también, 0 para no suavizar nada.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>{option} is for volumes; say from or to what: --against, --since or --volume-level.</source>
      <translation>{option} es para volúmenes; diga desde qué o hasta qué: --against, --since o --volume-level.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for where the water runs; ask for that with --water too.</source>
      <translation>{option} es para el camino del agua; pídalo también con --water.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number above zero, not {value}.</source>
      <translation>{option} debe ser un número mayor que cero, no {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number from zero up, not {value}.</source>
      <translation>{option} debe ser un número a partir de cero, no {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number, not {value}.</source>
      <translation>{option} debe ser un número, no {value}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>{option} must be two numbers such as 500000,5700000, not '{value}'.</source>
      <translation>{option} debe ser dos números como 500000,5700000, no '{value}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{option} of the walking plan is {value}; give a number in its range.</source>
      <translation>{option} del plan de recorrido es {value}; indique un número de su rango.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and fit again without it.</source>
      <translation>{part}: el punto de apoyo '{suspects}' no ajusta (a {off_mm} mm de donde lo sitúan los demás); compruébelo y ajuste de nuevo sin él.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part}: ningún punto de apoyo destaca; mayor residuo {largest_mm} mm, en '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no redundancy; the fit is exact, and an error in a point would not show.</source>
      <translation>{part}: sin redundancia; el ajuste es exacto y un error en un punto no se vería.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: one of these control points does not fit, and it cannot be told which: {suspects}.</source>
      <translation>{part}: uno de estos puntos de apoyo no ajusta y no se puede saber cuál: {suspects}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points do not fit within the standard deviation given, and with so few it cannot be told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation>{part}: los puntos de apoyo no ajustan dentro de la desviación típica indicada, y con tan pocos no se puede saber cuál es erróneo; mayor residuo {largest_mm} mm, en '{worst}'.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points fit within the standard deviation given; were one wrong, it could not be told which.</source>
      <translation>{part}: los puntos de apoyo ajustan dentro de la desviación típica indicada; si uno fuera erróneo, no se podría saber cuál.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or several points may be wrong.</source>
      <translation>{part}: en conjunto los residuos son mayores de lo que admite la desviación típica indicada; puede ser demasiado pequeña o puede haber varios puntos erróneos.</translation>
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest {largest_mm} mm, at '{worst}'), and use more control points.</source>
      <translation>{part}: con estos puntos de apoyo no se puede saber cuál no ajusta; juzgue los residuos (mayor {largest_mm} mm, en '{worst}') y use más puntos de apoyo.</translation>
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>{reason}, and more</source>
      <translation>{reason}, y más</translation>
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
      <source>{reason}; see --help.</source>
      <translation>{reason}; véase --help.</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) has no value: '{value}'</source>
      <translation>{role} (columna {column}) no tiene valor: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is empty</source>
      <translation>{role} (columna {column}) está vacío</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no angle in degrees: '{value}'</source>
      <translation>{role} (columna {column}) no es un ángulo en grados: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no finite number: '{value}'</source>
      <translation>{role} (columna {column}) no es un número finito: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is not a number: '{value}'</source>
      <translation>{role} (columna {column}) no es un número: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is too large for a coordinate: '{value}'</source>
      <translation>{role} (columna {column}) es demasiado grande para una coordenada: '{value}'</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m.</source>
      <translation>El {share:.1f} % de la obra ({area:.0f} m²) está en triángulos con una arista de más de {limit:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: row {row} was changed by hand but has no line of the survey file; import the points again, so that the decision can be kept.</source>
      <translation>{source}: la fila {row} se modificó a mano, pero no tiene línea del archivo de levantamiento; importe los puntos de nuevo para poder conservar la decisión.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} has '{word}' in column {column}; use one of {words}.</source>
      <translation>{source}: el punto de la línea {line} tiene '{word}' en la columna {column}; use uno de {words}.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} was changed in two rows (the second is row {row}); keep one of them.</source>
      <translation>{source}: el punto de la línea {line} se modificó en dos filas (la segunda es la fila {row}); conserve una de ellas.</translation>
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{stored} points from line {first} to {last} were stored in one place; the first now has their weighted mean, the others are kept out. Spread {plan:.3f} m in plan, {size:.3f} m in height.</source>
      <translation>{stored} puntos de la línea {first} a la {last} se guardaron en un mismo lugar; el primero tiene ahora su media ponderada, los demás quedan fuera. Dispersión {plan:.3f} m en planta, {size:.3f} m en cota.</translation>
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
      <translation>«{word}» no es una columna de una tabla de replanteo; elija entre {known}.</translation>
    </message>
  </context>
  <context>
    <name>hummock</name>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>&amp;Unit of easting and northing:</source>
      <translation>&amp;Unidad de coordenadas este y norte:</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>, and </source>
      <translation> y </translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>0 fits one grade to the whole line.</source>
      <translation>0 ajusta una sola rasante a toda la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design, which is exact; for a second survey the noise of its points.</source>
      <translation>0 para un proyecto, que es exacto; para un segundo levantamiento, el ruido de sus puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>0 for a design.</source>
      <translation>0 para un proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 for level pads.</source>
      <translation>0 para plataformas horizontales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for a level.</source>
      <translation>0 es norte, 90 este, 180 sur, 270 oeste; sin sentido para un nivel.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for level pads.</source>
      <translation>0 es norte, 90 este, 180 sur, 270 oeste; sin sentido para plataformas horizontales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>0.02 is usual for a fixed solution on a pole that is walked.</source>
      <translation>0.02 es lo habitual para una solución fija con jalón en marcha.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>0.5 m is 1 mm on paper at 1 : 500.</source>
      <translation>0,5 m son 1 mm en el papel a 1 : 500.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>100 is 1 : 100. Long lines take several sheets.</source>
      <translation>100 es 1 : 100. Las líneas largas ocupan varias hojas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>1250 for 1+250.</source>
      <translation>1250 para 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>2DM meshes (*.2dm)</source>
      <translation>Mallas 2DM (*.2dm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>2DM meshes, such as the surface of rock; the layer's name is the material's.</source>
      <translation>Mallas 2DM, como la superficie de la roca; el nombre de la capa es el del material.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;Circle {rank}&lt;/b&gt;&lt;br&gt;Nothing was measured within {radius} m of its middle.</source>
      <translation>&lt;b&gt;Círculo {rank}&lt;/b&gt;&lt;br&gt;No se midió nada a menos de {radius} m de su centro.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;Walk here again: nothing was measured within {radius} m.</source>
      <translation>&lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;Vuelva a recorrer aquí: no se midió nada a menos de {radius} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>&lt;p&gt;A projection changes lengths, and so does the height above the ellipsoid. The combined factor (grid distance over ground distance) is computed at the origin: projection scale factor times height factor. Distances from the origin are divided by it to get ground coordinates, and multiplied to get back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; one factor for the whole site; how much it varies over the site is told, and what that makes of a line of 100 m. A sample line is shown with both of its distances. Heights stay as they are. The mean height of the points is used for the height factor, plus the geoid separation if you give it.&lt;/p&gt;&lt;p&gt;Ground coordinates belong to no CRS: the layer has none. Add a shift so that nobody takes them for grid coordinates, and note origin, factor and shift: the way back needs the same ones.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without the geoid separation the height is wrong by it, which makes some 5 mm in a kilometre for 30 m. Ground coordinates need the origin about which they were made; with another one everything is shifted by the factor's share of the distance between the two.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Una proyección cambia las longitudes, y también lo hace la altura sobre el elipsoide. El factor combinado (distancia de cuadrícula entre distancia de terreno) se calcula en el origen: factor de escala de la proyección por factor de altura. Las distancias desde el origen se dividen por él para obtener coordenadas de terreno y se multiplican para volver.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; un solo factor para toda la obra; se indica cuánto varía en ella y qué supone para una línea de 100 m. Se muestra una línea de ejemplo con sus dos distancias. Las cotas quedan como están. Para el factor de altura se usa la cota media de los puntos, más la ondulación del geoide si la indica.&lt;/p&gt;&lt;p&gt;Las coordenadas de terreno no pertenecen a ningún SRC: la capa no tiene ninguno. Añada un desplazamiento para que nadie las tome por coordenadas de cuadrícula, y anote origen, factor y desplazamiento: para volver se necesitan los mismos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; sin la ondulación del geoide, la altura tiene ese error, que supone unos 5 mm por kilómetro para 30 m. Las coordenadas de terreno necesitan el origen respecto al cual se formaron; con otro, todo se desplaza en la parte que el factor da a la distancia entre ambos.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>&lt;p&gt;Asks the surface at each point and adds columns: &lt;b&gt;tin_height&lt;/b&gt;, the height on the surface in the unit of its CRS; &lt;b&gt;slope_pct&lt;/b&gt; and &lt;b&gt;slope_deg&lt;/b&gt;, the slope of the triangle; &lt;b&gt;aspect_deg&lt;/b&gt;, the way down in degrees clockwise from grid north; &lt;b&gt;triangle&lt;/b&gt;, its number. Points with heights of their own also get &lt;b&gt;over_tin&lt;/b&gt;: their height less the surface's, in the same unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Points in another CRS are asked at their place in the surface's CRS and stay as they are; their heights are taken to be in the surface's unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;On an edge&lt;/b&gt; the triangle of lower number answers. A level triangle has no aspect.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points off the surface get empty columns and are counted in the log. Between the survey's points the height is interpolated: it is no measurement.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Consulta la superficie en cada punto y añade columnas: &lt;b&gt;tin_height&lt;/b&gt;, la cota en la superficie en la unidad de su SRC; &lt;b&gt;slope_pct&lt;/b&gt; y &lt;b&gt;slope_deg&lt;/b&gt;, la pendiente del triángulo; &lt;b&gt;aspect_deg&lt;/b&gt;, la dirección cuesta abajo en grados en sentido horario desde el norte de cuadrícula; &lt;b&gt;triangle&lt;/b&gt;, su número. Los puntos con cota propia reciben además &lt;b&gt;over_tin&lt;/b&gt;: su cota menos la de la superficie, en la misma unidad.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Los puntos en otro SRC se consultan en su lugar en el SRC de la superficie y quedan como están; sus cotas se toman en la unidad de la superficie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;En una arista&lt;/b&gt; responde el triángulo de número menor. Un triángulo horizontal no tiene orientación.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los puntos fuera de la superficie reciben columnas vacías y se cuentan en el registro. Entre los puntos del levantamiento la cota se interpola: no es una medición.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>&lt;p&gt;Brings a survey in local or assumed coordinates into the CRS of known control points: in plan by a turn, a scale and two shifts (four parameters), in height by a shift or a tilted plane; or in space by seven parameters. The fit is by least squares.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the points of the survey carry the names of the control points that they were measured at, written alike. The coordinates of the survey layer are taken as they are in the unit you give, whatever CRS the layer says. Several measurements of one control point are averaged.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The residuals&lt;/b&gt; are fitted minus control, in millimetres. Redundancy numbers say how far an error in a point would show in its residual (0: not at all). A point that does not fit is named by a statistical test; fit again without it and see whether the rest agrees.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; two points in plan, or three in height with a plane, fit exactly and check nothing; with one point more an error shows but not whose it is. Control points on one line do not hold a plane. A scale far from 1 means a wrong unit, or ground distances against grid coordinates.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lleva un levantamiento en coordenadas locales o supuestas al SRC de unos puntos de apoyo conocidos: en planta mediante un giro, una escala y dos desplazamientos (cuatro parámetros), en altura mediante un desplazamiento o un plano inclinado; o en el espacio mediante siete parámetros. El ajuste es por mínimos cuadrados.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; que los puntos del levantamiento llevan los nombres de los puntos de apoyo en que se midieron, escritos igual. Las coordenadas de la capa del levantamiento se toman tal cual en la unidad que indique, diga lo que diga el SRC de la capa. Varias mediciones de un mismo punto de apoyo se promedian.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Los residuos&lt;/b&gt; son ajustado menos apoyo, en milímetros. Los números de redundancia dicen hasta qué punto un error en un punto se vería en su residuo (0: nada). Un punto que no ajusta se señala mediante una prueba estadística; ajuste de nuevo sin él y vea si el resto concuerda.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; dos puntos en planta, o tres en altura con un plano, ajustan exactamente y no comprueban nada; con un punto más se ve un error, pero no de quién es. Puntos de apoyo en una misma línea no fijan un plano. Una escala lejana de 1 significa una unidad errónea, o distancias de terreno frente a coordenadas de cuadrícula.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>&lt;p&gt;Compares a surface with check points and says what that shows: bias, RMSE, the 95 % accuracy of the NSSDA (FGDC-STD-007.3-1998), and the vertical class of the ASPRS Positional Accuracy Standards, edition 2 (2023), with the check points' own error in it. Where there are fewer check points than a standard asks for, it says so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and check points that did not shape it: a point layer, or a CSV file with the columns name, easting, northing, height and, where known, sigma_h, sigma_v and cover, in the CRS of the surface and its units. With neither, the check shots among the survey's points are taken (rejected as check_shot): those are of the same receiver, so the result is an internal check and no test by a standard.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cover:&lt;/b&gt; words such as hard, bare, short grass count as non-vegetated; tall grass, crops, brush, forest as vegetated. The two are reported apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Plan:&lt;/b&gt; with the survey's points, marks of the same name in both tell the accuracy in plan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points from the same base station, pole or geoid share its errors and hide them. The sentences follow the standards in meaning; compare them with your copy before you sign. A licensed professional decides what may be stated for a contract.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Compara una superficie con puntos de comprobación y dice qué muestra eso: sesgo, RMSE, la precisión al 95 % de NSSDA (FGDC-STD-007.3-1998) y la clase vertical de ASPRS Positional Accuracy Standards, edición 2 (2023), con el error propio de los puntos de comprobación incluido. Donde hay menos puntos de comprobación de los que exige una norma, lo dice.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y puntos de comprobación que no intervinieron en ella: una capa de puntos, o un archivo CSV con las columnas name, easting, northing, height y, si se conocen, sigma_h, sigma_v y cover, en el SRC de la superficie y sus unidades. Si no hay ninguno, se toman las observaciones de comprobación entre los puntos del levantamiento (rechazadas como check_shot): son del mismo receptor, así que el resultado es una comprobación interna y no un ensayo según una norma.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cubierta:&lt;/b&gt; palabras como hard, bare, short grass cuentan como sin vegetación; tall grass, crops, brush, forest como con vegetación. Ambas se informan por separado.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Planta:&lt;/b&gt; con los puntos del levantamiento, las marcas del mismo nombre en ambos dan la precisión en planta.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; puntos de la misma estación base, jalón o geoide comparten sus errores y los ocultan. Las frases siguen el sentido de las normas; cotéjelas con su ejemplar antes de firmarlas. Un profesional habilitado decide qué puede declararse para un contrato.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>&lt;p&gt;Compares the grades and crossfalls along a line with a table of limits. A stretch passes or fails only when the whole interval in which its true slope lies with 95 % is on that side of the limit; else it is too close to tell, and more or better points are needed. The layer shows each rule as a band of its own beside the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS, such as a centreline or the middle of a walk. Crossfall is taken between two offsets; keep them inside kerbs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table of limits&lt;/b&gt; is a CSV file with the columns rule, quantity (grade, crossfall, crest_k, sag_k), at_least or at_most (1:20, 5% or 0.05; K in metres), window (m), applies, source, checked, note. Without one the table that comes with Hummock is used; each of its limits names the published source. Compare them with your copy, and with the code that applies where you build.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indications&lt;/b&gt;, none of them a proof: to which edge the crossfall leads water; low points along both edges where water stands, deeper than the noise; and with a table of speeds (columns speed and least_k, m/%), the speed that each fitted crest suits.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; of many windows near a limit a few are judged wrongly. What lies off the surface is not judged. Whether a road, walk or ramp complies is a matter of local codes and of licensed practice, not of this check.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Compara las pendientes longitudinales y transversales a lo largo de una línea con una tabla de límites. Un tramo cumple o no cumple solo cuando todo el intervalo en que se encuentra su pendiente verdadera con el 95 % está de ese lado del límite; si no, está demasiado ajustado para decidir y hacen falta más puntos o mejores. La capa muestra cada regla como una banda propia junto a la línea.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y una línea en su SRC, como un eje o el centro de una senda. La pendiente transversal se toma entre dos desplazamientos; manténgalos dentro de los bordillos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La tabla de límites&lt;/b&gt; es un archivo CSV con las columnas rule, quantity (grade, crossfall, crest_k, sag_k), at_least o at_most (1:20, 5% o 0.05; K en metros), window (m), applies, source, checked, note. Sin ella se usa la tabla que acompaña a Hummock; cada uno de sus límites nombra la fuente publicada. Cotéjelos con su ejemplar y con la normativa aplicable donde construye.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indicios&lt;/b&gt;, ninguno de ellos una prueba: hacia qué borde lleva el agua la pendiente transversal; puntos bajos a lo largo de ambos bordes donde se estanca el agua, más profundos que el ruido; y, con una tabla de velocidades (columnas speed y least_k, m/%), la velocidad que conviene a cada acuerdo convexo ajustado.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; de muchas ventanas cercanas a un límite, algunas se juzgan mal. Lo que queda fuera de la superficie no se juzga. Si una carretera, una senda o una rampa cumple es cuestión de la normativa local y del ejercicio profesional habilitado, no de esta comprobación.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>&lt;p&gt;Computes cut, fill, net, areas and mean depths between two surfaces, or from a surface to a level, in each polygon of a layer: parcels, phases of work, materials on the ground. The polygons' edges cut the triangles exactly, so that the regions and what is outside add up to the whole; where polygons overlap, each counts the ground and the log names them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes in one CRS with one height datum. The polygons are brought into that CRS. &lt;b&gt;Materials:&lt;/b&gt; surfaces of the tops of layers below the ground, such as rock, from above to below; cut is then parted by them. Where a layer's surface is missing the material is “not known”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the polygons with their numbers (± columns are half of the 95 % interval), tables by quantity with the parts of the doubt, by depth class, by material, depth polygons of the whole, and a report. How sure the numbers are: see “Volume between two surfaces”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; intervals of regions do not add up: a height offset moves all of them together, noise does not. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Parcels drawn here are no legal boundaries. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcula desmonte, terraplén, neto, áreas y profundidades medias entre dos superficies, o de una superficie a un nivel, en cada polígono de una capa: parcelas, fases de obra, materiales en el terreno. Los bordes de los polígonos cortan los triángulos exactamente, de modo que las regiones y lo que queda fuera suman el total; donde los polígonos se solapan, cada uno cuenta el terreno y el registro los nombra.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; mallas 2DM en un mismo SRC con un mismo dátum altimétrico. Los polígonos se llevan a ese SRC. &lt;b&gt;Materiales:&lt;/b&gt; superficies de los techos de capas bajo el terreno, como la roca, de arriba abajo; el desmonte se reparte entonces según ellas. Donde falta la superficie de una capa, el material es «desconocido».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Salidas:&lt;/b&gt; los polígonos con sus cifras (las columnas ± son la mitad del intervalo del 95 %), tablas por magnitud con las partes de la incertidumbre, por clase de profundidad y por material, polígonos de profundidad del conjunto y un informe. Cuán seguras son las cifras: véase «Volumen entre dos superficies».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los intervalos de las regiones no se suman: un desfase de cotas las mueve todas juntas, el ruido no. Esto no es una certificación de obra: el contrato, la normativa local y el ejercicio profesional habilitado dicen qué se mide. Las parcelas aquí dibujadas no son lindes legales. Localice los servicios enterrados antes de que nadie excave.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>&lt;p&gt;Computes the earth between an existing surface (or an earlier survey) and a design (or a later survey). Every triangle of the one is cut along those of the other, so that the volume is exact for the two surfaces: it depends on no cell size and no stations. &lt;b&gt;Cut&lt;/b&gt; is where the existing surface is above the design, &lt;b&gt;fill&lt;/b&gt; where it is below, both positive; net is fill less cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS and with one height datum. Only ground that both cover is compared, and only inside the polygons if a layer of them is given; what is left out is told in square metres. A level in place of the missing surface counts the rest as well.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; each volume comes with its 95 % interval and four standard deviations: random (noise of single points), drift (shared by neighbours), systematic (a height offset between the surfaces, times the area) and surface model (ground between the points). They rest on what you say of the points; the log and the report name it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tables:&lt;/b&gt; volumes with half_95, low_95 and high_95; random, drift, systematic and model are standard deviations, all in m³. &lt;b&gt;Polygons:&lt;/b&gt; kind, from_m and to_m (depth), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; an offset of 1 cm between two surveys is 100 m³ on a hectare: check a few points that did not move. Where nothing is deeper than the noise, cut and fill are both too large. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcula las tierras entre una superficie existente (o un levantamiento anterior) y un proyecto (o un levantamiento posterior). Cada triángulo de una se corta por los de la otra, de modo que el volumen es exacto para las dos superficies: no depende de tamaño de celda ni de estaciones. Hay &lt;b&gt;desmonte&lt;/b&gt; donde la superficie existente está por encima del proyecto y &lt;b&gt;terraplén&lt;/b&gt; donde está por debajo, ambos positivos; neto es terraplén menos desmonte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; dos mallas 2DM en un mismo SRC y con un mismo dátum altimétrico. Solo se compara el terreno que ambas cubren, y solo dentro de los polígonos si se indica una capa de ellos; lo que se omite se indica en metros cuadrados. Un nivel en lugar de la superficie que falta cuenta también el resto.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cuán seguro:&lt;/b&gt; cada volumen se da con su intervalo del 95 % y cuatro desviaciones típicas: aleatoria (ruido de puntos aislados), deriva (compartida por vecinos), sistemática (un desfase de cotas entre las superficies, por el área) y modelo de superficie (terreno entre los puntos). Se basan en lo que usted diga de los puntos; el registro y el informe lo nombran.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tablas:&lt;/b&gt; volúmenes con half_95, low_95 y high_95; random, drift, systematic y model son desviaciones típicas, todo en m³. &lt;b&gt;Polígonos:&lt;/b&gt; kind, from_m y to_m (profundidad), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un desfase de 1 cm entre dos levantamientos son 100 m³ por hectárea: compruebe algunos puntos que no se movieron. Donde nada es más profundo que el ruido, desmonte y terraplén resultan ambos demasiado grandes. Esto no es una certificación de obra: el contrato, la normativa local y el ejercicio profesional habilitado dicen qué se mide. Localice los servicios enterrados antes de que nadie excave.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>&lt;p&gt;Computes what must be cut (ground above) and filled (ground below) to make the surface one plane: a &lt;b&gt;level&lt;/b&gt;; a &lt;b&gt;sloping plane&lt;/b&gt;, given by its height at a place, how steeply it falls and which way; or the plane through &lt;b&gt;three points&lt;/b&gt;. Exact, triangle by triangle, without side slopes; for a pad with slopes to the ground see “Grade a pad”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Polygons limit the ground. Heights are in the unit of the CRS, the direction is an azimuth: degrees clockwise from grid north.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; see “Volume between two surfaces”; the plane itself is exact, and the height offset is that between the survey and the datum of the level.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a polygon the whole surface is levelled, rim and all. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Calcula qué debe desmontarse (terreno por encima) y terraplenarse (terreno por debajo) para convertir la superficie en un plano: un &lt;b&gt;nivel&lt;/b&gt;; un &lt;b&gt;plano inclinado&lt;/b&gt;, dado por su cota en un lugar, cuánto cae y hacia dónde; o el plano por &lt;b&gt;tres puntos&lt;/b&gt;. Exacto, triángulo a triángulo, sin taludes; para una plataforma con taludes hasta el terreno, véase «Explanar una plataforma».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Los polígonos limitan el terreno. Las cotas están en la unidad del SRC; la dirección es un acimut: grados en sentido horario desde el norte de cuadrícula.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cuán seguro:&lt;/b&gt; véase «Volumen entre dos superficies»; el propio plano es exacto, y el desfase de cotas es el que hay entre el levantamiento y el dátum del nivel.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; sin un polígono se nivela toda la superficie, con borde y todo. Esto no es una certificación de obra: el contrato, la normativa local y el ejercicio profesional habilitado dicen qué se mide. Localice los servicios enterrados antes de que nadie excave.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>&lt;p&gt;Cuts a surface, and a second one if you like, at right angles to a line: at whole multiples of an interval, at stations you name, at the line's ends and at its vertices. At a vertex the section halves the angle. You get the sections as lines with heights, their points with offset (right positive) and height, the areas of cut and fill, and sheets in PDF at true scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them and one line, all in one CRS. Heights are those of the triangles, with a point wherever a section crosses an edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Areas:&lt;/b&gt; cut is where the second surface is below the first, fill where it is above; exact between the surfaces as they are. Their standard deviations follow from the noise of the heights. Where both surfaces are within the noise of each other, cut and fill both come out too large; fill less cut does not.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; in tight bends wide sections cross and ground beyond counts twice, which is said. A section partly off a surface has areas only over the width covered, which a column tells. Quantities for payment are a matter of the contract and of licensed practice. Locate buried services before any excavation.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Corta una superficie, y una segunda si lo desea, en perpendicular a una línea: en múltiplos enteros de un intervalo, en las estaciones que indique, en los extremos de la línea y en sus vértices. En un vértice la sección es bisectriz del ángulo. Se obtienen las secciones como líneas con cotas, sus puntos con desplazamiento (derecha positivo) y cota, las áreas de desmonte y terraplén, y hojas en PDF a escala exacta.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; mallas 2DM tal como las escribe «Construir la superficie» y una línea, todo en un mismo SRC. Las cotas son las de los triángulos, con un punto dondequiera que una sección cruza una arista.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Áreas:&lt;/b&gt; hay desmonte donde la segunda superficie está por debajo de la primera y terraplén donde está por encima; exactas entre las superficies tal como son. Sus desviaciones típicas se deducen del ruido de las cotas. Donde ambas superficies están dentro del ruido una de otra, desmonte y terraplén resultan ambos demasiado grandes; terraplén menos desmonte, no.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; en curvas cerradas las secciones anchas se cruzan y el terreno más allá cuenta dos veces, lo cual se indica. Una sección parcialmente fuera de una superficie solo tiene áreas en la anchura cubierta, que indica una columna. Las mediciones para el pago son cuestión del contrato y del ejercicio profesional habilitado. Localice los servicios enterrados antes de cualquier excavación.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>&lt;p&gt;Divides a line into windows and gives for each the grade along it and the crossfall across it, with the standard deviation that the noise of the points makes. Both layers are coloured by class of slope, steeper darker and wider.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. A grade is positive where the surface rises with the stations, a crossfall where it rises to the right. A grade is the straight line that fits the heights in the window best. A crossfall is that of sections half a metre apart, from one offset to the other, which all have one slope in the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (from 0, the flattest, by the size of the slope), label. Twice the standard deviation is the doubt at 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; crossfall over a kerb or a ditch is no crossfall: keep the offsets in the lane. Drift tilts a crossfall and counts only if you give it. A window that the surface does not cover has no slope. For limits use “Check a line against limits”.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Divide una línea en ventanas y da para cada una la pendiente longitudinal y la transversal, con la desviación típica que produce el ruido de los puntos. Ambas capas se colorean por clase de pendiente, más oscuras y anchas cuanto más empinado.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y una línea en su SRC. Una pendiente longitudinal es positiva donde la superficie sube con las estaciones, una transversal donde sube hacia la derecha. Una pendiente longitudinal es la recta que mejor se ajusta a las cotas de la ventana. Una pendiente transversal es la de secciones cada medio metro, de un desplazamiento al otro, que tienen todas una misma pendiente en la ventana.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (desde 0, la más llana, según el tamaño de la pendiente), label. El doble de la desviación típica es la incertidumbre al 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; una pendiente transversal que pasa por un bordillo o una cuneta no es tal: mantenga las distancias dentro del carril. La deriva inclina una pendiente transversal y solo cuenta si la indica. Una ventana que la superficie no cubre no tiene pendiente. Para límites use «Comprobar una línea con límites».&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>&lt;p&gt;Divides the surface along lines of steepest descent by where its water goes: to an inlet, a pond, an outlet on the rim where a channel leaves, or over the rest of the rim. The areas add up to that of the surface. With it come the channels and, between their grounds, the ridges.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Inlets are points or lines; for the catchments of points on a line give the line and the length of its stretches: each has its own catchment.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; name (the inlet's; P1, P2 … ponds by depth; O1, O2 … outlets and H1, H2 … pits by area), drains_to (inlet, pond, outlet, rim, pit), area_m2 in plan and share_pct of the surface, nowhere_m2 and nowhere_pct, the part of it whose water stays in a pond until that is full, and out_x and out_y, where it goes, in the CRS. Channels have area_m2, the ground that drains through their end.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; ground beyond the rim was not measured, so its water is missing. The catchments of a noisy survey are no finer than its points; the noise given keeps pits of noise from dividing them. An inlet takes all that comes near it: whether it can swallow that is not asked.&lt;/p&gt;&lt;p&gt;Catchments are no drainage design: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Divide la superficie por líneas de máxima pendiente según adónde va su agua: a un sumidero, un charco, una salida en el borde por donde sale un cauce, o por el resto del borde. Las áreas suman la de la superficie. Se dan además los cauces y, entre sus terrenos, las divisorias.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Los sumideros son puntos o líneas; para las cuencas de puntos de una línea, indique la línea y la longitud de sus tramos: cada uno tiene su propia cuenca.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; name (la del sumidero; P1, P2 … charcos por profundidad; O1, O2 … salidas y H1, H2 … puntos bajos por área), drains_to (inlet, pond, outlet, rim, pit), area_m2 en planta y share_pct de la superficie, nowhere_m2 y nowhere_pct, la parte de ella cuya agua se queda en un charco hasta que se llena, y out_x y out_y, adónde va, en el SRC. Los cauces tienen area_m2, el terreno que drena por su extremo.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; el terreno más allá del borde no se midió, así que falta su agua. Las cuencas de un levantamiento con ruido no son más finas que sus puntos; el ruido indicado impide que los puntos bajos debidos al ruido las dividan. Un sumidero recibe todo lo que llega cerca de él: no se pregunta si puede tragarlo.&lt;/p&gt;&lt;p&gt;Las cuencas no son un proyecto de drenaje: deciden la normativa local y el ejercicio profesional habilitado.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>&lt;p&gt;Does the same on two surfaces, such as the ground and a design, and says what differs: ponds that are new, gone, deeper or shallower, ground whose water goes elsewhere, and paths before and after from the same places.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS that cover much the same ground, and the same inlets on both. A pond is the same one where the pit of one lies under the water of the other. All places of the rim are taken for one, and so are all ponds, when it is asked whether water goes elsewhere.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; of ponds: change (new, gone, deeper, shallower, unchanged), before and after (their numbers on each surface), and the change in depth_m, area_m2 and volume_m3; of moved ground: from_what, to_what, area_m2; of paths: when (before, after) and those of “Paths of water”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where only one surface reaches, nothing is compared; a design that ends in the middle of the site has its rim there. Put the design into the ground first. The noise given holds for both surfaces: a design has none of its own.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design. Water turned onto a neighbour's ground is a legal matter in most places: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Hace lo mismo en dos superficies, como el terreno y un proyecto, y dice qué difiere: charcos nuevos, desaparecidos, más o menos profundos, terreno cuya agua va a otro lugar y recorridos antes y después desde los mismos lugares.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; dos mallas 2DM en un mismo SRC que cubren en gran medida el mismo terreno, y los mismos sumideros en ambas. Un charco es el mismo cuando el punto bajo de uno está bajo el agua del otro. Al preguntar si el agua va a otro lugar, todos los lugares del borde se toman por uno solo, y también todos los charcos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; de los charcos: change (new, gone, deeper, shallower, unchanged), before y after (sus números en cada superficie) y el cambio en depth_m, area_m2 y volume_m3; del terreno cambiado: from_what, to_what, area_m2; de los recorridos: when (before, after) y las de «Caminos del agua».&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; donde solo llega una superficie no se compara nada; un proyecto que acaba en medio de la obra tiene allí su borde. Incorpore antes el proyecto al terreno. El ruido indicado vale para ambas superficies: un proyecto no tiene ruido propio.&lt;/p&gt;&lt;p&gt;Esto es una indicación y no un proyecto de drenaje. Desviar agua al terreno de un vecino es una cuestión legal en la mayoría de los lugares: deciden la normativa local y el ejercicio profesional habilitado.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>&lt;p&gt;Draws contours as a plan shows them: noise calmed, corners rounded, labels that read uphill on the straight places of the lines, and spot heights at summits, pits and saddles.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and the scale at which the plan will be printed: labels keep their size on the ground, so that they fit at that scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Calming&lt;/b&gt; moves no height by more than the tolerance you state; vertices on breaklines and on the rim stay. &lt;b&gt;Smoothing&lt;/b&gt; moves no place of a line by more than the distance you state; lines never cross each other or a breakline, rings stay closed, and each survey point stays on its side. The log says how much of both was used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For half-foot contours&lt;/b&gt; choose interval 0.5, feet, and an index contour every 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; these lines are for drawing. Take numbers, volumes and hand-over from the surface, or from “Contours of a surface”. Labels for another scale are too large or too small: run it again for that scale. Short or crowded lines get no label.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dibuja curvas de nivel como las muestra un plano: el ruido atenuado, las esquinas redondeadas, las etiquetas legibles cuesta arriba en los lugares rectos de las líneas, y puntos acotados en cimas, puntos bajos y collados.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y la escala a la que se imprimirá el plano: las etiquetas mantienen su tamaño en el terreno, de modo que encajan a esa escala.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La atenuación&lt;/b&gt; no mueve ninguna cota más que la tolerancia que indique; los vértices de líneas de rotura y del borde no se mueven. &lt;b&gt;El suavizado&lt;/b&gt; no mueve ningún lugar de una línea más que la distancia que indique; las líneas nunca se cruzan entre sí ni cruzan una línea de rotura, los anillos siguen cerrados y cada punto del levantamiento queda en su lado. El registro dice cuánto se usó de ambos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Para curvas de medio pie&lt;/b&gt; elija equidistancia 0.5, pies, y una curva maestra cada 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; estas líneas son para dibujo. Tome las cifras, los volúmenes y la entrega de la superficie o de «Curvas de nivel de una superficie». Las etiquetas para otra escala son demasiado grandes o pequeñas: ejecútelo de nuevo para esa escala. Las líneas cortas o apretadas no reciben etiqueta.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>&lt;p&gt;Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. Interval and base are in the unit you choose, which need not be that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; level in the chosen unit and in metres, index (drawn heavier), depression (a ring with the lower ground inside) and closed. Each line also carries its level as height.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours finer than the points allow show noise, not ground: with heights good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not smoothed: their corners are where they cross the edges of triangles.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dibuja las líneas de igual cota sobre los triángulos de una superficie, a base + k × equidistancia para k entero. Cada línea es lo más larga posible: un anillo cerrado, o de borde a borde. El terreno más alto está a la izquierda de la línea.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie», con cotas en la unidad de su SRC. Equidistancia y base están en la unidad que elija, que no tiene por qué ser la del SRC.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; level en la unidad elegida y en metros, index (trazo más grueso), depression (un anillo con el terreno más bajo dentro) y closed. Cada línea lleva además su nivel como cota.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; las curvas de nivel más finas de lo que permiten los puntos muestran ruido, no terreno: con cotas de precisión 15 mm, piense dos veces una equidistancia inferior a 5 cm. El terreno llano da líneas irregulares. Las curvas no se suavizan: sus esquinas están donde cruzan las aristas de los triángulos.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>&lt;p&gt;Draws the topographic plan of a surface: contours with labels, spot heights that do not touch each other, your lines and parcels, grid marks with coordinates, north arrow, scale bar, legend, and what a reader must know: CRS, height datum, accuracy, contour interval, date. Where the site does not fit on one sheet at the scale, several are made, with a key map on each.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You get&lt;/b&gt; a PDF with lines and text as vectors and its fonts inside, a GeoPackage with the layers and their styles, and a print layout in the project to change by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Title and author come from the project’s properties (Project › Properties › Metadata) where you leave them empty here. The height datum is that of a compound CRS; for another CRS say it, else the plan says that it is not stated.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Accuracy:&lt;/b&gt; with check points the plan carries the sentences of the accuracy statement; otherwise it says that the heights were not tested.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours on the plan are calmed and smoothed within the limits you state; take numbers from the surface. Layers with transparency or blending turn the map into an image in the PDF. A second run for the same files replaces the layers and the layout of the first; duplicate a layout that you want to keep. Parcels on a plan are no boundary survey, buried services are not shown, and a plan is not for setting out without independent checks: local codes and licensed practice decide who may sign it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dibuja el plano topográfico de una superficie: curvas de nivel con etiquetas, puntos acotados que no se tocan, sus líneas y parcelas, marcas de cuadrícula con coordenadas, flecha de norte, barra de escala, leyenda y lo que un lector debe saber: SRC, dátum altimétrico, precisión, equidistancia, fecha. Si la obra no cabe en una hoja a la escala, se hacen varias, con un mapa guía en cada una.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Se obtiene&lt;/b&gt; un PDF con líneas y texto vectoriales y sus tipos de letra incluidos, un GeoPackage con las capas y sus estilos, y una composición de impresión en el proyecto para modificarla a mano.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». El título y el autor se toman de las propiedades del proyecto (Proyecto › Propiedades › Metadatos) si los deja aquí vacíos. El dátum altimétrico es el de un SRC compuesto; con otro SRC indíquelo; si no, el plano dice que no está declarado.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Precisión:&lt;/b&gt; con puntos de comprobación, el plano lleva las frases de la declaración de precisión; si no, dice que las cotas no se ensayaron.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; las curvas de nivel del plano están atenuadas y suavizadas dentro de los límites que indique; tome las cifras de la superficie. Las capas con transparencia o modos de mezcla convierten el mapa del PDF en una imagen. Una segunda ejecución con los mismos archivos sustituye las capas y la composición de la primera; duplique la composición que quiera conservar. Las parcelas de un plano no son un deslinde, los servicios enterrados no se muestran, y un plano no sirve para replantear sin comprobaciones independientes: la normativa local y el ejercicio profesional habilitado deciden quién puede firmarlo.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>&lt;p&gt;Fills every hollow of the surface to its brim and says which of them count: a hollow that the noise of the heights explains is no pond. Ponds that join as they rise are parts of a larger one.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, heights with independent normal errors of the standard deviation given, and ground that lets no water in. Water leaves over the rim of the surface and through inlets.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; pond (P1 is the deepest) and parent, the pond it is a part of; depth_m at the pit with sigma_m, its standard deviation from those of pit and spill point; chance_pct, the probability that noise alone makes such a hollow anywhere in the survey; area_m2 and volume_m3, exact on the triangles; level, the height of the full pond in the unit of the CRS; points, how many of the survey are under water; spills_to, a pond, an inlet or the rim.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; errors that neighbours share, as from one bad fix over a minute, make wider hollows than this allows for: set a least depth. At the rim of a survey a pond can run out over ground that nobody measured. Gullies and soakaways drain ponds only when they are given.&lt;/p&gt;&lt;p&gt;Ponds are an indication from the surface as surveyed, no drainage design: infiltration, pipes and local codes are matters of licensed practice.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Llena cada hondonada de la superficie hasta su labio y dice cuáles cuentan: una hondonada que el ruido de las cotas explica no es un charco. Los charcos que se unen al subir son partes de uno mayor.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie», cotas con errores normales independientes de la desviación típica indicada y un terreno que no deja entrar el agua. El agua sale por el borde de la superficie y por los sumideros.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; pond (P1 es el más profundo) y parent, el charco del que forma parte; depth_m en el punto bajo con sigma_m, su desviación típica a partir de las del punto bajo y el punto de rebose; chance_pct, la probabilidad de que el ruido por sí solo produzca una hondonada así en cualquier lugar del levantamiento; area_m2 y volume_m3, exactos sobre los triángulos; level, la cota del charco lleno en la unidad del SRC; points, cuántos puntos del levantamiento están bajo el agua; spills_to, un charco, un sumidero o el borde.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los errores que comparten los vecinos, como los de una mala solución durante un minuto, producen hondonadas más anchas de lo que aquí se admite: fije una profundidad mínima. En el borde de un levantamiento, un charco puede desaguar sobre terreno que nadie midió. Los imbornales y pozos filtrantes solo drenan charcos cuando se indican.&lt;/p&gt;&lt;p&gt;Los charcos son una indicación a partir de la superficie levantada, no un proyecto de drenaje: infiltración, tuberías y normativa local son asunto del ejercicio profesional habilitado.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>&lt;p&gt;Finds the height at which cut, times the fill that one cubic metre of it makes, equals fill and a stated surplus: the level of a pad, one shift of several pads, or the shift of a strip's whole profile. Slopes are graded anew at each height. Give pads &lt;i&gt;or&lt;/i&gt; a centreline.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Result:&lt;/b&gt; the height with its 95 % interval, volumes there, and a table and figure of cut, fill and what is left over against height: flat curves mean that a little height moves much earth, and the other way round. To make the design itself use “Grade a pad” or “Grade a strip along a line” with the balance switched on.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what those assume. The interval comes from the doubt of the volumes; the factor from cut to fill is taken as given, though it is often the less certain of the two.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where no height balances, as with a surplus larger than there is earth, it says so. Where slopes run over a brow the volume jumps; what is left over is told. Quantities for payment, slopes that stand and safety need the contract, licensed practice and the local codes.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Halla la cota a la que el desmonte, por el terraplén que da un metro cúbico de él, iguala el terraplén más un excedente indicado: el nivel de una plataforma, un mismo desplazamiento de varias plataformas o el desplazamiento de todo el perfil longitudinal de una franja. Los taludes se modelan de nuevo a cada cota. Indique plataformas &lt;i&gt;o&lt;/i&gt; un eje.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Resultado:&lt;/b&gt; la cota con su intervalo del 95 %, los volúmenes en ella, y una tabla y una figura de desmonte, terraplén y sobrante según la cota: curvas llanas significan que un poco de cota mueve muchas tierras, y al revés. Para hacer el proyecto mismo use «Explanar una plataforma» o «Explanar una franja a lo largo de una línea» con la compensación activada.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; lo que estos suponen. El intervalo procede de la incertidumbre de los volúmenes; el factor de desmonte a terraplén se toma tal como se indica, aunque a menudo es el menos seguro de los dos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; donde ninguna cota compensa, como con un excedente mayor que las tierras que hay, lo dice. Donde los taludes pasan sobre una coronación, el volumen da un salto; se indica lo que sobra. Las mediciones para el pago, los taludes estables y la seguridad requieren el contrato, el ejercicio profesional habilitado y la normativa local.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>&lt;p&gt;Finds the pit of a basin and the lowest place where water leaves it, and computes area and volume of the water at even levels between them, exactly. Pits inside join as the water rises.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it that takes in the basin's whole rim. A void in the surface, and its edge, let water out. Without a place the basin is that of the lowest place of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the curve as a table (level in the unit of the CRS, the rest metric), the water at the spill level by depth, pit and spill as points, and a report with the curve.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points, ground between them, and the noise of the one height at which the basin spills, which counts over the whole water.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a wrong point on the rim sets the spill: look at it. This is the shape of the ground only, without inflow, outlets, seepage or freeboard; a licensed engineer designs storage.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Halla el punto bajo de una balsa y el lugar más bajo por el que sale el agua, y calcula exactamente el área y el volumen del agua a niveles regulares entre ambos. Los puntos bajos interiores se unen al subir el agua.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» que abarca todo el borde de la balsa. Un hueco de la superficie, y su límite, dejan salir el agua. Sin un lugar, la balsa es la del lugar más bajo de la superficie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Salidas:&lt;/b&gt; la curva como tabla (nivel en la unidad del SRC, el resto métrico), el agua al nivel de rebose por profundidad, el punto bajo y el de rebose como puntos, y un informe con la curva.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cuán seguro:&lt;/b&gt; ruido de los puntos, terreno entre ellos y ruido de la única cota a la que rebosa la balsa, que cuenta sobre toda el agua.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un punto erróneo en el borde fija el rebose: revíselo. Esto es solo la forma del terreno, sin aportaciones, desagües, filtraciones ni resguardo; un ingeniero habilitado proyecta el almacenamiento.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>&lt;p&gt;Fits straight grades joined by parabolas to the heights along a line: where they begin and end, where two grades meet, and K, the length of curve for each percent that the grade changes. Grades, K and the heights that depart from the fit come with their standard deviations or residuals.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. Heights are taken at equal distances; those far off, at a cover or a kerb crossed, count little. As many curves are used as the heights are worth by the Bayesian information criterion.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Layers:&lt;/b&gt; grades and curves along the line; the points where grades meet, at the height where they do, which is not on the ground; and the residuals, surface less fit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; take about the distance of the survey's points for the spacing of heights: closer ones repeat the same points, and standard deviations come out too small. A short curve between points far apart cannot be told from a kink. This describes what is there; a design is the work of a licensed professional.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Ajusta rasantes rectas unidas por parábolas a las cotas a lo largo de una línea: dónde empiezan y acaban, dónde se cortan dos rasantes, y K, la longitud de acuerdo por cada tanto por ciento en que cambia la pendiente. Las pendientes, K y las cotas que se apartan del ajuste se dan con sus desviaciones típicas o residuos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y una línea en su SRC. Las cotas se toman a distancias iguales; las muy apartadas, en una tapa o un bordillo cruzado, cuentan poco. Se usan tantos acuerdos como justifican las cotas según el criterio de información bayesiano.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Capas:&lt;/b&gt; rasantes y acuerdos a lo largo de la línea; los puntos donde se cortan las rasantes, a la cota en que lo hacen, que no está en el terreno; y los residuos, superficie menos ajuste.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; tome como separación de cotas aproximadamente la distancia entre los puntos del levantamiento: más juntas repiten los mismos puntos, y las desviaciones típicas resultan demasiado pequeñas. Un acuerdo corto entre puntos alejados no se distingue de un quiebro. Esto describe lo que hay; un proyecto es labor de un profesional habilitado.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>&lt;p&gt;Follows water from places down the surface itself: across each triangle the steepest way, along a channel where two triangles fall into their edge, to a pit, an inlet or the rim. Level ground drains by the shortest way along its edges to where it goes down.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Paths start at points, along lines and inside areas at the spacing given, or all over the surface where no layer is. In another CRS they are brought into that of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; feature (of the starts), end (pit, pond, rim, inlet, or undecided where heights are equal to rounding), ends_in (the pond or inlet), length_m in plan, drop_m, and slope_pct, the mean of the path.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; noise makes pits: with its standard deviation given, paths pass hollows that noise explains, straight from the pit over the brim. Ponds are numbered from the deepest, P1, as in “Pits and ponds” with the same settings. What is not measured, such as a kerb between two passes or a pipe under a road, leads no water here.&lt;/p&gt;&lt;p&gt;Paths show where water runs on the surface as surveyed. They are no drainage design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Sigue el agua desde unos lugares cuesta abajo por la propia superficie: a través de cada triángulo por el camino de máxima pendiente, a lo largo de un cauce donde dos triángulos caen hacia su arista, hasta un punto bajo, un sumidero o el borde. El terreno llano drena por el camino más corto a lo largo de sus aristas hasta donde desciende.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Los recorridos empiezan en puntos, a lo largo de líneas y dentro de áreas con la separación indicada, o en toda la superficie si no hay capa. Si están en otro SRC, se llevan al de la superficie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; feature (de los inicios), end (pit, pond, rim, inlet, o undecided donde las cotas son iguales salvo redondeo), ends_in (el charco o sumidero), length_m en planta, drop_m y slope_pct, la media del recorrido.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; el ruido crea puntos bajos: si se indica su desviación típica, los recorridos pasan las hondonadas que el ruido explica, en recta desde el punto bajo por encima del labio. Los charcos se numeran desde el más profundo, P1, como en «Puntos bajos y charcos» con los mismos ajustes. Lo que no se midió, como un bordillo entre dos pasadas o un tubo bajo una carretera, aquí no conduce agua.&lt;/p&gt;&lt;p&gt;Los recorridos muestran por dónde corre el agua en la superficie levantada. No son un proyecto de drenaje.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>&lt;p&gt;Given an area and what you want of the survey, a contour interval or a height error, it proposes how far apart to walk, draws the lines in walking order, and tells the number of points, distance and time.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a rover that stores a point by itself at the step given. The height error between passes is reasoned from the noise of one height and from how the ground bends; no standard says it. A contour interval asks for an RMSE of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lines:&lt;/b&gt; the perimeter first, then passes to and fro, then a few passes across: where those cross the others, the survey tells its own noise. Columns: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. To take them along save the layer as GPX or for your data collector (Export &gt; Save Features As).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; kerbs, ditches and banks narrower than two passes are missed: walk their edges as coded lines. The plan knows no fences, water, traffic or cattle. Links lead along the outline, but between parts of an area that do not touch they are straight.&lt;/p&gt;</source>
      <translation>&lt;p&gt;A partir de un área y de lo que se desea del levantamiento, una equidistancia o un error altimétrico, propone a qué separación recorrerla, dibuja las líneas en el orden del recorrido e indica el número de puntos, la distancia y el tiempo.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; un rover que guarda por sí mismo un punto cada paso indicado. El error altimétrico entre pasadas se razona a partir del ruido de una cota y de cómo se curva el terreno; ninguna norma lo dice. Una equidistancia exige un RMSE de un tercio de ella (ASPRS Positional Accuracy Standards, 2014, anexo B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Líneas:&lt;/b&gt; primero el perímetro, después pasadas de ida y vuelta y después algunas transversales: donde estas cruzan las demás, el levantamiento revela su propio ruido. Columnas: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. Para llevarlas consigo, guarde la capa como GPX o para su libreta de campo (Exportar &gt; Guardar objetos espaciales como).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los bordillos, cunetas y taludes más estrechos que dos pasadas se pierden: recorra sus bordes como líneas codificadas. El plan no sabe de vallas, agua, tráfico ni ganado. Los enlaces siguen el contorno, pero entre partes de un área que no se tocan son rectos.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>&lt;p&gt;Gives every point a &lt;b&gt;status&lt;/b&gt;: used, flagged (used, but look at it) or rejected (kept out of the surface), with every &lt;b&gt;reason&lt;/b&gt;. Nothing is deleted. The map tip of a point tells its reasons.&lt;/p&gt;&lt;p&gt;Single points are held to a &lt;b&gt;tolerance set&lt;/b&gt;: fixes, standard deviations, tilt, PDOP, age of the correction, observations. Heights are held against the walk, the passes beside it, places walked twice and coded lines: a pole lifted, dropped or of another height, a fix regained wrongly, points stored while standing still (one point with their mean stays), lines stored twice. How much noise is usual is found in the survey itself. Steps that several passes saw at one line are ground: kerbs, walls, ditches.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You decide:&lt;/b&gt; change the field status of a point in the output, and run this on that output again, or build the surface from it. Your decision stays: check_status and check_reason keep what the checks said, and the log reports where you overruled them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; points in the order of recording, such as the output of “Import survey points”, in a projected CRS. Statuses that points bring along without check_status count as decisions by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How heights repeat:&lt;/b&gt; where passes cross or run side by side, the log gives the standard deviation of a height found there, with its degrees of freedom, and what the receiver claims.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what no other pass and no line has seen can be a fault or a form of the ground: such points are flagged. Errors shared by the whole survey (base station, geoid, pole height) cannot show here: use check points. The tolerances are common practice, no standard.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Da a cada punto un &lt;b&gt;estado&lt;/b&gt;: usado, marcado (usado, pero revíselo) o rechazado (excluido de la superficie), con todos los &lt;b&gt;motivos&lt;/b&gt;. No se borra nada. El aviso del mapa de un punto dice sus motivos.&lt;/p&gt;&lt;p&gt;Los puntos aislados se someten a un &lt;b&gt;conjunto de tolerancias&lt;/b&gt;: soluciones, desviaciones típicas, inclinación, PDOP, edad de la corrección, observaciones. Las cotas se contrastan con el recorrido, las pasadas contiguas, los lugares recorridos dos veces y las líneas codificadas: un jalón levantado, bajado o de otra altura, una solución mal recuperada, puntos guardados estando parado (queda un punto con su media), líneas guardadas dos veces. Cuánto ruido es lo habitual se halla en el propio levantamiento. Los escalones que varias pasadas vieron en una misma línea son terreno: bordillos, muros, cunetas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Usted decide:&lt;/b&gt; cambie el campo status de un punto en la salida y ejecute esto de nuevo sobre ella, o construya la superficie con ella. Su decisión se mantiene: check_status y check_reason conservan lo que dijeron las comprobaciones, y el registro informa de dónde las desestimó.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; puntos en el orden de registro, como la salida de «Importar los puntos del levantamiento», en un SRC proyectado. Los estados que los puntos traigan sin check_status cuentan como decisiones a mano.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cómo se repiten las cotas:&lt;/b&gt; donde las pasadas se cruzan o discurren juntas, el registro da la desviación típica de una cota hallada allí, con sus grados de libertad, y lo que declara el receptor.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; lo que ninguna otra pasada ni línea ha visto puede ser un fallo o una forma del terreno: esos puntos se marcan. Los errores que comparte todo el levantamiento (estación base, geoide, altura del jalón) no se pueden ver aquí: use puntos de comprobación. Las tolerancias son práctica común, no una norma.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>&lt;p&gt;Grades each polygon to a level or a sloping plane, and from its edges slopes of cut up and slopes of fill down until they meet the ground (daylight). The result is an exact surface: the design, and the finished ground with it in.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Levels are heights in the unit of the CRS, at the middle of a pad's bounding box; slopes are 1 up or down in n out, square to the edge. Holes keep their ground but for the slopes into them. Several pads are graded one after another; where one reaches into another, that is said.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Slopes of single edges:&lt;/b&gt; lines along them, with the fields cut_run and fill_run. They can differ where edges meet at a corner sharp enough for the slopes to meet, on outlines whose slopes do not run back across the pad; else they are refused.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance:&lt;/b&gt; the height at which cut, times the fill one cubic metre of it makes, equals fill and a stated surplus, to a tenth of a millimetre, and how sure it is. For several pads: one shift of all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; volumes come with their 95 % interval from what you say of the points; see “Volume between two surfaces”. The page compares them with a grid, average end areas and the prismoidal formula.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where the survey ends before the slopes meet the ground it says so, and volumes stop there. This is no design for construction: whether slopes stand, drainage, walls, and safety while digging need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Explana cada polígono a un nivel o un plano inclinado y, desde sus bordes, traza taludes de desmonte hacia arriba y de terraplén hacia abajo hasta que encuentran el terreno (línea de encuentro). El resultado es una superficie exacta: el proyecto, y el terreno terminado con él incorporado.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Los niveles son cotas en la unidad del SRC, en el centro del rectángulo envolvente de una plataforma; los taludes son 1 en vertical por n en horizontal, perpendiculares al borde. Los agujeros conservan su terreno salvo los taludes hacia ellos. Varias plataformas se explanan una tras otra; donde una invade otra, se indica.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Taludes de bordes concretos:&lt;/b&gt; líneas a lo largo de ellos, con los campos cut_run y fill_run. Pueden diferir donde los bordes se encuentran en una esquina lo bastante marcada para que los taludes se corten, en contornos cuyos taludes no atraviesan la plataforma; si no, se rechazan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Compensación:&lt;/b&gt; la cota a la que el desmonte, por el terraplén que da un metro cúbico de él, iguala el terraplén más un excedente indicado, con una décima de milímetro, y cuán segura es. Para varias plataformas: un mismo desplazamiento de todas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cuán seguro:&lt;/b&gt; los volúmenes se dan con su intervalo del 95 % a partir de lo que usted diga de los puntos; véase «Volumen entre dos superficies». La página los compara con una malla, las áreas medias y la fórmula prismoidal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; donde el levantamiento acaba antes de que los taludes encuentren el terreno, lo dice, y los volúmenes se detienen allí. Esto no es un proyecto de construcción: la estabilidad de los taludes, el drenaje, los muros y la seguridad durante la excavación requieren ejercicio profesional habilitado y la normativa local. Localice los servicios enterrados antes de que nadie excave.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>&lt;p&gt;Joins the triangles whose slope is below a limit to areas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The slope is that of the mean gradient, by area, of the triangles within the window around each one. The limit is yours: local codes and the kind of paving decide what is too flat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; number (1 is the largest), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles of a survey with points every half metre are as steep as its noise, some percent: with a window of 0 flat ground goes unseen. A wide window averages a ridge or a channel to level ground.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Une en áreas los triángulos cuya pendiente es inferior a un límite.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». La pendiente es la del gradiente medio, por área, de los triángulos dentro de la ventana en torno a cada uno. El límite es suyo: la normativa local y el tipo de pavimento deciden qué es demasiado llano.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; number (1 es la mayor), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los triángulos aislados de un levantamiento con puntos cada medio metro son tan empinados como su ruido, algunos tantos por ciento: con una ventana de 0 el terreno llano pasa inadvertido. Una ventana ancha promedia una divisoria o un cauce hasta dar terreno llano.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>&lt;p&gt;Lays a typical section along a line: lanes and shoulders with their crossfalls, ditches where the ground is above, and slopes to daylight. Heights of the centreline come from the Z of the line or from a table of stations and heights, with vertical curves (parabolas) where the table gives their length.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Tables are in metres. Between stations the strip is straight; bends are made of chords, so set a short distance of stations there. Both sides have the same slopes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Mass diagram:&lt;/b&gt; exact cut and fill from station to station, usable cut less fill summed along the line, and how far earth is hauled between places where they balance: in the layer and on the page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance&lt;/b&gt; shifts the whole profile. &lt;b&gt;How sure&lt;/b&gt; the volumes are rests on what you say of the points; the page compares them with average end areas and the prismoidal formula along the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a bend tighter than the strip is wide there folds it over, which is refused. Ends without slopes stand as steep faces. This is no design for construction: alignment, sight, drainage, slopes that stand and traffic need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Coloca una sección tipo a lo largo de una línea: carriles y arcenes con sus pendientes transversales, cunetas donde el terreno está por encima, y taludes hasta el terreno. Las cotas del eje proceden de la Z de la línea o de una tabla de estaciones y cotas, con acuerdos verticales (parábolas) donde la tabla da su longitud.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Las tablas están en metros. Entre estaciones la franja es recta; las curvas se forman con cuerdas, así que fije allí una distancia corta entre estaciones. Ambos lados tienen los mismos taludes.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Diagrama de masas:&lt;/b&gt; desmonte y terraplén exactos de estación a estación, desmonte aprovechable menos terraplén acumulado a lo largo de la línea, y a qué distancia se transportan las tierras entre los lugares donde se compensan: en la capa y en la página.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La compensación&lt;/b&gt; desplaza todo el perfil longitudinal. &lt;b&gt;Cuán seguros&lt;/b&gt; son los volúmenes depende de lo que usted diga de los puntos; la página los compara con las áreas medias y la fórmula prismoidal a lo largo de la línea.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; una curva más cerrada que la anchura de la franja allí la pliega sobre sí misma, lo cual se rechaza. Los extremos sin taludes quedan como caras empinadas. Esto no es un proyecto de construcción: el trazado, la visibilidad, el drenaje, la estabilidad de los taludes y el tráfico requieren ejercicio profesional habilitado y la normativa local. Localice los servicios enterrados antes de que nadie excave.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>&lt;p&gt;Lays lines on a surface. They keep their place and their vertices in plan and get a new vertex wherever they cross an edge of a triangle: heights are those of the surface all along the line, not only at its vertices.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Lines in another CRS are brought into the surface's; curves become chords. Heights that the lines have are not used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; part, the number of the piece of its line; start_m, its distance from the line's beginning, and plan_m and slope_m, its length in plan and on the ground, in metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what lies off the surface, over voids too, is left out: the line falls into several pieces. Each gap is a row of the second output. A line all off the surface gives none.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Apoya líneas sobre una superficie. Conservan su posición y sus vértices en planta y reciben un vértice nuevo dondequiera que cruzan una arista de un triángulo: las cotas son las de la superficie a lo largo de toda la línea, no solo en sus vértices.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Las líneas en otro SRC se llevan al de la superficie; las curvas se convierten en cuerdas. No se usan las cotas que tengan las líneas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas añadidas:&lt;/b&gt; part, el número del trozo de su línea; start_m, su distancia desde el comienzo de la línea, y plan_m y slope_m, su longitud en planta y sobre el terreno, en metros.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; lo que queda fuera de la superficie, también sobre huecos, se omite: la línea se parte en varios trozos. Cada interrupción es una fila de la segunda salida. Una línea totalmente fuera de la superficie no da ninguno.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>&lt;p&gt;Looks a surface over and marks each place that a surveyor would ask about: &lt;b&gt;level spots&lt;/b&gt;, whose corners all lie on one level line; &lt;b&gt;gaps&lt;/b&gt; in breaklines that triangles bridge; &lt;b&gt;long triangles&lt;/b&gt;, over ground that nobody walked; &lt;b&gt;spikes&lt;/b&gt;, points far above or below their neighbours; &lt;b&gt;points beside a line&lt;/b&gt; at another height than its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Give the survey's points, and the “Lines of the surface” with their labels, too: gaps are only found among lines, and file lines are only named for points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; kind, value and unit (an area, a width, a length or a height), text, and lines, the lines of the survey file behind the place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a finding is a question, no verdict: a wall is a spike to this search. A surface without findings can still be wrong, where nothing was measured or all of it is off. The limits are our own choice for points stored every half metre; no standard sets them.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Revisa una superficie y señala cada lugar por el que preguntaría un topógrafo: &lt;b&gt;zonas llanas&lt;/b&gt;, cuyos vértices están todos en una línea horizontal; &lt;b&gt;interrupciones&lt;/b&gt; en líneas de rotura que salvan triángulos; &lt;b&gt;triángulos alargados&lt;/b&gt;, sobre terreno que nadie recorrió; &lt;b&gt;picos&lt;/b&gt;, puntos muy por encima o por debajo de sus vecinos; &lt;b&gt;puntos junto a una línea&lt;/b&gt; a otra cota que su arista.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Indique también los puntos del levantamiento y las «Líneas de la superficie» con sus etiquetas: las interrupciones solo se hallan entre líneas, y las líneas del archivo solo se nombran para puntos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; kind, value y unit (un área, una anchura, una longitud o una altura), text, y lines, las líneas del archivo de levantamiento que hay detrás del lugar.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un hallazgo es una pregunta, no un veredicto: un muro es un pico para esta búsqueda. Una superficie sin hallazgos puede aun así ser errónea, donde no se midió nada o donde toda ella está desviada. Los límites son elección nuestra para puntos guardados cada medio metro; ninguna norma los fija.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>&lt;p&gt;Makes a lighter surface: vertices are dropped as long as every one of them stays within the tolerance of the new surface. The rim, breaklines and their heights are kept.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and a tolerance in metres whatever the CRS. The result is a 2DM file with its CRS beside it as .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What was reached&lt;/b&gt; is measured on the finished surface at every vertex of the given one and stands in the log and the results: the largest difference with its place, and the root of the mean square.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between the vertices, where an old edge crosses a new one, the surfaces may be farther apart than the tolerance. A tolerance below the noise of the heights drops little. Volumes of a thinned surface differ: compute them from the full one.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Hace una superficie más ligera: se eliminan vértices mientras todos ellos queden dentro de la tolerancia de la superficie nueva. El borde, las líneas de rotura y sus cotas se conservan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y una tolerancia en metros, sea cual sea el SRC. El resultado es un archivo 2DM con su SRC al lado como .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lo alcanzado&lt;/b&gt; se mide en la superficie terminada en cada vértice de la dada y figura en el registro y en los resultados: la mayor diferencia con su lugar y la raíz de la media cuadrática.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; entre los vértices, donde una arista antigua cruza una nueva, las superficies pueden separarse más que la tolerancia. Una tolerancia inferior al ruido de las cotas elimina poco. Los volúmenes de una superficie aligerada difieren: calcúlelos con la completa.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>&lt;p&gt;Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary and voids become edges exactly; no points are added along lines with heights.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that plan and heights are in the unit of the points' CRS. Lines come from the field codes of the points, in recording order, and from layers. A line without heights takes them from the surface around it and keeps its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Points at the same place&lt;/b&gt; (equal to 0.1 mm) count once, with their mean height, and are reported.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Kerbs and walls&lt;/b&gt; are drawn as one line with heights and the height of the face; each becomes two breaklines a small offset apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Edits&lt;/b&gt; by hand come from layers that you draw and from a file; they are replayed in their order at each run, and those that no longer apply are reported. Keep the file of edits that is written beside the survey, and give it to the next run instead of the layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; lines that cross at different heights are refused unless you choose a rule. Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: their ground was not surveyed. A boundary drawn around nothing leaves no triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The mesh&lt;/b&gt; is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Hace una red irregular de triángulos (TIN) con los puntos no rechazados. Líneas de rotura, contorno y huecos se convierten exactamente en aristas; no se añaden puntos a lo largo de las líneas con cotas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; que la planta y las cotas están en la unidad del SRC de los puntos. Las líneas proceden de los códigos de campo de los puntos, en el orden de registro, y de capas. Una línea sin cotas las toma de la superficie que la rodea y conserva su arista.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Los puntos en un mismo lugar&lt;/b&gt; (iguales a 0,1 mm) cuentan una vez, con su cota media, y se informa de ellos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Los bordillos y muros&lt;/b&gt; se dibujan como una línea con cotas y la altura de la cara; cada uno se convierte en dos líneas de rotura con una pequeña separación.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Las ediciones&lt;/b&gt; a mano proceden de capas que usted dibuja y de un archivo; se reproducen en su orden en cada ejecución, y se informa de las que ya no se aplican. Conserve el archivo de ediciones que se escribe junto al levantamiento e indíquelo en la siguiente ejecución en lugar de las capas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; las líneas que se cruzan a cotas distintas se rechazan salvo que elija una regla. Sin un contorno o una longitud máxima de arista de borde, triángulos largos y llanos salvan los entrantes del perímetro de la obra: ese terreno no se levantó. Un contorno dibujado alrededor de nada no deja ningún triángulo.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La malla&lt;/b&gt; es un archivo 2DM, con cotas en la unidad del SRC. El formato no puede contener el SRC, así que este figura en un archivo .prj del mismo nombre a su lado; cuando añada la malla a mano, indique el SRC a QGIS.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>&lt;p&gt;Makes points to set out from a layer: its points, the corners of its lines and polygons, a grid over its polygons, or offsets along its lines. Each gets a design height, the height of the existing ground, and cut or fill: the design less the ground, above 0 fill, below 0 cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh of the existing ground as “Build the surface” writes it, places in its CRS, and a design that whoever answers for it has released.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Design heights&lt;/b&gt; come from a field, or else from the Z of the layer where that is ticked, or else from a design surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Doubt:&lt;/b&gt; the standard deviation of cut and fill has two parts: the noise of the surveyed heights, carried through the triangle, and the doubt of set-out in plan times the slope of the ground. The design counts as exact, and ground between the survey's points may differ by more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table&lt;/b&gt; has the columns you name, in that order, in the unit you choose; the control points stand at its end with the code CONTROL. Names are unique, capitals or not: clashes are refused. Notes and cautions stand at its head and in a text beside it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; grid coordinates used as distances on the ground: check the combined factor. A data collector in another foot, another datum or another height system. An outdated design.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; check on control before, during and after the work. Have buried services located before anything is dug or driven in. This is no survey of boundaries: property marks, and set-out that others build on, are for a licensed professional under local rules. For machine guidance check at known points, away from the machine's path.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Hace puntos de replanteo a partir de una capa: sus puntos, los vértices de sus líneas y polígonos, una malla sobre sus polígonos o desplazamientos a lo largo de sus líneas. Cada uno recibe una cota de proyecto, la cota del terreno existente y desmonte o terraplén: el proyecto menos el terreno, por encima de 0 terraplén, por debajo de 0 desmonte.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM del terreno existente tal como la escribe «Construir la superficie», lugares en su SRC y un proyecto emitido por quien responde de él.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Las cotas de proyecto&lt;/b&gt; proceden de un campo; si no, de la Z de la capa donde se marque; y si no, de una superficie de proyecto.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Incertidumbre:&lt;/b&gt; la desviación típica de desmonte y terraplén tiene dos partes: el ruido de las cotas levantadas, propagado a través del triángulo, y la incertidumbre del replanteo en planta por la pendiente del terreno. El proyecto cuenta como exacto, y el terreno entre los puntos del levantamiento puede diferir más.&lt;/p&gt;&lt;p&gt;&lt;b&gt;La tabla&lt;/b&gt; tiene las columnas que usted nombre, en ese orden, en la unidad que elija; los puntos de apoyo figuran al final con el código CONTROL. Los nombres son únicos, sin distinguir mayúsculas: los conflictos se rechazan. Las notas y advertencias figuran en su cabecera y en un texto junto a ella.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; coordenadas de cuadrícula usadas como distancias en el terreno: compruebe el factor combinado. Una libreta de campo en otro pie, otro dátum u otro sistema de alturas. Un proyecto obsoleto.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Advertencia:&lt;/b&gt; compruebe sobre los puntos de apoyo antes, durante y después del trabajo. Haga localizar los servicios enterrados antes de excavar o hincar nada. Esto no es un deslinde: los hitos de propiedad y el replanteo sobre el que otros construyen corresponden a un profesional habilitado según las reglas locales. Para guiado de maquinaria, compruebe en puntos conocidos, fuera de la trayectoria de la máquina.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>&lt;p&gt;Multiplies the area of each catchment by its runoff coefficient and the intensity of the rain: the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; rain of constant intensity for as long as water takes from the farthest place to the outlet; find that intensity for the duration and the frequency that your code asks for. Catchments are polygons, as “Catchments” makes them. The runoff coefficient comes from polygons of ground cover, weighted by area, else from a field of the catchments, else it is one number for all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; runoff, the coefficient; area and area_unit; intensity and intensity_unit; flow and flow_unit (l/s, or ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the method is for small areas of one kind; beyond some 80 ha (200 acres) it is commonly not used. It knows no storage: a pond upstream makes the true peak smaller. Water from beyond the surveyed ground is not counted. The flow over “the rest of the rim” is that of many places, not of one.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design: coefficients, intensities and methods are set by local codes, and a licensed professional answers for a design.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Multiplica el área de cada cuenca por su coeficiente de escorrentía y la intensidad de la lluvia: el método racional, Q = C i A (E. Kuichling, «The relation between the rainfall and the discharge of sewers in populous districts», Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; lluvia de intensidad constante durante el tiempo que tarda el agua desde el lugar más lejano hasta la salida; halle esa intensidad para la duración y la frecuencia que exige su normativa. Las cuencas son polígonos, como los que hace «Cuencas». El coeficiente de escorrentía procede de polígonos de cubierta del suelo, ponderado por área; si no, de un campo de las cuencas; y si no, es un número para todas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas añadidas:&lt;/b&gt; runoff, el coeficiente; area y area_unit; intensity e intensity_unit; flow y flow_unit (l/s o ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; el método es para áreas pequeñas de un solo tipo; por encima de unas 80 ha (200 acres) no suele usarse. No conoce el almacenamiento: un charco aguas arriba reduce el verdadero caudal punta. No se cuenta el agua de fuera del terreno levantado. El caudal por «el resto del borde» es el de muchos lugares, no de uno.&lt;/p&gt;&lt;p&gt;Esto es una indicación y no un proyecto de drenaje: los coeficientes, las intensidades y los métodos los fija la normativa local, y un profesional habilitado responde de un proyecto.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>&lt;p&gt;Puts a point with the direction and the slope of the way down at the places of a square grid. The style turns an arrow by the direction and sizes it by the slope.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The direction is the mean gradient, by area, of the triangles around: within the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; direction, degrees clockwise from grid north, and slope_pct, the fall over run in percent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles between points half a metre apart are as steep as their noise, some percent; with a window of 0 the arrows show that. A wide window hides kerbs and ditches. On level ground there is no arrow.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Pone un punto con la dirección y la pendiente cuesta abajo en los lugares de una malla cuadrada. El estilo gira una flecha según la dirección y la dimensiona según la pendiente.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». La dirección es el gradiente medio, por área, de los triángulos de alrededor: dentro de la ventana.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; direction, grados en sentido horario desde el norte de cuadrícula, y slope_pct, la caída entre la distancia horizontal en tanto por ciento.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los triángulos aislados entre puntos separados medio metro son tan empinados como su ruido, algunos tantos por ciento; con una ventana de 0 las flechas lo muestran. Una ventana ancha oculta bordillos y cunetas. En terreno llano no hay flecha.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>&lt;p&gt;Puts each triangle of a surface into a class by its slope and joins the triangles of a class to areas. A slope equal to a limit belongs to the class below it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Slopes are rise over run in percent, the steepest way down each triangle. Limits are written such as 1; 2; 5; 8.33; 20; 50: 5 is 1 in 20, 8.33 is 1 in 12. They are no standard: set those of your site.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; class (from 0, the flattest), from_pct and to_pct (empty for the last class), label, plan_m2 and slope_m2, the area in plan and on the slope, in square metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between points half a metre apart that are good to 15 mm the slope is only good to some 4 percent: noise speckles the map of nearly level ground. Thin the surface first, or judge larger areas. This map does not replace a check against the rules that apply to your site.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Asigna cada triángulo de una superficie a una clase según su pendiente y une en áreas los triángulos de una misma clase. Una pendiente igual a un límite pertenece a la clase inferior.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Las pendientes son desnivel entre distancia horizontal en tanto por ciento, según la línea de máxima pendiente de cada triángulo. Los límites se escriben como 1; 2; 5; 8.33; 20; 50: 5 es 1 por 20, 8.33 es 1 por 12. No son una norma: fije los de su obra.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; class (desde 0, la más llana), from_pct y to_pct (vacío en la última clase), label, plan_m2 y slope_m2, el área en planta y sobre el talud, en metros cuadrados.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; entre puntos separados medio metro con precisión de 15 mm, la pendiente solo tiene una precisión de un 4 por ciento: el ruido salpica el mapa de un terreno casi llano. Aligere antes la superficie o juzgue áreas mayores. Este mapa no sustituye una comprobación frente a las reglas aplicables a su obra.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>&lt;p&gt;Reads the open standard LandXML 1.2 (and 1.0, 1.1): each surface becomes a 2DM mesh that all tools for surfaces take; points, source lines and alignments become layers. Units and CRS are those the file says; what you choose here wins.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; surfaces of triangles. Faces marked invisible are holes. Curves of alignments become chords that lie within 1 mm of them; heights of their lines are those of the first profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a file that is damaged, cut short, without units, with a corner that is missing or faces that overlap is refused, with the line and the reason: nothing of it is loaded. Files that declare entities or a document type are refused too: LandXML needs none. Faces without area in plan (walls) and spirals other than clothoids are left out and said. A file in one kind of feet with a CRS in the other is told: ask which is meant.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; a design from elsewhere is no better than its source: compare it with the ground and with its drawings before you set out from it.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lee el estándar abierto LandXML 1.2 (y 1.0, 1.1): cada superficie se convierte en una malla 2DM que aceptan todas las herramientas de superficies; los puntos, las líneas de origen y las alineaciones se convierten en capas. Las unidades y el SRC son los que dice el archivo; lo que elija aquí prevalece.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; superficies de triángulos. Las caras marcadas como invisibles son huecos. Las curvas de las alineaciones se convierten en cuerdas que no se apartan de ellas más de 1 mm; las cotas de sus líneas son las del primer perfil longitudinal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un archivo dañado, truncado, sin unidades, con un vértice que falta o con caras que se solapan se rechaza, con la línea y el motivo: no se carga nada de él. También se rechazan los archivos que declaran entidades o un tipo de documento: LandXML no los necesita. Las caras sin área en planta (muros) y las espirales que no son clotoides se omiten y se indica. Si un archivo está en un tipo de pies y su SRC en el otro, se avisa: pregunte cuál se quiso decir.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Advertencia:&lt;/b&gt; un proyecto ajeno no es mejor que su fuente: coteje con el terreno y con sus planos antes de replantear a partir de él.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>&lt;p&gt;Reads the survey file, checks it, builds the surface and its contours, and writes one report of it all: what came in and what was rejected and why, coordinates, how far the survey can be trusted, the surface, the contours, water, volumes, a road’s grades and a pad’s earthwork where you ask for them, and the files handed over, each with its SHA-256. HTML and PDF say the same.&lt;/p&gt;&lt;p&gt;It starts from the &lt;b&gt;file&lt;/b&gt;, so that each number can be traced to a line of it. Decisions that you took in QGIS come in by their file: “Survey desk” keeps it for you. A layer in place of the file comes with the statuses that its points have.&lt;/p&gt;&lt;p&gt;&lt;b&gt;More files&lt;/b&gt;, such as a plan or a drawing, are listed with the others and their SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what “Import survey points”, “Check the survey” and “Build the surface” assume, with their usual options. Where the file needs more to be read, say the columns and units here.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the report tells of this run, not of layers you changed by hand since. It is no certificate: licensed practice and local codes decide what a survey may be used for.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lee el archivo de levantamiento, lo comprueba, construye la superficie y sus curvas de nivel, y escribe un informe de todo ello: qué entró, qué se rechazó y por qué, coordenadas, hasta dónde se puede confiar en el levantamiento, la superficie, las curvas de nivel, el agua, los volúmenes, las pendientes de una carretera y el movimiento de tierras de una plataforma donde los pida, y los archivos entregados, cada uno con su SHA-256. HTML y PDF dicen lo mismo.&lt;/p&gt;&lt;p&gt;Parte del &lt;b&gt;archivo&lt;/b&gt;, de modo que cada cifra se puede rastrear hasta una línea de él. Las decisiones que tomó en QGIS entran mediante su archivo: la «Mesa del levantamiento» lo guarda por usted. Una capa en lugar del archivo viene con los estados de sus puntos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Más archivos&lt;/b&gt;, como un plano o un dibujo, se enumeran con los demás y su SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; lo que suponen «Importar los puntos del levantamiento», «Comprobar el levantamiento» y «Construir la superficie», con sus opciones habituales. Donde el archivo necesite más para leerse, indique aquí las columnas y unidades.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; el informe trata de esta ejecución, no de capas que haya modificado a mano después. No es un certificado: el ejercicio profesional habilitado y la normativa local deciden para qué puede usarse un levantamiento.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>&lt;p&gt;Reads what a rover wrote, delimited text (comma, semicolon, tab or blanks; point or comma as decimal sign; with or without a header; eastings and northings, or latitudes and longitudes) or a receiver log (NMEA 0183), into a layer of points with heights. Several files of one site become one layer that keeps the source of each point. A layer of points that is loaded already can take the place of a file, alone or merged with files and other layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns&lt;/b&gt; are recognised from header words in four languages, from the values, and from the area in which the CRS may be used. What stays open is asked, not guessed: “Preview” shows the first lines, the role of each column, the lines that would be rejected, and where the points would land.&lt;/p&gt;&lt;p&gt;Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line is in the second output with its reason.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the coordinates are in the CRS wanted unless another one is given for the file; then they are transformed by one operation that is named with its accuracy. Degrees without a CRS are taken as WGS 84. Heights are taken as they are unless a geoid separation is given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The status&lt;/b&gt; of a point is used, flagged or rejected. Only rejected points stay out of the surface. You can change it in the layer; later steps read it there. Plan and height are read from the geometry, so the columns easting, northing and height only inform.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; easting and northing can be swapped, and a wrong unit makes a surface of the right form and the wrong size. Points outside the area of use of the CRS are reported with the likely cause; nothing is corrected without your word. A ballpark operation, or one that lacks its grid file, is refused until you accept it by its name.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Lee lo que escribió un rover, texto delimitado (coma, punto y coma, tabulador o espacios; punto o coma decimal; con o sin encabezado; coordenadas este y norte, o latitudes y longitudes) o un registro de receptor (NMEA 0183), en una capa de puntos con cotas. Varios archivos de una misma obra se convierten en una sola capa que conserva el origen de cada punto. Una capa de puntos ya cargada puede ocupar el lugar de un archivo, sola o combinada con archivos y otras capas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Las columnas&lt;/b&gt; se reconocen por las palabras del encabezado en cuatro idiomas, por los valores y por el área en que puede usarse el SRC. Lo que queda abierto se pregunta, no se adivina: «Vista previa» muestra las primeras líneas, el rol de cada columna, las líneas que se rechazarían y dónde caerían los puntos.&lt;/p&gt;&lt;p&gt;Puntos, líneas rechazadas, comentarios y líneas en blanco suman las líneas del archivo; cada línea rechazada está en la segunda salida con su motivo.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; que las coordenadas están en el SRC deseado salvo que se indique otro para el archivo; entonces se transforman mediante una operación que se nombra con su precisión. Los grados sin SRC se toman como WGS 84. Las alturas se toman tal cual salvo que se indique una ondulación del geoide.&lt;/p&gt;&lt;p&gt;&lt;b&gt;El estado&lt;/b&gt; de un punto es usado, marcado o rechazado. Solo los puntos rechazados quedan fuera de la superficie. Puede cambiarlo en la capa; los pasos posteriores lo leen allí. La planta y la cota se leen de la geometría, así que las columnas easting, northing y height son solo informativas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; las coordenadas este y norte pueden estar intercambiadas, y una unidad errónea da una superficie de forma correcta y tamaño erróneo. De los puntos fuera del área de uso del SRC se informa con la causa probable; nada se corrige sin su palabra. Una operación aproximada (ballpark), o una a la que falta su archivo de malla, se rechaza hasta que la acepte por su nombre.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>&lt;p&gt;Samples a surface at the centres of square cells, whose edges lie at whole multiples of the cell size. &lt;b&gt;Exact&lt;/b&gt;: the height on the triangle. &lt;b&gt;Smooth&lt;/b&gt;: a Clough-Tocher interpolant through the same vertices, sharp at breaklines: it is for drawing only, such as a hillshade, never for numbers; its largest difference from the surface is in the log.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Cells without the surface under their centre have no data (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; is a GeoTIFF of 32-bit numbers (rounded to 0.02 mm below 512 m, 0.3 mm below 8192 m), compressed without loss and tiled, with the CRS; the band names method and unit of the heights, which is that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a raster cannot hold a kerb: what is narrower than two cells is blurred. Take volumes and contours from the surface itself. Small cells make large files.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Muestrea una superficie en los centros de celdas cuadradas, cuyos bordes están en múltiplos enteros del tamaño de celda. &lt;b&gt;Exacto&lt;/b&gt;: la cota en el triángulo. &lt;b&gt;Suave&lt;/b&gt;: un interpolador Clough-Tocher por los mismos vértices, con quiebro en las líneas de rotura: es solo para dibujo, como un sombreado, nunca para cifras; su mayor diferencia con la superficie figura en el registro.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Las celdas sin superficie bajo su centro no tienen datos (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;El archivo&lt;/b&gt; es un GeoTIFF de números de 32 bits (redondeados a 0,02 mm por debajo de 512 m, a 0,3 mm por debajo de 8192 m), comprimido sin pérdida y teselado, con el SRC; la banda nombra el método y la unidad de las cotas, que es la del SRC.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un ráster no puede representar un bordillo: lo más estrecho que dos celdas se difumina. Tome los volúmenes y las curvas de nivel de la propia superficie. Las celdas pequeñas dan archivos grandes.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>&lt;p&gt;Spans a base inside each closed line (the toe of a stockpile, the rim of a pit) and computes what of the surface stands above it and what is missing below it, exactly. Bases: &lt;b&gt;triangles through the line&lt;/b&gt;, which follow uneven ground around; the &lt;b&gt;best-fit plane&lt;/b&gt; of the line, for a pad built even; a &lt;b&gt;level&lt;/b&gt; at its lowest or highest place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and lines drawn at the toe or rim itself, in a polygon or line layer, one feature each. A line is laid on the surface to get its heights, or keeps its own Z where you say so. Breaklines along toe and crest make the surface right.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; above_m3 and below_m3 with their ± (half of the 95 % interval), areas, the base's lowest and highest height, not_measured_m2 (ground inside the line without surface).&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points and of the base's line, ground between the points, and, for a line with its own heights, a height offset times the area.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the base under a heap is a guess, unless the ground was surveyed before it was heaped: then use “Volume between two surfaces”. A toe drawn too wide counts ground, too narrow leaves out the foot. This is no payment certificate; for tonnage measure the density.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Tiende una base dentro de cada línea cerrada (el pie de un acopio, el borde de un hoyo) y calcula exactamente lo que de la superficie queda por encima y lo que falta por debajo. Bases: &lt;b&gt;triángulos por la línea&lt;/b&gt;, que siguen el terreno irregular de alrededor; el &lt;b&gt;plano de mejor ajuste&lt;/b&gt; de la línea, para una plataforma construida plana; un &lt;b&gt;nivel&lt;/b&gt; en su lugar más bajo o más alto.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y líneas dibujadas en el propio pie o borde, en una capa de polígonos o líneas, un objeto espacial cada una. Una línea se apoya en la superficie para tomar sus cotas, o conserva su propia Z donde así se indique. Las líneas de rotura a lo largo de pie y coronación hacen correcta la superficie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas:&lt;/b&gt; above_m3 y below_m3 con su ± (la mitad del intervalo del 95 %), áreas, la cota más baja y más alta de la base, not_measured_m2 (terreno dentro de la línea sin superficie).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cuán seguro:&lt;/b&gt; ruido de los puntos y de la línea de la base, terreno entre los puntos y, para una línea con cotas propias, un desfase de cotas por el área.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; la base bajo un montón es una suposición, salvo que el terreno se levantara antes de amontonar: use entonces «Volumen entre dos superficies». Un pie dibujado demasiado ancho cuenta terreno; demasiado estrecho, deja fuera la base. Esto no es una certificación de obra; para el tonelaje, mida la densidad.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>&lt;p&gt;Takes the heights of one or several surfaces along a line: as points at stations, as lines in a plane of their own, and as a sheet in PDF at true scale, with stations, heights, differences and grades below the profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them, all in one CRS, and one line in that CRS. Heights are those of the triangles all along, not of a grid. A grade is the straight line that fits the heights in its window best; its standard deviation follows from the noise of the points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns of the stations:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct, and for further surfaces height_2, diff_2 and so on. Save them as CSV by giving the output a file name that ends in .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The profile in its plane&lt;/b&gt; is no place on a map: to the right the distance along the line, up the height, exaggerated, both in the unit chosen. It has the CRS of the surface only so that files can hold it; look at it in a map view of its own.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; stretches off a surface are left out and said. Standard deviations know the noise of the heights you give, not errors in plan, nor ground that was not walked. Not for construction or setting out without independent checks.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Toma las cotas de una o varias superficies a lo largo de una línea: como puntos en estaciones, como líneas en un plano propio y como una hoja en PDF a escala exacta, con estaciones, cotas, diferencias y pendientes bajo el perfil longitudinal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; mallas 2DM tal como las escribe «Construir la superficie», todas en un mismo SRC, y una línea en ese SRC. Las cotas son las de los triángulos en toda la línea, no las de una malla de celdas. Una pendiente es la recta que mejor se ajusta a las cotas de su ventana; su desviación típica se deduce del ruido de los puntos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columnas de las estaciones:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct y, para más superficies, height_2, diff_2, etc. Guárdelas como CSV dando a la salida un nombre de archivo terminado en .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;El perfil en su plano&lt;/b&gt; no es un lugar de un mapa: hacia la derecha la distancia a lo largo de la línea, hacia arriba la cota, exagerada, ambas en la unidad elegida. Tiene el SRC de la superficie solo para que los archivos puedan contenerlo; véalo en una vista de mapa propia.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; los tramos fuera de una superficie se omiten y se indica. Las desviaciones típicas conocen el ruido de las cotas que indique, no los errores en planta ni el terreno no recorrido. No apto para construcción ni replanteo sin comprobaciones independientes.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>&lt;p&gt;Tells how densely a site was recorded and where not: the largest &lt;b&gt;circles without a measured point&lt;/b&gt;, the &lt;b&gt;long triangles&lt;/b&gt;, their share of the site, and &lt;b&gt;places to walk again&lt;/b&gt; in walking order. With those places measured no ground is farther from a point than the limit. The log also names the smallest contour interval that the data support.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and the points that it was built from, in the order of recording and in the CRS of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For the data collector:&lt;/b&gt; the places can also be written as CSV (name, easting, northing, height, in the units of the CRS) and as GPX way points in WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Interval:&lt;/b&gt; three times the RMSE of the heights (ASPRS Positional Accuracy Standards, 2014, annex B). The RMSE is reasoned from the noise of a height (what “Check the survey” found, or else what the receiver states) and how the ground bends between passes; check points tell more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a limit an edge is long from about twice the distance of the passes: our own choice, no standard. A mesh does not hold which edges are lines, so a long straight breakline counts as a long edge. Ground under a building stays empty unless the surface was built with a void there.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Dice con qué densidad se registró una obra y dónde no: los mayores &lt;b&gt;círculos sin punto medido&lt;/b&gt;, los &lt;b&gt;triángulos alargados&lt;/b&gt;, su parte de la obra, y &lt;b&gt;lugares que volver a recorrer&lt;/b&gt; en el orden del recorrido. Medidos esos lugares, ningún terreno está más lejos de un punto que el límite. El registro nombra además la menor equidistancia que admiten los datos.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y los puntos con los que se construyó, en el orden de registro y en el SRC de la superficie.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Para la libreta de campo:&lt;/b&gt; los lugares se pueden escribir también como CSV (name, easting, northing, height, en las unidades del SRC) y como puntos de ruta GPX en WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Equidistancia:&lt;/b&gt; tres veces el RMSE de las cotas (ASPRS Positional Accuracy Standards, 2014, anexo B). El RMSE se razona a partir del ruido de una cota (lo que halló «Comprobar el levantamiento» o, si no, lo que declara el receptor) y de cómo se curva el terreno entre pasadas; los puntos de comprobación dicen más.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; sin un límite, una arista es larga a partir de unas dos veces la distancia entre pasadas: elección nuestra, no una norma. Una malla no contiene qué aristas son líneas, así que una línea de rotura larga y recta cuenta como arista larga. El terreno bajo un edificio queda vacío salvo que la superficie se construyera con un hueco allí.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>&lt;p&gt;Writes one or several surfaces in the open standard LandXML 1.2: points and faces, and as source data the breaklines and the boundary. Points of a layer, and lines with stations and the ground's profile, can go into the same file.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; says its units and CRS; numbers are northing before easting, as the standard has it, plan with 4 decimals and heights with 6, all in the unit of the CRS's plan. Read again it is the same surface to the last decimal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Breaklines, boundary and voids are those the surface was held to, unless layers are given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; some programs ignore the faces and triangulate the source data anew: their surface differs where lines or the boundary are missing, so leave the rim in. Some ignore the CRS: tell it beside the file. In feet make sure which foot the receiver takes: international and US survey feet are 2 parts in a million apart, a metre or more at state-plane coordinates.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; before construction or machine guidance compare heights at points measured independently; what may be used for it is for the responsible licensed professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Escribe una o varias superficies en el estándar abierto LandXML 1.2: puntos y caras y, como datos de origen, las líneas de rotura y el contorno. Los puntos de una capa, y líneas con estaciones y el perfil longitudinal del terreno, pueden ir en el mismo archivo.&lt;/p&gt;&lt;p&gt;&lt;b&gt;El archivo&lt;/b&gt; dice sus unidades y su SRC; los números van norte antes que este, como exige el estándar, la planta con 4 decimales y las cotas con 6, todo en la unidad de la planta del SRC. Leído de nuevo, es la misma superficie hasta el último decimal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie». Líneas de rotura, contorno y huecos son los que respetó la superficie, salvo que se indiquen capas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; algunos programas ignoran las caras y triangulan de nuevo los datos de origen: su superficie difiere donde faltan líneas o el contorno, así que deje incluido el borde. Algunos ignoran el SRC: indíquelo junto al archivo. En pies, asegúrese de qué pie toma el receptor: el internacional y el topográfico de EE. UU. difieren 2 millonésimas, un metro o más en coordenadas de plano estatal (state plane).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Advertencia:&lt;/b&gt; antes de construir o guiar maquinaria, compare las cotas en puntos medidos de forma independiente; qué puede usarse para ello compete al profesional habilitado responsable y a las reglas locales.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>&lt;p&gt;Writes one surface with its lines, contours and points into the files that others load, all from the same numbers, with a list of their SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: faces, breaklines, boundary, points; see “Surface to LandXML”.&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (release 12): 3D faces, contours and lines as 3D polylines, points with names and heights; layers by kind or by level. It has no CRS; unit and CRS stand in a comment.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: points (rejected ones too, marked), contours, lines, triangles and further layers, each with its style.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: heights on a grid, compressed and tiled, with CRS, unit and no data outside.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mesh&lt;/b&gt;: 2DM with its CRS in a .prj file.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and points in its CRS. A surface without a boundary is given its rim as one in LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a drawing read in another unit: millimetres are usual elsewhere. A grid cannot hold a kerb: volumes and levels come from faces. Files of the same names in the folder are replaced, each when it is whole; a run that is cancelled leaves the others as they were.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; say with the files when they were made, from which survey, and how accurate they are. They are no licence to build or dig: that is for the responsible professional and local rules.&lt;/p&gt;</source>
      <translation>&lt;p&gt;Escribe una superficie con sus líneas, curvas de nivel y puntos en los archivos que otros cargan, todo a partir de las mismas cifras, con una lista de sus SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: caras, líneas de rotura, contorno, puntos; véase «Superficie a LandXML».&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (versión 12): caras 3D, curvas de nivel y líneas como polilíneas 3D, puntos con nombres y cotas; capas por tipo o por nivel. No tiene SRC; la unidad y el SRC figuran en un comentario.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: puntos (también los rechazados, señalados), curvas de nivel, líneas, triángulos y otras capas, cada una con su estilo.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: cotas en una malla de celdas, comprimido y teselado, con SRC, unidad y sin datos fuera.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Malla&lt;/b&gt;: 2DM con su SRC en un archivo .prj.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;Supone&lt;/b&gt; una malla 2DM tal como la escribe «Construir la superficie» y puntos en su SRC. A una superficie sin contorno se le da su borde como tal en LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Qué puede fallar:&lt;/b&gt; un dibujo leído en otra unidad: en otros ámbitos son habituales los milímetros. Una malla de celdas no puede representar un bordillo: los volúmenes y niveles proceden de las caras. Los archivos del mismo nombre en la carpeta se sustituyen, cada uno cuando está completo; una ejecución cancelada deja los demás como estaban.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Advertencia:&lt;/b&gt; diga con los archivos cuándo se hicieron, de qué levantamiento y qué precisión tienen. No son una licencia para construir o excavar: eso compete al profesional responsable y a las reglas locales.&lt;/p&gt;</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, or taken from the mesh layer.</source>
      <translation>Un archivo 2DM no puede contener su SRC. Si no se indica aquí, se lee del archivo .prj junto a la malla o se toma de la capa de malla.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>A feature for each class of depth that occurs, with its exact area and volume.</source>
      <translation>Un objeto espacial por cada clase de profundidad que aparece, con su área y volumen exactos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>A feature for each class that occurs, from the flattest to the steepest.</source>
      <translation>Un objeto espacial por cada clase que aparece, de la más llana a la más empinada.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>A feature for each connected area, the largest first.</source>
      <translation>Un objeto espacial por cada área conexa, primero la mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A feature for each finding, at all of its points, the size in metres.</source>
      <translation>Un objeto espacial por cada hallazgo, en todos sus puntos, con el tamaño en metros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>A feature for each, the largest first.</source>
      <translation>Un objeto espacial por cada uno, primero el mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A file of edits as this algorithm writes it; they come before those of the layers.</source>
      <translation>Un archivo de ediciones tal como lo escribe este algoritmo; van antes que las de las capas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A grid file of geoid separations; it must cover the whole site.</source>
      <translation>Un archivo con una malla de ondulaciones del geoide; debe cubrir toda la obra.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>A height; empty where a design is given.</source>
      <translation>Una cota; vacía donde se indica un proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A hollow counts as a pond only where noise alone makes one like it anywhere in the survey with a smaller probability than this. 100: every hollow counts.</source>
      <translation>Una hondonada cuenta como charco solo cuando el ruido por sí mismo produce otra igual en cualquier lugar del levantamiento con una probabilidad menor que esta. 100: cuentan todas las hondonadas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>A hollow outline found from the points: triangles are taken off the rim while the circle through their corners is wider. About 1.5 times the distance of the passes follows the bays of a site.</source>
      <translation>Un contorno cóncavo hallado a partir de los puntos: se quitan triángulos del borde mientras el círculo por sus vértices sea más ancho. Unas 1,5 veces la distancia entre pasadas sigue los entrantes de una obra.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>A layer is given twice; give each layer once.</source>
      <translation>Una capa se indica dos veces; indique cada capa una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>A layer of exactly three points with Z, in the CRS of the surface.</source>
      <translation>Una capa de exactamente tres puntos con Z, en el SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>A layer with one line, or with one selected. Stations count from its first vertex.</source>
      <translation>Una capa con una línea, o con una seleccionada. Las estaciones se cuentan desde su primer vértice.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>A line for each start with a way down, in the direction of the water.</source>
      <translation>Una línea por cada inicio con camino cuesta abajo, en el sentido del agua.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A line for each surface, for a map view of its own or a print layout.</source>
      <translation>Una línea por cada superficie, para una vista de mapa propia o una composición de impresión.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A list of sets, each with a name; “Tolerances as a file to edit” writes one.</source>
      <translation>Una lista de conjuntos, cada uno con un nombre; «Tolerancias como archivo para editar» escribe una.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>A local grid: where it lies is not known.</source>
      <translation>Una cuadrícula local: no se sabe dónde está.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>A map and a table of the ponds, with the method, its source and its limits.</source>
      <translation>Un mapa y una tabla de los charcos, con el método, su fuente y sus límites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>A mesh (2DM) for each surface, named after it, with its CRS beside it as .prj.</source>
      <translation>Una malla (2DM) por cada superficie, con su nombre y con su SRC al lado como .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A mesh does not hold it. “Check the survey” finds it from the survey itself (how heights repeat); 0.015 m is usual for RTK in the open. 0: every hollow counts.</source>
      <translation>Una malla no lo contiene. «Comprobar el levantamiento» lo halla a partir del propio levantamiento (cómo se repiten las cotas); 0.015 m es lo habitual para RTK a cielo abierto. 0: cuentan todas las hondonadas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A mesh layer or a mesh file, as “Build the surface” writes it.</source>
      <translation>Una capa de malla o un archivo de malla, tal como lo escribe «Construir la superficie».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>A pad whose field is empty takes the value given for all.</source>
      <translation>Una plataforma con el campo vacío toma el valor indicado para todas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>A page for each sheet.</source>
      <translation>Una página por cada hoja.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>A place in the basin (empty: the lowest of the surface)</source>
      <translation>Un lugar de la balsa (vacío: el más bajo de la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A point at each station with heights, grade and their standard deviations.</source>
      <translation>Un punto en cada estación con cota, pendiente y sus desviaciones típicas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>A point for each arrow.</source>
      <translation>Un punto por cada flecha.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>A point for each curve, with the height where its grades would meet.</source>
      <translation>Un punto por cada acuerdo, con la cota en que se cortarían sus rasantes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A point for each edit: whether it applied, and if not, why.</source>
      <translation>Un punto por cada edición: si se aplicó y, si no, por qué.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A point for each finding, on the surface.</source>
      <translation>Un punto por cada hallazgo, sobre la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>A point is stored every (m)</source>
      <translation>Se guarda un punto cada (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>A projected CRS, or a compound one with heights.</source>
      <translation>Un SRC proyectado, o uno compuesto con alturas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A projected CRS, or a compound one with heights; usually the one that the rover was set to. The file does not say it.</source>
      <translation>Un SRC proyectado, o uno compuesto con alturas; normalmente el configurado en el rover. El archivo no lo dice.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>A projected CRS, which the fitted points get. Empty: that of the control layer.</source>
      <translation>Un SRC proyectado, que reciben los puntos ajustados. Vacío: el de la capa de apoyo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A receiver log can give both; other files need a geoid separation to change them.</source>
      <translation>Un registro de receptor puede dar ambas; otros archivos necesitan una ondulación del geoide para convertirlas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>A road, path or bank from a typical section at given heights, with its haul.</source>
      <translation>Una carretera, senda o terraplén a partir de una sección tipo a cotas dadas, con su transporte de tierras.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at each bend.</source>
      <translation>Una sección en cada quiebro.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at the beginning and at the end.</source>
      <translation>Una sección al principio y al final.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A spike is off its neighbours by more than this, and far more than they scatter.</source>
      <translation>Un pico se aparta de sus vecinos más que esto, y mucho más de lo que ellos se dispersan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>A surface has one height at a place, so faces lean by this much.</source>
      <translation>Una superficie tiene una sola cota en cada lugar, así que las caras se inclinan en esta medida.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of lines of the file to use, flag or reject: columns line, status and reason; of several files also source, the name of the file as in the field source of the points.</source>
      <translation>Una tabla de líneas del archivo que usar, marcar o rechazar: columnas line, status y reason; con varios archivos también source, el nombre del archivo como en el campo source de los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>A table of the ground that drains to each inlet, the rim and hollows, in m².</source>
      <translation>Una tabla del terreno que desagua a cada sumidero, al borde y a las hondonadas, en m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of the lines that are no points: line number, reason and text.</source>
      <translation>Una tabla de las líneas que no son puntos: número de línea, motivo y texto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>A table of the stretches off the surface: feature, start and end along the line and length (m), and their places in the CRS.</source>
      <translation>Una tabla de los tramos fuera de la superficie: objeto espacial, inicio y fin a lo largo de la línea y longitud (m), y sus lugares en el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, boundary, void, not_ground or check.</source>
      <translation>Una tabla con las columnas code, kind, layer y close. El tipo dice qué significa un código: ground, breakline, boundary, void, not_ground o check.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A table, a row for each section; only with a second surface.</source>
      <translation>Una tabla con una fila por cada sección; solo con una segunda superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A table: where a run met others (places_met, the degrees of freedom), the standard deviation of a height with its 95 % interval, and what the receiver claims, in millimetres.</source>
      <translation>Una tabla: dónde un tramo se encontró con otros (places_met, los grados de libertad), la desviación típica de una cota con su intervalo del 95 % y lo que declara el receptor, en milímetros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>About 4 walking; what you drive with a vehicle.</source>
      <translation>Unos 4 a pie; con vehículo, la velocidad a la que se circule.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>About so far from one label to the next; a line shorter than that has one at most.</source>
      <translation>Aproximadamente a esta distancia de una etiqueta a la siguiente; una línea más corta tiene una como máximo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>About the distance of the survey's points along the line.</source>
      <translation>Aproximadamente la distancia entre los puntos del levantamiento a lo largo de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>About the spacing of the survey's points shows all that they know.</source>
      <translation>Aproximadamente la separación de los puntos del levantamiento muestra todo lo que saben.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1.</source>
      <translation>Mayor que 0 y como máximo 1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1: the share of the rain that runs off.</source>
      <translation>Mayor que 0 y como máximo 1: la parte de la lluvia que escurre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Above the bases, all together (m³)</source>
      <translation>Por encima de las bases, en total (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Accept “{name}”</source>
      <translation>Aceptar «{name}»</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy at 95 % by NSSDA (m)</source>
      <translation>Precisión al 95 % según NSSDA (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy statement</source>
      <translation>Declaración de precisión</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Add the meshes to the map when done</source>
      <translation>Añadir las mallas al mapa al terminar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Add the surface to the map when done</source>
      <translation>Añadir la superficie al mapa al terminar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Add the surfaces to the map when done</source>
      <translation>Añadir las superficies al mapa al terminar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to ground coordinates, taken off on the way back.</source>
      <translation>Se suma a las coordenadas de terreno y se resta al volver.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to the mean height of the points to get the ellipsoidal height.</source>
      <translation>Se suma a la cota media de los puntos para obtener la altura elipsoidal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Adds how far the ground departs from the straight lines between points, judged from the surface's own roughness. Switch it off where the existing surface is a design.</source>
      <translation>Añade cuánto se aparta el terreno de las rectas entre los puntos, estimado por la propia rugosidad de la superficie. Desactívelo donde la superficie existente sea un proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Adds the surface's height, slope, aspect and triangle to points.</source>
      <translation>Añade a los puntos la cota, la pendiente, la orientación y el triángulo de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Add…</source>
      <translation>Añadir…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments</source>
      <translation>Alineaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments read</source>
      <translation>Alineaciones leídas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Alignments written</source>
      <translation>Alineaciones escritas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>All edits of this run in their order, for the next one, those that did not apply too.</source>
      <translation>Todas las ediciones de esta ejecución en su orden, para la siguiente, también las que no se aplicaron.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>All points of the survey in the CRS of the control.</source>
      <translation>Todos los puntos del levantamiento en el SRC del apoyo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>All points with their attributes; without a CRS where they are on the ground.</source>
      <translation>Todos los puntos con sus atributos; sin SRC donde están en coordenadas de terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>All points, with status, reason, check_status and check_reason.</source>
      <translation>Todos los puntos, con status, reason, check_status y check_reason.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>All water that comes to a triangle no farther than this from the inlet. 0: the triangles it is in or touches. Between points far apart a triangle is large.</source>
      <translation>Toda el agua que llega a un triángulo a no más de esta distancia del sumidero. 0: los triángulos en que está o que toca. Entre puntos alejados un triángulo es grande.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Along its first feature the volume is also told by average end areas and by the prismoidal formula, in the HTML report.</source>
      <translation>A lo largo de su primer objeto espacial, el volumen se da además por áreas medias y por la fórmula prismoidal, en el informe HTML.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Also as PDF</source>
      <translation>También como PDF</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Also at the corners of lines</source>
      <translation>También en los vértices de las líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the ends of the line</source>
      <translation>También en los extremos de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the vertices of the line</source>
      <translation>También en los vértices de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>An indication of the peak flow of catchments, Q = C i A.</source>
      <translation>Una indicación del caudal punta de las cuencas, Q = C i A.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: to which edge the lane leads water.</source>
      <translation>Una indicación: hacia qué borde lleva el agua el carril.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: where water stands along the two offsets.</source>
      <translation>Una indicación: dónde se estanca el agua a lo largo de los dos desplazamientos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Any lines, such as a centreline or the edges of parcels.</source>
      <translation>Líneas cualesquiera, como un eje o los bordes de parcelas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Any points; a multipoint counts as its points.</source>
      <translation>Puntos cualesquiera; un multipunto cuenta como sus puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Applied</source>
      <translation>Aplicada</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Area</source>
      <translation>Área</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Area (m²)</source>
      <translation>Área (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area and volume of the water in a basin by its level, from the pit to the spill.</source>
      <translation>Área y volumen del agua de una balsa según su nivel, desde el punto bajo hasta el rebose.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area at the spill level (m²)</source>
      <translation>Área al nivel de rebose (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area compared (m²)</source>
      <translation>Área comparada (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of cut (m²)</source>
      <translation>Área de desmonte (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Area of fill (m²)</source>
      <translation>Área de terraplén (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area of the surface (m²)</source>
      <translation>Área de la superficie (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area that drains nowhere until ponds are full (m²)</source>
      <translation>Área que no desagua en ninguna parte hasta llenarse los charcos (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Area under water when all are full (m²)</source>
      <translation>Área bajo el agua cuando todos están llenos (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than a limit</source>
      <translation>Áreas más llanas que un límite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than {limit:g} %: {count}, together {area:.1f} m², {share:.1f} % of the surface.</source>
      <translation>Áreas más llanas que {limit:g} %: {count}, en total {area:.1f} m², {share:.1f} % de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Areas of cut and fill</source>
      <translation>Áreas de desmonte y terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows down the slope at a stated spacing, larger where it is steeper.</source>
      <translation>Flechas pendiente abajo con una separación indicada, mayores donde la pendiente es mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows of flow</source>
      <translation>Flechas de flujo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows: {count}, {spacing:g} m apart.</source>
      <translation>Flechas: {count}, separadas {spacing:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>As in 1.5 or 1,5.</source>
      <translation>Como en 1.5 o 1,5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in the check of a road against limits.</source>
      <translation>Como en la comprobación de una carretera con límites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As in “Import survey points”.</source>
      <translation>Como en «Importar los puntos del levantamiento».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>As left.</source>
      <translation>Como a la izquierda.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>As left. One side may be negative for a walk that lies all on the other.</source>
      <translation>Como a la izquierda. Un lado puede ser negativo para una acera situada por completo en el otro.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>As polygons with slope and area; they make it large.</source>
      <translation>Como polígonos con pendiente y área; lo hacen grande.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>As the data collector takes it.</source>
      <translation>Tal como lo admite la libreta de campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>As you look along the line from its first vertex.</source>
      <translation>Mirando a lo largo de la línea desde su primer vértice.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As “Check the survey” does.</source>
      <translation>Como hace «Comprobar el levantamiento».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>At the middle of each pad's bounding box. Where cut and fill are to balance: a first guess.</source>
      <translation>En el centro del rectángulo envolvente de cada plataforma. Si desmonte y terraplén deben compensarse: una primera estimación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>At their design heights, coloured by cut and fill.</source>
      <translation>A sus cotas de proyecto, coloreados por desmonte y terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>At this scale labels have the size and spacing they need.</source>
      <translation>A esta escala las etiquetas tienen el tamaño y la separación que necesitan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Balanced height (in the unit of the CRS)</source>
      <translation>Cota compensada (en la unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Base</source>
      <translation>Base</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Base (in the unit above)</source>
      <translation>Base (en la unidad de arriba)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Bearing of the grid (degrees)</source>
      <translation>Acimut de la malla (grados)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Before numbers and stations</source>
      <translation>Antes de números y estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Before or after</source>
      <translation>Antes o después</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Below the bases, all together (m³)</source>
      <translation>Por debajo de las bases, en total (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Besides whole stations and the ends.</source>
      <translation>Además de las estaciones enteras y los extremos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Between cells</source>
      <translation>Entre celdas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Between several codes on one point</source>
      <translation>Entre varios códigos de un mismo punto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Between them the strip runs straight; corners of the line have stations of their own.</source>
      <translation>Entre ellas la franja es recta; los vértices de la línea tienen estaciones propias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Boundary</source>
      <translation>Contorno</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Boundary (empty: that of the surface)</source>
      <translation>Contorno (vacío: el de la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Breakline</source>
      <translation>Línea de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Breaklines (empty: those of the surface)</source>
      <translation>Líneas de rotura (vacío: las de la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries</source>
      <translation>Líneas de rotura y contornos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries read</source>
      <translation>Líneas de rotura y contornos leídos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Breaklines of the design</source>
      <translation>Líneas de rotura del proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines without heights</source>
      <translation>Líneas de rotura sin cotas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines, boundary and voids from code and line number of the points.</source>
      <translation>Líneas de rotura, contorno y huecos a partir del código y el número de línea de los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Breaklines, boundary and voids, such as the layer that “Build the surface” writes.</source>
      <translation>Líneas de rotura, contorno y huecos, como la capa que escribe «Construir la superficie».</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Build the surface</source>
      <translation>Construir la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>By class of depth.</source>
      <translation>Por clase de profundidad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>By hand; the checks said:</source>
      <translation>A mano; las comprobaciones decían:</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS</source>
      <translation>SRC</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>CRS (empty: as the file says)</source>
      <translation>SRC (vacío: el que diga el archivo)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>CRS of the control points</source>
      <translation>SRC de los puntos de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS of the coordinates in the file</source>
      <translation>SRC de las coordenadas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>CRS of the coordinates in the file, if another</source>
      <translation>SRC de las coordenadas del archivo, si es otro</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>CRS of the grid (empty: that of the points)</source>
      <translation>SRC de la cuadrícula (vacío: el de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>CRS of the points wanted</source>
      <translation>SRC de los puntos deseados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>CRS of the surface (empty: as stored with it)</source>
      <translation>SRC de la superficie (vacío: el almacenado con ella)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>CSV files (*.csv)</source>
      <translation>Archivos CSV (*.csv)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Calm noise: move heights by up to (m; 0: not at all)</source>
      <translation>Calmar el ruido: mover las cotas como máximo (m; 0: nada)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Cancel</source>
      <translation>Cancelar</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/gui/running.py" />
      <source>Cancelled.</source>
      <translation>Cancelado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Cancelled: there is no result.</source>
      <translation>Cancelado: no hay resultado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Catchment</source>
      <translation>Cuenca</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Catchments</source>
      <translation>Cuencas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Catchments before and after</source>
      <translation>Cuencas antes y después</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Catchments: {CATCHMENTS}, together {AREA:.1f} m²; {NOWHERE:.1f} m² of it drain nowhere.</source>
      <translation>Cuencas: {CATCHMENTS}, en total {AREA:.1f} m²; {NOWHERE:.1f} m² de ellas no desaguan en ninguna parte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cell size (in the unit of the surface's CRS)</source>
      <translation>Tamaño de celda (en la unidad del SRC de la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cell size of the depth raster (in the unit of the CRS)</source>
      <translation>Tamaño de celda del ráster de profundidad (en la unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Cells of the GeoTIFF (unit of the CRS)</source>
      <translation>Celdas del GeoTIFF (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cells on the surface</source>
      <translation>Celdas sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Centreline</source>
      <translation>Eje</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Centreline (one line)</source>
      <translation>Eje (una línea)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Chance of noise (%)</source>
      <translation>Probabilidad de que sea ruido (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Change</source>
      <translation>Cambio</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Change of grade (%)</source>
      <translation>Cambio de pendiente longitudinal (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Change of the water in full ponds (m³)</source>
      <translation>Cambio del agua en los charcos llenos (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Changed surface (2DM mesh)</source>
      <translation>Superficie modificada (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels</source>
      <translation>Cauces</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels: least ground that drains to them (m²)</source>
      <translation>Cauces: terreno mínimo que desagua en ellos (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Check a line against limits</source>
      <translation>Comprobar una línea con límites</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Check points</source>
      <translation>Puntos de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (CSV file)</source>
      <translation>Puntos de comprobación (archivo CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (layer)</source>
      <translation>Puntos de comprobación (capa)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points compared</source>
      <translation>Puntos de comprobación comparados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points on the surface</source>
      <translation>Puntos de comprobación sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Check the coverage</source>
      <translation>Comprobar la cobertura</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Check the points automatically</source>
      <translation>Comprobar los puntos automáticamente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Check the survey</source>
      <translation>Comprobar el levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Check them</source>
      <translation>Comprobarlos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Checked points</source>
      <translation>Puntos comprobados</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose a folder for the products.</source>
      <translation>Elija una carpeta para los productos.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Choose a survey file first; then it can be shown here.</source>
      <translation>Elija primero un archivo de levantamiento; después podrá mostrarse aquí.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Choose a survey file or a layer of points, one of both.</source>
      <translation>Elija un archivo del levantamiento o una capa de puntos, uno de los dos.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose the CRS from a list</source>
      <translation>Elegir el SRC de una lista</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Choose the survey file.</source>
      <translation>Elija el archivo del levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles without a measured point, the widest first; they do not overlap.</source>
      <translation>Círculos sin ningún punto medido, los más anchos primero; no se solapan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: at most so many</source>
      <translation>Círculos: número máximo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: wider than this radius (m; empty: half of that)</source>
      <translation>Círculos: mayores que este radio (m; vacío: la mitad de ese valor)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class</source>
      <translation>Clase</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class of slope (from 0)</source>
      <translation>Clase de pendiente (desde 0)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Classes that occur</source>
      <translation>Clases presentes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Clockwise from grid north.</source>
      <translation>En sentido horario desde el norte de cuadrícula.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Code</source>
      <translation>Código</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Code field (empty: “code” where there is one)</source>
      <translation>Campo de código (vacío: «code» si existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Code field (of points)</source>
      <translation>Campo de código (de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code table (CSV; empty: the one that comes with Hummock)</source>
      <translation>Tabla de códigos (CSV; vacío: la que acompaña a Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code tables (*.csv *.txt);;All files (*)</source>
      <translation>Tablas de códigos (*.csv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Columns</source>
      <translation>Columnas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Columns (empty: as recognised)</source>
      <translation>Columnas (vacío: según se reconozcan)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Columns of the table</source>
      <translation>Columnas de la tabla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns side (left, right, both), part (its name, or ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) and run (1 : n), rows from the centreline outward.</source>
      <translation>Columnas side (left, right, both), part (su nombre, o ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) y run (1 : n), filas desde el eje hacia fuera.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns station and height, in metres, and if wanted curve, the length of the vertical curve about the place. Straight between them.</source>
      <translation>Columnas station y height, en metros, y si se desea curve, la longitud del acuerdo vertical en torno al lugar. Recto entre ellas.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Columns: {roles}</source>
      <translation>Columnas: {roles}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor</source>
      <translation>Factor combinado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor (empty: computed at the origin)</source>
      <translation>Factor combinado (vacío: se calcula en el origen)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Comment lines start with</source>
      <translation>Las líneas de comentario empiezan por</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Compares ponds, catchments and paths on the ground and on a design.</source>
      <translation>Compara charcos, cuencas y caminos en el terreno y en un proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Contour</source>
      <translation>Curva de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Contour interval</source>
      <translation>Equidistancia</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Contour interval to expect (m)</source>
      <translation>Equidistancia esperable (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Contour interval {interval:g} {unit}, index every {every}. For drawing, heights were moved by up to {moved:.3f} m and lines by up to {shifted:.2f} m in plan.</source>
      <translation>Equidistancia {interval:g} {unit}, curva maestra cada {every}. Para dibujar, las cotas se movieron hasta {moved:.3f} m y las líneas hasta {shifted:.2f} m en planta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contour labels</source>
      <translation>Etiquetas de curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contours</source>
      <translation>Curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours every {interval} {unit}</source>
      <translation>Curvas de nivel cada {interval} {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Contours for the sheet</source>
      <translation>Curvas de nivel para la hoja</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours of a surface</source>
      <translation>Curvas de nivel de una superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Contours, labels, spot heights and sheets, with their styles.</source>
      <translation>Curvas de nivel, etiquetas, puntos acotados y hojas, con sus estilos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours: {count}.</source>
      <translation>Curvas de nivel: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Control point</source>
      <translation>Punto de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Control points</source>
      <translation>Puntos de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points (CSV)</source>
      <translation>Puntos de apoyo (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points left out of the fit</source>
      <translation>Puntos de apoyo excluidos del ajuste</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points that do not fit</source>
      <translation>Puntos de apoyo que no encajan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Coordinate operations accepted by name</source>
      <translation>Operaciones de coordenadas aceptadas por nombre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Coordinates: {crs}</source>
      <translation>Coordenadas: {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Corners that lines or polygons share are set out once.</source>
      <translation>Los vértices que comparten líneas o polígonos se replantean una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Cover field (empty: the field cover, if there is one)</source>
      <translation>Campo de cubierta (vacío: el campo cover, si existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Crest</source>
      <translation>Acuerdo convexo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Cross pass</source>
      <translation>Pasada transversal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Cross passes: {length:.0f} m (lines: {count})</source>
      <translation>Pasadas transversales: {length:.0f} m (líneas: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cross-sections</source>
      <translation>Perfiles transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Crossfall is taken from here to the right end; in the unit chosen. Keep both inside kerbs and edges.</source>
      <translation>La pendiente transversal se toma desde aquí hasta el extremo derecho; en la unidad elegida. Mantenga ambos dentro de bordillos y bordes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the lane (%; below 0 falls outward)</source>
      <translation>Pendiente transversal del carril (%; menor que 0 cae hacia fuera)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the shoulder (%)</source>
      <translation>Pendiente transversal del arcén (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Crossfall to the edges</source>
      <translation>Pendiente transversal hacia los bordes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Crossfalls</source>
      <translation>Pendientes transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Curves at most</source>
      <translation>Número máximo de acuerdos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut</source>
      <translation>Desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut (m³)</source>
      <translation>Desmonte (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance at {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</source>
      <translation>Desmonte y terraplén se compensan en {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance with the design shifted by {shift:+.3f} ± {half:.3f} m (95 %).</source>
      <translation>Desmonte y terraplén se compensan con el proyecto desplazado {shift:+.3f} ± {half:.3f} m (95 %).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from it to the survey. Give a design or an earlier surface.</source>
      <translation>Desmonte y terraplén desde ella hasta el levantamiento. Indique un proyecto o una superficie anterior.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill from the survey to it.</source>
      <translation>Desmonte y terraplén desde el levantamiento hasta ella.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Cut and fill of level pads, with slopes to the ground.</source>
      <translation>Desmonte y terraplén de plataformas horizontales, con taludes hasta el terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Cut by region and material</source>
      <translation>Desmonte por región y material</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut or fill not known</source>
      <translation>Desmonte o terraplén no conocido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Cut there (m³)</source>
      <translation>Desmonte en ese lugar (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Desmonte {value:.2f} ± {half:.2f} m³ (95 %) en {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and net with their doubt.</source>
      <translation>Desmonte, terraplén y neto con su incertidumbre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Cut, fill and the running balance from station to station.</source>
      <translation>Desmonte, terraplén y compensación acumulada de estación a estación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and what is left over about the balanced height; empty without a balance.</source>
      <translation>Desmonte, terraplén y sobrante en torno a la cota compensada; vacío sin compensación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, half its 95 % interval (m³)</source>
      <translation>Desmonte, mitad de su intervalo del 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Cut, second surface below ({unit})</source>
      <translation>Desmonte, segunda superficie por debajo ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cuts surfaces square to a line, with areas of cut and fill, also as sheets.</source>
      <translation>Corta superficies perpendicularmente a una línea, con áreas de desmonte y terraplén, también como hojas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Daylight lines</source>
      <translation>Líneas de encuentro con el terreno</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Decimal sign</source>
      <translation>Signo decimal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Decimals</source>
      <translation>Decimales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Decimals of spot heights</source>
      <translation>Decimales de los puntos acotados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Decisions</source>
      <translation>Decisiones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Decisions on points (CSV)</source>
      <translation>Decisiones sobre puntos (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Deeper</source>
      <translation>Más profundo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Deepest cut (m)</source>
      <translation>Mayor desmonte (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Delimited text or a receiver log, as the rover or its software wrote it. It is only read.</source>
      <translation>Texto delimitado o un registro del receptor, tal como lo escribió el rover o su programa. Solo se lee.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Delimited text or a receiver log. It is only read.</source>
      <translation>Texto delimitado o un registro del receptor. Solo se lee.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Departure not worth a curve (m)</source>
      <translation>Desviación que no merece un acuerdo (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Depression contour</source>
      <translation>Curva de depresión</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth (GeoTIFF)</source>
      <translation>Profundidad (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Depth (m)</source>
      <translation>Profundidad (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Depth below the sill (m)</source>
      <translation>Profundidad bajo el umbral de rebose (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth classes (m; empty: round ones)</source>
      <translation>Clases de profundidad (m; vacío: valores redondos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/depthstyles.py" />
      <source>Depth of cut and fill</source>
      <translation>Profundidad de desmonte y terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth of cut and fill (polygons)</source>
      <translation>Profundidad de desmonte y terraplén (polígonos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Depth of the ditch below the edge (m; 0: none)</source>
      <translation>Profundidad de la cuneta bajo el borde (m; 0: ninguna)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design (2DM mesh)</source>
      <translation>Proyecto (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Design height (unit of the CRS)</source>
      <translation>Cota de proyecto (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Design heights are the Z of the layer</source>
      <translation>Las cotas de proyecto son la Z de la capa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Design less existing height at the cell middles, in the unit of the CRS; fill above 0.</source>
      <translation>Cota de proyecto menos cota existente en los centros de las celdas, en la unidad del SRC; terraplén mayor que 0.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Design surface (2DM mesh)</source>
      <translation>Superficie de proyecto (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, for the next step</source>
      <translation>Proyecto, para el paso siguiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, height</source>
      <translation>Proyecto, cota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Design, or the later survey (2DM mesh)</source>
      <translation>Proyecto, o el levantamiento posterior (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Direction</source>
      <translation>Dirección</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Direction (degrees from grid north)</source>
      <translation>Dirección (grados desde el norte de cuadrícula)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Direction of the passes (degrees from grid north)</source>
      <translation>Dirección de las pasadas (grados desde el norte de cuadrícula)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Distance (m)</source>
      <translation>Distancia (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Distance along the line (m)</source>
      <translation>Distancia a lo largo de la línea (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Distance between heights (m)</source>
      <translation>Distancia entre cotas (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Distance between stations</source>
      <translation>Distancia entre estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Distance of labels along a line on the plan (mm)</source>
      <translation>Distancia entre etiquetas a lo largo de una línea en el plano (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Distance of stations (m)</source>
      <translation>Distancia entre estaciones (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Distance of the sections (m)</source>
      <translation>Distancia entre perfiles transversales (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Divides a surface by where its water goes: inlets, ponds, outlets, the rim.</source>
      <translation>Divide una superficie según adónde va su agua: sumideros, charcos, desagües, el borde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Divides a surface into areas by classes of slope.</source>
      <translation>Divide una superficie en áreas por clases de pendiente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Does the whole job from the survey file and tells it in HTML and PDF.</source>
      <translation>Hace todo el trabajo desde el archivo del levantamiento y lo presenta en HTML y PDF.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Done.</source>
      <translation>Hecho.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Doubt of the ground between the points</source>
      <translation>Incertidumbre del terreno entre los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drained to</source>
      <translation>Desaguaba en</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains now to</source>
      <translation>Desagua ahora en</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until full</source>
      <translation>No desagua en ninguna parte hasta llenarse</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (%)</source>
      <translation>No desagua en ninguna parte hasta llenarse los charcos (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (m²)</source>
      <translation>No desagua en ninguna parte hasta llenarse los charcos (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains to</source>
      <translation>Desagua en</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Draw the contours</source>
      <translation>Dibujar las curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below all else, in the style that the layer has.</source>
      <translation>Se dibuja debajo de todo lo demás, con el estilo que tiene la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below the contours in their own styles, the first on top. QGIS places the labels they have; where labels crowd, not alike in every run.</source>
      <translation>Se dibujan debajo de las curvas de nivel con sus propios estilos, la primera encima. QGIS coloca sus etiquetas; donde se amontonan, no igual en cada ejecución.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn by</source>
      <translation>Dibujado por</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Drawn from point to point (snap to them); they become edges. A column “edit” may say swap_edge: the line then lies on the edge to be replaced by the other diagonal.</source>
      <translation>Se dibujan de punto a punto (con autoensamblado a ellos) y pasan a ser aristas. Una columna «edit» puede decir swap_edge: entonces la línea está sobre la arista que debe sustituirse por la otra diagonal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn on</source>
      <translation>Dibujado el</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Draws a plan at a scale as print layout and PDF, on one sheet or several.</source>
      <translation>Dibuja un plano a escala como composición de impresión y PDF, en una o varias hojas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Draws calm, smooth contours with labels and spot heights for a plan.</source>
      <translation>Dibuja curvas de nivel suavizadas y limpias con etiquetas y puntos acotados para un plano.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Draws contours exactly on the triangles of a surface.</source>
      <translation>Dibuja curvas de nivel exactamente sobre los triángulos de una superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Drift shared by neighbouring points (m, 1 sigma)</source>
      <translation>Deriva común a puntos vecinos (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drop (m)</source>
      <translation>Caída (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Drops vertices as long as the surface stays within a tolerance in height.</source>
      <translation>Elimina vértices mientras la superficie se mantenga dentro de una tolerancia en cota.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>E</source>
      <translation>E</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Each check point with the height of the surface there; off_m is surface less check.</source>
      <translation>Cada punto de comprobación con la cota de la superficie en ese lugar; off_m es superficie menos comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Each line becomes two breaklines a small offset apart, a vertical face between them.</source>
      <translation>Cada línea pasa a ser dos líneas de rotura separadas un pequeño desplazamiento, con una cara vertical entre ellas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Each polygon feature is one region, with all its parts and holes.</source>
      <translation>Cada objeto espacial de polígono es una región, con todas sus partes y agujeros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Each polygon is graded to a level or a sloping plane; holes stay as they are, but slopes.</source>
      <translation>Cada polígono se explana a un nivel o a un plano inclinado; los agujeros quedan como están, salvo por los taludes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Each stretch of a line, around its station, is an inlet of its own. Empty: each line is one inlet.</source>
      <translation>Cada franja de una línea, en torno a su estación, es un sumidero propio. Vacío: cada línea es un solo sumidero.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Each triangle as a polygon with its slope (%) and plan area (m²).</source>
      <translation>Cada triángulo como polígono con su pendiente (%) y su área en planta (m²).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Earlier surface (2DM mesh)</source>
      <translation>Superficie anterior (malla 2DM)</translation>
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
      <translation>Movimiento de tierras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Easting (unit of the CRS)</source>
      <translation>Coordenada este (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Easting of the origin</source>
      <translation>Coordenada este del origen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Edges and breaks of platform and slopes with their heights, by kind.</source>
      <translation>Bordes y quiebros de plataforma y taludes con sus cotas, por tipo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Edges with slopes of their own (lines)</source>
      <translation>Bordes con taludes propios (líneas)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json)</source>
      <translation>Ediciones (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json);;All files (*)</source>
      <translation>Ediciones (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits applied</source>
      <translation>Ediciones aplicadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits applied: {applied}, not applied: {missed}.</source>
      <translation>Ediciones aplicadas: {applied}, no aplicadas: {missed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits kept from before (JSON)</source>
      <translation>Ediciones guardadas anteriormente (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits that did not apply</source>
      <translation>Ediciones que no se aplicaron</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits to keep (JSON)</source>
      <translation>Ediciones para guardar (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: a point is meant from up to (m)</source>
      <translation>Ediciones: distancia máxima para referirse a un punto (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: lines to force an edge</source>
      <translation>Ediciones: líneas para forzar una arista</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: points to add or move</source>
      <translation>Ediciones: puntos que añadir o mover</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: polygons to drop triangles</source>
      <translation>Ediciones: polígonos para eliminar triángulos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ellipsoidal height of the site (m; empty: from the points)</source>
      <translation>Altura elipsoidal del emplazamiento (m; vacío: según los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Empty where a point never has several codes.</source>
      <translation>Vacío si un punto nunca tiene varios códigos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: as many as tell the noise of the survey to 15 %, at most five.</source>
      <translation>Vacío: los necesarios para conocer el ruido del levantamiento al 15 %, cinco como máximo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Empty: ground that only one surface covers is left out. A height, in the unit of the CRS, counts it against that level.</source>
      <translation>Vacío: se omite el terreno que solo cubre una superficie. Una cota, en la unidad del SRC, lo cuenta respecto a ese nivel.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <location filename="../plugin/processing/flowpaths.py" />
      <location filename="../plugin/processing/waterchange.py" />
      <source>Empty: one that suits the size of the site.</source>
      <translation>Vacío: uno adecuado al tamaño del emplazamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: so that the fewest passes are needed.</source>
      <translation>Vacío: de modo que se necesiten las menos pasadas posibles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.</source>
      <translation>Vacío: el de los puntos deseados, WGS 84 para grados. Un SRC geográfico para latitudes y longitudes o un registro del receptor, uno proyectado para coordenadas este y norte; las coordenadas se transforman entonces.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the author in the project’s properties.</source>
      <translation>Vacío: el autor de las propiedades del proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Empty: the finest class of whole centimetres that is met.</source>
      <translation>Vacío: la clase más exigente de centímetros enteros que se cumpla.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the title in the project’s properties.</source>
      <translation>Vacío: el título de las propiedades del proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends at</source>
      <translation>Termina en</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends in</source>
      <translation>Acaba en</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Ends of lines farther apart are taken for different lines.</source>
      <translation>Los extremos de línea más separados se toman por líneas distintas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Even depth, wherever earth is moved; cut and fill are then told from the bared ground.</source>
      <translation>Profundidad uniforme, dondequiera que se mueva tierra; desmonte y terraplén se indican entonces desde el terreno desbrozado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Every height taken, and how far it is from the fit.</source>
      <translation>Cada cota tomada y cuánto se aparta del ajuste.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Every point with section, offset and height; as CSV where the file ends in .csv.</source>
      <translation>Cada punto con perfil transversal, desplazamiento y cota; como CSV si el archivo termina en .csv.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Every rule along the whole line; as CSV where the file ends in .csv.</source>
      <translation>Cada regla a lo largo de toda la línea; como CSV si el archivo termina en .csv.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Every so many contours one is drawn heavier and labelled.</source>
      <translation>Cada tantas curvas de nivel, una se dibuja más gruesa y se etiqueta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Every start with the same columns, also those in a pit or off the surface.</source>
      <translation>Cada inicio con las mismas columnas, también los que están en un punto bajo o fuera de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Exact cut and fill from one surface to another, with how sure they are.</source>
      <translation>Desmonte y terraplén exactos de una superficie a otra, con su grado de seguridad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Exact cut and fill in each polygon of a layer, by depth and by material.</source>
      <translation>Desmonte y terraplén exactos en cada polígono de una capa, por profundidad y por material.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Exact cut and fill to make a surface level, or an even slope.</source>
      <translation>Desmonte y terraplén exactos para dejar una superficie horizontal o con pendiente uniforme.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Exact for all work; smooth for hillshades and pictures.</source>
      <translation>Exacto para todo trabajo; suavizado para sombreados e imágenes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Exact volume above and below the base that a toe or rim line spans.</source>
      <translation>Volumen exacto por encima y por debajo de la base que define una línea de pie o de borde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Exaggeration of heights in the plane</source>
      <translation>Exageración de las cotas en el plano</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Existing height (unit of the CRS)</source>
      <translation>Cota existente (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Existing surface (2DM mesh)</source>
      <translation>Superficie existente (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Existing surface, or the earlier survey (2DM mesh)</source>
      <translation>Superficie existente, o el levantamiento anterior (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces name their neighbours</source>
      <translation>Las caras nombran a sus vecinas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces written</source>
      <translation>Caras escritas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Fail</source>
      <translation>No cumple</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Fall of the pads (%)</source>
      <translation>Caída de las plataformas (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Fall over run in percent.</source>
      <translation>Desnivel entre distancia horizontal, en tanto por ciento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the left edge (%)</source>
      <translation>Caída hacia el borde izquierdo (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the right edge (%)</source>
      <translation>Caída hacia el borde derecho (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Falls towards (degrees from grid north)</source>
      <translation>Cae hacia (grados desde el norte de cuadrícula)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Feature of the start</source>
      <translation>Objeto espacial del inicio</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Field of design heights</source>
      <translation>Campo de las cotas de proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field of the ground cover with its runoff coefficient</source>
      <translation>Campo de la cubierta del suelo con su coeficiente de escorrentía</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the line number (empty: it stands in the code)</source>
      <translation>Campo del número de línea (vacío: está en el código)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the words (empty: they stand in the code)</source>
      <translation>Campo de las palabras (vacío: están en el código)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the direction of the fall (degrees)</source>
      <translation>Campo con la dirección de la caída (grados)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the fall (%)</source>
      <translation>Campo con la caída (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Field with the height of the face (m; empty: as above)</source>
      <translation>Campo con la altura de la cara (m; vacío: como arriba)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the intensity</source>
      <translation>Campo con la intensidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the level</source>
      <translation>Campo con el nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the pads' names</source>
      <translation>Campo con los nombres de las plataformas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the runoff coefficient</source>
      <translation>Campo con el coeficiente de escorrentía</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of cut (1 : n)</source>
      <translation>Campo con el talud de desmonte (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of fill (1 : n)</source>
      <translation>Campo con el talud de terraplén (1 : n)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Field with their names (empty: numbers)</source>
      <translation>Campo con sus nombres (vacío: números)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Figures, verdicts, sources and cautions.</source>
      <translation>Cifras, veredictos, fuentes y advertencias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Files</source>
      <translation>Archivos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Files of any size; those in a zip are to be unpacked first.</source>
      <translation>Archivos de cualquier tamaño; los de un zip deben descomprimirse antes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Files written</source>
      <translation>Archivos escritos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Fill</source>
      <translation>Terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill (m³)</source>
      <translation>Terraplén (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Fill from one cubic metre of cut (m³ compacted)</source>
      <translation>Terraplén de un metro cúbico de desmonte (m³ compactados)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut (m³)</source>
      <translation>Terraplén menos desmonte (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill less cut ({unit})</source>
      <translation>Terraplén menos desmonte ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² compared.</source>
      <translation>Terraplén menos desmonte {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² comparados.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill less cut, half its 95 % interval (m³)</source>
      <translation>Terraplén menos desmonte, mitad de su intervalo del 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Fill there (m³)</source>
      <translation>Terraplén en ese lugar (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill to be left over for use elsewhere, or to be had from there. Topsoil that is stripped first is not in the balance.</source>
      <translation>Terraplén que debe sobrar para usarlo en otro lugar, o que se trae de él. La tierra vegetal retirada antes no entra en la compensación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation>Terraplén {value:.2f} ± {half:.2f} m³ (95 %) en {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Fill, cut below 0 (unit of the CRS)</source>
      <translation>Terraplén, desmonte menor que 0 (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill, half its 95 % interval (m³)</source>
      <translation>Terraplén, mitad de su intervalo del 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill, second surface above ({unit})</source>
      <translation>Terraplén, segunda superficie por encima ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Find the height that balances</source>
      <translation>Hallar la cota que compensa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Findings</source>
      <translation>Hallazgos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Findings of the checks</source>
      <translation>Hallazgos de las comprobaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Finds the grades and parabolas that an existing profile follows.</source>
      <translation>Halla las rasantes y parábolas que sigue un perfil longitudinal existente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Finds what auto-recorded points get wrong: lifted poles, lost fixes, stops, repeats.</source>
      <translation>Halla los errores de los puntos registrados automáticamente: jalones levantados, soluciones perdidas, paradas, repeticiones.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Finds where water stands, how deep and how much, and where it spills to.</source>
      <translation>Halla dónde se estanca el agua, con qué profundidad y cantidad, y adónde rebosa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Finest class met (cm)</source>
      <translation>Clase más exigente cumplida (cm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground (2DM mesh)</source>
      <translation>Terreno terminado (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, for the next step</source>
      <translation>Terreno terminado, para el paso siguiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, height</source>
      <translation>Terreno terminado, cota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>First line names the columns</source>
      <translation>La primera línea nombra las columnas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First line of the table.</source>
      <translation>Primera línea de la tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>First lines of the file</source>
      <translation>Primeras líneas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First number</source>
      <translation>Primer número</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>First say what is open: press one of the answers above, or choose the roles.</source>
      <translation>Aclare antes lo pendiente: pulse una de las respuestas de arriba o elija las funciones.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>First surface</source>
      <translation>Primera superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>First surface, for the next step</source>
      <translation>Primera superficie, para el paso siguiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit</source>
      <translation>Ajuste</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit a survey to control points</source>
      <translation>Ajustar un levantamiento a puntos de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Fit grades and vertical curves</source>
      <translation>Ajustar rasantes y acuerdos verticales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fitted points</source>
      <translation>Puntos ajustados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Flagged (used)</source>
      <translation>Marcado (usado)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat area (m²)</source>
      <translation>Área llana (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat areas</source>
      <translation>Áreas llanas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flatter than (%)</source>
      <translation>Más llano que (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Folder</source>
      <translation>Carpeta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Folder for the surfaces</source>
      <translation>Carpeta para las superficies</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Folder of the job</source>
      <translation>Carpeta del trabajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Folder of the products</source>
      <translation>Carpeta de los productos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Follows water from points, lines or areas down a surface to where it ends.</source>
      <translation>Sigue el agua desde puntos, líneas o áreas por una superficie hasta donde termina.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>For a survey that is fitted to control points in a later step.</source>
      <translation>Para un levantamiento que se ajusta a puntos de apoyo en un paso posterior.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>For drawing only: heights were moved by up to {moved:.3f} m, then lines by up to {shifted:.3f} m in plan. Contours: {count}.</source>
      <translation>Solo para dibujar: las cotas se movieron hasta {moved:.3f} m y después las líneas hasta {shifted:.3f} m en planta. Curvas de nivel: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>For files that say one unit for lengths and another for elevations.</source>
      <translation>Para archivos que indican una unidad para las longitudes y otra para las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>For points and corners that were drawn in 3D; goes before the design surface.</source>
      <translation>Para puntos y vértices dibujados en 3D; tiene prioridad sobre la superficie de proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>For points whose geometry has no heights. In the unit of the heights.</source>
      <translation>Para puntos cuya geometría no tiene cotas. En la unidad de las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>For surveys that keep it in a column of its own.</source>
      <translation>Para levantamientos que lo guardan en una columna propia.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>For the accuracy in plan, and for the survey's own check shots.</source>
      <translation>Para la exactitud en planta y para las observaciones de comprobación del propio levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>For the areas of cut and fill; in the CRS of the first.</source>
      <translation>Para las áreas de desmonte y terraplén; en el SRC de la primera.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the contour interval: what “Check the survey” found. Empty: what the receiver claims, which may be less than there is.</source>
      <translation>Para la equidistancia: lo que halló «Comprobar el levantamiento». Vacío: lo que declara el receptor, que puede ser menos de lo que hay.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the data collector.</source>
      <translation>Para la libreta de campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>For the number of loads of waste and borrow; empty: none are told.</source>
      <translation>Para el número de viajes de sobrante y préstamo; vacío: no se indica ninguno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>For the raster and the check by a grid only; volumes do not depend on it.</source>
      <translation>Solo para el ráster y la comprobación con una malla; los volúmenes no dependen de él.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>For the time of concentration and the frequency that your code asks for.</source>
      <translation>Para el tiempo de concentración y la frecuencia que exija la normativa aplicable.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From (m along the line)</source>
      <translation>Desde (m a lo largo de la línea)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>From here water runs down to the pit.</source>
      <translation>Desde aquí el agua baja hasta el punto bajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>From offset, right positive ({unit})</source>
      <translation>Desde el desplazamiento, positivo a la derecha ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>From places that have a path on both surfaces and another one after the change.</source>
      <translation>Desde lugares que tienen un camino en ambas superficies y otro distinto tras el cambio.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>From section to section along the line.</source>
      <translation>De perfil transversal a perfil transversal a lo largo de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From station</source>
      <translation>Desde la estación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>From the drawn line to the second one, such as 0.12 for a kerb drawn at its foot.</source>
      <translation>De la línea dibujada a la segunda, como 0.12 para un bordillo dibujado en su pie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>From the standard you work to. None comes with Hummock.</source>
      <translation>De la norma con la que se trabaja. Hummock no incluye ninguna.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>From window to window (m; empty: no overlap)</source>
      <translation>De ventana a ventana (m; vacío: sin solape)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Further layers for the GeoPackage</source>
      <translation>Otras capas para el GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Further note</source>
      <translation>Otra nota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Further stations</source>
      <translation>Otras estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Further surfaces</source>
      <translation>Otras superficies</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>GPX files (*.gpx)</source>
      <translation>Archivos GPX (*.gpx)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Gap in a breakline</source>
      <translation>Interrupción en una línea de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gaps of the lines</source>
      <translation>Interrupciones de las líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>GeoPackage (*.gpkg)</source>
      <translation>GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Geoid separation</source>
      <translation>Ondulación del geoide</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Geoid separation (m)</source>
      <translation>Ondulación del geoide (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a constant (m)</source>
      <translation>Ondulación del geoide, una constante (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a grid</source>
      <translation>Ondulación del geoide, una rejilla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Give a design or a level to compare with: one of them, not both.</source>
      <translation>Indique un proyecto o un nivel con el que comparar: uno de los dos, no ambos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Give a file of control points, or a layer in its place (not both).</source>
      <translation>Indique un archivo de puntos de apoyo, o una capa en su lugar (no ambos).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Give a survey file, or a layer of points in its place (not both).</source>
      <translation>Indique un archivo del levantamiento, o una capa de puntos en su lugar (no ambos).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Give check points as a layer or as a file, not as both.</source>
      <translation>Indique los puntos de comprobación como capa o como archivo, no como ambos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Give pads or a centreline, one of both.</source>
      <translation>Indique plataformas o un eje, uno de los dos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Give the plane by a level or by three points: one of them, not both.</source>
      <translation>Defina el plano con un nivel o con tres puntos: uno de los dos, no ambos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gives lines the surface's heights, with a vertex at every triangle edge.</source>
      <translation>Da a las líneas las cotas de la superficie, con un vértice en cada arista de triángulo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Goes into the source data of the first surface.</source>
      <translation>Pasa a los datos de origen de la primera superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Gone</source>
      <translation>Desaparecido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Grade a pad</source>
      <translation>Explanar una plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Grade a strip along a line</source>
      <translation>Explanar una franja a lo largo de una línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grade along a line and crossfall across it, with standard deviations.</source>
      <translation>Pendiente a lo largo de una línea y pendiente transversal a ella, con desviaciones típicas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade along the line (%)</source>
      <translation>Pendiente a lo largo de la línea (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade at the end (%)</source>
      <translation>Pendiente longitudinal al final (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade, of a curve the one it begins with (%)</source>
      <translation>Pendiente longitudinal; en un acuerdo, aquella con la que empieza (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades</source>
      <translation>Pendientes longitudinales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades and crossfall</source>
      <translation>Pendientes longitudinales y transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Grades and crossfalls against a table of limits: pass, fail or too close to tell.</source>
      <translation>Pendientes longitudinales y transversales respecto a una tabla de límites: cumple, no cumple o demasiado justo para decidir.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Grades and curves</source>
      <translation>Rasantes y acuerdos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid</source>
      <translation>Malla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Grid distance over ground distance, where one is prescribed for the site.</source>
      <translation>Distancia en cuadrícula entre distancia en terreno, si hay una prescrita para el emplazamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid north</source>
      <translation>Norte de cuadrícula</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Grid north is {angle:.2f}° {side} of true north here.</source>
      <translation>Aquí el norte de cuadrícula está {angle:.2f}° al {side} del norte geográfico.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)</source>
      <translation>Rejillas que lee PROJ (*.gtx *.tif *.tiff *.gsb);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Ground</source>
      <translation>Terreno</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Ground cover</source>
      <translation>Cubierta del suelo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Ground taken by the design (m²)</source>
      <translation>Terreno ocupado por el proyecto (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ground to grid and back</source>
      <translation>De terreno a cuadrícula y viceversa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation>Terreno cuya agua va a otra parte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere (m²)</source>
      <translation>Terreno cuya agua va a otra parte (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Gullies and the like, where water leaves the surface.</source>
      <translation>Imbornales y similares, por donde el agua deja la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>HTML files (*.html)</source>
      <translation>Archivos HTML (*.html)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Half the 95 % interval of the shift (m)</source>
      <translation>Mitad del intervalo del 95 % del desplazamiento (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Hand over files</source>
      <translation>Entregar archivos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Hand-over</source>
      <translation>Entrega</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Height (unit of the CRS)</source>
      <translation>Cota (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Height ({unit})</source>
      <translation>Cota ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Height datum</source>
      <translation>Datum altimétrico</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect (m)</source>
      <translation>Error de cota esperable (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect: {error:.3f} m (RMSE), good for a contour interval of {interval:.2f} m or more.</source>
      <translation>Error de cota que cabe esperar: {error:.3f} m (RMSE), válido para una equidistancia de {interval:.2f} m o más.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Height field (empty: Z)</source>
      <translation>Campo de cota (vacío: Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (empty: the points' Z)</source>
      <translation>Campo de cota (vacío: la Z de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (in the unit of the CRS; empty: the points' Z)</source>
      <translation>Campo de cota (en la unidad del SRC; vacío: la Z de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of grades and curves ({unit})</source>
      <translation>Cota de rasantes y acuerdos ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of surface {number} ({unit})</source>
      <translation>Cota de la superficie {number} ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Height of texts in DXF (m)</source>
      <translation>Altura de los textos en DXF (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Height of the faces (m; below 0: the second line is lower)</source>
      <translation>Altura de las caras (m; menor que 0: la segunda línea está más baja)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric.</source>
      <translation>Altura del geoide sobre el elipsoide: la altura elipsoidal menos ella es ortométrica.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Height of the pads (a number, or balance)</source>
      <translation>Cota de las plataformas (un número, o balance)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Height of the pit (unit of the CRS)</source>
      <translation>Cota del punto bajo (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of the surface ({unit})</source>
      <translation>Cota de la superficie ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Height offset between both (m, 1 sigma)</source>
      <translation>Desfase de cota entre ambas (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Height that balances cut and fill</source>
      <translation>Cota que compensa desmonte y terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height where they meet ({unit})</source>
      <translation>Cota donde se encuentran ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights (GeoTIFF)</source>
      <translation>Cotas (GeoTIFF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Heights and grades along a line over one or several surfaces, also as a sheet.</source>
      <translation>Cotas y pendientes a lo largo de una línea sobre una o varias superficies, también como hoja.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Heights and slopes at points</source>
      <translation>Cotas y pendientes en puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Heights are</source>
      <translation>Las cotas son</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights between the points</source>
      <translation>Cotas entre los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights in the file are</source>
      <translation>Las cotas del archivo son</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Heights of the first surface along the lines with stations.</source>
      <translation>Cotas de la primera superficie a lo largo de las líneas con estaciones.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Heights wander by this within a minute or two, so passes side by side differ by it. It hardly matters for a grade along the line, but it tilts a crossfall. 0 if every height has an error of its own.</source>
      <translation>Las cotas varían en esta magnitud en uno o dos minutos, de modo que pasadas contiguas difieren en ella. Apenas influye en una pendiente a lo largo de la línea, pero inclina una pendiente transversal. 0 si cada cota tiene un error propio.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights wanted</source>
      <translation>Cotas deseadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Heights were not tested against independent check points.</source>
      <translation>Las cotas no se ensayaron con puntos de comprobación independientes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights, smooth (drawing only)</source>
      <translation>Cotas, suavizadas (solo para dibujar)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Heights: {datum}</source>
      <translation>Cotas: {datum}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Highest fill (m)</source>
      <translation>Mayor terraplén (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Highest height ({unit})</source>
      <translation>Cota más alta ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Highest height of the first surface (m)</source>
      <translation>Cota más alta de la primera superficie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>How far a summit stands above, or a pit below, the way to the next one.</source>
      <translation>Cuánto se eleva una cima, o se hunde un punto bajo, respecto al camino hasta el siguiente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>How far an arc may stand off the chords that replace it.</source>
      <translation>Cuánto puede apartarse un arco de las cuerdas que lo sustituyen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>How heights repeat, run by run</source>
      <translation>Cómo se repiten las cotas, tramo a tramo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>How high a pad or a strip must lie for its cut to make its fill, and how sure that is.</source>
      <translation>A qué cota debe estar una plataforma o una franja para que su desmonte dé su terraplén, y con qué seguridad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>How much the ground bends: our own choice of values, no standard.</source>
      <translation>Cuánto se curva el terreno: valores elegidos por nosotros, no una norma.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>How steeply the plane falls; 0 is level.</source>
      <translation>Con qué pendiente cae el plano; 0 es horizontal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>How sure it is that both have the same height datum: other base, other geoid, other pole. It moves the volume by itself times the area, and is mostly the largest part.</source>
      <translation>Cuán seguro es que ambas tengan el mismo datum altimétrico: otra base, otro geoide, otro jalón. Desplaza el volumen en su valor por el área, y suele ser la parte mayor.</translation>
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
      <translation>Hummock encontró un fallo propio ({kind}: {reason}); el panel de registro contiene los detalles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock: from rover points to surface and contours</source>
      <translation>Hummock: de los puntos del rover a la superficie y las curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Import survey points</source>
      <translation>Importar los puntos del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>In DXF a layer for each level</source>
      <translation>En DXF, una capa por cada nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>In file order, such as name,easting,northing,height,code with - for a column to skip and +word to keep one as it is; or by header or number, such as easting=X,northing=Y,height=3. “Preview” fills it.</source>
      <translation>En el orden del archivo, como name,easting,northing,height,code con - para una columna que se omite y +palabra para conservar una tal como está; o por cabecera o número, como easting=X,northing=Y,height=3. «Vista previa» lo rellena.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>In place of the layer.</source>
      <translation>En lugar de la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>In the CRS wanted. Points without a height do not count in height.</source>
      <translation>En el SRC deseado. Los puntos sin cota no cuentan en altimetría.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>In the grid, or on the ground; these may have no CRS.</source>
      <translation>En la cuadrícula o en el terreno; estos pueden no tener SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>In the order of recording, such as the output of “Import survey points”.</source>
      <translation>En el orden de registro, como la salida de «Importar los puntos del levantamiento».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>In the order of the line, with grade, K and their standard deviations.</source>
      <translation>En el orden de la línea, con pendiente, K y sus desviaciones típicas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the order wanted, of: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</source>
      <translation>En el orden deseado, de entre: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>In the unit chosen, right positive: 0 for the line itself, else its parallel.</source>
      <translation>En la unidad elegida, positivo a la derecha: 0 para la propia línea, si no, su paralela.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen, seen in the way of rising stations.</source>
      <translation>En la unidad elegida, visto en el sentido de las estaciones crecientes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen: sections at whole multiples of it; 0 for none.</source>
      <translation>En la unidad elegida: secciones en múltiplos enteros de ella; 0 para ninguna.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>In the unit chosen: whole multiples of it, and both ends of the line.</source>
      <translation>En la unidad elegida: múltiplos enteros de ella, y ambos extremos de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the CRS; goes before Z and design surface.</source>
      <translation>En la unidad del SRC; tiene prioridad sobre Z y la superficie de proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>In the unit of the heights of the CRS.</source>
      <translation>En la unidad de las cotas del SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>In the unit of the interval.</source>
      <translation>En la unidad de la equidistancia.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table. Rows lie at whole multiples of the coordinates.</source>
      <translation>En la unidad de la tabla. Las filas están en múltiplos enteros de las coordenadas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table: 1250 for 1+250.</source>
      <translation>En la unidad de la tabla: 1250 para 1+250.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>In walking order.</source>
      <translation>En orden de recorrido.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>In {crs} the points are nowhere on the Earth.</source>
      <translation>En {crs} los puntos no están en ningún lugar de la Tierra.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Independent check points in the CRS of the points.</source>
      <translation>Puntos de comprobación independientes en el SRC de los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Independent check points in the CRS of the surface, for the accuracy on the plan.</source>
      <translation>Puntos de comprobación independientes en el SRC de la superficie, para la exactitud en el plano.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index contour</source>
      <translation>Curva maestra</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Index contour every … contours</source>
      <translation>Curva maestra cada … curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index depression contour</source>
      <translation>Curva maestra de depresión</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Inlets</source>
      <translation>Sumideros</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets and outlets</source>
      <translation>Sumideros y desagües</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets take water within (m)</source>
      <translation>Los sumideros recogen agua hasta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets without a name are numbered.</source>
      <translation>Los sumideros sin nombre se numeran.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Inner side of the ditch, 1 : n</source>
      <translation>Lado interior de la cuneta, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Inspect a surface</source>
      <translation>Inspeccionar una superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Intensity of the rain (mm/h or in/h)</source>
      <translation>Intensidad de la lluvia (mm/h o in/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Interval</source>
      <translation>Intervalo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Interval (in the unit below)</source>
      <translation>Equidistancia (en la unidad de abajo)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>It appears only when it is whole.</source>
      <translation>Aparece solo cuando está completo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>It holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², filled to {spill:.3f}.</source>
      <translation>Contiene {volume:.2f} ± {half:.2f} m³ (95 %) en {area:.1f} m², lleno hasta {spill:.3f}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>It is taken away, whatever the balance.</source>
      <translation>Se retira, sea cual sea la compensación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its degrees of freedom</source>
      <translation>Sus grados de libertad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its name; may be empty where the file holds one set.</source>
      <translation>Su nombre; puede quedar vacío si el archivo contiene un solo conjunto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation</source>
      <translation>Su desviación típica</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (%)</source>
      <translation>Su desviación típica (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (m)</source>
      <translation>Su desviación típica (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Its standard deviation ({unit})</source>
      <translation>Su desviación típica ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json)</source>
      <translation>Archivos JSON (*.json)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json);;All files (*)</source>
      <translation>Archivos JSON (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Join lines by the field codes</source>
      <translation>Unir líneas por los códigos de campo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>K ({unit} for each percent)</source>
      <translation>K ({unit} por cada uno por ciento)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Kerbs and walls (lines with heights)</source>
      <translation>Bordillos y muros (líneas con cotas)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Key map</source>
      <translation>Mapa guía</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Kind: grade, crest or sag</source>
      <translation>Tipo: rasante, acuerdo convexo o cóncavo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Label</source>
      <translation>Etiqueta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Label index contours only</source>
      <translation>Etiquetar solo las curvas maestras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML file</source>
      <translation>Archivo LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML files (*.xml *.landxml);;All files (*)</source>
      <translation>Archivos LandXML (*.xml *.landxml);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>LandXML files (*.xml)</source>
      <translation>Archivos LandXML (*.xml)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the left of the line</source>
      <translation>Carril a la izquierda de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the right of the line</source>
      <translation>Carril a la derecha de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Larger gives fewer curves.</source>
      <translation>Un valor mayor da menos acuerdos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest change of a height (m)</source>
      <translation>Mayor cambio de una cota (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Largest crossfall, either way (%)</source>
      <translation>Mayor pendiente transversal, en cualquier sentido (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Largest difference from the surface (m)</source>
      <translation>Mayor diferencia respecto a la superficie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Largest difference in height (m)</source>
      <translation>Mayor diferencia de cota (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Largest empty circles</source>
      <translation>Mayores círculos vacíos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Largest peak flow (l/s or ft³/s)</source>
      <translation>Mayor caudal punta (l/s o ft³/s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Largest residual (m)</source>
      <translation>Mayor residuo (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest shift of a line (m)</source>
      <translation>Mayor desplazamiento de una línea (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lay lines on a surface</source>
      <translation>Proyectar líneas sobre una superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Layer of control points in place of the file</source>
      <translation>Capa de puntos de apoyo en lugar del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Layer of points in place of the file</source>
      <translation>Capa de puntos en lugar del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Layers of the plan</source>
      <translation>Capas del plano</translation>
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <source>Leads through a survey, from its file to plan and report.</source>
      <translation>Guía por un levantamiento, desde su archivo hasta el plano y el informe.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Least area (m²)</source>
      <translation>Área mínima (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Least depth of a pond (m)</source>
      <translation>Profundidad mínima de un charco (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Least fall to an edge (%)</source>
      <translation>Caída mínima hacia un borde (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Least height of a spike (m)</source>
      <translation>Altura mínima de un pico (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Least piece of moved ground (m²)</source>
      <translation>Pieza mínima de terreno movido (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Least prominence of spot heights (m; empty: the interval)</source>
      <translation>Prominencia mínima de los puntos acotados (m; vacío: la equidistancia)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Leave it empty to compare with a level.</source>
      <translation>Déjelo vacío para comparar con un nivel.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Left empty, points are numbered, and offsets named by station and side.</source>
      <translation>Si se deja vacío, los puntos se numeran y los desplazamientos se nombran por estación y lado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Left over (m³)</source>
      <translation>Sobrante (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Legend</source>
      <translation>Leyenda</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length ({unit})</source>
      <translation>Longitud ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Length in plan (m)</source>
      <translation>Longitud en planta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the curve ({unit})</source>
      <translation>Longitud del acuerdo ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Length of the gaps (m)</source>
      <translation>Longitud de las interrupciones (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Length of the line (m)</source>
      <translation>Longitud de la línea (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the water along the line (m)</source>
      <translation>Longitud del agua a lo largo de la línea (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Level (height in the unit of the CRS)</source>
      <translation>Nivel (cota en la unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Level (height, in the unit of the CRS)</source>
      <translation>Nivel (cota, en la unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Level (unit of the CRS)</source>
      <translation>Nivel (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Level in place of a surface that is missing</source>
      <translation>Nivel en lugar de una superficie que falta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Level in the unit of the CRS, above_pit_m, area_m2 and volume_m3.</source>
      <translation>Nivel en la unidad del SRC, above_pit_m, area_m2 y volume_m3.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Level instead of a design (in the unit of the CRS)</source>
      <translation>Nivel en lugar de un proyecto (en la unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Level spot</source>
      <translation>Zona llana</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Levels of the curve</source>
      <translation>Niveles de la curva</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Levels polygons, or slopes them, with slopes of cut and fill to daylight.</source>
      <translation>Nivela polígonos, o les da pendiente, con taludes de desmonte y terraplén hasta el encuentro con el terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Limit</source>
      <translation>Límite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Limit (%)</source>
      <translation>Límite (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Limits as a file to edit</source>
      <translation>Límites como archivo para editar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <location filename="../plugin/processing/slopemap.py" />
      <source>Limits between the classes (%)</source>
      <translation>Límites entre las clases (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Limits of the road (CSV; empty: those that come with Hummock)</source>
      <translation>Límites de la carretera (CSV; vacío: los que acompañan a Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Line</source>
      <translation>Línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Line for sections (check by other methods)</source>
      <translation>Línea para perfiles transversales (comprobación por otros métodos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Line of a road</source>
      <translation>Línea de una carretera</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Line of column names</source>
      <translation>Línea de nombres de columnas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Line of the file</source>
      <translation>Línea del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Lines</source>
      <translation>Líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines drawn along edges of the pads. Edges within 0.1 m of a line take its slopes, from the fields cut_run and fill_run (1 : n) of the layer.</source>
      <translation>Líneas dibujadas a lo largo de bordes de las plataformas. Los bordes a menos de 0.1 m de una línea toman sus taludes, de los campos cut_run y fill_run (1 : n) de la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Lines in the direction of the water.</source>
      <translation>Líneas en la dirección del agua.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Lines in the file</source>
      <translation>Líneas del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Lines of no cut and no fill</source>
      <translation>Líneas de paso</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Lines of the surface</source>
      <translation>Líneas de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines on the surface</source>
      <translation>Líneas sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines or polygon outlines that must be edges of the surface.</source>
      <translation>Líneas o contornos de polígonos que deben ser aristas de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Lines rejected</source>
      <translation>Líneas rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that become edges and take their heights from the surface around them.</source>
      <translation>Líneas que pasan a ser aristas y toman sus cotas de la superficie que las rodea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Lines that begin with #; switch off for a data collector that cannot skip them.</source>
      <translation>Líneas que empiezan por #; desactívelo para una libreta de campo que no pueda omitirlas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that cross are joined there by a new point; this gives its height.</source>
      <translation>Las líneas que se cruzan se unen allí con un punto nuevo; esto da su cota.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines that follow no edge of a pad, not used: {count} of {total}.</source>
      <translation>Líneas que no siguen ningún borde de una plataforma, no usadas: {count} de {total}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Lines to walk</source>
      <translation>Líneas de recorrido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines whose heights differ by up to this are joined at their mean.</source>
      <translation>Las líneas cuyas cotas difieren hasta este valor se unen en su media.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Lines with heights from left to right, one for each surface and part.</source>
      <translation>Líneas con cotas de izquierda a derecha, una por cada superficie y parte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Lines with level, index and depression.</source>
      <translation>Líneas con nivel, maestra y depresión.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Lines with level, index and depression; for drawing only.</source>
      <translation>Líneas con nivel, maestra y depresión; solo para dibujar.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Lines with stations</source>
      <translation>Líneas con estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines: {lines}, pieces on the surface: {pieces}.</source>
      <translation>Líneas: {lines}, partes sobre la superficie: {pieces}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Link</source>
      <translation>Enlace</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Links between them: {length:.0f} m (lines: {count})</source>
      <translation>Enlaces entre ellas: {length:.0f} m (líneas: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Load of a truck (m³ loose)</source>
      <translation>Carga de un camión (m³ esponjados)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Loads: {waste} of waste, {borrow} of borrow.</source>
      <translation>Viajes: {waste} de sobrante, {borrow} de préstamo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Long edges: longer than (m; empty: from the spacing)</source>
      <translation>Aristas largas: de más de (m; vacío: según la separación)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Long edges: more than … times the distance of the passes</source>
      <translation>Aristas largas: más de … veces la distancia entre pasadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Long triangles</source>
      <translation>Triángulos largos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Longest edge at the rim (m; empty: no limit)</source>
      <translation>Mayor arista en el borde (m; vacío: sin límite)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Look for gaps</source>
      <translation>Buscar lagunas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Loose from one cubic metre in the ground (m³)</source>
      <translation>Volumen esponjado de un metro cúbico en el terreno (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points</source>
      <translation>Lugares bajos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points of the edges</source>
      <translation>Lugares bajos de los bordes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Lower it to see more of them.</source>
      <translation>Redúzcalo para ver más.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Lowest height ({unit})</source>
      <translation>Cota más baja ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Lowest height of the first surface (m)</source>
      <translation>Cota más baja de la primera superficie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Made if missing.</source>
      <translation>Se crea si falta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Made only when asked for.</source>
      <translation>Se crea solo cuando se pide.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Make the plan</source>
      <translation>Crear el plano</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Maps and tables of paths, ponds and catchments, with method, sources and limits.</source>
      <translation>Mapas y tablas de caminos, charcos y cuencas, con método, fuentes y límites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Maps before and after, tables of ponds and of moved ground, with limits.</source>
      <translation>Mapas de antes y después, tablas de charcos y de terreno movido, con límites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Marks ground that falls too little to shed water.</source>
      <translation>Marca el terreno cuya caída es demasiado pequeña para evacuar el agua.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Marks what a surveyor would warn of: spikes, gaps, long and level triangles.</source>
      <translation>Marca aquello de lo que advertiría un topógrafo: picos, interrupciones, triángulos largos y llanos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Mass diagram (pieces of the centreline)</source>
      <translation>Diagrama de masas (partes del eje)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Material at the surface</source>
      <translation>Material en la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of cut (m)</source>
      <translation>Profundidad media de desmonte (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Mean depth of fill (m)</source>
      <translation>Profundidad media de terraplén (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Mean difference, the bias (m)</source>
      <translation>Diferencia media, el sesgo (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Mean gradient over (m)</source>
      <translation>Pendiente media a lo largo de (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Method: rational, Q = C i A ({source}).</source>
      <translation>Método: racional, Q = C i A ({source}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre down.</source>
      <translation>Metros en horizontal por cada metro de bajada.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre up. What stands depends on the soil: see the cautions.</source>
      <translation>Metros en horizontal por cada metro de subida. Lo que se sostiene depende del suelo: véanse las advertencias.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Middle: {lat}° {north}, {lon}° {east} in {crs}</source>
      <translation>Centro: {lat}° {north}, {lon}° {east} en {crs}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>More breaklines</source>
      <translation>Más líneas de rotura</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>More files of the same site</source>
      <translation>Más archivos del mismo emplazamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>More files that are handed over</source>
      <translation>Más archivos que se entregan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>More findings, all in the layer of findings: {count}.</source>
      <translation>Más hallazgos, todos en la capa de hallazgos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>More layers</source>
      <translation>Más capas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>More layers of points of the same site</source>
      <translation>Más capas de puntos del mismo emplazamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>More surfaces</source>
      <translation>Más superficies</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>N</source>
      <translation>N</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Name</source>
      <translation>Nombre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Name field (empty: “name” where there is one)</source>
      <translation>Campo de nombre (vacío: «name» si existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Name field (of points)</source>
      <translation>Campo de nombre (de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Name of an inlet (empty: the field name, if there is one)</source>
      <translation>Nombre de un sumidero (vacío: el campo name, si existe)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Name of the files</source>
      <translation>Nombre de los archivos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Name of the surface</source>
      <translation>Nombre de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Names in more than one file</source>
      <translation>Nombres en más de un archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Names parted by commas. Their residuals are shown all the same.</source>
      <translation>Nombres separados por comas. Sus residuos se muestran de todos modos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Names that come again get a number behind them.</source>
      <translation>Los nombres que se repiten llevan un número detrás.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Neighbours share drift within (m)</source>
      <translation>Los vecinos comparten deriva hasta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>New pond</source>
      <translation>Charco nuevo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>No cell centre lies on the surface: the raster is empty. Choose smaller cells.</source>
      <translation>Ningún centro de celda cae sobre la superficie: el ráster está vacío. Elija celdas más pequeñas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>No cut, no fill</source>
      <translation>Línea de paso</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there are no contours. Choose a smaller interval.</source>
      <translation>Ningún nivel queda entre la cota más baja ({low:.3f} {unit}) y la más alta ({high:.3f} {unit}): no hay curvas de nivel. Elija una equidistancia menor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No place of a line moves farther. In metres whatever the CRS.</source>
      <translation>Ningún lugar de una línea se mueve más. En metros sea cual sea el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>No place should be farther than this from a measured point.</source>
      <translation>Ningún lugar debería estar más lejos de un punto medido.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>No surface</source>
      <translation>Sin superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>No vertex of the given surface is farther above or below the new one.</source>
      <translation>Ningún vértice de la superficie dada queda más por encima o por debajo de la nueva.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Noise from point to point {white:.1f} mm; no place was visited twice to tell more.</source>
      <translation>Ruido de punto a punto {white:.1f} mm; ningún lugar se visitó dos veces para saber más.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Noise of a height: standard deviation (m)</source>
      <translation>Ruido de una cota: desviación típica (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Noise of a surveyed height (m, 1 sigma)</source>
      <translation>Ruido de una cota levantada (m, 1 sigma)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Noise: {count} of {vertices} vertices of the surface are points of {layer}.</source>
      <translation>Ruido: {count} de {vertices} vértices de la superficie son puntos de {layer}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Northing (unit of the CRS)</source>
      <translation>Coordenada norte (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Northing of the origin</source>
      <translation>Coordenada norte del origen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Not a design for construction: whether slopes stand, and safety while they are dug, need licensed practice and the local codes.</source>
      <translation>No es un proyecto de construcción: la estabilidad de los taludes y la seguridad mientras se excavan requieren un profesional habilitado y la normativa local.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not a payment certificate: the contract says what is measured and by whom. Locate buried services before anyone digs.</source>
      <translation>No es una certificación de pago: el contrato dice qué se mide y quién lo mide. Localice los servicios enterrados antes de que nadie excave.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Not applied</source>
      <translation>No aplicado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: design only (m²)</source>
      <translation>No comparado: solo proyecto (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not compared: existing surface only (m²)</source>
      <translation>No comparado: solo superficie existente (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Not for setting out without independent checks. Parcels are no boundary survey; buried services are not shown.</source>
      <translation>No apto para replantear sin comprobaciones independientes. Las parcelas no son un deslinde; los servicios enterrados no se muestran.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Notes at the head of the table</source>
      <translation>Notas en la cabecera de la tabla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Number of areas</source>
      <translation>Número de áreas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Number of arrows</source>
      <translation>Número de flechas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Number of catchments</source>
      <translation>Número de cuencas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of contours</source>
      <translation>Número de curvas de nivel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Number of cross-sections</source>
      <translation>Número de perfiles transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Number of findings</source>
      <translation>Número de hallazgos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of gaps</source>
      <translation>Número de lagunas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Number of labels</source>
      <translation>Número de etiquetas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Number of paths</source>
      <translation>Número de caminos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of pieces on the surface</source>
      <translation>Número de partes sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of pits, those of noise too</source>
      <translation>Número de puntos bajos, incluidos los de ruido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Number of places to walk again</source>
      <translation>Número de lugares que hay que volver a recorrer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Number of points</source>
      <translation>Número de puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of ponds</source>
      <translation>Número de charcos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of sheets</source>
      <translation>Número de hojas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of spot heights</source>
      <translation>Número de puntos acotados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the cross-section</source>
      <translation>Número del perfil transversal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the curve</source>
      <translation>Número del acuerdo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the rule</source>
      <translation>Número de la regla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the surface</source>
      <translation>Número de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Number of triangles</source>
      <translation>Número de triángulos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of vertical curves</source>
      <translation>Número de acuerdos verticales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of a fit with four parameters. A plane takes up a slope of the geoid over the site.</source>
      <translation>De un ajuste con cuatro parámetros. Un plano absorbe una inclinación del geoide en el emplazamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates and heights.</source>
      <translation>De coordenadas y cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates, heights and stations in the table, and of the lengths given here.</source>
      <translation>De las coordenadas, cotas y estaciones de la tabla, y de las longitudes dadas aquí.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Of each of its points by itself: 0 for a design, more for a second survey.</source>
      <translation>De cada uno de sus puntos por sí solo: 0 para un proyecto, más para un segundo levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of easting, northing and height as they stand in the layer.</source>
      <translation>De las coordenadas este y norte y de la cota tal como figuran en la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of it the part that drifts (m)</source>
      <translation>De ella, la parte que deriva (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of its easting, northing and height.</source>
      <translation>De sus coordenadas este y norte y de su cota.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of one surveyed height, its drift included. “Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>De una cota levantada, incluida su deriva. «Comprobar el levantamiento» la determina; 15 mm es lo habitual en RTK (práctica común, sin fuente).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: a table of the points that share a name. All of them are kept.</source>
      <translation>De varios archivos: una tabla de los puntos que comparten nombre. Se conservan todos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: pairs of points at one place whose heights differ.</source>
      <translation>De varios archivos: pares de puntos en un mismo lugar cuyas cotas difieren.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of survey and control together. Empty: estimated from the residuals, which tells fewer errors.</source>
      <translation>Del levantamiento y los puntos de apoyo en conjunto. Vacío: se estima a partir de los residuos, lo que revela menos errores.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Of the intensity and of the results. Nothing is rounded between them.</source>
      <translation>De la intensidad y de los resultados. Entre ellos no se redondea nada.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Of the plane; where it slopes, its height at the place below.</source>
      <translation>Del plano; si está inclinado, su cota en el lugar indicado abajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Of the profile as a layer; the sheet has scales of its own.</source>
      <translation>Del perfil longitudinal como capa; la hoja tiene escalas propias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of the sheets in PDF. Print them at 100 %, without fitting to the page.</source>
      <translation>De las hojas en PDF. Imprímalas al 100 %, sin ajustar a la página.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Of the value.</source>
      <translation>Del valor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of what is given and shown here. Coordinates of layers stay in the unit of the CRS.</source>
      <translation>De lo que se da y se muestra aquí. Las coordenadas de las capas siguen en la unidad del SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Off the surface</source>
      <translation>Fuera de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Offset of the line whose grade is taken</source>
      <translation>Desplazamiento de la línea cuya pendiente se toma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Offset of the second line in plan (m)</source>
      <translation>Desplazamiento de la segunda línea en planta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Offset, right above 0 (unit of the CRS)</source>
      <translation>Desplazamiento, a la derecha mayor que 0 (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Offset, right positive ({unit})</source>
      <translation>Desplazamiento, positivo a la derecha ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Offsets from lines</source>
      <translation>Desplazamientos desde líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Offsets: “{text}” is no list of numbers, such as -3.5, 0, 3.5.</source>
      <translation>Desplazamientos: «{text}» no es una lista de números, como -3.5, 0, 3.5.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>On a slope a pole held aside meets another height.</source>
      <translation>En una pendiente, un jalón sostenido a un lado da con otra cota.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>On the demo survey:</source>
      <translation>En el levantamiento de demostración:</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>One band of heights in the unit of the CRS; the file's name ends in .tif.</source>
      <translation>Una banda de cotas en la unidad del SRC; el nombre del archivo termina en .tif.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>One line, such as a centreline, in the CRS of the surface. Stations grow in the way it was drawn. Of a layer with several lines select one and tick “Selected features only”.</source>
      <translation>Una línea, como un eje, en el SRC de la superficie. Las estaciones crecen en el sentido en que se dibujó. Si la capa tiene varias líneas, seleccione una y marque «Solo objetos seleccionados».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>One page with numbers, doubt, map, histogram, other methods and cautions.</source>
      <translation>Una página con cifras, incertidumbre, mapa, histograma, otros métodos y advertencias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>One page: plan, sections, volumes with their doubt, balance, other methods, cautions.</source>
      <translation>Una página: planta, perfiles transversales, volúmenes con su incertidumbre, compensación, otros métodos, advertencias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>One row for each control point that was surveyed, at its known place.</source>
      <translation>Una fila por cada punto de apoyo levantado, en su posición conocida.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Only for points whose geometry has no heights.</source>
      <translation>Solo para puntos cuya geometría no tiene cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Only inside these polygons</source>
      <translation>Solo dentro de estos polígonos</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Only the first part of a long file is shown and counted here.</source>
      <translation>De un archivo largo, aquí solo se muestra y cuenta la primera parte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Only where heights are in another unit than easting and northing.</source>
      <translation>Solo si las cotas están en otra unidad que las coordenadas este y norte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Only where the file does not say it and heights are to be changed.</source>
      <translation>Solo si el archivo no lo indica y hay que cambiar las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Open</source>
      <translation>Abrir</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Open: {question}.</source>
      <translation>Pendiente: {question}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Opens its dialog; what you run there becomes a step of the job.</source>
      <translation>Abre su diálogo; lo que ejecute allí pasa a ser un paso del trabajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Optional in the standard; makes the file larger.</source>
      <translation>Opcional en la norma; hace el archivo más grande.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Options…</source>
      <translation>Opciones…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Origin</source>
      <translation>Origen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Origin in the grid (empty: the middle of the points)</source>
      <translation>Origen en la cuadrícula (vacío: el centro de los puntos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Other days or rovers.</source>
      <translation>Otros días o rovers.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Other days or rovers. All points are kept with their file; names that occur twice and same places with different heights are reported.</source>
      <translation>Otros días o rovers. Todos los puntos se conservan con su archivo; se informa de los nombres repetidos y de los mismos lugares con cotas distintas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Other surface</source>
      <translation>Otra superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Otherwise contours lie on CONTOUR and CONTOUR_INDEX.</source>
      <translation>Si no, las curvas de nivel están en CONTOUR y CONTOUR_INDEX.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Otherwise the strip ends with a steep face where it is above or below the ground.</source>
      <translation>Si no, la franja termina con una cara vertical donde está por encima o por debajo del terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Otherwise they are laid on the surface. Z is in the unit of the CRS of the surface.</source>
      <translation>Si no, se proyectan sobre la superficie. Z está en la unidad del SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Outlets on the rim: least catchment (m²)</source>
      <translation>Desagües en el borde: cuenca mínima (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Outside the surface</source>
      <translation>Fuera de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>PDOP</source>
      <translation>PDOP</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used only when its name, as the refusal shows it, is written here; several are parted by |.</source>
      <translation>PROJ puede tener solo una operación aproximada, o carecer del archivo de rejilla de una mejor. Una operación así se usa solo si aquí se escribe su nombre, tal como lo muestra el aviso de rechazo; varias se separan con |.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pad {name}: nothing says how high it is; give a level, or fill the field.</source>
      <translation>Plataforma {name}: nada indica a qué cota está; indique un nivel o rellene el campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pads (polygons)</source>
      <translation>Plataformas (polígonos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Pads to be graded</source>
      <translation>Plataformas por explanar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Page (HTML)</source>
      <translation>Página (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pages.py" />
      <source>Page {page} of {pages}</source>
      <translation>Página {page} de {pages}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Pairs of cross-sections that cross</source>
      <translation>Pares de perfiles transversales que se cruzan</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Paper</source>
      <translation>Papel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Parcels</source>
      <translation>Parcelas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Parcels or phases whose volumes are told apart; the field name names them.</source>
      <translation>Parcelas o fases cuyos volúmenes se distinguen; el campo name les da nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Part of pond</source>
      <translation>Parte del charco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Part of the section on the surface</source>
      <translation>Parte de la sección sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Pass</source>
      <translation>Cumple</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Pass walked</source>
      <translation>Pasada recorrida</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes across</source>
      <translation>Pasadas a través</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are at most half of it apart.</source>
      <translation>Las pasadas distan como máximo la mitad de ella.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are {spacing:.2f} m apart.</source>
      <translation>Las pasadas están separadas {spacing:.2f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes never farther apart than (m)</source>
      <translation>Pasadas nunca más separadas que (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Passes: {length:.0f} m (lines: {count})</source>
      <translation>Pasadas: {length:.0f} m (líneas: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path after</source>
      <translation>Camino después</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path before</source>
      <translation>Camino antes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Paths before and after</source>
      <translation>Caminos antes y después</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths of water</source>
      <translation>Caminos del agua</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Paths, ponds and catchments.</source>
      <translation>Caminos, charcos y cuencas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths: {PATHS}. Starts whose water leaves over the rim: {TO_RIM}, comes to an inlet: {TO_INLETS}, stays in a pit or pond: {STAY}.</source>
      <translation>Caminos: {PATHS}. Inicios cuya agua sale por el borde: {TO_RIM}, llega a un sumidero: {TO_INLETS}, se queda en un punto bajo o charco: {STAY}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Pattern of a code (regular expression; empty: code, line number, words)</source>
      <translation>Patrón de un código (expresión regular; vacío: código, número de línea, palabras)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flow (rational method)</source>
      <translation>Caudal punta (método racional)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flows</source>
      <translation>Caudales punta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per depth class.</source>
      <translation>Por clase de profundidad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per material.</source>
      <translation>Por material.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Perimeter</source>
      <translation>Perímetro</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Perimeter: {length:.0f} m (lines: {count})</source>
      <translation>Perímetro: {length:.0f} m (líneas: {count})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pit</source>
      <translation>Punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Pit and spill</source>
      <translation>Punto bajo y rebose</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and ponds</source>
      <translation>Puntos bajos y charcos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and spill points</source>
      <translation>Puntos bajos y puntos de rebose</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits: {PIT_COUNT}; ponds that noise does not explain: {PONDS}, {AREA:.1f} m² and {VOLUME:.2f} m³ when all are full.</source>
      <translation>Puntos bajos: {PIT_COUNT}; charcos que el ruido no explica: {PONDS}, {AREA:.1f} m² y {VOLUME:.2f} m³ cuando todos están llenos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Place that has the level (empty: middle of the surface)</source>
      <translation>Lugar que tiene el nivel (vacío: centro de la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again</source>
      <translation>Lugares que hay que volver a recorrer</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as CSV</source>
      <translation>Lugares que hay que volver a recorrer como CSV</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as GPX</source>
      <translation>Lugares que hay que volver a recorrer como GPX</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/planlayout.py" />
      <source>Plan</source>
      <translation>Plano</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Plan (PDF)</source>
      <translation>Plano (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area (m²)</source>
      <translation>Área en planta (m²)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area {area:.1f} m², heights {low:.3f} m to {high:.3f} m.</source>
      <translation>Área en planta {area:.1f} m², cotas de {low:.3f} m a {high:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Platform and slopes to daylight; the CRS is written beside it as .prj.</source>
      <translation>Plataforma y taludes hasta el encuentro con el terreno; el SRC se escribe junto a ella como .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform break</source>
      <translation>Quiebro de la plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform edge</source>
      <translation>Borde de la plataforma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Point beside a line</source>
      <translation>Punto junto a una línea</translation>
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
      <translation>Puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Points (gullies, the end of a pipe, an outlet on the rim) or lines (a trench drain). Each takes all water that reaches a triangle near it. In another CRS they are brought into that of the surface.</source>
      <translation>Puntos (imbornales, el extremo de un tubo, un desagüe en el borde) o líneas (un canal de drenaje). Cada uno recoge toda el agua que llega a un triángulo cercano a él. Si están en otro SRC, se llevan al de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: nearer in plan than (m)</source>
      <translation>Puntos junto a una línea: más cerca en planta que (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: off in height by more than (m)</source>
      <translation>Puntos junto a una línea: diferencia en cota mayor que (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points changed</source>
      <translation>Puntos cambiados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points decided by hand against the checks</source>
      <translation>Puntos decididos a mano en contra de las comprobaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points flagged</source>
      <translation>Puntos marcados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points of lines were placed on purpose: they are held against their line only.</source>
      <translation>Los puntos de líneas se situaron a propósito: solo se contrastan con su línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Points of the cross-sections</source>
      <translation>Puntos de los perfiles transversales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface</source>
      <translation>Puntos fuera de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface or without a place, left empty: {count}.</source>
      <translation>Puntos fuera de la superficie o sin posición, dejados vacíos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points on the ground carry none, so it has to be given for the way to the grid.</source>
      <translation>Los puntos en terreno no llevan ninguno, por lo que hay que indicarlo para pasar a la cuadrícula.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface</source>
      <translation>Puntos sobre la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface: {count}.</source>
      <translation>Puntos sobre la superficie: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points outside the area of use of the CRS</source>
      <translation>Puntos fuera del área de uso del SRC</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Points read</source>
      <translation>Puntos leídos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points rejected</source>
      <translation>Puntos rechazados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points so near to a breakline should have its height.</source>
      <translation>Los puntos tan próximos a una línea de rotura deberían tener su cota.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points that may shape the surface</source>
      <translation>Puntos que pueden dar forma a la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points to ask at</source>
      <translation>Puntos de consulta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points to set out</source>
      <translation>Puntos de replanteo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Points to use, flag or reject, by their line.</source>
      <translation>Puntos que usar, marcar o rechazar, por su línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Points under water</source>
      <translation>Puntos bajo el agua</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points used</source>
      <translation>Puntos usados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points used: {used}, flagged: {flagged}, rejected: {rejected}.</source>
      <translation>Puntos usados: {used}, marcados: {flagged}, rechazados: {rejected}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points used: {used}, rejected: {rejected}. Triangles: {triangles}; taken off outside the boundary or in voids: {outside}, at the rim: {trimmed}.</source>
      <translation>Puntos usados: {used}, rechazados: {rejected}. Triángulos: {triangles}; quitados fuera del contorno o en huecos: {outside}, en el borde: {trimmed}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Points with Z or with a height field, in the CRS of the surface.</source>
      <translation>Puntos con Z o con un campo de cota, en el SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Points with Z or with a height field. Its CRS is that of its coordinates.</source>
      <translation>Puntos con Z o con un campo de cota. Su SRC es el de sus coordenadas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Points with a name, in walking order; radius_m is how far anything measured was.</source>
      <translation>Puntos con nombre, en orden de recorrido; radius_m es a qué distancia quedaba lo más próximo que se midió.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points with heights</source>
      <translation>Puntos con cotas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Points with heights are added. A column “edit” may say move_point (a new height, or a “difference”), swap_edge, remove_triangle or add_triangle instead; “height” goes before Z, in the CRS's unit.</source>
      <translation>Se añaden puntos con cotas. Una columna «edit» puede decir en su lugar move_point (una cota nueva, o una «difference»), swap_edge, remove_triangle o add_triangle; «height» tiene prioridad sobre Z, en la unidad del SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points with heights in the unit of the CRS, all columns of the file, and a status.</source>
      <translation>Puntos con cotas en la unidad del SRC, todas las columnas del archivo y un estado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points with heights, such as the output of “Import survey points”.</source>
      <translation>Puntos con cotas, como la salida de «Importar los puntos del levantamiento».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Points with text, rotation (degrees clockwise) and size, styled to show the text.</source>
      <translation>Puntos con texto, rotación (grados en sentido horario) y tamaño, con un estilo que muestra el texto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points without design height</source>
      <translation>Puntos sin cota de proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Points written</source>
      <translation>Puntos escritos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Points, lines or polygons in the CRS of the existing surface.</source>
      <translation>Puntos, líneas o polígonos en el SRC de la superficie existente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points: {points}, control points: {control}. Fill up to {fill:.3f} m, cut up to {cut:.3f} m.</source>
      <translation>Puntos: {points}, puntos de apoyo: {control}. Terraplén de hasta {fill:.3f} m, desmonte de hasta {cut:.3f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons in a projected CRS.</source>
      <translation>Polígonos en un SRC proyectado.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines that the surface leaves out, such as buildings.</source>
      <translation>Polígonos o líneas cerradas que la superficie deja fuera, como edificios.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines: the surface ends there. A ring in a ring is a hole.</source>
      <translation>Polígonos o líneas cerradas: la superficie termina allí. Un anillo dentro de un anillo es un agujero.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons, each with a runoff coefficient. Ground without one takes that of its catchment.</source>
      <translation>Polígonos, cada uno con un coeficiente de escorrentía. El terreno sin él toma el de su cuenca.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Polygons, in a projected CRS; holes are left out. Select features to plan some only.</source>
      <translation>Polígonos, en un SRC proyectado; los agujeros se omiten. Seleccione objetos espaciales para planificar solo algunos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Polygons, or lines that are closed; one feature a stockpile or pit.</source>
      <translation>Polígonos, o líneas cerradas; un objeto espacial por acopio o excavación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond</source>
      <translation>Charco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond after</source>
      <translation>Charco después</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond before</source>
      <translation>Charco antes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Ponds</source>
      <translation>Charcos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds compared</source>
      <translation>Charcos comparados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds new: {NEW}, gone: {GONE}, deeper or shallower: {CHANGED}; {VOLUME:+.2f} m³ in full ponds; {MOVED_AREA:.1f} m² whose water goes elsewhere.</source>
      <translation>Charcos nuevos: {NEW}, desaparecidos: {GONE}, más o menos profundos: {CHANGED}; {VOLUME:+.2f} m³ en charcos llenos; {MOVED_AREA:.1f} m² cuya agua va a otra parte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are deeper or shallower</source>
      <translation>Charcos más o menos profundos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are gone</source>
      <translation>Charcos desaparecidos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are new</source>
      <translation>Charcos nuevos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Ponds: chance of noise at most (%)</source>
      <translation>Charcos: probabilidad máxima de que sean ruido (%)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview</source>
      <translation>Vista previa</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Preview of the survey</source>
      <translation>Vista previa del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview…</source>
      <translation>Vista previa…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Profile (CSV; empty: the Z of the line)</source>
      <translation>Perfil longitudinal (CSV; vacío: la Z de la línea)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile along a line</source>
      <translation>Perfil longitudinal a lo largo de una línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile in its plane</source>
      <translation>Perfil longitudinal en su plano</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Profile, sections and grades along it, checked against limits.</source>
      <translation>Perfil longitudinal, perfiles transversales y pendientes a lo largo de ella, comprobados con límites.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Profiles take the largest usual scale that fits, cross-sections that of the lengths.</source>
      <translation>Los perfiles longitudinales toman la mayor escala usual que quepa; los transversales, la de las longitudes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Project</source>
      <translation>Proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Proposes where to walk on an area, how far and how long, before going out.</source>
      <translation>Propone por dónde recorrer una zona, qué distancia y cuánto tiempo, antes de salir.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Put layers and layout into the project</source>
      <translation>Añadir capas y composición al proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>QGIS knows no CRS of this code.</source>
      <translation>QGIS no conoce ningún SRC con este código.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Quality</source>
      <translation>Calidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Quantity</source>
      <translation>Magnitud</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>RMSE (m)</source>
      <translation>RMSE (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Radius of the widest empty circle (m)</source>
      <translation>Radio del mayor círculo vacío (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Raise it where edits were drawn without snapping to the points.</source>
      <translation>Auméntelo donde las ediciones se dibujaron sin autoensamblado a los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Raises or lowers the whole design until cut, times the fill that a cubic metre of it makes, equals fill and the surplus.</source>
      <translation>Sube o baja todo el proyecto hasta que el desmonte, multiplicado por el terraplén que da un metro cúbico de él, iguale al terraplén y el sobrante.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Read LandXML</source>
      <translation>Leer LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Read coordinates outside the area of use as</source>
      <translation>Leer las coordenadas fuera del área de uso como</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Read the field codes</source>
      <translation>Leer los códigos de campo</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Read the points</source>
      <translation>Leer los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Read them so: {cause}</source>
      <translation>Leerlas así: {cause}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Reads a survey file into a point layer and accounts for every line of it.</source>
      <translation>Lee un archivo de levantamiento en una capa de puntos y da cuenta de cada una de sus líneas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Reads surfaces, points, lines and alignments of a LandXML file.</source>
      <translation>Lee superficies, puntos, líneas y alineaciones de un archivo LandXML.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Regions</source>
      <translation>Regiones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Regions of the volumes</source>
      <translation>Regiones de los volúmenes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Rejected (not in the surface)</source>
      <translation>Rechazado (no está en la superficie)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Rejected lines</source>
      <translation>Líneas rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Remove</source>
      <translation>Quitar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Report (HTML)</source>
      <translation>Informe (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report (PDF)</source>
      <translation>Informe (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Report of the change (HTML)</source>
      <translation>Informe del cambio (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Report of the ponds (HTML)</source>
      <translation>Informe de los charcos (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey</source>
      <translation>Informe del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey {file}</source>
      <translation>Informe del levantamiento {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Report of the water (HTML)</source>
      <translation>Informe del agua (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report, surface, contours and tables; files of these names there are replaced.</source>
      <translation>Informe, superficie, curvas de nivel y tablas; se sustituyen los archivos de esos nombres que haya allí.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Residuals</source>
      <translation>Residuos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Residuals at control</source>
      <translation>Residuos en los puntos de apoyo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Ridges</source>
      <translation>Divisorias</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Rim as boundary where there is no other</source>
      <translation>Borde como contorno donde no haya otro</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rising depths such as 0.1; 0.25; 0.5; 1, used for cut and for fill.</source>
      <translation>Profundidades crecientes como 0.1; 0.25; 0.5; 1, para el desmonte y para el terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Rising numbers with semicolons or blanks between them.</source>
      <translation>Números crecientes separados por punto y coma o espacios.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Rising numbers with semicolons or blanks between them. They are no standard.</source>
      <translation>Números crecientes separados por punto y coma o espacios. No son una norma.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Roads and lines</source>
      <translation>Carreteras y líneas</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>Role of column {number}</source>
      <translation>Función de la columna {number}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Root mean square difference (m)</source>
      <translation>Media cuadrática de las diferencias (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Round corners are cones in facets of 10 degrees; mitred ones carry both slopes on.</source>
      <translation>Las esquinas redondeadas son conos en facetas de 10 grados; las de inglete prolongan ambos taludes.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Rows</source>
      <translation>Filas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rows of cut, fill and net (m³) with the ends of the 95 % interval and the standard deviations apart: random, drift, systematic and surface model.</source>
      <translation>Filas de desmonte, terraplén y neto (m³) con los extremos del intervalo del 95 % y las desviaciones típicas por separado: aleatoria, deriva, sistemática y modelo de superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Rule</source>
      <translation>Regla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Rule does not apply</source>
      <translation>La regla no se aplica</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Rules bring the window over which their slope is taken.</source>
      <translation>Las reglas traen la ventana sobre la que se toma su pendiente.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Run</source>
      <translation>Ejecutar</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run everything</source>
      <translation>Ejecutar todo</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run what is out of date</source>
      <translation>Ejecutar lo desactualizado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Runoff coefficient</source>
      <translation>Coeficiente de escorrentía</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Runs that met others at {least} places or more: {met} of {count}, standard deviations {low:.1f} to {high:.1f} mm; claims outside the 95 % interval of their run: {off}.</source>
      <translation>Tramos que se encontraron con otros en {least} lugares o más: {met} de {count}, desviaciones típicas de {low:.1f} a {high:.1f} mm; declaraciones fuera del intervalo del 95 % de su tramo: {off}.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>S</source>
      <translation>S</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>S makes S001, S002, …; give each job another one.</source>
      <translation>S da S001, S002, …; use otro para cada trabajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Saddle</source>
      <translation>Collado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Sag</source>
      <translation>Acuerdo cóncavo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Same places with different heights</source>
      <translation>Mismos lugares con cotas distintas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line in the grid (m)</source>
      <translation>Línea de muestra en la cuadrícula (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line on the ground (m)</source>
      <translation>Línea de muestra en el terreno (m)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Say the CRS of the survey, such as EPSG:25832.</source>
      <translation>Indique el SRC del levantamiento, como EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Say which field of the ground cover holds its runoff coefficient.</source>
      <translation>Indique qué campo de la cubierta del suelo contiene su coeficiente de escorrentía.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Scale</source>
      <translation>Escala</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of heights (1 : N; empty: chosen)</source>
      <translation>Escala de las cotas (1 : N; vacío: se elige)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of lengths (1 : N)</source>
      <translation>Escala de las longitudes (1 : N)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Scale of the plan, 1 : …</source>
      <translation>Escala del plano, 1 : …</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Scales points between ground distances and the grid of the CRS about an origin.</source>
      <translation>Escala los puntos entre distancias en el terreno y la cuadrícula del SRC alrededor de un origen.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Second line</source>
      <translation>Segunda línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Second surface</source>
      <translation>Segunda superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Second surface (2DM mesh), such as a design</source>
      <translation>Segunda superficie (malla 2DM), como un proyecto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Sections reach to each side (m)</source>
      <translation>Alcance de los perfiles transversales a cada lado (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Separator</source>
      <translation>Separador</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Set of the file</source>
      <translation>Conjunto del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Set out</source>
      <translation>Replantear</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Set-out points with design height, cut and fill, and a table for data collectors.</source>
      <translation>Puntos de replanteo con cota de proyecto, desmonte y terraplén, y una tabla para libretas de campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Seven parameters also tilt the survey; level instruments need four.</source>
      <translation>Siete parámetros también inclinan el levantamiento; los instrumentos nivelados necesitan cuatro.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Shallower</source>
      <translation>Menos profundos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Shallower hollows do not count, however sure they are.</source>
      <translation>Las hondonadas menos profundas no cuentan, por seguras que sean.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Share of cut that cannot be used as fill (%)</source>
      <translation>Proporción del desmonte no utilizable como terraplén (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Share of the site in long triangles (%)</source>
      <translation>Proporción del emplazamiento en triángulos largos (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Share of the surface (%)</source>
      <translation>Proporción de la superficie (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Sheet</source>
      <translation>Hoja</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>Sheets</source>
      <translation>Hojas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Sheets (PDF)</source>
      <translation>Hojas (PDF)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Sheets: {count}.</source>
      <translation>Hojas: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground eastings (unit of the CRS)</source>
      <translation>Desplazamiento de las coordenadas este en terreno (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground northings (unit of the CRS)</source>
      <translation>Desplazamiento de las coordenadas norte en terreno (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Shift that balances (m)</source>
      <translation>Desplazamiento que compensa (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Shorter than the window, windows overlap and neighbours share points.</source>
      <translation>Si es más corta que la ventana, las ventanas se solapan y las contiguas comparten puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Shows the file, the role of each column, rejected lines, and where points would land</source>
      <translation>Muestra el archivo, la función de cada columna, las líneas rechazadas y dónde caerían los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Shows where nothing was recorded, and lists the places to walk again.</source>
      <translation>Muestra dónde no se registró nada y enumera los lugares que hay que volver a recorrer.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Shrinkage: 0.9 where ten cubic metres in the ground make nine of fill. It depends on the material; take it from tests or the contract.</source>
      <translation>Merma: 0.9 donde diez metros cúbicos en el terreno dan nueve de terraplén. Depende del material; tómela de ensayos o del contrato.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Size of the labels on the plan (mm)</source>
      <translation>Tamaño de las etiquetas en el plano (mm)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Slivers at the rim are taken off while it is wider; 165 is a good value.</source>
      <translation>Los triángulos alargados del borde se quitan mientras sea más ancho; 165 es un buen valor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Slope (%)</source>
      <translation>Pendiente (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Slope break</source>
      <translation>Cambio de pendiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope classes</source>
      <translation>Clases de pendiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope map</source>
      <translation>Mapa de pendientes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Slopes at both ends too</source>
      <translation>Taludes también en ambos extremos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes at outer corners</source>
      <translation>Taludes en las esquinas salientes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of cut, 1 : n</source>
      <translation>Taludes de desmonte, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of fill, 1 : n</source>
      <translation>Taludes de terraplén, 1 : n</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Slow errors of the receiver that points recorded near each other have in common.</source>
      <translation>Errores lentos del receptor que comparten los puntos registrados cerca unos de otros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Smaller areas are left out.</source>
      <translation>Las áreas más pequeñas se omiten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller gives more channels, and ridges between them.</source>
      <translation>Un valor menor da más cauces, y divisorias entre ellos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller ones are counted together with the rest of the rim.</source>
      <translation>Las más pequeñas se cuentan junto con el resto del borde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Smaller pieces, as along edges that are drawn twice, are left out.</source>
      <translation>Se omiten las piezas más pequeñas, como las que quedan a lo largo de bordes dibujados dos veces.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Smallest contour interval supported (m)</source>
      <translation>Menor equidistancia admisible (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Smallest form to be shown (m wide)</source>
      <translation>Menor forma que debe mostrarse (m de anchura)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Smooth heights are for drawing only: they are up to {largest:.3f} m off the surface, most at E {easting:.3f} N {northing:.3f} (m).</source>
      <translation>Las cotas suavizadas son solo para dibujar: se apartan hasta {largest:.3f} m de la superficie, sobre todo en E {easting:.3f} N {northing:.3f} (m).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Smooth: move lines by up to (m in plan; 0: not at all)</source>
      <translation>Suavizar: mover las líneas como máximo (m en planta; 0: nada)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>So many even steps from the pit to the spill.</source>
      <translation>Número de escalones iguales desde el punto bajo hasta el rebose.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>So that a program that triangulates anew ends where the surface ends.</source>
      <translation>Para que un programa que triangule de nuevo termine donde termina la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Source of the limit</source>
      <translation>Fuente del límite</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Spacing along lines and in areas (m)</source>
      <translation>Separación a lo largo de las líneas y en las áreas (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Spacing along the passes (m)</source>
      <translation>Separación a lo largo de las pasadas (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Spacing of the arrows (m)</source>
      <translation>Separación de las flechas (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Spacing of the grid, or interval along lines</source>
      <translation>Separación de la malla, o intervalo a lo largo de las líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Spacing of the passes (m)</source>
      <translation>Separación de las pasadas (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Spacing of the starts of paths (m)</source>
      <translation>Separación de los inicios de los caminos (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Speed (km/h)</source>
      <translation>Velocidad (km/h)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Speeds and least K of crests (CSV)</source>
      <translation>Velocidades y K mínimo de los acuerdos convexos (CSV)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Spike</source>
      <translation>Pico</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Spikes: more than … times the scatter of the neighbours</source>
      <translation>Picos: más de … veces la dispersión de los vecinos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Spill level (unit of the CRS)</source>
      <translation>Nivel de rebose (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spill point</source>
      <translation>Punto de rebose</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spills to</source>
      <translation>Rebosa a</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Spot heights</source>
      <translation>Puntos acotados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Stage, area and volume</source>
      <translation>Nivel, área y volumen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of K ({unit}/%)</source>
      <translation>Desviación típica de K ({unit}/%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Standard deviation of a height (m)</source>
      <translation>Desviación típica de una cota (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>Standard deviation of a height, found in the survey (m)</source>
      <translation>Desviación típica de una cota, determinada en el levantamiento (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Standard deviation of a height: {total:.1f} mm ({low:.1f} to {high:.1f} mm at 95 %, {freedom:.0f} degrees of freedom, {places} places visited twice).</source>
      <translation>Desviación típica de una cota: {total:.1f} mm ({low:.1f} a {high:.1f} mm al 95 %, {freedom:.0f} grados de libertad, {places} lugares visitados dos veces).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Standard deviation of a plan coordinate (m)</source>
      <translation>Desviación típica de una coordenada en planta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of a surveyed height (m)</source>
      <translation>Desviación típica de una cota levantada (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Standard deviation of it (unit of the CRS)</source>
      <translation>Su desviación típica (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Standard deviation of one height of the rover (m)</source>
      <translation>Desviación típica de una cota del rover (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of set-out in plan (m)</source>
      <translation>Desviación típica del replanteo en planta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Standard deviation of the depth (m)</source>
      <translation>Desviación típica de la profundidad (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of the grade (%)</source>
      <translation>Desviación típica de la pendiente longitudinal (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Standard deviation of the height of one point of the existing surface, as repeated points or check points tell it. A mesh file does not hold it, so it is asked for.</source>
      <translation>Desviación típica de la cota de un punto de la superficie existente, según lo indiquen puntos repetidos o puntos de comprobación. Un archivo de malla no la contiene, por eso se pide.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Standard deviation of the residuals, robust (m)</source>
      <translation>Desviación típica de los residuos, robusta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Standard deviation of the second surface (m)</source>
      <translation>Desviación típica de la segunda superficie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Start</source>
      <translation>Inicio</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts and their ends</source>
      <translation>Inicios y sus finales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface</source>
      <translation>Inicios fuera de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface, without a path: {count}.</source>
      <translation>Inicios fuera de la superficie, sin camino: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water comes to an inlet</source>
      <translation>Inicios cuya agua llega a un sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water leaves over the rim</source>
      <translation>Inicios cuya agua sale por el borde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water stays in a pit or pond</source>
      <translation>Inicios cuya agua se queda en un punto bajo o charco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts: points, lines or areas</source>
      <translation>Inicios: puntos, líneas o áreas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement</source>
      <translation>Declaración</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement (HTML)</source>
      <translation>Declaración (HTML)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Station</source>
      <translation>Estación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Station (unit of the table)</source>
      <translation>Estación (unidad de la tabla)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station equations (back = ahead)</source>
      <translation>Ecuaciones de estación (atrás = adelante)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the highest or lowest place</source>
      <translation>Estación del lugar más alto o más bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station of the line's beginning</source>
      <translation>Estación del comienzo de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Station of the lines' beginning</source>
      <translation>Estación del comienzo de las líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Station of the lines' beginning (unit of the CRS)</source>
      <translation>Estación del comienzo de las líneas (unidad del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the lowest place</source>
      <translation>Estación del lugar más bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the sill</source>
      <translation>Estación del umbral de rebose</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the value</source>
      <translation>Estación del valor</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station where the grades meet</source>
      <translation>Estación donde se encuentran las rasantes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Stations</source>
      <translation>Estaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Steep end</source>
      <translation>Extremo sin talud</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Steepest grade, either way (%)</source>
      <translation>Mayor pendiente longitudinal, en cualquier sentido (%)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpile or pit volume</source>
      <translation>Volumen de acopio o excavación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits</source>
      <translation>Acopios y excavaciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits on {name}</source>
      <translation>Acopios y excavaciones en {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Stopping, turning, looking for the next line.</source>
      <translation>Detenerse, girar, buscar la línea siguiente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Storage of a basin</source>
      <translation>Almacenamiento de una balsa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Straight grade</source>
      <translation>Rasante recta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Straight grades and parabolas fitted to that profile, as “Fit grades and vertical curves” does, as the alignment's profile. It describes what is there; it is no design.</source>
      <translation>Rasantes rectas y parábolas ajustadas a ese perfil, como hace «Ajustar rasantes y acuerdos verticales», como perfil del eje. Describe lo que hay; no es un proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Stretches of line inlets (m)</source>
      <translation>Franjas de los sumideros lineales (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Stretches off the surface, left out: {count}, together {length:.2f} m of line.</source>
      <translation>Tramos fuera de la superficie, omitidos: {count}, en total {length:.2f} m de línea.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that fail</source>
      <translation>Tramos que no cumplen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that pass</source>
      <translation>Tramos que cumplen</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches too close to tell</source>
      <translation>Tramos demasiado justos para decidir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches with verdicts</source>
      <translation>Tramos con veredictos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Such as -3.5, 0, 3.5 in the unit of the table: left is below 0, right above.</source>
      <translation>Como -3.5, 0, 3.5 en la unidad de la tabla: la izquierda es menor que 0; la derecha, mayor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Such as 1+234.50; 1+300, parted by semicolons.</source>
      <translation>Como 1+234.50; 1+300, separadas por punto y coma.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Such as 1+250.00 or 1250: a plus stands after kilometres, in feet after hundreds.</source>
      <translation>Como 1+250.00 o 1250: el signo más va tras los kilómetros; en pies, tras las centenas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a centreline; stations grow in the way it was drawn.</source>
      <translation>Como un eje; las estaciones crecen en el sentido en que se dibujó.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Such as a design. Differences are theirs less the first.</source>
      <translation>Como un proyecto. Las diferencias son las suyas menos la primera.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a design; named by their files, in the CRS of the first surface.</source>
      <translation>Como un proyecto; llevan el nombre de sus archivos, en el SRC de la primera superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Such as a plan; the report lists them with their SHA-256.</source>
      <translation>Como un plano; el informe los enumera con su SHA-256.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such as utf-8 or latin-1.</source>
      <translation>Como utf-8 o latin-1.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Such as “Import survey points” makes them without a CRS.</source>
      <translation>Como los que crea «Importar los puntos del levantamiento» sin SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such lines are counted, not read. With auto the sign is found from the file.</source>
      <translation>Tales líneas se cuentan, no se leen. Con auto, el signo se deduce del archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Summit</source>
      <translation>Cima</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Summits, pits and saddles with height and prominence, on the surface as measured.</source>
      <translation>Cimas, puntos bajos y collados con cota y prominencia, sobre la superficie tal como se midió.</translation>
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
      <translation>Superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>Surface (2DM mesh)</source>
      <translation>Superficie (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface above the check point</source>
      <translation>Superficie por encima del punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface above the fit</source>
      <translation>Superficie por encima del ajuste</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Surface as a raster (DEM)</source>
      <translation>Superficie como ráster (MDE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface below the check point</source>
      <translation>Superficie por debajo del punto de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface below the fit</source>
      <translation>Superficie por debajo del ajuste</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface less fit (m)</source>
      <translation>Superficie menos ajuste (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surface to LandXML</source>
      <translation>Superficie a LandXML</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface {number} less the first ({unit})</source>
      <translation>Superficie {number} menos la primera ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Surface, for the next step</source>
      <translation>Superficie, para el paso siguiente</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, height</source>
      <translation>Superficie, cota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces</source>
      <translation>Superficies</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces read</source>
      <translation>Superficies leídas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surfaces written</source>
      <translation>Superficies escritas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces: {surfaces}, points: {points}, breaklines and boundaries: {lines}, alignments: {alignments}. Unit of the file: {unit}; CRS: {crs}.</source>
      <translation>Superficies: {surfaces}, puntos: {points}, líneas de rotura y contornos: {lines}, alineaciones: {alignments}. Unidad del archivo: {unit}; SRC: {crs}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Surplus of the balance (m³ of fill; below 0: brought in)</source>
      <translation>Excedente de la compensación (m³ de terraplén; menor que 0: aportado)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/hummock.py" />
      <source>Survey desk</source>
      <translation>Mesa del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Survey file</source>
      <translation>Archivo del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Survey files</source>
      <translation>Archivos del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;All files (*)</source>
      <translation>Archivos del levantamiento (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Survey or control points.</source>
      <translation>Puntos del levantamiento o de apoyo.</translation>
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
      <translation>Puntos del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Survey points (for times and own deviations)</source>
      <translation>Puntos del levantamiento (para las horas y las desviaciones propias)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Survey points in local coordinates</source>
      <translation>Puntos del levantamiento en coordenadas locales</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Surveyed on</source>
      <translation>Levantado el</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Swell: how much room dug earth takes on a truck, such as 1.25.</source>
      <translation>Esponjamiento: cuánto espacio ocupa la tierra excavada en un camión, como 1.25.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Switch it off for a step inside a model.</source>
      <translation>Desactívelo para un paso dentro de un modelo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Switch it off to label every contour.</source>
      <translation>Desactívelo para etiquetar todas las curvas de nivel.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off when the lines were drawn with heights of 0.</source>
      <translation>Desactívelo cuando las líneas se dibujaron con cotas de 0.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Table for the data collector</source>
      <translation>Tabla para la libreta de campo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Table of limits (CSV; empty: the one that comes with Hummock)</source>
      <translation>Tabla de límites (CSV; vacío: la que acompaña a Hummock)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Tables (*.csv *.txt);;All files (*)</source>
      <translation>Tablas (*.csv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Tell where the water runs</source>
      <translation>Indicar hacia dónde corre el agua</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Test the accuracy</source>
      <translation>Ensayar la exactitud</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Tests a surface against check points, by NSSDA and ASPRS.</source>
      <translation>Ensaya una superficie con puntos de comprobación, según NSSDA y ASPRS.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Text encoding</source>
      <translation>Codificación del texto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Text encoding (empty: found)</source>
      <translation>Codificación del texto (vacío: se detecta)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text files (*.csv *.txt)</source>
      <translation>Archivos de texto (*.csv *.txt)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text in UTF-8; its notes stand in a second file, NAME_notes.txt.</source>
      <translation>Texto en UTF-8; sus notas están en un segundo archivo, NAME_notes.txt.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>That of the mesh where it is empty.</source>
      <translation>El de la malla si está vacío.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The catchments with their peak flow.</source>
      <translation>Las cuencas con su caudal punta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The changed surface is in {other}, the other in {crs}; bring both into one.</source>
      <translation>La superficie modificada está en {other}, la otra en {crs}; lleve ambas al mismo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The coordinates are local or assumed: no CRS</source>
      <translation>Las coordenadas son locales o supuestas: sin SRC</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The day of the survey, as it shall be written.</source>
      <translation>El día del levantamiento, tal como debe escribirse.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The design, or a later survey, in the same CRS.</source>
      <translation>El proyecto, o un levantamiento posterior, en el mismo SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The difference from the height of the line there.</source>
      <translation>La diferencia respecto a la cota de la línea en ese lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The difference in height between two neighbouring contours.</source>
      <translation>La diferencia de cota entre dos curvas de nivel contiguas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The distance from pass to pass is found from the surface itself.</source>
      <translation>La distancia de pasada a pasada se deduce de la propia superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The distance of the passes is measured from the triangles themselves; with 1.5, bays wider than three passes stay open. For surveys recorded while walking to and fro.</source>
      <translation>La distancia entre pasadas se mide en los propios triángulos; con 1.5, las entrantes más anchas que tres pasadas quedan abiertas. Para levantamientos registrados caminando de ida y vuelta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The doubt of the heights, such as 0.015 for a fixed RTK solution. In metres.</source>
      <translation>La incertidumbre de las cotas, como 0.015 para una solución RTK fija. En metros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>The existing surface with the design in it: what the ground will be.</source>
      <translation>La superficie existente con el proyecto incorporado: lo que será el terreno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that holds what the surveyor typed beside the point.</source>
      <translation>El campo que contiene lo que el topógrafo escribió junto al punto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that names the points.</source>
      <translation>El campo que da nombre a los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>The first line names the columns name, easting, northing and, where known, height.</source>
      <translation>La primera línea nombra las columnas name, easting, northing y, si se conoce, height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The ground cover overlaps within a catchment ({over:.2f} map units² twice); mend it first.</source>
      <translation>La cubierta del suelo se solapa dentro de una cuenca ({over:.2f} unidades de mapa² por duplicado); corríjala primero.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The ground inside each line with the volumes above and below its base.</source>
      <translation>El terreno dentro de cada línea con los volúmenes por encima y por debajo de su base.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The height from which the levels are counted.</source>
      <translation>La cota desde la que se cuentan los niveles.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The interval, error or spacing, in the unit below.</source>
      <translation>La equidistancia, el error o la separación, en la unidad de abajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The layer of that name from “Build the surface”, with the columns kind and label.</source>
      <translation>La capa de ese nombre de «Construir la superficie», con las columnas kind y label.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The layout is then under Project › Layouts.</source>
      <translation>La composición está después en Proyecto › Composiciones.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The length over which a grade is taken: shorter shows more, and more noise.</source>
      <translation>La longitud sobre la que se toma una pendiente longitudinal: más corta muestra más, y más ruido.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The length over which a slope is taken: shorter shows more, and more noise.</source>
      <translation>La longitud sobre la que se toma una pendiente: más corta muestra más, y más ruido.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The levels of the contours are whole multiples in this unit.</source>
      <translation>Los niveles de las curvas de nivel son múltiplos enteros en esta unidad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>The limits “{text}” are no list of numbers; write them such as 1; 2; 5; 8.33; 20.</source>
      <translation>Los límites «{text}» no son una lista de números; escríbalos como 1; 2; 5; 8.33; 20.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the crossfall; drawn beside the grades.</source>
      <translation>La línea en ventanas, con la pendiente transversal; se dibuja junto a las pendientes longitudinales.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the grade along it.</source>
      <translation>La línea en ventanas, con la pendiente a lo largo de ella.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The lines have heights of their own (Z)</source>
      <translation>Las líneas tienen cotas propias (Z)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The lines that the surface was asked to hold to, by kind.</source>
      <translation>Las líneas que se pidió respetar a la superficie, por tipo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>The lines with heights in the unit of the surface's CRS.</source>
      <translation>Las líneas con cotas en la unidad del SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>The lowest place, and the place where water leaves.</source>
      <translation>El lugar más bajo y el lugar por donde sale el agua.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The lowest point of each pond and the one over which it spills.</source>
      <translation>El punto más bajo de cada charco y aquel por el que rebosa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>The memory of this machine does not suffice; take fewer points at a time.</source>
      <translation>La memoria de este equipo no es suficiente; tome menos puntos cada vez.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj.</source>
      <translation>El archivo de malla; su SRC se escribe junto a él como .prj.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The name of a likely cause, such as swapped, as the warning shows it: the coordinates are then read so. Nothing is corrected without it.</source>
      <translation>El nombre de una causa probable, como swapped, tal como lo muestra la advertencia: entonces las coordenadas se leen así. Sin él no se corrige nada.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The outermost ponds of both surfaces; those gone as they were.</source>
      <translation>Los charcos exteriores de ambas superficies; los desaparecidos, tal como eran.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>The output cannot be written ({reason}); choose another file.</source>
      <translation>No se puede escribir la salida ({reason}); elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The paper's long side upright.</source>
      <translation>El lado largo del papel en vertical.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>The place that keeps its coordinates. From ground to grid it has to be given.</source>
      <translation>El lugar que conserva sus coordenadas. De terreno a cuadrícula hay que indicarlo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>The plane needs a layer of exactly three points with Z; {count} were found.</source>
      <translation>El plano necesita una capa de exactamente tres puntos con Z; se encontraron {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>The points as they are, with the answers as columns.</source>
      <translation>Los puntos tal como están, con las respuestas como columnas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The points have no code field: no lines are joined by codes.</source>
      <translation>Los puntos no tienen campo de código: no se une ninguna línea por códigos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The points that the surface was built from, in the CRS of the surface.</source>
      <translation>Los puntos con los que se construyó la superficie, en el SRC de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The points that the surface was built from. Their times tell which drift together, their field sigma_v takes the place of the standard deviation above. Without them each strip of 1 m along the line counts as a pass of its own, which is cautious.</source>
      <translation>Los puntos con los que se construyó la superficie. Sus horas indican cuáles comparten deriva; su campo sigma_v sustituye a la desviación típica de arriba. Sin ellos, cada franja de 1 m a lo largo de la línea cuenta como una pasada propia, lo que es prudente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The points that the surface was built from; rejected ones do not count.</source>
      <translation>Los puntos con los que se construyó la superficie; los rechazados no cuentan.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>The polygons with cut, fill, net, their ± (95 %), areas and mean depths.</source>
      <translation>Los polígonos con desmonte, terraplén, neto, sus ± (95 %), áreas y profundidades medias.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>The profile to scale with grades and K.</source>
      <translation>El perfil longitudinal a escala con pendientes y K.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The profile to scale with its table.</source>
      <translation>El perfil longitudinal a escala con su guitarra.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>The project's name in the file.</source>
      <translation>El nombre del proyecto en el archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>The receiver claims {claimed:.1f} mm.</source>
      <translation>El receptor declara {claimed:.1f} mm.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The recording distance set in the receiver.</source>
      <translation>La distancia de registro configurada en el receptor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m)</source>
      <translation>Lo mismo de la segunda superficie (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The same of the second surface (m; 0: a design)</source>
      <translation>Lo mismo de la segunda superficie (m; 0: un proyecto)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The same radius in distances of the passes (empty: no limit)</source>
      <translation>El mismo radio en separaciones de las pasadas (vacío: sin límite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>The sections to scale.</source>
      <translation>Los perfiles transversales a escala.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The short side of the paper is below.</source>
      <translation>El lado corto del papel queda abajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The side of a square of ground in which drift is one and the same.</source>
      <translation>El lado de un cuadrado de terreno en el que la deriva es la misma.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The size of a sheet.</source>
      <translation>El tamaño de una hoja.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>The size of the typeface; figures are about 0.7 of it high.</source>
      <translation>El tamaño del tipo de letra; las cifras tienen una altura de aproximadamente 0,7 de él.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>The statement with its statistics, a map and every check point.</source>
      <translation>La declaración con sus estadísticas, un mapa y cada punto de comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm above the check point.</source>
      <translation>La superficie está {off} mm por encima del punto de comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm below the check point.</source>
      <translation>La superficie está {off} mm por debajo del punto de comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The two surfaces do not overlap; check that both belong to one site.</source>
      <translation>Las dos superficies no se solapan; compruebe que ambas pertenecen al mismo emplazamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>The unit in the file. Empty: as found from the file, else that of the CRS.</source>
      <translation>La unidad del archivo. Vacío: la que se deduzca del archivo o, si no, la del SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The unit in the file. Empty: that of the CRS.</source>
      <translation>La unidad del archivo. Vacío: la del SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The water of each full pond; parts lie over the pond they are parts of.</source>
      <translation>El agua de cada charco lleno; las partes se superponen al charco del que forman parte.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The way of the overflow to the next pond, an inlet or the rim.</source>
      <translation>El camino del rebose hasta el charco siguiente, un sumidero o el borde.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The widest ones are kept.</source>
      <translation>Se conservan los más anchos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>The width of the window around each place. 0: the triangle there alone.</source>
      <translation>La anchura de la ventana alrededor de cada lugar. 0: solo el triángulo de ese lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>The width of the window around each triangle. 0: the triangle alone.</source>
      <translation>La anchura de la ventana alrededor de cada triángulo. 0: solo el triángulo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>There are no check points; give a layer or a file of them, or the survey.</source>
      <translation>No hay puntos de comprobación; indique una capa o un archivo de ellos, o el levantamiento.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation>No hay ningún recorrido bastante largo para saber cómo se repiten las cotas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>There is no {what} for {count} catchments, the first is feature {feature}; give one.</source>
      <translation>No hay {what} para {count} cuencas, la primera es el objeto espacial {feature}; indique un valor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>They are merged with the files and the layer above. Heights are their Z, or their field height where the points have none; name and code are taken from fields called so.</source>
      <translation>Se combinan con los archivos y la capa de arriba. Las cotas son su Z, o su campo height si los puntos no la tienen; name y code se toman de los campos así llamados.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>They go in as they are, with the style they have in the project.</source>
      <translation>Entran tal como están, con el estilo que tienen en el proyecto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thin a surface</source>
      <translation>Aligerar una superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface (2DM mesh)</source>
      <translation>Superficie aligerada (malla 2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface, height</source>
      <translation>Superficie aligerada, cota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Three points of the plane (instead of a level)</source>
      <translation>Tres puntos del plano (en lugar de un nivel)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time (minutes)</source>
      <translation>Tiempo (minutos)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time for each turn (s)</source>
      <translation>Tiempo por cada giro (s)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Title</source>
      <translation>Título</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To (m along the line)</source>
      <translation>Hasta (m a lo largo de la línea)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pit</source>
      <translation>A un punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pond</source>
      <translation>A un charco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To an inlet</source>
      <translation>A un sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>To begin one of your own, have the table written by “Limits as a file to edit”.</source>
      <translation>Para empezar una propia, haga que «Límites como archivo para editar» escriba la tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To both edges</source>
      <translation>A ambos bordes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>To go on where another table ended.</source>
      <translation>Para continuar donde terminó otra tabla.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To neither edge</source>
      <translation>A ningún borde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>To offset ({unit})</source>
      <translation>Hasta el desplazamiento ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To station</source>
      <translation>Hasta la estación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the left edge</source>
      <translation>Al borde izquierdo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the right edge</source>
      <translation>Al borde derecho</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To the rim</source>
      <translation>Al borde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>To walk: {distance:.0f} m, {time}. Points: {points}, turns: {turns}.</source>
      <translation>Por recorrer: {distance:.0f} m, {time}. Puntos: {points}, giros: {turns}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Toe of fill</source>
      <translation>Pie del terraplén</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Toe or rim lines</source>
      <translation>Líneas de pie o de borde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Tolerance at crossings (m)</source>
      <translation>Tolerancia en los cruces (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Tolerance in height (m)</source>
      <translation>Tolerancia en cota (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Tolerance of arcs (m)</source>
      <translation>Tolerancia de los arcos (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerance sets of your own (JSON)</source>
      <translation>Conjuntos de tolerancias propios (JSON)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances</source>
      <translation>Tolerancias</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances as a file to edit</source>
      <translation>Tolerancias como archivo para editar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Too close to tell</source>
      <translation>Demasiado justo para decidir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Top of cut</source>
      <translation>Coronación del desmonte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Topographic plan</source>
      <translation>Plano topográfico</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Tops of layers below the ground, from above to below</source>
      <translation>Techos de las capas bajo el terreno, de arriba abajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Topsoil stripped first (m)</source>
      <translation>Tierra vegetal retirada previamente (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Topsoil {volume:.1f} m³ off {area:.1f} m².</source>
      <translation>Tierra vegetal: {volume:.1f} m³ de {area:.1f} m².</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Triangle with an edge of {longest} m, {area} m²: straight over ground nobody walked.</source>
      <translation>Triángulo con una arista de {longest} m, {area} m²: recto sobre un terreno que nadie recorrió.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles</source>
      <translation>Triángulos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.</source>
      <translation>Se quitan triángulos del borde mientras su arista exterior sea más larga. En metros sea cual sea el SRC.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles in the GeoPackage</source>
      <translation>Triángulos en el GeoPackage</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Triangles whose centre lies inside are left out. A column “edit” may say remove_triangle (the one inside) or add_triangle (take back one that boundary, void or rim left out) instead.</source>
      <translation>Se omiten los triángulos cuyo centro queda dentro. Una columna «edit» puede decir en su lugar remove_triangle (el que está dentro) o add_triangle (recuperar uno que el contorno, un hueco o el borde dejó fuera).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Triangles with a longer edge are taken off the rim of the surface.</source>
      <translation>Los triángulos con una arista más larga se quitan del borde de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with a longer edge count as ground that nobody walked.</source>
      <translation>Los triángulos con una arista más larga cuentan como terreno que nadie recorrió.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with an edge over the limit.</source>
      <translation>Triángulos con una arista por encima del límite.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangulates survey points with breaklines, boundary and voids into a mesh.</source>
      <translation>Triangula los puntos del levantamiento con líneas de rotura, contorno y huecos en una malla.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turn (degrees, counter-clockwise)</source>
      <translation>Giro (grados, en sentido antihorario)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turns, scales and shifts a local survey onto control points by least squares.</source>
      <translation>Gira, escala y desplaza un levantamiento local sobre puntos de apoyo por mínimos cuadrados.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Two geoid separations are given, a constant and a grid; give one of them.</source>
      <translation>Se dan dos ondulaciones del geoide, una constante y una rejilla; indique solo una.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Typical section (CSV; empty: from the values below)</source>
      <translation>Sección tipo (CSV; vacío: a partir de los valores de abajo)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>US survey feet (ftUS, 1200/3937 m)</source>
      <translation>Pies topográficos de EE. UU. (ftUS, 1200/3937 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Unchanged</source>
      <translation>Sin cambios</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Undecided</source>
      <translation>Sin decidir</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit</source>
      <translation>Unidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit (empty: as the file says)</source>
      <translation>Unidad (vacío: la que diga el archivo)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit of &amp;heights:</source>
      <translation>Unidad de las &amp;cotas:</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Unit of easting and northing</source>
      <translation>Unidad de las coordenadas este y norte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit of heights, if another</source>
      <translation>Unidad de las cotas, si es otra</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Unit of interval and base</source>
      <translation>Unidad de la equidistancia y la base</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Unit of stations, offsets and heights</source>
      <translation>Unidad de estaciones, desplazamientos y cotas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the control file (empty: that of the CRS)</source>
      <translation>Unidad del archivo de puntos de apoyo (vacío: la del SRC)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of the heights, if another</source>
      <translation>Unidad de las cotas, si es otra</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the survey's coordinates</source>
      <translation>Unidad de las coordenadas del levantamiento</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Unit of the table</source>
      <translation>Unidad de la tabla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Unit of the value</source>
      <translation>Unidad del valor</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit: {unit}</source>
      <translation>Unidad: {unit}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Units</source>
      <translation>Unidades</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Upright</source>
      <translation>Vertical</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Use as shown</source>
      <translation>Usar como se muestra</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Use the heights (Z) of the lines in these layers</source>
      <translation>Usar las cotas (Z) de las líneas de estas capas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Used</source>
      <translation>Usados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Value nearest to or farthest beyond the limit</source>
      <translation>Valor más próximo al límite o que más lo sobrepasa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Value wanted</source>
      <translation>Valor deseado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Verdict at 95 %</source>
      <translation>Veredicto al 95 %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Vertical class wanted (cm RMSE)</source>
      <translation>Clase altimétrica deseada (cm RMSE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices dropped</source>
      <translation>Vértices eliminados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept</source>
      <translation>Vértices conservados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept: {kept}, dropped: {dropped}. Largest difference {largest:.4f} m at E {easting:.3f} N {northing:.3f} (m), root mean square {rms:.4f} m; asked for: {tolerance:g} m.</source>
      <translation>Vértices conservados: {kept}, eliminados: {dropped}. Mayor diferencia {largest:.4f} m en E {easting:.3f} N {northing:.3f} (m), media cuadrática {rms:.4f} m; solicitado: {tolerance:g} m.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Void</source>
      <translation>Hueco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Voids</source>
      <translation>Huecos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Volume (m³)</source>
      <translation>Volumen (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Volume at the spill level (m³)</source>
      <translation>Volumen al nivel de rebose (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Volume between two surfaces</source>
      <translation>Volumen entre dos superficies</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volume by region</source>
      <translation>Volumen por región</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Volume to a level or plane</source>
      <translation>Volumen hasta un nivel o plano</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Volumes</source>
      <translation>Volúmenes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes (table)</source>
      <translation>Volúmenes (tabla)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes by height (table)</source>
      <translation>Volúmenes por cota (tabla)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region</source>
      <translation>Volúmenes por región</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and depth</source>
      <translation>Volúmenes por región y profundidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and quantity</source>
      <translation>Volúmenes por región y magnitud</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>W</source>
      <translation>O</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walk the perimeter too</source>
      <translation>Recorrer también el perímetro</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walking plan</source>
      <translation>Plan de recorrido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Wanted is</source>
      <translation>Lo que se desea es</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Waste {waste:.1f} m³ ({waste_loose:.1f} m³ loose), borrow {borrow:.1f} m³ ({borrow_loose:.1f} m³ loose).</source>
      <translation>Sobrante {waste:.1f} m³ ({waste_loose:.1f} m³ esponjados), préstamo {borrow:.1f} m³ ({borrow_loose:.1f} m³ esponjados).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water</source>
      <translation>Agua</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Water at the spill level</source>
      <translation>Agua al nivel de rebose</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Water in all full ponds (m³)</source>
      <translation>Agua en todos los charcos llenos (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water in hollows</source>
      <translation>Agua en las hondonadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Water runs to: left, right, both, neither, unsure</source>
      <translation>El agua corre hacia: izquierda, derecha, ambos, ninguno, incierto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>What a change does to the water</source>
      <translation>Qué efecto tiene un cambio en el agua</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>What became of the edits</source>
      <translation>Qué fue de las ediciones</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>What becomes of water that comes to a place with nothing lower around it.</source>
      <translation>Qué ocurre con el agua que llega a un lugar sin nada más bajo alrededor.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>What each half of the lane should fall to its edge; common practice, no source.</source>
      <translation>Lo que cada mitad de la calzada debe caer hacia su borde; práctica común, sin fuente.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>What grows at the point, such as hard, short grass, tall grass.</source>
      <translation>Lo que crece en el punto, como duro, hierba corta, hierba alta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>What heights are measured from. Empty: as a compound CRS says it.</source>
      <translation>Desde qué se miden las cotas. Vacío: lo que diga un SRC compuesto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>What is above the first of these layers.</source>
      <translation>Lo que hay por encima de la primera de estas capas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What is set out</source>
      <translation>Qué se replantea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>What lies beyond is not in that check.</source>
      <translation>Lo que queda más allá no entra en esa comprobación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What lies under the heap, or lay over the pit.</source>
      <translation>Lo que hay bajo el montón, o había sobre la excavación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>What parts the columns.</source>
      <translation>Lo que separa las columnas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>What single points are held to; a file of your own goes before.</source>
      <translation>A qué se someten los puntos individuales; un archivo propio tiene prioridad.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>What the coordinates are in, whatever the file says. Nothing is transformed.</source>
      <translation>En qué están las coordenadas, diga lo que diga el archivo. No se transforma nada.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What the data collector shows with the point.</source>
      <translation>Lo que la libreta de campo muestra con el punto.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>What the points are, and what they become.</source>
      <translation>Qué son los puntos y en qué se convierten.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>What the receiver reads; the mesh's file name where it is empty.</source>
      <translation>Lo que lee el receptor; el nombre de archivo de la malla si está vacío.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What the results call them.</source>
      <translation>Cómo lo llaman los resultados.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>What the surveyor types beside a code where a line begins, ends, closes, or runs in an arc through the point. Commas between them; leave one empty where the field has no word.</source>
      <translation>Lo que el topógrafo escribe junto a un código donde una línea empieza, termina, se cierra o pasa en arco por el punto. Sepárelo con comas; deje vacío el que no se use en campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>What the value below means.</source>
      <translation>Qué significa el valor de abajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>What was done to coordinates</source>
      <translation>Qué se hizo con las coordenadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Whatever the formula allows.</source>
      <translation>Lo que la fórmula permita.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Where catchments differ; in place of the one for all.</source>
      <translation>Donde las cuencas difieren; en lugar del único para todas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Where grades meet</source>
      <translation>Donde se encuentran las rasantes</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Where it is known otherwise than from the points.</source>
      <translation>Si se conoce de otro modo que por los puntos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Where lines cross</source>
      <translation>Donde se cruzan líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Where lines differ. A line whose field is empty takes the height above.</source>
      <translation>Donde las líneas difieren. Una línea con el campo vacío toma la altura de arriba.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where polygons overlap the ground counts once.</source>
      <translation>Donde los polígonos se solapan, el terreno cuenta una sola vez.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Where polygons overlap the ground counts once; for one row each see “Volume by region”.</source>
      <translation>Donde los polígonos se solapan, el terreno cuenta una sola vez; para una fila por cada uno, véase «Volumen por región».</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Where ponds spill to</source>
      <translation>Adónde rebosan los charcos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Where the design meets the ground: top of cut, toe of fill, and ends without slope.</source>
      <translation>Donde el proyecto encuentra el terreno: coronación del desmonte, pie del terraplén y extremos sin talud.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Where the numbering jumps, such as 1+200 = 1+250; 3+000 = 0+000, in the order of the line.</source>
      <translation>Donde la numeración salta, como 1+200 = 1+250; 3+000 = 0+000, en el orden de la línea.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <source>Where the points would land</source>
      <translation>Dónde caerían los puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Where the rule applies</source>
      <translation>Dónde se aplica la regla</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where the sloping plane has the height given as level.</source>
      <translation>Donde el plano inclinado tiene la cota dada como nivel.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Where the surfaces cross, with the height there.</source>
      <translation>Donde las superficies se cruzan, con la cota en ese lugar.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Where the water of two channels parts.</source>
      <translation>Donde se separan las aguas de dos cauces.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Where water starts. Empty: a square grid all over the surface.</source>
      <translation>Donde empieza el agua. Vacío: una malla cuadrada por toda la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Where you come from. Empty: the south-west.</source>
      <translation>Desde dónde se llega. Vacío: el suroeste.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Whether the first line that is no comment is a header.</source>
      <translation>Si la primera línea que no es un comentario es una cabecera.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Which are made.</source>
      <translation>Cuáles se crean.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest angle opposite to an outer edge (degrees; empty: no limit)</source>
      <translation>Mayor ángulo opuesto a una arista exterior (grados; vacío: sin límite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest circle of triangles at the rim (radius in m; empty: no limit)</source>
      <translation>Mayor círculo de los triángulos del borde (radio en m; vacío: sin límite)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Widest gap in a breakline (m)</source>
      <translation>Mayor interrupción en una línea de rotura (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the ditch's bottom (m)</source>
      <translation>Anchura del fondo de la cuneta (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the lane on each side (m)</source>
      <translation>Anchura del carril a cada lado (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width of the section ({unit})</source>
      <translation>Anchura de la sección ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the shoulder on each side (m; 0: none)</source>
      <translation>Anchura del arcén a cada lado (m; 0: ninguno)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the left</source>
      <translation>Anchura a la izquierda</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the right</source>
      <translation>Anchura a la derecha</translation>
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width with both surfaces ({unit})</source>
      <translation>Anchura con ambas superficies ({unit})</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Window (m)</source>
      <translation>Ventana (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Window of a grade (m)</source>
      <translation>Ventana de una pendiente (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Window of the indications (m)</source>
      <translation>Ventana de las indicaciones (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Windows that the surface does not cover, without a slope: {count} of {all}.</source>
      <translation>Ventanas que la superficie no cubre, sin pendiente: {count} de {all}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>With a field “name”; they stand at the end of the table and in the layer.</source>
      <translation>Con un campo «name»; figuran al final de la tabla y en la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With grades and vertical curves fitted</source>
      <translation>Con rasantes y acuerdos verticales ajustados</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>With the groups (?P&lt;code&gt;…) and, if there are any, (?P&lt;line&gt;…) and (?P&lt;words&gt;…), for codes that are written in another way.</source>
      <translation>Con los grupos (?P&lt;code&gt;…) y, si los hay, (?P&lt;line&gt;…) y (?P&lt;words&gt;…), para códigos escritos de otra forma.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With the profile of the surface</source>
      <translation>Con el perfil longitudinal de la superficie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>With where its water went and where it goes.</source>
      <translation>Con adónde iba su agua y adónde va ahora.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Without a typical section out of a table. Ditches are dug where the ground is above.</source>
      <translation>Sin una sección tipo de una tabla. Se excavan cunetas donde el terreno está por encima.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Without it the surface ends at the outermost passes.</source>
      <translation>Sin ello, la superficie termina en las pasadas exteriores.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Words for begin, end, close and arc</source>
      <translation>Palabras de inicio, fin, cierre y arco</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Write the report</source>
      <translation>Escribir el informe</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Writes a surface as LandXML, DXF, GeoPackage, GeoTIFF and mesh into one folder.</source>
      <translation>Escribe una superficie como LandXML, DXF, GeoPackage, GeoTIFF y malla en una sola carpeta.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Writes surfaces, points, breaklines and alignments as LandXML 1.2.</source>
      <translation>Escribe superficies, puntos, líneas de rotura y alineaciones como LandXML 1.2.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Writes the heights of a surface as a GeoTIFF, exact or smooth for drawing.</source>
      <translation>Escribe las cotas de una superficie como GeoTIFF, exactas o suavizadas para dibujar.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Writes the set that was used. Change the numbers and give the file back above.</source>
      <translation>Escribe el conjunto que se usó. Cambie los números y vuelva a indicar el archivo arriba.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Writes the table that was used. Change it and give the file back above.</source>
      <translation>Escribe la tabla que se usó. Cámbiela y vuelva a indicar el archivo arriba.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Written with the other notes on every sheet.</source>
      <translation>Se escribe con las demás notas en cada hoja.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Written: {file}</source>
      <translation>Escrito: {file}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a contour interval</source>
      <translation>una equidistancia</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>a grid over its polygons</source>
      <translation>una malla sobre sus polígonos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a height error of the surface (RMSE)</source>
      <translation>un error de cota de la superficie (RMSE)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a spacing of the passes</source>
      <translation>una separación de las pasadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>accuracy,check points,RMSE,bias,NSSDA,FGDC,ASPRS,vertical class,95 percent,test</source>
      <translation>exactitud,puntos de comprobación,RMSE,sesgo,NSSDA,FGDC,ASPRS,clase altimétrica,95 por ciento,ensayo</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>age of the correction</source>
      <translation>edad de la corrección</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>all of the ground compared</source>
      <translation>todo el terreno comparado</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>as found</source>
      <translation>según se detecte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as in the file (with a geoid separation: orthometric)</source>
      <translation>como en el archivo (con ondulación del geoide: ortométricas)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>as recognised</source>
      <translation>según se reconozca</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as the file says</source>
      <translation>según diga el archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>balance,cut,fill,level,grading,pad,strip,profile,surplus,shrinkage,earthwork</source>
      <translation>compensación,desmonte,terraplén,nivel,explanación,plataforma,franja,perfil longitudinal,sobrante,merma,movimiento de tierras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>balance: the height where cut makes up for fill.</source>
      <translation>compensación: la cota a la que el desmonte compensa el terraplén.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>base of {name}</source>
      <translation>base de {name}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>basin,pond,storage,stage,volume,capacity,spill,water level,retention,detention</source>
      <translation>balsa,estanque,almacenamiento,nivel,volumen,capacidad,rebose,lámina de agua,retención,laminación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>best-fit plane of the line</source>
      <translation>plano de mejor ajuste de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>blank</source>
      <translation>en blanco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>blanks</source>
      <translation>en blanco</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>blunders,outliers,tolerances,pole height,fix,tilt,status,reject,flag,repeatability,noise</source>
      <translation>errores groseros,valores atípicos,tolerancias,altura del jalón,solución,inclinación,estado,rechazar,marcar,repetibilidad,ruido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>broken: banks, mounds, building sites</source>
      <translation>quebrado: taludes, montículos, obras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>check,limits,rules,accessible,running slope,cross slope,grade,crossfall,kerb,ponding,gutter,sight,crest</source>
      <translation>comprobación,límites,reglas,accesible,pendiente longitudinal,pendiente transversal,rasante,bombeo,bordillo,encharcamiento,rigola,visibilidad,acuerdo convexo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>check,quality,warnings,spikes,flat triangles,long triangles,gaps,breaklines,tin</source>
      <translation>comprobación,calidad,advertencias,picos,triángulos llanos,triángulos largos,lagunas,líneas de rotura,tin</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>code</source>
      <translation>código</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>comma</source>
      <translation>coma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>contour lines,isolines,levels,interval,tin,mesh,feet,metres</source>
      <translation>curvas de nivel,isolíneas,niveles,equidistancia,tin,malla,pies,metros</translation>
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>contour lines,smooth,labels,spot heights,summit,pit,plan,drawing,feet,half foot</source>
      <translation>curvas de nivel,suavizado,etiquetas,puntos acotados,cima,punto bajo,plano,dibujo,pies,medio pie</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>control,helmert,similarity,transformation,local,site,calibration,residuals,least squares,outlier</source>
      <translation>apoyo,helmert,semejanza,transformación,local,emplazamiento,calibración,residuos,mínimos cuadrados,valor atípico</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>control: several observations, points others are built on</source>
      <translation>control: varias observaciones, puntos sobre los que se apoyan otros</translation>
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>cross section,sections,offset,cut,fill,area,road,sheet,pdf,csv,line</source>
      <translation>perfil transversal,secciones,desplazamiento,desmonte,terraplén,área,carretera,hoja,pdf,csv,línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut over {low} m</source>
      <translation>desmonte de más de {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut {low} to {high} m</source>
      <translation>desmonte de {low} a {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>datum not stated</source>
      <translation>datum no indicado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>dem,dtm,raster,grid,heights,elevation,geotiff,interpolate,hillshade,clough-tocher</source>
      <translation>mde,mdt,ráster,malla,cotas,elevación,geotiff,interpolar,sombreado,clough-tocher</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>done</source>
      <translation>hecho</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>drape,lines,height,elevation,profile,z values,centreline,tin</source>
      <translation>proyectar sobre el terreno,líneas,cota,elevación,perfil longitudinal,valores z,eje,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>east</source>
      <translation>este</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>easting</source>
      <translation>coordenada este</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>ellipsoidal</source>
      <translation>elipsoidal</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>ellipsoidal height</source>
      <translation>altura elipsoidal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>en</source>
      <translation>es</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>even: fields, car parks, pitches</source>
      <translation>uniforme: campos, aparcamientos, terrenos de juego</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>exact: linear on the triangles</source>
      <translation>exacto: lineal en los triángulos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>export,dxf,cad,geopackage,gpkg,geotiff,dem,landxml,mesh,deliver,checksums</source>
      <translation>exportar,dxf,cad,geopackage,gpkg,geotiff,mde,landxml,malla,entregar,sumas de comprobación</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>failed</source>
      <translation>fallido</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill over {low} m</source>
      <translation>terraplén de más de {low} m</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill {low} to {high} m</source>
      <translation>terraplén de {low} a {high} m</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>first: {steps}</source>
      <translation>antes: {steps}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>fitted</source>
      <translation>ajustado</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>fix</source>
      <translation>solución</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>found from the file</source>
      <translation>según se deduzca del archivo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>four parameters in plan, heights by themselves</source>
      <translation>cuatro parámetros en planta, las cotas por separado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from grid to ground</source>
      <translation>de cuadrícula a terreno</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from ground to grid</source>
      <translation>de terreno a cuadrícula</translation>
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>gaps,density,spacing,empty circles,walk again,waypoints,gpx,contour interval</source>
      <translation>lagunas,densidad,separación,círculos vacíos,volver a recorrer,puntos de paso,gpx,equidistancia</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>grade,gradient,crossfall,cross slope,superelevation,camber,slope,percent,road</source>
      <translation>pendiente longitudinal,gradiente,pendiente transversal,peralte,bombeo,pendiente,porcentaje,carretera</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>grading,pad,platform,yard,level,slope,batter,daylight,cut,fill,balance,earthwork</source>
      <translation>explanación,plataforma,explanada,patio,nivel,pendiente,talud,encuentro con el terreno,desmonte,terraplén,compensación,movimiento de tierras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>grading,strip,road,path,bank,corridor,typical section,ditch,mass diagram,haul,cut,fill,earthwork</source>
      <translation>explanación,franja,carretera,camino,talud,corredor,sección tipo,cuneta,diagrama de masas,transporte,desmonte,terraplén,movimiento de tierras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>ground,grid,scale factor,combined factor,projection,distance,elevation factor</source>
      <translation>terreno,cuadrícula,factor de escala,factor combinado,proyección,distancia,factor de altitud</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>height</source>
      <translation>cota</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>height,elevation,slope,aspect,sample,query,check points,triangle,tin</source>
      <translation>cota,elevación,pendiente,orientación,muestra,consulta,puntos de comprobación,triángulo,tin</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>in/h, acres, ft³/s</source>
      <translation>in/h, acres, ft³/s</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>intensity</source>
      <translation>intensidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>international feet (ft, 0.3048 m)</source>
      <translation>pies internacionales (ft, 0,3048 m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>its points, or the corners of its lines and polygons</source>
      <translation>sus puntos, o los vértices de sus líneas y polígonos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>kept as they are</source>
      <translation>se conservan como están</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>landxml,xml,tin,surface,export,exchange,design,alignment,breaklines,machine</source>
      <translation>landxml,xml,tin,superficie,exportar,intercambio,proyecto,alineación,líneas de rotura,maquinaria</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>landxml,xml,tin,surface,import,design,alignment,breaklines,points</source>
      <translation>landxml,xml,tin,superficie,importar,proyecto,alineación,líneas de rotura,puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>lane</source>
      <translation>carril</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>latitude</source>
      <translation>latitud</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>left of the line</source>
      <translation>a la izquierda de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its highest place</source>
      <translation>horizontal en su lugar más alto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its lowest place</source>
      <translation>horizontal en su lugar más bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>level {level:.3f}</source>
      <translation>nivel {level:.3f}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>line</source>
      <translation>línea</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>longitude</source>
      <translation>longitud</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>mesh (2DM)</source>
      <translation>malla (2DM)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>metres (m)</source>
      <translation>metros (m)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>mitred</source>
      <translation>a inglete</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>mm/h, hectares, l/s</source>
      <translation>mm/h, hectáreas, l/s</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>name</source>
      <translation>nombre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>no</source>
      <translation>no</translation>
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>no further details</source>
      <translation>sin más detalles</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <location filename="../plugin/processing/sinks.py" />
      <location filename="../plugin/processing/trustlayers.py" />
      <source>no reason given</source>
      <translation>no se indica el motivo</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>northing</source>
      <translation>coordenada norte</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumelayers.py" />
      <source>not known</source>
      <translation>no conocido</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>not part of this job</source>
      <translation>no forma parte de este trabajo</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>nothing yet</source>
      <translation>nada todavía</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>observations of a point</source>
      <translation>observaciones de un punto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>offsets along its lines</source>
      <translation>desplazamientos a lo largo de sus líneas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>orthometric (above a geoid)</source>
      <translation>ortométricas (sobre un geoide)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>out of date</source>
      <translation>desactualizado</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>over {low:.4g} %</source>
      <translation>más del {low:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>over {low} m deep</source>
      <translation>más de {low} m de profundidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>plan,passes,lines,spacing,before the survey,distance,time,contour interval,rover</source>
      <translation>plan,pasadas,líneas,separación,antes del levantamiento,distancia,tiempo,equidistancia,rover</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>plan,sheet,pdf,print,layout,topographic,contours,spot heights,title block,key map,scale,paper</source>
      <translation>plano,hoja,pdf,imprimir,composición,topográfico,curvas de nivel,puntos acotados,cajetín,mapa guía,escala,papel</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>plane of {level:.3f} at E {east:.2f} N {north:.2f}, {slope:g} % down to {towards:g}°</source>
      <translation>plano de {level:.3f} en E {east:.2f} N {north:.2f}, {slope:g} % de bajada hacia {towards:g}°</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>point</source>
      <translation>punto</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>pole height</source>
      <translation>altura del jalón</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>profile,longitudinal section,line,centreline,station,heights,grade,sheet,pdf,csv</source>
      <translation>perfil longitudinal,línea,eje,estación,cotas,rasante,pendiente,hoja,pdf,csv</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>refuse when the heights differ by more than the tolerance</source>
      <translation>rehusar cuando las cotas difieran en más de la tolerancia</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report,documentation,pdf,html,sha-256,checksums,hand over,accuracy,rejects,whole job</source>
      <translation>informe,documentación,pdf,html,sha-256,sumas de comprobación,entrega,exactitud,rechazados,trabajo completo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf beside report.html.</source>
      <translation>report.pdf junto a report.html.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf: {pages} pages.</source>
      <translation>report.pdf: {pages} páginas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterlayers.py" />
      <source>rest of the rim</source>
      <translation>resto del borde</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>right of the line</source>
      <translation>a la derecha de la línea</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>role</source>
      <translation>función</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>rolling: parks, pastures</source>
      <translation>ondulado: parques, pastos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>round</source>
      <translation>redondeada</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>runoff coefficient</source>
      <translation>coeficiente de escorrentía</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>runs on over full ponds, to the rim or an inlet</source>
      <translation>sigue por encima de los charcos llenos, hasta el borde o un sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>satellites</source>
      <translation>satélites</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>semicolon</source>
      <translation>punto y coma</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>set-out,stake out,staking,layout,grid,offsets,cut,fill,design,data collector,csv,control</source>
      <translation>replanteo,replantear,estacas,estaquillado,disposición,malla,desplazamientos,desmonte,terraplén,proyecto,libreta de campo,csv,control</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>seven parameters in space</source>
      <translation>siete parámetros en el espacio</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted</source>
      <translation>desplazadas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted and tilted (a plane)</source>
      <translation>desplazadas e inclinadas (un plano)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>shoulder</source>
      <translation>arcén</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in height</source>
      <translation>sigma en cota</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in plan</source>
      <translation>sigma en planta</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>slope,grade,gradient,steepness,classes,percent,areas,accessibility</source>
      <translation>pendiente,inclinación,gradiente,desnivel,clases,porcentaje,áreas,accesibilidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>smooth (Clough-Tocher): for drawing only</source>
      <translation>suavizado (Clough-Tocher): solo para dibujar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>soil</source>
      <translation>suelo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in every pit</source>
      <translation>se queda en cada punto bajo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in ponds and passes hollows that noise explains</source>
      <translation>se queda en los charcos y atraviesa las hondonadas que el ruido explica</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>stockpile,heap,pile,pit,volume,toe,rim,base,inventory,tonnage,excavation,earthwork</source>
      <translation>acopio,montón,pila,excavación,hoyo,volumen,pie,borde,base,inventario,tonelaje,movimiento de tierras</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load</source>
      <translation>levantamiento,gnss,gps,rtk,rover,csv,texto,coordenadas,leer,cargar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>tab</source>
      <translation>tabulador</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the height of the first line</source>
      <translation>tomar la cota de la primera línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the mean of the heights</source>
      <translation>tomar la media de las cotas</translation>
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>the height that balances</source>
      <translation>la cota que compensa</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>the plane through three points</source>
      <translation>el plano por tres puntos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>thin,simplify,reduce,decimate,fewer points,tolerance,tin,mesh</source>
      <translation>aligerar,simplificar,reducir,diezmar,menos puntos,tolerancia,tin,malla</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>tilt</source>
      <translation>inclinación</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>time</source>
      <translation>hora</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids</source>
      <translation>tin,triangulación,delaunay,terreno,mdt,malla,líneas de rotura,contorno,huecos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>topographic: single observations while walking</source>
      <translation>topográfico: observaciones únicas al caminar</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>triangles through the line</source>
      <translation>triángulos atravesados por la línea</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>unchanged</source>
      <translation>sin cambios</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>vertical curve,parabola,K value,crest,sag,grade,profile,fit,alignment,road</source>
      <translation>acuerdo vertical,parábola,valor K,convexo,cóncavo,rasante,pendiente,perfil longitudinal,ajuste,alineación,carretera</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>volume,earthwork,cut,fill,cut and fill,quantities,cubic metres,difference,excavation,uncertainty</source>
      <translation>volumen,movimiento de tierras,desmonte,terraplén,desmonte y terraplén,mediciones,metros cúbicos,cubicación,diferencia,excavación,incertidumbre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>volume,earthwork,cut,fill,level,plane,slope,datum,levelling,platform,uncertainty</source>
      <translation>volumen,movimiento de tierras,desmonte,terraplén,nivel,plano,pendiente,datum,nivelación,plataforma,incertidumbre</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>volume,earthwork,cut,fill,region,parcel,phase,polygon,quantities,depth,material,rock,topsoil</source>
      <translation>volumen,movimiento de tierras,desmonte,terraplén,región,parcela,fase,polígono,mediciones,profundidad,material,roca,tierra vegetal</translation>
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>water,catchment,watershed,basin,drainage area,inlet,gully,outlet,channel,ridge,divide,contributing area</source>
      <translation>agua,cuenca,cuenca vertiente,área drenante,sumidero,imbornal,desagüe,cauce,vaguada,divisoria,área de aportación</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>water,change,design,difference,compare,before,after,ponds,catchments,diversion,drainage,impact</source>
      <translation>agua,cambio,proyecto,diferencia,comparar,antes,después,charcos,cuencas,desvío,drenaje,impacto</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>water,flat,level,slope,fall,minimum slope,drainage,puddles</source>
      <translation>agua,llano,nivel,pendiente,caída,pendiente mínima,drenaje,charcos</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>water,flow,direction,arrows,slope,aspect,downhill,drainage</source>
      <translation>agua,flujo,dirección,flechas,pendiente,orientación,cuesta abajo,drenaje</translation>
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>water,flow,path,drainage,steepest descent,downhill,runoff,raindrop,trace,inlet</source>
      <translation>agua,flujo,camino,drenaje,máxima pendiente,cuesta abajo,escorrentía,gota de lluvia,traza,sumidero</translation>
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>water,peak flow,runoff,rational method,rain,intensity,coefficient,stormwater,C i A</source>
      <translation>agua,caudal punta,escorrentía,método racional,lluvia,intensidad,coeficiente,pluviales,C i A</translation>
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>water,pond,puddle,pit,sink,depression,hollow,ponding,standing water,volume,spill,drainage</source>
      <translation>agua,charco,encharcamiento,punto bajo,sumidero,depresión,hondonada,agua estancada,volumen,rebose,drenaje</translation>
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>west</source>
      <translation>oeste</translation>
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>whole design</source>
      <translation>proyecto completo</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>yes</source>
      <translation>sí</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>{columns} × {rows} cells, {filled} of them on the surface.</source>
      <translation>{columns} × {rows} celdas, {filled} de ellas sobre la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>{count} of the further surfaces cannot be loaded as meshes; check their files.</source>
      <translation>{count} de las demás superficies no se pueden cargar como mallas; compruebe sus archivos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>{count} pads</source>
      <translation>{count} plataformas</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{count} remarks, the first: {first}</source>
      <translation>{count} observaciones, la primera: {first}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>{curves} vertical curves; the surface departs from them by {spread:.1f} mm (robust standard deviation) and {worst:.1f} mm at most.</source>
      <translation>{curves} acuerdos verticales; la superficie se aparta de ellos {spread:.1f} mm (desviación típica robusta) y {worst:.1f} mm como máximo.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: cannot be read so.</source>
      <translation>{files}: no se puede leer así.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: {lines} lines, {points} points, &lt;b&gt;{rejects} rejected&lt;/b&gt;, {others} others.</source>
      <translation>{files}: {lines} líneas, {points} puntos, &lt;b&gt;{rejects} rechazadas&lt;/b&gt;, {others} otras.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>{file}: cannot be opened again.</source>
      <translation>{file}: no se puede volver a abrir.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>{file}: cannot be written ({reason}); choose another file.</source>
      <translation>{file}: no se puede escribir ({reason}); elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{file}: the file does not say its CRS; ask for it and choose it.</source>
      <translation>{file}: el archivo no indica su SRC; pregúntelo y elíjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <source>{file}: the layer {layer} cannot be written ({reason}).</source>
      <translation>{file}: no se puede escribir la capa {layer} ({reason}).</translation>
    </message>
    <message>
      <location filename="../plugin/processing/planproject.py" />
      <source>{file}: the plan cannot be written {reason}</source>
      <translation>{file}: no se puede escribir el plano {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/processing/geotiff.py" />
      <source>{file}: the raster cannot be written ({reason}); choose another file.</source>
      <translation>{file}: no se puede escribir el ráster ({reason}); elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{file}: there is no such file.</source>
      <translation>{file}: no existe tal archivo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{file}: this makes a GeoTIFF; choose a name that ends in .tif.</source>
      <translation>{file}: esto genera un GeoTIFF; elija un nombre que termine en .tif.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{folder}: the folder cannot be made ({reason}); choose another.</source>
      <translation>{folder}: no se puede crear la carpeta ({reason}); elija otra.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{hours} h {minutes:02d} min</source>
      <translation>{hours} h {minutes:02d} min</translation>
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>{label}: the height of its face is not known; give one, or fill the field.</source>
      <translation>{label}: no se conoce la altura de su cara; dé una o rellene el campo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{label}: {area:.1f} m² in plan, {share:.1f} % of the surface.</source>
      <translation>{label}: {area:.1f} m² en planta, {share:.1f} % de la superficie.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: a grid is laid over polygons; choose a layer of them.</source>
      <translation>{layer}: una malla se dispone sobre polígonos; elija una capa de polígonos.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drawnsource.py" />
      <source>{layer}: all heights are 0. If the lines were drawn without heights, switch their use off.</source>
      <translation>{layer}: todas las cotas son 0. Si las líneas se dibujaron sin cotas, desactive el uso de estas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point {number} has no name; give it one, or choose the name field.</source>
      <translation>{layer}: el punto de apoyo {number} no tiene nombre; déselo o elija el campo del nombre.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: control point “{name}” occurs twice; keep one.</source>
      <translation>{layer}: el punto de apoyo «{name}» aparece dos veces; conserve uno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: feature {id} has no geometry; delete or draw it.</source>
      <translation>{layer}: el objeto espacial {id} no tiene geometría; bórrelo o dibújela.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} has no heights (Z); switch their use off.</source>
      <translation>{layer}: el objeto espacial {id} no tiene cotas (Z); desactive el uso de estas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} is not one closed line (parts: {count}); close it, without holes.</source>
      <translation>{layer}: el objeto espacial {id} no es una sola línea cerrada (partes: {count}); ciérrela, sin agujeros.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: features without a place or a height left out: {count}.</source>
      <translation>{layer}: objetos espaciales sin posición o sin cota omitidos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>{layer}: features without a usable geometry left out: {count}.</source>
      <translation>{layer}: objetos espaciales sin geometría utilizable omitidos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>{layer}: features without a usable line left out: {count}.</source>
      <translation>{layer}: objetos espaciales sin línea utilizable omitidos: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>{layer}: is in {crs}, not in the CRS chosen; leave the CRS empty or reproject the layer.</source>
      <translation>{layer}: está en {crs}, no en el SRC elegido; deje vacío el SRC o reproyecte la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{layer}: it has neither a field cut_run nor fill_run; add one.</source>
      <translation>{layer}: no tiene ni campo cut_run ni fill_run; añada uno.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{layer}: it has {count} lines; a strip follows one. Select it.</source>
      <translation>{layer}: tiene {count} líneas; una franja sigue una sola. Selecciónela.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>{layer}: its CRS is not that of the surface; its points are compared as they are.</source>
      <translation>{layer}: su SRC no es el de la superficie; sus puntos se comparan tal como están.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: its CRS is {crs}, that of the first surface {other}.</source>
      <translation>{layer}: su SRC es {crs}, el de la primera superficie {other}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>{layer}: its CRS is {crs}, that of the surface {other}; reproject the layer first.</source>
      <translation>{layer}: su SRC es {crs}, el de la superficie {other}; reproyecte antes la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: no point has a height; give points with Z values or choose the height field.</source>
      <translation>{layer}: ningún punto tiene cota; dé puntos con valores Z o elija el campo de la cota.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: offsets are laid along lines; choose a layer of them.</source>
      <translation>{layer}: los desplazamientos se disponen a lo largo de líneas; elija una capa de líneas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, left as checked: {count}.</source>
      <translation>{layer}: puntos cuyo estado no es used, flagged ni rejected, dejados como se comprobaron: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.</source>
      <translation>{layer}: puntos cuyo status no es ninguno de used, flagged, rejected, tomados como used: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: rejected points that are not handed over: {count}.</source>
      <translation>{layer}: puntos rechazados que no se entregan: {count}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: there are no lines in it; draw one around each stockpile or pit.</source>
      <translation>{layer}: no contiene líneas; dibuje una alrededor de cada acopio o excavación.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: there are no polygons in it; draw one or leave it out.</source>
      <translation>{layer}: no contiene polígonos; dibuje uno u omita la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: there is no field {field}; choose one of {fields}.</source>
      <translation>{layer}: no hay ningún campo {field}; elija uno de {fields}.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{layer}: there is no line in it; draw one or leave it out.</source>
      <translation>{layer}: no contiene ninguna línea; dibuje una u omita la capa.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>{layer}: {count} lines are in it; select one and tick “Selected features only”, or join them.</source>
      <translation>{layer}: contiene {count} líneas; seleccione una y marque «Solo objetos seleccionados», o únalas.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks, header and other sentences of a log.</source>
      <translation>{lines} líneas: {points} puntos, {rejected} líneas rechazadas, {others} comentarios, líneas en blanco, cabecera y otras sentencias de un registro.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{low:.4g} to {high:.4g} %</source>
      <translation>{low:.4g} a {high:.4g} %</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>{low} to {high} m deep</source>
      <translation>de {low} a {high} m de profundidad</translation>
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{name}: the line has no heights; give it Z, or a profile.</source>
      <translation>{name}: la línea no tiene cotas; dele Z o un perfil longitudinal.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{name}: {above:.2f} ± {above_95:.2f} m³ above its base, {below:.2f} ± {below_95:.2f} m³ below.</source>
      <translation>{name}: {above:.2f} ± {above_95:.2f} m³ por encima de su base, {below:.2f} ± {below_95:.2f} m³ por debajo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{name}: {field} is “{value}”, which is no number; mend it.</source>
      <translation>{name}: {field} es «{value}», que no es un número; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>{order}: {use} &lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;{length} m long, {walked} m walked at its end</source>
      <translation>{order}: {use} &lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;{length} m de largo, {walked} m recorridos al final</translation>
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>{rule}: pass {good:.1f} m, fail {bad:.1f} m, too close to tell {close:.1f} m.</source>
      <translation>{rule}: cumple en {good:.1f} m, no cumple en {bad:.1f} m, demasiado justo para decidir en {close:.1f} m.</translation>
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{step} …</source>
      <translation>{step}…</translation>
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>{what}: the CRS is not known; choose a projected one, such as EPSG:25832.</source>
      <translation>{what}: no se conoce el SRC; elija uno proyectado, como EPSG:25832.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit needs a height; give a Z or fill the column height.</source>
      <translation>{where}: la edición necesita una cota; dé una Z o rellene la columna height.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit “{kind}” is none of {known}; correct the column edit.</source>
      <translation>{where}: la edición «{kind}» no es ninguna de {known}; corrija la columna edit.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: {value} in the column {name} is no number; correct it.</source>
      <translation>{where}: {value} en la columna {name} no es un número; corríjalo.</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of cut, 95 % (m³)</source>
      <translation>± del desmonte, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill less cut, 95 % (m³)</source>
      <translation>± de terraplén menos desmonte, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>± of fill, 95 % (m³)</source>
      <translation>± del terraplén, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>± of it, 95 % (m³)</source>
      <translation>± del valor, 95 % (m³)</translation>
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>– (kept beside)</source>
      <translation>– (se guarda aparte)</translation>
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>“Check the survey” finds it; 15 mm is usual for RTK (common practice, no source).</source>
      <translation>«Comprobar el levantamiento» lo determina; 15 mm es lo habitual en RTK (práctica común, sin fuente).</translation>
    </message>
  </context>
</TS>
