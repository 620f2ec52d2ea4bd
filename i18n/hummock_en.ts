<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
  <context>
    <name>core</name>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is in degrees; the surface needs a projected CRS in metres or feet, such as EPSG:25832.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' ({name}) is no projected CRS; the surface needs one in metres or feet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is in {unit}; only metres, feet and US survey feet are read. Choose another CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>'{crs}' is not understood as a CRS; give an EPSG code such as EPSG:25832, or WKT.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>'{name}' is to be left out, but is no matched control point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns is empty; name the columns in file order.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns lacks {roles}; a point needs easting, northing and height (or latitude, longitude and height).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is given twice; give it once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is no role{hint}; roles are {roles}. Use '-' to skip a column, '+{word}' to keep it as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' is not role=column; a column is a header word or a number from 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/columns.py" />
      <source>--columns: '{word}' mixes two ways; give either all as role=column or all in file order.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>95 in 100 are below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>A combined factor of {factor} cannot be right; it is a number close to 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} is too small to tell levels apart at heights near {high:.3f} m; give a larger interval.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>A contour interval of {interval} {unit} makes {count} levels from {low:.3f} m to {high:.3f} m, more than {most}; give a larger interval, or look for a wrong height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>A fault in the program, not in your file: {reason}. Please report it with what --debug shows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A fit in space needs both standard deviations, in plan and in height, or neither.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A four-parameter fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid grid needs to know where the points are; say their CRS, or give a constant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>A geoid separation of '{value}' is no number; give metres.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A plane for heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A seven-parameter fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A shift of heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A standard deviation of {value} m is none; give one above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>All check points on the surface are in vegetated ground; no class can be stated without open ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>All together: {lines} lines on {levels} levels, {length} {unit} long.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only {count} checkpoints in non-vegetated ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>As it stands in the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Boundaries here are the limits of the surface, not legal boundaries of land.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Buried services are not shown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By the rule that the RMSE of heights is at most a third of the interval (ASPRS 2014, annex B), the claimed noise carries intervals from {least} {unit}; the interval of {interval} {unit} is finer than the survey can support. Choose a larger one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By the rule that the RMSE of heights is at most a third of the interval (ASPRS 2014, annex B), the claimed noise carries intervals from {least} {unit}; the interval of {interval} {unit} is not finer than that. Check shots must confirm it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Check shots kept out of the surface: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Closed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Code {code} is not in the code table; taken as ground. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Colours: ColorBrewer 2.0, schemes safe for colour-blind readers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor {projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature {radius} m).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Combined factor {combined}, as given by the user.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Contents</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/labels.py" />
      <source>Contour labels {height} m high every {spacing} m cannot be placed; give two numbers of metres above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Contours  {lines} lines on {levels} levels, every {interval:g} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours are exact on that surface and not smoothed. Ground exactly at a level counts as above it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours by level; index contours only, as there are many levels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours every {interval} {unit}, index contours every {index} {unit}. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm from it, in height {height_mm} mm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Coordinates and units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Count</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Decisions made by hand were read from {file}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Depressions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Distance to the point recorded before ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Easting ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is outside the outermost points; no triangle can be added there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is too far from the survey; a surface may measure 107 km.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: at E {easting:.3f} N {northing:.3f} there is a point already, of height {height:.3f} m. Move its height instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: it would leave no triangle of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: its line stays at one point, E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: its three corners are not the corners of one triangle, the first at E {easting:.3f} N {northing:.3f}. Force or swap edges first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: no edge joins E {easting:.3f} N {northing:.3f} and E {end_easting:.3f} N {end_northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: no point with a height lies within {reach:.3f} m of E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} belongs to a breakline, boundary, void or forced edge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the edge at E {easting:.3f} N {northing:.3f} is on the rim; there are not two triangles to swap it in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_data.py" />
      <source>Edit {number} ({kind}) does not apply: the edge from E {easting:.3f} N {northing:.3f} would cross {label}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle at E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has no triangle with its centroid in the polygon at E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the surface has the triangle at E {easting:.3f} N {northing:.3f} already.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edit_triangles.py" />
      <source>Edit {number} ({kind}) does not apply: the two triangles at E {easting:.3f} N {northing:.3f} form no convex quadrilateral, so there is no other diagonal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edited.py" />
      <source>Edit {number} ({kind}): the added point at E {easting:.3f} N {northing:.3f} is no part of the surface; it is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Ellipsoidal heights changed to orthometric ones: height minus geoid separation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Every line of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Field codes were not read: the surface has no lines to hold to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>File</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>File: {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Files beside this report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>First line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and {lines} contour lines every {interval} {height_unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. Accept it by its name if that will do: '{name}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: '{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: '{name}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>From {source} to {target} every operation needs a file not installed here: {grids}. Install it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>From {source} to {target} the best operation needs {grids}, not installed here: '{best}' (accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used (accuracy {accuracy}): '{name}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation as the receiver sent it with each point: {least_m} to {most_m} m, mean {mean_m} m; from which model is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation interpolated from the grid {grid}: {least_m} to {most_m} m, mean {mean_m} m, over the site. The accuracy of the grid is not known to PROJ.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Geoid separation {value_m} m for the whole site, a constant ({origin}); its slope is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. Heights are untouched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined factor. Heights are untouched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Heights are as in the file: this program has not changed their datum and does not know it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are ellipsoidal and are taken over so; a geoid separation makes heights above the geoid of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are orthometric as sent and are taken over so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Heights are taken over as they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are taken over as they are; only positions in plan are transformed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Heights are transformed too, by the same operation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Heights of the used points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Highest ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Histogram of the distance between points recorded one after another; median {middle} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Histogram of the heights of the used points, from {low} to {high} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Holds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own error included).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How the file was read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Index</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>Index contours are set to every {index_every} contours; give a whole number from 1 up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against {count} check shots of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Interval and noise: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), annex B, RMSE of heights = interval / 3.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}, and {second}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>It could also be that {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Its height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Length in plan ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Level ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of {count} triangles lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}, and {second}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Likely cause: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Limits and cautions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Lines     {lines} from field codes, {edges} edges of the surface held</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross at {count} places; they were joined there. Largest difference of heights {spread:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lines of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines that are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines the surface holds to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Local codes, the contract and a licensed professional decide; this report does not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Lowest ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Map of {count} contour lines every {interval} {unit} over the shaded surface, with rim and breaklines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Mean, used ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Median</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Method and sources</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>No check point states its own height error, so none is added; edition 2 asks for it. Give a column sigma_v.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>No contour interval can be vouched for: neither check points nor repeats nor stated errors are known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>No decisions were made by hand.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>No level meets the surface; choose a smaller interval or another base.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>No line was rejected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>No two used points have the same place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Noise moves a contour sideways by the noise of the height over the slope: at the median slope of {slope} % a standard deviation of {shift} {unit}; on flatter ground more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Noise of the used points as the receiver claims it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Northing ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Not for construction or setting out without independent checks on the ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Not for construction or setting out without independent checks; see the limits and cautions at the end.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is 1.9600 × RMSEz = {accuracy:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Noticed on the way:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>On the user's word the coordinates were read otherwise: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Orthometric heights changed to ellipsoidal ones: height plus geoid separation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to {worst_mm} mm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>PROJ knows no way from {source} to {target}; choose another CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Places recorded more than once (equal to 0.1 mm in plan): {count}. Rule: the surface takes the mean height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Places recorded more than once, largest differences first: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole numbers exactly. Heights are never rounded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Points    {points} from {lines} lines ({rejects} lines rejected); {used} used, {flagged} flagged, {rejected} rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Points a bar of {width} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Points and decisions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Points kept out of the surface because their code is not ground: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Points on a local grid cannot be transformed; say their CRS, or fit them to control points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Points rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Points still used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Points with a value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: {accuracy}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Quantity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Reason</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Reasons (a point can have several)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Rejected lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   {count}, all of them in the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Repeated records with line codes, left out of the lines together with their words. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart ({ppm} ppm).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Second line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Space</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the plane of its {count:.0f} neighbours, {ratio:.0f} times the scatter there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_spikes.py" />
      <source>Spike on a line at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the straight between its neighbours on the line, {ratio:.0f} times the scatter of lines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Status</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Steps a bar of {width} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>Stopped; no file is half written.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Survey report: {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Tested {accuracy:.3f} metres vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check points, RMSEz {rmse:.3f} m).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The arc tolerance {value} m cannot be used. Give at least {least} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The base of the contour levels is {base} {unit}; give a number near the heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>The cell size is {cell} m; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA suggests 20 % or more), and {near} are nearer to another one than a tenth of the site's diagonal ({distance:.0f} m).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points' own error is {sigma_cm:.1f} cm; for the {class_cm:g}-cm class they should be good to {needed_cm:.1f} cm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The check shots were taken with the receiver of the survey: an error they share (base station, pole height, geoid) does not show. Points from an independent, better source are needed for a statement by a standard.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The columns for line number and words do not fit the number of codes; not joined. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The contour interval is {interval} {unit}; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The contours are no better than the survey: where nobody walked, the surface is a straight guess between the points around.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of {count} check points is not stated; they count as non-vegetated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The file gives no standard deviations, so this report cannot say how uncertain a single height is. Independent check shots can.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/soften.py" />
      <source>The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change distances by 5 mm in a kilometre.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/smooth.py" />
      <source>The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <location filename="../plugin/core/surface/findings.py" />
      <source>The limit {option} is {value}; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or accept another one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} cannot be used ({reason}). Write a regular expression with a group named code.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The pattern {pattern} has no group named code. Write (?P&lt;code&gt;...) around the code.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_beside.py" />
      <source>The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off its height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>The scale of a local grid is not known; say the CRS of the points to compute it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The sentences follow the standards in meaning; compare their wording with your copy before you sign them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/slopes.py" />
      <source>The slope limits {limits} (percent) must rise and be 0 or more; mend their list.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface (TIN)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it (constrained Delaunay triangulation), with no points added along them. Between points it is plane.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The survey points by what became of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The unit of the heights was left as it was read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The vertical class wanted is {value} cm; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/thin.py" />
      <source>The vertical tolerance is {tolerance} m; give a number of 0 or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; {count} circles are wider than {limit:.1f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word for {meaning} is '{word}'; it must be one word without spaces or separator.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>The word for {word} stands on a point without a line code; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The word {word} means both {first} and {second}. Give each its own word.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>There is not enough memory for this survey; split the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. Only independent check shots measure the accuracy of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>This Python has no package {package}; install {packages}, or run the Python that QGIS uses.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested and does not meet the {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class of the ASPRS Positional Accuracy Standards, Edition 2 (2023). Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>This data set was tested to meet ASPRS Positional Accuracy Standards for Digital Geospatial Data, Edition 2 (2023) for a {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class. Actual NVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>This operation is not the best one known; the user accepted it by its name.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Vertices</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What became of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What came in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Where lines cross and were joined; {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Where the surface lies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a triangle has a standard deviation of {middle} from noise alone. What the ground does between points comes on top.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Written to {folder}:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>a grid file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a quote is opened and not closed, or closed too early</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>area in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <location filename="../plugin/core/georeference/heights.py" />
      <source>as given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>blank lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>boundaries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>breakline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>building the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>check shot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>check shot, kept out to test the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is the code: a few texts repeat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is the height: no other column can be</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is the name: all texts differ</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is the name: whole numbers that only grow</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is {role}: its angles have the letters {letters}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} is {role}: its header word is '{word}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>columns read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} look like degrees but may be lengths</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} make a compact cloud</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>columns {first} and {second} may be easting and northing or the other way round</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>comment lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>contour lines with level, index and depression</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>coordinate system</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>coordinates are in {unit}: read so they land in the area of use of the CRS, else not</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decided by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decimal mark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>delimiter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>easting and northing are exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>easting of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges held by boundaries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges held by breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges held by voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point with its status and reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>flagged, still used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>grid north</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>header lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height less certain than allowed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>holding the surface to its lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>independent check points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>index contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; coordinates are read in {unit}, the unit of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>jump at loss or regain of the fix</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>lands in the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>lands outside the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>local grid, metres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>long triangles taken off the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>mean of the points plus geoid separation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>median slope, by area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>median {value} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>no column can be the height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>no fixed ambiguities</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>no grid of a kind it knows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>northing of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>not UTF-8</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>not on the ground, by its code</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says for sure whether coordinates are in {units}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says for sure which columns are which</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>plan less certain than allowed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>points follow each other at {step} in columns {first} and {second}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>points kept out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>points that shape it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>pole lifted or its height wrong</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>pole tilted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>reading points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>recorded while standing still</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>rejected lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>rejected lines with their reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>repeated ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>repeats another point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>rim of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>semicolon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>several columns may be the height: {columns}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>six digits before the mark, then seven, as eastings and northings often</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>spaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>standard deviation in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>standard deviation of a height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>tab</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>text encoding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the coordinate system of the mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the coordinates are in {unit}, not in {assumed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the coordinates are of another system: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the coordinates are of another zone: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the coordinates are of the other hemisphere: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the easting is usually written first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the eastings have a zone number, {prefix}, before them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the false origin is left out of the coordinates (east {easting} m, north {northing} m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the file ends within the line, in column {count} of {width}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the header says that coordinates are in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns instead of {width}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line has {count} columns; {role} is column {column}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the northings contain the 10,000,000 m added in the southern hemisphere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the northings lack the 10,000,000 m added in the southern hemisphere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the same zone is meant, with the eastings written as in {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface as a mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the values are latitude and longitude in degrees; read them as such</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the values are longitude and latitude in degrees; read them as such</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>the values of column {column} are such as {role} has</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>the zone number {prefix} before the eastings is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>together, the lines of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>tracing contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>triangles outside the boundary or in voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>unit of plan coordinates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <location filename="../plugin/core/georeference/transform.py" />
      <source>unknown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>vertices</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>what the receiver states</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>writing the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>yes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{count} check points have the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' where it is not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} check points state no height error of their own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{count} control point(s) were not surveyed, and are not used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{count} more rejected lines are in the table of rejects.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{count} of {all} check points lie outside the surface and were not used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; the first is in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{count} of {total} points lie outside the area the operation is made for ({area}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>{count} thin triangles along the rim, {area:.1f} m² in all, span up to {value:.1f} m, the longest at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} vertices are outside the boundary or the trimmed rim, or inside a void.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{crs} does not say where it may be used; whether the points lie there is not checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their geometric mean is used; distances depend on direction.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{crs}: easting {easting} m, northing {northing} m is no place on the Earth; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes ({axes}) make a mirrored plan; choose the variant of this CRS with axes to east and north.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: control point '{name}' stands in line {first} already; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns name, easting, northing and, where known, height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: the point has no name; give it one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file} line {line}: {column} '{found}' is no number; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: {count} point(s) lie outside the geoid grid {grid}, the first in this line; give a grid that covers the site, or a constant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: {count} position(s) cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, column {column}: no valid JSON ({reason}). Mend the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: the kind in "edit" is {value}; it must be one of {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {field} must be {wanted}, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} has no field {field}. Remove it or correct its name.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}, edit {number}: {kind} needs {fields}, exactly one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: "edits" must be a list of edits, and nothing may stand beside it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ...</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: '{word}' is no status; use {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: a quote is not closed; mend the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: close is {close} for code {code}. Write yes, no or nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} already stands in line {first}. Keep one of them (case does not matter).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} is a {kind} and always closes. Leave close empty or write yes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: code {code} makes no line, so it cannot close. Leave close empty or change the kind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read as {role}, as --columns says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: column {column} is headed '{word}' but is read in {unit}; check the unit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs code, kind and layer; close is optional.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, cannot be read in any line; check --columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: column {column}, read as {role}, holds no number in any line (here '{value}'); check --columns and --decimal (read with delimiter {delimiter}, decimal mark '{decimal}').</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: columns {first} and {second} are both headed {role}; give --columns, such as name,easting,northing,height,code.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: more cells than columns. Put quotes around text that contains the separator.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} is not in the file; it may have been cut short, write it anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: node {node} was given before; number each node once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: none of the {count} data lines is a point with delimiter {delimiter} and decimal mark '{decimal}' (here: {reason}); check --columns, --delimiter and --decimal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: the code is empty. Fill it in or remove the row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma a decimal comma? Give --delimiter and --decimal, or mend the header.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions.py" />
      <source>{file}, line {line}: the header lacks {column}; it needs line, status and reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle has no area in plan; remove it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: the triangle lies on the same side of an edge as another; remove one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: there is a header but no data line; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: this is not a list of edits; "format" must be "{format}".</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: this is not a text table. Save the code table as CSV.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}, line {line}: this point has no plan position (easting or northing is not a number), nor have {others} others. Reject such points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: version {version} of the list of edits is not known here (known: up to {known}). Update the plugin.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter and as decimal mark? Give --delimiter or --decimal, or name every column.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: {role} is column {column}, but the lines have {count} columns with delimiter {delimiter}; check --delimiter and --columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{decimal}' cannot be a decimal mark; use '.' or ','.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space or one sign such as '|'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: --columns names column {column} ({role}), but no line has more than {count} columns; check --columns and --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot open a grid whose path contains {sign}; move or rename the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file}: PROJ cannot read this as a grid of geoid separations ({reason}); give a GTX or GeoTIFF grid, or a constant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: all {count} points lie on one straight line, which spans no surface. Check the column mapping (the same column for easting and northing?) or add points beside the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: cannot be read ({reason}); check its permissions and whether it is in use.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/files.py" />
      <source>{file}: cannot be written ({reason}); check the folder, its permissions and the space left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} contains a space or the separator '{separator}', so it can never be found. Rename it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: code {code} is also the word for {meaning}. Change one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has no header line, but --columns names the header word '{word}'; use column numbers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has over {most} columns with delimiter {delimiter}; check --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a binary file, not text; export the survey as delimited text (CSV).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is a folder; give the survey file inside it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is empty; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not UTF-8 text; it was read as {encoding}. Check accented letters.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is not {encoding} text ({reason}); give the encoding it was written in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting them at their crossings makes new ones. Remove one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_grid.py" />
      <source>{file}: no point is left to compute a scale from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. Check the boundary's place and the maximum rim edge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: none of the {count} check points lies on the surface (the first is line {line}); check their coordinate system, units and the order of easting and northing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); give --columns, such as {options}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job.py" />
      <source>{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local for a local grid in metres.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: read as {columns} with delimiter {delimiter}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table cannot be read ({reason}). Check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}: the code table has no codes. Give a header code,kind,layer,close and rows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: the comma cannot be delimiter and decimal mark both, unless fields are quoted; give another --delimiter or --decimal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: the control file cannot be read ({reason}); check path and encoding (UTF-8).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}: the edits cannot be read ({reason}). Check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job.py" />
      <source>{file}: the folder cannot be made ({reason}); choose another one for --out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: the mesh file cannot be read ({reason}); check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: the mesh has no triangles; choose another file or write it anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. Check the column mapping, the units and single points far off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code table that is shipped) and use field codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: there is no column {column} for the linework. Columns kept: {columns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: there is no control point in this file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: there is no such file; check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: {count} crossings of lines with different heights, the first at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} points have fewer columns than the rest, the first in line {line}; what is missing counts as unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {count} usable points at different places; a surface needs at least three.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh.py" />
      <source>{file}: {found} {record} records found but {expected} announced; the file is cut short, write it anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: {label}, vertex {vertex}, has no plan position (easting or northing is not a number). Mend the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {note}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{file}: {question}; type one of: {options}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is one line, join it there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is a ring, close it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: a part has {places} place(s) and needs {needed}; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a height at every vertex, and {count} have none. Give heights, first at {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: a vertical face needs a line of two places or more. Mend or remove the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: all points of the ring lie on one straight line; left out. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: fewer than three places, so it stays open. It ends at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: it has no vertices; left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a circle between each two; straight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: no point of it can be used; no line. It began at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: only one place, {point} (line {line}); no line, the point stays a ground point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: points at the place of the one before them left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: rejected points left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second line: {count}, first at {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; the first one is used there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the face height {value} m cannot be used. Give a height other than 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the offset {value} m of the face cannot be used. Give at least {least} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: the ring was open and is closed by a straight edge of {gap:.3f} m from {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the two lines of the face cross or touch near {x:.3f}, {y:.3f}. Use a smaller offset there or draw the line anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: there is no room for a second line {offset} m beside it. Use a smaller offset or the other side.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: vertices dropped because they repeat the place before them: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: {count} of its vertices have no usable coordinates; the part is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>{label}: {point} (line {line}) starts a new line without a word for it, after the line of that number had ended.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>{low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} is not determined by these control points ({names}): they lie together or on one line. Add one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} needs {needed} control points or more; {count} can be used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>{option} must be a number above zero, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>{option} must be a number, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and fit again without it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: no redundancy; the fit is exact, and an error in a point would not show.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: one of these control points does not fit, and it cannot be told which: {suspects}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: the control points do not fit within the standard deviation given, and with so few it cannot be told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: the control points fit within the standard deviation given; were one wrong, it could not be told which.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or several points may be wrong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest {largest_mm} mm, at '{worst}'), and use more control points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>{reason}; see --help.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) has no value: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is empty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no angle in degrees: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is no finite number: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is not a number: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>{role} (column {column}) is too large for a coordinate: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m.</source>
      <translation type="unfinished" />
    </message>
  </context>
  <context>
    <name>hummock</name>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>2DM meshes (*.2dm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>&lt;p&gt;Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. Interval and base are in the unit you choose, which need not be that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; level in the chosen unit and in metres, index (drawn heavier), depression (a ring with the lower ground inside) and closed. Each line also carries its level as height.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours finer than the points allow show noise, not ground: with heights good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not smoothed: their corners are where they cross the edges of triangles.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>&lt;p&gt;Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary and voids become edges exactly; no points are added along lines with heights.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that plan and heights are in the unit of the points' CRS. Lines come from the field codes of the points, in recording order, and from layers. A line without heights takes them from the surface around it and keeps its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Points at the same place&lt;/b&gt; (equal to 0.1 mm) count once, with their mean height, and are reported.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; lines that cross at different heights are refused unless you choose a rule. Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: their ground was not surveyed. A boundary drawn around nothing leaves no triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The mesh&lt;/b&gt; is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>&lt;p&gt;Reads delimited text (comma, semicolon, tab or blanks; point or comma as decimal sign; with or without a header) into a layer of points with heights. Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line is in the second output with its reason.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the coordinates are easting, northing and height in the CRS that you give; nothing is reprojected. A CRS in degrees is refused. Heights are taken as they are: no geoid is applied.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The status&lt;/b&gt; of a point is used, flagged or rejected. Only rejected points stay out of the surface. You can change it in the layer; later steps read it there. Plan and height are read from the geometry, so the columns easting, northing and height only inform.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a header the columns have to be named, and easting and northing can be swapped: look at the map. A wrong unit makes a surface of the right form and the wrong size. Where the file leaves a doubt about separator or decimal sign, choose it.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, or taken from the mesh layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>A mesh layer or a mesh file, as “Build the surface” writes it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A projected CRS; the one that the rover was set to. The file does not say it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of points or lines of the file to use, flag or reject, with reasons.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of the lines that are no points: line number, reason and text.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, boundary, void, not_ground or check.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Add the surface to the map when done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>As in 1.5 or 1,5.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Base (in the unit above)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Boundary</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Breakline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines, boundary and voids from code and line number of the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Build the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>CRS of the coordinates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>CRS of the surface (empty: as stored with it)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Cancelled: there is no result.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Code field (empty: “code” where there is one)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code table (CSV; empty: the one that comes with Hummock)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Code tables (*.csv *.txt);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Columns</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Columns (empty: as the header names them)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Comment lines start with</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours every {interval} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours of a surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>Decimal sign</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Decisions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Decisions on points (CSV)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Delimited text as the rover or its software wrote it. The file is only read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Depression contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Draws contours exactly on the triangles of a surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Each triangle as a polygon with its slope (%) and plan area (m²).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Every so many contours one is drawn heavier and labelled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>First line names the columns</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Flagged (used)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Height field (in the unit of the CRS; empty: the points' Z)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Hummock met a fault of its own ({kind}: {reason}); the log panel has the details.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/provider.py" />
      <source>Hummock: from rover points to surface and contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Import survey points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>In file order, such as name,easting,northing,height,code with - for a column to skip and +word to keep one as it is; or by header, such as easting=X,northing=Y,height=Z.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Index contour every … contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Index depression contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Interval (in the unit below)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Join lines by the field codes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Lines in the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines or polygon outlines that must be edges of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that cross are joined there by a new point; this gives its height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines whose heights differ by up to this are joined at their mean.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Lines with level, index and depression.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Longest edge at the rim (m; empty: no limit)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>More breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there are no contours. Choose a smaller interval.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Number of contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Number of triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Only for points whose geometry has no heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Only where heights are in another unit than easting and northing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Plan area {area:.1f} m², heights {low:.3f} m to {high:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points that may shape the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points used: {used}, flagged: {flagged}, rejected: {rejected}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points used: {used}, rejected: {rejected}. Triangles: {triangles}; taken off outside the boundary or in voids: {outside}, at the rim: {trimmed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points with heights in the unit of the CRS, all columns of the file, and a status.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points with heights, such as the output of “Import survey points”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines that the surface leaves out, such as buildings.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Polygons or closed lines: the surface ends there. A ring in a ring is a hole.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Reads a survey file into a point layer and accounts for every line of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Rejected (not in the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Rejected lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>Separator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Such as utf-8 or latin-1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Such lines are counted, not read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/contours.py" />
      <source>Surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, for the next step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Survey file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>Survey points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off for a step inside a model.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off when the lines were drawn with heights of 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Tables (*.csv *.txt);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Text encoding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Text encoding (empty: found from the file)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Text files (*.csv *.txt *.asc *.xyz *.pts *.dat);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The difference in height between two neighbouring contours.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The field that holds what the surveyor typed beside the point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The height from which the levels are counted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The levels of the contours are whole multiples in this unit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The lines that the surface was asked to hold to, by kind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>The memory of this machine does not suffice; take fewer points at a time.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>The output cannot be written ({reason}); choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The points have no code field: no lines are joined by codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>The unit in the file, where it is not that of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Tolerance at crossings (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangulates survey points with breaklines, boundary and voids into a mesh.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>US survey feet (ftUS, 1200/3937 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of easting and northing (empty: that of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Unit of interval and base</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of the heights (empty: that of the CRS, or as above)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Use the heights (Z) of the lines in these layers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Void</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>What parts the columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Where lines cross</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Whether the first line that is no comment is a header.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>blanks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>comma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>contour lines,isolines,levels,interval,tin,mesh,feet,metres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>found from the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>international feet (ft, 0.3048 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>metres (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>no</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>no further details</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>no reason given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>refuse when the heights differ by more than the tolerance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>semicolon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>tab</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the height of the first line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>take the mean of the heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>yes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/layers.py" />
      <source>{layer}: all heights are 0. If the lines were drawn without heights, switch their use off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: features without a place or a height left out: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: no point has a height; give points with Z values or choose the height field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: there is no field {field}; choose one of {fields}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks and header.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>{what}: the CRS is not known; choose a projected one, such as EPSG:25832.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
