<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
  <context>
    <name>core</name>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>          triangles as they are: cut {cut:.1f} m³, fill {fill:.1f} m³, net {net:.1f} m³</source>
      <translation type="unfinished" />
    </message>
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
      <source>'{crs}' ({name}) is not in degrees; positions in degrees need a geographic CRS, such as EPSG:4326.</source>
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
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>'{name}' would make the {step} m from point to point {after} m, and another cause leaves them; it is not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>'{name}' would put the point it explains {distance} from the {others} that lie well as they are; it is not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>'{name}' would put the site {distance} from what is known of it; it is not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>'{name}' would put the {count} points it explains {distance} from the {others} that lie well as they are; it is not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/given.py" />
      <source>'{word}' answers no question of a file; options are {options}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/level_shift.py" />
      <source>'{word}' is no shift of heights; write the line of the file and metres, as in 1153:+0.234, several parted by commas.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>'{word}' is no way to read control; such are as-read, mirrored, control-exchanged, control-prefix, survey:ft, survey-heights:m, survey-depths, control:ft, control-heights:m, names:A=B, several with + between them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>--base-was and --base-is must both have a height, or neither.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>--base-was lies {distance} from the points, too far for a base of theirs; check its coordinates, their order and unit.</source>
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
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>--depths must be rising numbers with commas between them, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_options.py" />
      <source>--geoid is empty; give metres, or a file with a grid of geoid separations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
      <source>--job goes on with a job by the choices in its file, so {other} cannot be given too. To change a choice, give the survey and all choices with --out of the same folder, or change the file; another visit is added with --add.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/landmarks.py" />
      <source>--near must be a place such as 51.45N,9.0E, an easting and northing in --crs, or a file of points or GeoJSON whose coordinates can be understood; not '{value}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>--rain {rain:g} would be inches an hour, as the survey is in feet, and so much does not fall; say the unit with --rain-unit, in/h or mm/h.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>1 : {run}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>1.9600 × RMSE (NSSDA, 95 %)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>95 % interval ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>95 %: 1.96 times that</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>95 in 100 are below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>95 in 100 records are nearer than</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>95th percentile of the absolute values</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>A - A, along the line of the sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>A bar along {name} for each of {count} rules with its verdicts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>A base is corrected by two positions: give --base-was and --base-is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>A breakline has no heights, though vertices of it are survey points: {labels}. It is laid on the surface and does not shape it. If it is to hold edges, give it heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>A combined factor of {factor} cannot be right; it is a number close to 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A contour interval of {interval:g} m asks for a height error of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).</source>
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
      <location filename="../plugin/core/georeference/control.py" />
      <source>A control point was not surveyed, and is not used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A cross-section cannot reach {left} to the left and {right} to the right. Give widths of 0 or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>A curve of {count} steps cannot be made; give 1 to {most}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>A decimal point or digit lost or too many</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>A fault in the program, not in your file: {reason}. Please report it with what --debug shows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>A file with another SHA-256 than here was changed afterwards; checksums.sha256 is the same list for programs that check it.</source>
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
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>A grid knows the depth at cell middles only. Along rims, breaklines and the line of no cut nor fill a cell is counted wholly or not at all: {area:.1f} m² were compared by the grid, {exact:.1f} m² exactly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>A height error of {error:.3f} m cannot be had with heights good to {sigma:.3f} m: their noise alone gives {least:.3f} m. Ask for less, or observe each point longer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>A height of zero</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>A hollow counts as a pond when the noise of the heights, with a standard deviation of {sigma}, makes one like it anywhere in the survey with a probability below {chance} %, and it is at least {depth} deep. This takes errors as independent; what neighbours share, as one bad fix over a minute, can make a wider hollow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>A line has the height 0 all along, where the points nearest to it lie at {low:.3f} m to {high:.3f} m: {labels}. The surface goes down (or up) to 0 there. If the drawing has no heights, give this line as a line without heights, or give it heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>A line has the height 0 at some of its vertices, where the points nearest to them lie at {low:.3f} m to {high:.3f} m: {labels}. That makes pits or spikes. If 0 means that nobody measured a height there, leave it empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A plane for heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>A point of {first} and one of {second} lie within {distance_m} m and differ in height by {most_m} m, more than {height_m} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>A profile needs heights at two stations or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>A ring of the pad has {count} different corners; a ring needs three or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/sheet_parts.py" />
      <source>A scale of 1 : {scale} cannot be. Give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>A set-out table needs the columns name, easting and northing; “{word}” is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A seven-parameter fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>A shift cannot tell a rotation, a scale or a tilt, and an error of the position it rests on is in every point. A second known point, far from the first, would show them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A shift of heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>A sign lost or too many</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>A slope of {run} (metres out for each metre up) cannot be graded; give more than 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>A standard deviation of {value} m is none; give one above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/place.py" />
      <source>A survey is shifted by --base-was and --base-is, or by --control; give one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>A thin triangle along the rim, {area:.1f} m², spans {value:.1f} m at E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>A window of {window} m with steps of {step} m does not fit a line of {length:.3f} m. Give a window above 0 and no longer than the line, and a step above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Above the heights, exaggerated; below the grade, the straight line that fits the heights of {window} best, with the interval in which it lies with 95 %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Above the pit ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Accuracy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one own check shot; no test</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} check points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} own check shots; no test</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Accuracy statement: {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Accuracy: FGDC-STD-007.3-1998 (NSSDA) and ASPRS Positional Accuracy Standards, edition 2 (2023). Empty circles: G. Toussaint (1983, “Computing largest empty circles with location constraints”).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm (one checkpoint, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile {percentile_cm:.1f} cm).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>After ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Against the limits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>All check points on the surface are in vegetated ground; no class can be stated without open ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>All points shifted by {east} m east, {north} m north and {up} m up, so that the known point {names} lies where it is known; the same vector in space at every point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>All points shifted by {east} m east, {north} m north and {up} m up, the mean of {count} known points ({names}), the same vector in space at every point; the known points differ from it by {apart} m at most.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>All together: {lines} lines on {levels} levels, {length} {unit} long.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Along the edges of the lane no low point is deeper than the noise.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Along the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only one checkpoint in non-vegetated ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only {count} checkpoints in non-vegetated ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>Another unit of length</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Apart in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Applies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Area ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Area a bar of {width} {unit} ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Area and volume by level; the dashed line is the level at which water leaves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Area by depth: cut to the left of 0, fill to the right; exact for each bar.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area in plan ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Area on the slope ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Areas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>As it stands in the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>As you said, the rover compensates tilt: one point tilted by more than {limit:g}° is not held to this limit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>As you said, the rover compensates tilt: {count} points tilted by more than {limit:g}° are not held to this limit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little to cover a site; choose a larger paper or another scale.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/frames.py" />
      <source>At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a larger paper.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} for heights the profile does not fit on {paper}: one sheet spans {range:.2f} m. Choose {fit} or a larger paper.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>At scale {scale} the sheets would be {count}; the most is {most}. Choose a smaller scale, such as {fit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Automatic checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Automatic checks: noise from the scatter about cubics through neighbouring points; offsets of stretches of the walk by iteratively reweighted least squares over all places where passes meet or run side by side; intervals of sigmas by chi-square. Limits are this program's own choice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>B - B, across it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Balance   at {height:.3f} ± {sigma_95:.3f} {unit}, fill from one of cut {factor:g}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Balance of cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Base {height}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Basin     holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², spills at {level:.3f} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Before ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Beyond them lies what no receiver tells: heights are held against the walk itself, the passes beside it, places walked twice and coded lines, by the noise found in this survey. Steps that several passes saw at one line are ground: kerbs, walls, ditches.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>Both positions of the base were taken to be in {crs}; one in another datum would put the difference of datums into all points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Bottom of a ditch, gutter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Boundaries here are the limits of the surface, not legal boundaries of land.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Boundary of the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Building</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Buried services are not shown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By depth: all the earth moved where it is so deep</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is flagged or no longer flagged.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is in the surface, which the checks rejected ({reasons}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand the point of line {line} is out of the surface, which the checks let pass.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are flagged or no longer flagged, the first in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are in the surface that the checks rejected, the first in line {line} ({reasons}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>By hand {count} points are out of the surface that the checks let pass, the first in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By it ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>By region</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>By that rule the survey supports the interval of {interval} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>By the checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments are bounded by lines of steepest descent and found exactly, so their areas add up to that of the surface. Areas and volumes of ponds are exact on the triangles.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Catchments before and after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>Catchments without a runoff coefficient have no peak flow: {names}. Give one for all or for each inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments, the largest first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Catchments; {merged} outlets on the rim that drain less than {least} {unit}² each are counted with the rest of the rim, which has no name here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} doubles back on itself at station {station} (E {easting:.3f} N {northing:.3f}), so that left and right are not defined there. Remove the vertex or split the line there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no length: all its {vertices} vertices are at one place. Draw the line again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has no station {station}; its stations are {ranges}. Give one of those.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} has station {station} more than once, in the numberings {parts}. Say which one is meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} is nowhere on the surface {surface} (the line begins at E {easting:.1f} N {northing:.1f}, the surface reaches from E {west:.1f} N {south:.1f} to E {east:.1f} N {north:.1f}). Check that both are of one site and in one CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself once, at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). That place has two stations; the lower one is given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name} meets itself {count} times, first at stations {first} and {second} (E {easting:.3f} N {northing:.3f}). A place there has two stations; the lower one is given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: a repeated vertex (closer than 0.1 mm) was left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: station equation {number} (back {back} = ahead {ahead}) is not on the line beyond the one before; the numbering there runs from {low} to {high}. Correct the back station or the order.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: vertex {vertex} has no finite coordinates. Draw the line again or repair its layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Chance of noise (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Change ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Change of slope (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Changed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Check on the control points before, during and after the work; set nothing out while they are off by more than the job's tolerance.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/join.py" />
      <source>Check shots kept out of the surface: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    one finding, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Checks    {count} findings, in the report; heights repeat to {sigma:.1f} mm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Claimed ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Classes of slope</source>
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
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor {projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature {radius} m).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Combined factor {combined}, as given by the user.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Common ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Compared with it</source>
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
      <source>Contours are exact on that surface. Ground exactly at a level counts as above it.</source>
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
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Contours of the sheet: low-pass filter of G. Taubin (1995, “A signal processing approach to fair surface design”), for heights with the weights of U. Pinkall and K. Polthier (1993); lines are then drawn as Bézier curves inside corridors that do not meet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Control point</source>
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
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Coordinates in {crs}; lengths and heights in {unit} (1 {unit} = {metres} m); {decimals} decimals. Cut and fill are design less existing ground: above 0 fill, below 0 cut.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>Coordinates of zero</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Count</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Cover</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Coverage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; one place to walk again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Coverage  every {along:.2f} m, passes {across:.1f} m apart; {count} places to walk again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crest, stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Cross-sections of {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Crossfall (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Crossfall cannot be found from offset {low} m to {high} m. Give the lower one first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall from {left} left to {right} right of the line, positive where the surface rises to the right, over {window}, with its 95 % interval; neighbouring windows help each other. Where the lane has a crown, each half has a crossfall of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall of the left half (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall of the right half (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall over the stations of {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crossfall towards the edges: does each half of the lane fall to its edge by {least} % for sure?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Crown, ridge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Crown, right of the line ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Curves of the water's area and volume by its level, from the pit to the spill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Cut and fill between stations, and the running balance along the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>Cut and fill jump at the balanced height, where slopes run on over a brow or reach other ground: {rest:.1f} m³ are left over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut area ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Cut by material</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Cut, fill and what is left over against the height of the design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>DEM: the plane of the triangle under each cell's centre.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Decisions by hand against the checks: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Decisions made by hand were read from {file}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Deeper by ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Depressions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Depth ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Depth of cut (orange) and fill (purple), drawn from a grid of {cell}. Numbers come from the triangles.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Depth ± 1 sigma ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Depth: cut below 0, fill above ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Difference ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Differences are those at all {count} vertices of the full surface, checked on the finished one. Rim and breaklines are kept as they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Differences of height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Distance ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Distance along the pass ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>Distance to the point recorded before ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Dots and intervals: the standard deviation of a height found for each of {shown} runs, from {low} to {high} {unit}, beside what the receiver claims; {off} claims lie outside the interval of their run.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Doubtful points along the walk</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drained to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Drains now to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Drains to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Drawn     {breaklines} breaklines, {boundaries} boundary rings, {voids} voids, from {files}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side.py" />
      <source>Drift over {value} m cannot be; give the metres within which points share it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>E</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Each window is judged with the help of its neighbours, with about 5 in 100 wrong, and more where the slope changes quickly; of many windows near the limit a few will be judged wrongly. Drift of the receiver counts only where it was given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Earthwork of the grading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_page.py" />
      <source>Earthwork: {existing} to {design}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>East ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Easting ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Easting and northing are as in the file. Heights too: this program has not changed their datum and does not know it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>Easting and northing swapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Edge of a ditch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Edge of paving</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edit</source>
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
      <location filename="../plugin/core/report/summary.py" />
      <source>Edits     {applied} of {count} applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Edits by hand from {file}: {applied} of {count} applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_place.py" />
      <source>Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Ellipsoidal heights changed to orthometric ones: height minus geoid separation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>End areas take the area to change evenly between sections. Where it grows faster or slower than that they count too much or too little; the prismoidal correction for cut is {cut:.1f} m³, for fill {fill:.1f} m³.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Every check point, largest differences first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Every line of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Evidence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Evidence is the decimal logarithm of how many times less than once so orderly a line is expected by chance; from 6 on, and where sizes are steady along it, a line is a breakline. A step that runs along another at an even distance, as the two kerbs of a street do, is told by both together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Exact, same ground ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Falls (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Fence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Field codes were not read: no lines come from them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <location filename="../plugin/core/report/visits.py" />
      <source>File</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>File and line</source>
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
      <source>Files handed over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Fill area ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Filled to where it spills, {level} {rise}, the basin holds {volume} ± {half} {unit} (95 %) on {area} {area_unit}, {depth} {rise} deep at its pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  one place to look at, in the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Findings  {count} places to look at, in the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Findings by kind, the greatest value first: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>First file, line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>First line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Fits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Flagged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>For a height error of {error:.3f} m with heights good to {sigma:.3f} m on ground that bends {curvature:.4f} 1/m, passes may be {spacing:.1f} m apart: error² = 2/3 sigma² + (bend × spacing² / (2 √30))² (reasoned here, no standard).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>For machine guidance: load it, then check at several points of known height, by a person who is not on the machine's path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Forms narrower than {narrow:.1f} m (kerbs, ditches, banks) fall between passes: walk their edges as coded lines, or cross them squarely every 3 m, from which they are found without codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Found     no line without codes beyond those that were given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Found     {used} lines without codes used as breaklines ({length:.0f} m), {proposed} proposed, {rejected} rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Found ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Found lines, those with the strongest evidence first: {shown} of {count}; ± one standard deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>From E {easting:.3f} N {northing:.3f} water runs off the surface at once: there is no basin. Give a place inside the basin, or a surface that takes in its whole rim.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>From line {first} on heights are {size:.3f} m ± {sigma:.3f} m higher than before, as {met} places visited twice say: pole height, antenna, base or fix changed. Nothing in the file says which part is right.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>From line {first} on heights are {size:.3f} m ± {sigma:.3f} m lower than before, as {met} places visited twice say: pole height, antenna, base or fix changed. Nothing in the file says which part is right.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>From line {line} to {last}, or in parts of that, heights say the opposite of the others about tilt: another rover, or its compensation was lost there. Hold these points against what crosses them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>From station ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>From the heights alone, without codes, {count} lines: {used} are breaklines of the surface, {proposed} have too little evidence and are proposed only, {rejected} were rejected by hand.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>From the triangles to the volumes told</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>From {existing} to {design}: cut {cut} ± {cut_doubt} {unit}, fill {fill} ± {fill_doubt} {unit}, net {net} ± {net_doubt} {unit} (95 %), over {area} {area_unit} that both have.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and {lines} contour lines every {interval} {height_unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. If that will do, accept it by its name: {typed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: '{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: {typed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} every operation needs a file not installed here: {grids}. Install it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>From {source} to {target} the best operation needs {grids}, not installed here: '{best}' (accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used (accuracy {accuracy}): {typed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Further rejected lines, in the table of rejects: {count}.</source>
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
      <location filename="../plugin/core/quality/plan.py" />
      <source>Give one of: the contour interval, the height error or the pass spacing wanted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grade (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades and vertical curves fitted; residuals {spread} (robust), at most {worst}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Grades meet at (station, height)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Grading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>Grading   pads: {count}; cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³ (95 %), {area:.0f} m² taken</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_page.py" />
      <source>Grading: {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. Heights are untouched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground and grid need the CRS of the grid; give it as --crs, not a local grid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined factor. Heights are untouched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>Ground coordinates need the origin about which they were made; give its easting and northing as --ground-origin.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Hauls along the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Have buried services located before anything is dug or driven in; they are not in this table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Hedge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Height and grade over the stations of {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height guessed ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Height of the surface less that of the check point, in {unit}; those outside have no figure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass at {shown} places, with used, flagged and rejected points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Height over distance along the pass: {shown} of {count} places with flagged or rejected points, each kind before a second of its kind, the longest first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a height {sigma}.</source>
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
      <location filename="../plugin/core/georeference/intake.py" />
      <source>Heights are shifted from a line of one file on; read that file by itself, then the others with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Heights are taken over as they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>Heights are taken over as they are: no known height was given.</source>
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
      <location filename="../plugin/core/quality/claims.py" />
      <source>Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line} and nothing says which part is right. Where the part before is right, shift the heights from there on ({back}); else those before it, or measure a known point again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/claims.py" />
      <source>Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line}. Check points say that the part before it is right: shift the heights from there on ({back}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/claims.py" />
      <source>Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line}. Check points say that the part behind it is right: shift the heights before it ({back}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Heights of the used points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here all ponds are full: water runs on over them to the rim or an inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here ponds keep their water, and hollows that noise explains let it pass as if they were full.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Here water stays in every pit, those of noise too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Higher than before by</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Highest ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Histogram of the area by depth of cut and fill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Histogram of the distance between points recorded one after another; median {middle} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Histogram of the heights of the used points, from {low} to {high} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Holds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Holds more by ({unit}³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Hollow outline: what is left is the alpha shape of Edelsbrunner, Kirkpatrick and Seidel (1983).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of the one mark found in both: RMSEH = {rmse_cm:.1f} cm (the check point's own error included).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own error included).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights of each run repeat where it met others, against the receiver's claim: {shown} of {count} runs. Grey: the whole survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>How heights repeat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How the file was read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>How this was found:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>How {file} was read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_crs.py" />
      <source>If the survey is in {crs}, the control is in {other}, and the site lies at {place}, {distance} from where it is drawn now. Check which of them it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>In words</source>
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
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Indications</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>Inlets that take no water, because they are off the surface or another one is nearer: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Internal check, no test by a standard: against one check shot of the same receiver RMSEz {rmse:.3f} m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.</source>
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
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Its height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Its own sigma ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K ({unit}/%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of crests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>K of sags</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>K {k} {unit}/%</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>Kept out of the surface: {count} of {all} points ({share} %).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Kerb or step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Kerb or step (foot)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Kerb or step (top)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Larger by ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Later visits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>Latitude and longitude swapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Least redundancy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Left out  {count} of the flagged points, in stretches that passes say are off; --keep-flagged puts back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Length in plan ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of each verdict ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Length of the water ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Lengths in plan, and area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Level ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_flat.py" />
      <source>Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of a triangle lie on one line of height {height:.3f} m. If the ground is not level there, add a spot height.</source>
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
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Limits and cautions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Limits that nobody asked for do not reject more than a tenth of the points: those are flagged, and it is said above. Tilt is a fault only of a rover that does not compensate it: as the one who set it up says (--tilt-compensated), else as the heights tell, at places visited twice and along the walk.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Line {first}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Line {number} would be settled by one more pass squarely across it near E {easting} N {northing}.</source>
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
      <source>Lines cross or meet at one place; they were joined there. Difference of heights {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines cross or meet at {count} places; they were joined there. Largest difference of heights {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines drawn by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>Lines drawn by hand and edits of the surface count also where the ground of a later visit does; take away those that it has overtaken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines from field codes and by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines of the field codes go before those drawn by hand, these before lines that the points show. Places where a drawn line meets another line or a survey point at another height: {count}; see “Surface”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/run_figures.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lines of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines run through or end on a survey point at another height; the point keeps its own. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and the point {second} at {second_height:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>Lines run through or end on {count} survey points at other heights; the points keep theirs. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and the point {second} at {second_height:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines that are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Lines that the ground shows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Lines that the points show without codes were not looked for.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Lines that the points show, by kind and status; numbers as in the table. Steps have a foot and a top.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Lines the surface holds to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>Lines {first} to {last}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Local codes and licensed practice decide on drainage, and on where water may be led: turning it onto a neighbour's ground is a legal matter in most places.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Local codes, the contract and a licensed professional decide; this report does not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Locate buried services before anyone digs: no survey of the surface shows them. Setting out and machine guidance need independent checks.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Low points along the edges, where water stands until it runs off along the gutter, over the kerb or the crown, or into an inlet that is known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Low points are where water stands on the triangles: a gully lets it off only if it is given, a lowered kerb only if the points show it. The deepest place of a noisy profile is a little too deep; depths below 2 standard deviations are not told.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Lowest ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Map of cut and fill by depth, with {count} lines of no cut and no fill and the rims of both surfaces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the slopes in {count} classes, the steeper the darker, with rim and breaklines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Map of the used points with {circles} empty circles and {places} places to walk again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Map of the {count} places to look at over the shaded surface, by kind and number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} catchments with channels and ridges.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Map of {count} check points over the shaded surface with their differences.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Map of {count} contour lines every {interval} {unit} over the shaded surface, with their heights, spot heights, rim and breaklines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Map of {count} lines by kind and status over the used points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {count} ponds by depth with pits, spill points and where they spill to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Map of {count} ponds that are new, changed or gone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Map of {paths} paths of water, channels, ponds and inlets over the shaded surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mass diagram: the lower line rises in cut and falls in fill; between places where it is 0 the earth balances.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Material ({unit} of cut)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean cut ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean depth ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Mean fall to the left (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Mean fill ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Mean haul ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Mean, used ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Median</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Method</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Method and sources</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Middle height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Much of the ground is no deeper than the noise of the points: noise alone makes about {excess:.1f} m³ of cut and as much fill. The net volume is not touched by it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>N</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>Names of control points are written otherwise in the survey, and taken for the same: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Net ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs.py" />
      <source>No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No accuracy and no contour interval is vouched for while this stands:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>No accuracy class and no contour interval is vouched for, for the reasons above.</source>
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
      <location filename="../plugin/core/report/road_sections.py" />
      <source>No crest was fitted, so nothing is said of sight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>No decisions were made by hand.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>No ground drains nowhere: all water comes to the rim or to an inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>No ground has its water go elsewhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>No height between {low:.1f} m and {high:.1f} m balances cut and fill with a surplus of {surplus:.1f} m³. Check the surplus.</source>
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
      <location filename="../plugin/core/features/ground_lines.py" />
      <source>No lines of the ground were looked for: the points do not follow each other as on a walk. They need the order in which they were recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>No pass fits into the area: none would be {step:g} m long, the distance at which points are stored. Have the perimeter walked too, or give a larger area.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No place needs to be walked again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>No point was flagged or rejected for anything but its code.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No two used points have the same place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>No.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>Noise alone makes about {excess:.1f} m³ of cut and as much fill between the triangles; this is taken off, so that ground that did not change comes to 0 on average. So a volume can be below 0: then none was found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Noise moves a contour sideways by the noise of the height over the slope: at the median slope of {slope} % a standard deviation of {shift} {unit}; on flatter ground more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Noise of the used points as the receiver claims it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>None of the {count} cross-sections is on the surface {surface}. Check line and CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>None of the {count} points lies at a vertex of the surface, so they cannot tell its noise. Give the points that the surface was built from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>None of these is a proof.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>North ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/drawing.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Northing ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Not compared ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Not compared: {existing:.1f} m² that only {existing_name} covers, {design:.1f} m² that only {design_name} covers.</source>
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
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Not for construction, traffic or setting out without independent checks.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Not surveyed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there is one. What it shows is 1.9600 × RMSEz = {accuracy:.3f} {symbol}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Note</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing measured within ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>Nothing that the checks found stands against stating how accurate the survey is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Nothing was deleted: every point is in points.csv with its status and reasons. Where you know better, decide by hand with --decisions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_long.py" />
      <source>Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, {area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>Noticed on the way:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Nowhere to walk again: no place of the surface is farther than {limit:.1f} m from a measured one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Number</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of it drains nowhere ({unit}²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Of the flagged points {count} are left out of the surface: stretches of {length} or more that at least two passes meet, along at least half of them, which all say that they are off, by more than their doubt. All other flagged points are in the surface. Whoever knows the site puts these stretches back with --keep-flagged, or single points by the status used; else they are places to walk again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Of {count} places on the surface the water of {rim} leaves over the rim, of {inlets} comes to an inlet, and of {stay} stays in a pond or pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Offset</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Offset, right of the line above 0 ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>On the user's word control was read so: {reading}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>On the user's word one of {total} points was read otherwise: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>On the user's word the fit is used though it was judged not to fit: scale {scale}, expected {expected}; largest residual {largest} m in plan.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>On the user's word {count} of {total} points were read otherwise: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>One catchment is larger than 80 ha; the rational method is not commonly used for such areas.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>One check point has the cover 'grass', which is taken for short grass, so for non-vegetated ground; write 'tall grass' if it is not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One check point states no height error of its own; it counts as {sigma:.3f} m, as with the others.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>One crossing of passes tells next to nothing of the noise of the survey; plan more passes across.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/features/ground_lines.py" />
      <source>One line that the points show runs within {reach:.1f} m of lines that are known already; these go first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/features/replay.py" />
      <source>One line that was decided by hand is not found again where it was; it stays as it was given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>One of {all} check points lies outside the surface and was not used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>One of {total} points lies outside the area the operation is made for ({area}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place to walk again on a line, where it is carried across rejected points or ends short of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place to walk again where a flagged stretch was left out of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place to walk again; with it no place is farther than {limit:.1f} m from a measured one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>One place where one more pass squarely across would settle a line that the points show in doubt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point has no name; choose another name field or number the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the design surface: it has no design height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>One point is off the existing surface: cut and fill are not known there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>One point lies well as it is and stays so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>One point shares its name “{name}” with another; both are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/standing.py" />
      <source>One point stands in a found step and agrees with it in height; the line stands for it in the surface. If its status were changed by hand, it would stay.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One position was recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: from {lowest:.3f} m to {highest:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>One status was set by hand against the automatic checks, in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/giving_way.py" />
      <source>One stretch of a found line, {length:.1f} m long, crosses another line and is left out of the surface, near {easting:.3f}, {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>One vertex is outside the boundary or the trimmed rim, or inside a void.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>One wrong digit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>Orthometric heights changed to ellipsoidal ones: height plus geoid separation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Other line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Outcome</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to {worst_mm} mm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>PDOP, at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>PROJ knows no way from {source} to {target}; choose another CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/axes.py" />
      <source>PROJ {version} cannot compute {crs} ({method}): where the points lie on the Earth is not known, and not checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>PROJ {version} cannot compute {crs}; choose another CRS, or use a later PROJ.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Pad</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Part of</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Part of the lane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Passes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>Passes {spacing:.2f} m apart would be {count} on this area; ask for less or plan parts of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flow ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>Peak flows by the rational method (Kuichling 1889) are an indication: they hold as far as the runoff coefficients, the intensity and its duration do that were given, and do not replace a drainage design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Peak flows by the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889), with an intensity of {intensity} {unit}. They hold as far as the coefficients, the intensity and its duration do, which were given, not found here; they are an indication.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Place     {statement}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Place ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Places</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Places met</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once (equal to {grid} in plan): {count}. Rule: the surface takes the mean height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places recorded more than once, largest differences first: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Places to look at, numbered as in the table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places to walk again, in walking order: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Places with flagged or rejected points: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole numbers exactly. Heights are never rounded. Where rounding could decide, bounds of J. R. Shewchuk (1997, “Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates”) tell when whole numbers must.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design over the shaded ground, with slopes and daylight lines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Plan of the design: arrows and ticks point downhill; slopes are told as 1 up or down in so many out, falls of the platform in per cent.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <location filename="../plugin/core/report/visits.py" />
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
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points and decisions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points kept out of the surface</source>
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
      <location filename="../plugin/core/quality/held_back.py" />
      <source>Points rejected for a tilt of more than {limit:g}°, as you asked: {count}, {share:.0f} % of the file. But a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not by the length of the pole: the rover seems to compensate tilt. If it does, say --tilt-compensated yes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points still used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Points that have another status by hand than the checks gave them: {changed}. Decisions that agree with the checks: {same}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Points that stand within {beside} of a used step and agree with its heights are no vertices of the surface: the line stands for them. They are not rejected, and have the reason in_line in points.csv.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>Points to set out: {count}, control points: {control}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Points with a value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>Ponds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds after the change, those that are gone, and ground whose water goes elsewhere, over the changed surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Ponds before and after, the largest change first: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds that noise does not explain: {count}, of {pits} pits. Full, they hold {volume} {unit}³ under {area} {unit}² of water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds when full, by depth, with the way of the overflow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ponds, the deepest first: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: {accuracy}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Profile and grades</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>Profile of {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Put aside, or asked about, before anything was computed from the others:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Quantity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSE</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>RMSEV with that error in quadrature ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reason</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Reasons (a point can have several)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Reasons given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>Recorded every {along:.2f} m along the passes, {across:.1f} m from pass to pass.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Region</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/partition.py" />
      <source>Region {name} has a ring of {count} corners with coordinates; a ring needs three.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/study.py" />
      <source>Regions overlap over {area:.1f} m² ({names}): each of them counts that ground, the total counts it once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/visits.py" />
      <source>Rejected lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Remark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Remarks   {count}, the worst first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>Repeated records with line codes, left out of the lines together with their words. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Residuals at the control points: fitted minus control</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Rim (bottom)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Rim (top)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area encloses nothing: {count} corners; draw a polygon of three corners or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>Ring {number} of the area has a corner without finite coordinates; draw it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/road.py" />
      <source>Road      {name}, {length:.1f} {unit}; stretches by the limits: {passed} pass, {failed} fail, {close} too close to tell</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Road: {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Rule</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the height of the line that comes first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights, however much they differ.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Rule: the mean of the two heights; a larger difference than the tolerance would have been refused.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Run by run, where a run met others at {least} places or more: {shown} of {count} runs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Runoff coefficient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Runs off at station, offset</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>S</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Same place, different heights: the largest differences</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart ({ppm} ppm).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second file, line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Second line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Second minus first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Section {name}. Heights are exact all along, at every edge of both surfaces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/sections.py" />
      <source>Sections of {width} m to each side cannot be drawn; give a width above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate {sigma}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Share of the plan (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Share of the site (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Sheet     contours shifted by at most {shifted:.3f} m, {labels} labels for 1 : {scale:g}, {spots} spots</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/paper.py" />
      <source>Sheet {page} of {pages}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>Shift of the design ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Sight on crests by your table of speeds and least K</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>Sight on crests is an indication only: it compares the K of a fitted curve with your table. It knows nothing of bends, walls, hedges, or the eye and object heights that your table assumes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Signs: cut is ground to be taken away (existing above design), fill ground to be placed (design above existing), both positive; net is fill less cut, above 0 where earth must be brought in. Volumes are as the ground lies, without shrink or swell, unless a table says otherwise.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Site      {place}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Size (bytes)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Size / its sigma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Slope of the triangles; a slope on a limit belongs to the flatter class.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>Slopes of cut run under slopes of fill over {area:.1f} m², by up to {height:.2f} m, most near E {easting:.3f} N {northing:.3f}: there is no room for both. The cut counts there, and its upper edge is steeper than asked for. Give steeper side slopes, or bring these parts of the platform farther apart or nearer in height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Slopes of cut, fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Source of the limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>Southing ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>Space</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Spacing and gaps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Speed reached for sure</source>
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
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spikes: points off the plane through their neighbours by several times the scatter of the survey, estimated from the median of absolute residuals (Rousseeuw and Croux 1993). The limits of all findings are this program's own choice, from no standard.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Spills to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Spot heights: summits, pits and saddles by T. Banchoff (1967, “Critical points and curvature for embedded polyhedra”); shown is what stands out by an interval or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Stage, area and volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Standard deviation ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>Standard deviation of a height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Standard deviation of a height, found in this survey ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {own}, each with an error of its own; no drift.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Standard deviations come from heights good to {total}: {own} of each point's own and {drift} that drift within {time} s, common to points recorded together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Standard deviations of what it holds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Station</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/road_figures.py" />
      <source>Station ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>Station {station}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>Stations every {step} m cannot be set along {length:.1f} m; give a step above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <location filename="../plugin/core/report/found_sections.py" />
      <location filename="../plugin/core/report/point_sections.py" />
      <source>Status</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>Step ({unit})</source>
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
      <location filename="../plugin/core/report/storage_page.py" />
      <source>Storage of a basin: {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/basin.py" />
      <source>Storage of the basin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Stretches, each with its value nearest to the limit or farthest beyond it ± one standard deviation: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>Surface less check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}” has no visible faces; its points ({points}) and lines ({lines}) are read. Build the surface from them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: a face is marked invisible and is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: one of {total} segments of its breaklines and boundaries is no edge of its faces; it comes as a line only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: the face in line {line} has no area in plan (upright or none at all) and is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces are marked invisible and are left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} faces without area in plan (upright or none at all) are left out, the first in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>Surface “{name}”: {count} of {total} segments of its breaklines and boundaries are no edges of its faces; they come as lines only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_crs.py" />
      <source>Survey and control are coordinates of two systems, and the fit hides it. If the control is in {crs}, the survey is in {other}, and lies at {place}: give that as the CRS of the survey instead of a fit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/html.py" />
      <source>Survey report: {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>Tested {accuracy:.3f} {unit} vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check points, RMSEz {rmse:.3f} {symbol}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>That would be {count} points to set out, more than {most}; choose a wider spacing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>The CRS is doubtful: in {crs} the points lie {distance} beside {name}; in {other} the same coordinates lie upon it. Check which of them the coordinates are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>The CRS is doubtful: in {crs} the points lie {distance} from {name}. Check the CRS and the coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>The CRS is doubtful: in {crs} the points lie {distance} from {name}; in {other} the same coordinates lie {there}. Check which of them the coordinates are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>The CRS is doubtful: in {crs} the points lie {distance} outside the area of use of {other}, the CRS of the project. Check which of them the coordinates are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>The CRS is doubtful: {file} itself says “{words}”, and {crs} was chosen. Check which of them it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/grid.py" />
      <source>The DEM of {columns} x {rows} cells is a text of about {size:.0f} MB; a larger cell makes it smaller.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>The arc tolerance {value} m cannot be used. Give at least {least} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The area is too small for a pass: its perimeter is all there is to walk, and no place is far from it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/levels.py" />
      <source>The base of the contour levels is {base} {unit}; give a number near the heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The basin spills at the edge of the surface (E {easting:.3f} N {northing:.3f}); its true brim may be elsewhere. Survey beyond it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/raster.py" />
      <source>The cell size is {cell} m; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline has {count} different places; it needs two or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The centreline is in {line} but the surface in {surface}. Reproject the line's layer to the surface's CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/centreline.py" />
      <source>The centreline turns back on itself at E {easting:.3f} N {northing:.3f}; redraw it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA suggests 20 % or more). Nearer to another one than a tenth of the site's diagonal ({distance:.0f} m): {near}.</source>
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
      <location filename="../plugin/core/quality/claims.py" />
      <source>The checks alone keep out {length:.0f} m of the walk, lines {line} to {last}: look at it, and decide by hand or walk it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The checks found nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The claim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The coded point of line {line} may stand {size:+.3f} m off its line, or the line steps there: look at it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The coded point of line {line} stands {size:+.3f} m off its line and the ground beside it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>The column “{word}” is asked for twice.</source>
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
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>The control points fit as well if {reading}: with these points nothing tells it. Add a control point well off their line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of one check point is not stated; it counts as non-vegetated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>The cover of {count} check points is not stated; they count as non-vegetated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>The cross-section at station {station} does not fit on {paper} at {scale} (it is {width:.1f} m wide and {height:.1f} m high). Choose {fit} or a larger paper.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The cross-sections at stations {first} and {second} cross each other in a tight bend, {offset:.2f} m to the {side}. Ground beyond the crossing is counted twice: make the sections narrower there or fewer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The decision by hand on {name} of line {line} no longer has a point in the survey and has no effect. It stays in the job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>The decision by hand that stands in {file} is used; remove it there if it is not meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The decision on line {line}: '{word}' is none of {words}; mend it in the job's file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/depths.py" />
      <source>The depth limits {limits} (metres) must be above 0 and rise; mend their list.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The depth of topsoil (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side.py" />
      <source>The drift of heights is {value} m; give a standard deviation of 0 or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/noise.py" />
      <source>The drift of {drift:g} m is larger than the standard deviation of a height, {sigma:g} m, of which it is a part. Give a smaller drift or a larger standard deviation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to compacted volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The factor from bank to loose volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/balance.py" />
      <source>The factor from cut to fill is {factor}; give a number above 0 (1 where volumes do not change).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The file gives no standard deviations, so this report cannot say how uncertain a single height is. Independent check shots can.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The file of the survey has changed: the decision by hand on the point of line {before} was found again by its place, in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The file of the survey has changed: the decision by hand on {name} was found again in line {line} (it was line {before}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The file of the survey has changed: {count} decisions by hand were found again by the names of their points, the first, on {name}, in line {line} (it was line {before}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The file of the survey has changed: {count} decisions by hand were found again by the places of their points, the first, of line {before}, in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>The files of the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>The fit was judged: scale {ppm} ppm from the expected one, largest residual {largest} m in plan with {limit} m allowed; no mirrored survey, exchanged name or other unit fits better.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>The height at which cut times the factor equals fill and the surplus asked for. Its ± (95 %) is the doubt of the volumes over the area by which they change; the factor's own doubt is not in it, and is often larger.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/doubt.py" />
      <source>The height offset between both surfaces has {value} m; give a standard deviation of 0 or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/causes.py" />
      <source>The height swapped with a coordinate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/soften.py" />
      <source>The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change distances by 5 mm in a kilometre.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>The interval of cross-sections is {interval}; give a length above 0 that makes at most {most} of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The interval of {interval} {unit} is finer than the survey can support. Choose a larger one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The job decides the point of line {line} twice and not alike; the later decision counts: {status}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The job decides {count} points twice and not alike; the later decision counts, on the first, of line {line}: {status}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>The kerb of an island is told by all passes that go up on it and down again together: five or more. Where none of them crosses an end, that end is left open.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/contours/smooth.py" />
      <source>The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The level or plane has a value that is no number ({values}); give numbers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The level or plane lies at {level:.0f} m, where no ground is; give it in the unit of the heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <location filename="../plugin/core/surface/findings.py" />
      <source>The limit {option} is {value}; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The limits were compared with their sources only as the table says; check them against your copy. Exceptions in the sources, such as landings, lengths and crossings, are not checked here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The load of a truck (m³ loose)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the contours of the sheet: heights were moved by at most {moved} (allowed: {calm}) and then lines by at most {shifted} in plan (allowed: {smooth}). No line crosses another or a breakline. They are for drawing only; lengths, areas and the table below are of the exact contours.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The map shows the exact contours, which are not smoothed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” is that of a control point and of a point to set out; choose another prefix.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The name “{name}” would stand for {count} points ({names} names in all are used more than once); a data collector would mix them up. Choose another prefix or another name field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or accept another one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad.py" />
      <source>The outline of the pad crosses or touches itself or a hole; draw it as rings without loops, holes inside.</source>
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
      <location filename="../plugin/core/earthwork/storage.py" />
      <source>The place of the basin, E {easting:.3f} N {northing:.3f}, is outside the surface. Give one inside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>The platform is too steep near E {easting:.3f} N {northing:.3f}: slopes of {run:g} metres out for each metre up or down run under or over its own edges there. Give steeper side slopes, or tilt the platform less.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The platform is wholly outside the existing surface. Check its place and the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_beside.py" />
      <source>The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off its height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>The point name '{name}' occurs in more than one file; all points are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} has a height {distance} beyond those of all others; it is put aside. A decision takes it back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} has no finite place or height; it is put aside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} lies {distance} from all others, farther than one site reaches; it is put aside. A decision takes it back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} lies {distance} from all others; nothing tells whether it is a control point, a base, or a stray. It is kept and flagged; no ground is drawn to it, unless a line runs there, until somebody gives it the status used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} lies {distance} from the points recorded before and after, farther than one can have gone in that time; it is put aside. A decision takes it back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} lies {distance} from the points recorded next to it, where a point was stored every {step}; it is put aside. A decision takes it back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} was put aside as it was read: a stray, farther off than the walk could have gone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} was put aside as it was read: coordinates of zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} was put aside as it was read: coordinates swapped.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>The point of line {lines} was put aside as it was read: no finite place or height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} is beyond the tolerances '{set}' ({reasons}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>The point of line {line} is not explained by it and stays as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} lies {size:+.3f} m off the ground around it: pole lifted or of another height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line} repeats an earlier one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>The point of line {line}, next to a loss of the fix, lies {size:+.3f} m off the ground around it: ambiguities fixed wrongly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, is nowhere on the Earth in {crs} (its area of use: {area}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>The point of line {line}, one of {total}, lies outside the area of use of {crs} ({area}), by {distance_km} km.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>The points show no line beyond those that were given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked (--no-check): what the receiver got wrong is in the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The points were not checked, so nothing is said of how heights repeat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>The points were not checked: what the receiver got wrong is in the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>The position of the base was corrected afterwards: all points shifted by {east} m east, {north} m north and {up} m up at the base, the same vector in space at every point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>The prismoidal formula is exact where the ground between sections is ruled; what is left comes from ground that changes between the sections, and from bends ({overlap:.1f} m² of the strip lie in several sections).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The profile is too short to fit grades and vertical curves to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The profile must give heights at rising stations that cover the centreline from 0 to {length:.2f} m; it covers {low:.2f} to {high:.2f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims less noise than there is: do not rely on its claims.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims more noise than was found: its claims are on the safe side.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>The receiver claims nothing to compare with.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>The rover compensates tilt: a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not by the length of the pole. So one point tilted by more than {limit:g}° is not held to this limit. If the rover does not compensate, say --tilt-compensated no.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>The rover compensates tilt: a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not by the length of the pole. So {count} points tilted by more than {limit:g}° are not held to this limit. If the rover does not compensate, say --tilt-compensated no.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>The rules, where their limits come from, and how they apply</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The same by other methods</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>The scale of a local grid is not known; say the CRS of the points to compute it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The sentences follow the standards in meaning; compare their wording with your copy before you sign them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>The share of cut that cannot be used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>The site: {place}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/slopes.py" />
      <source>The slope limits {limits} (percent) must rise and be 0 or more; mend their list.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slope of the edge near E {easting:.3f} N {northing:.3f} would run across the platform itself, and slopes of several grades were asked for. Give this outline one slope, or grade its arms as platforms of their own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>The slopes do not meet the ground along {length:.1f} m, since the surface ends there, first near E {easting:.3f} N {northing:.3f}. Volumes stop at its rim; survey farther out or use steeper slopes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/rim.py" />
      <source>The slopes of two edges differ near E {easting:.3f} N {northing:.3f}, where the edges meet at an angle too flat for the slopes to meet. Let the slope change at a sharper corner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>The spacing is held at {spacing:.1f} m: {widest:.1f} m by the formula would miss forms a surveyor is expected to show.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>The spacing must be above 0 m, not {spacing} m; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The stations of the profile must rise; station {station:.2f} m does not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The strip covers some ground twice: parts of it that are apart along the centreline run over each other. Redraw the centreline, or narrow the section.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/corners.py" />
      <source>The strip has no room inside the bend near E {easting:.3f} N {northing:.3f}: its edge, {width:.2f} m beside the centreline, cannot be joined there. Ease the bend, narrow the section, or begin the line farther away.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface (TIN)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check points of {file}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>The surface against the check shots in {file}, which did not shape it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it (constrained Delaunay triangulation), with no points added along them but where lines cross. Tiles of points are triangulated by Qhull, joined, and corrected by Lawson's flips until every edge is right. Between points the surface is plane.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The surface was searched for level spots, gaps in lines, ground where nothing was recorded, spikes, and points beside lines at another height: none were found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>The survey points by what became of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>The thinned surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/plane.py" />
      <source>The three points of the plane lie on one straight line; give others.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has no heights; it was laid on the surface ({count} vertices).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line has {count} different corners; a ring needs three or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line itself lies from {low:.3f} m below to {high:.3f} m above the base taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/ring.py" />
      <source>The toe or rim line leaves the surface for {length:.2f} m, first near E {easting:.3f} N {northing:.3f}, and has no heights of its own there. Draw it on the surface or give it heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/strip.py" />
      <source>The typical section needs widths above 0 on both sides and a ditch of depth above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>The unit of the heights was left as it was read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>The vertical class wanted is {value} cm; give a number above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/profile_design.py" />
      <source>The vertical curve of {length:.2f} m at station {station:.2f} m runs into its neighbour or past the end of the profile; shorten it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/thin.py" />
      <source>The vertical tolerance is {tolerance} m; give a number of 0 or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>The volumes of this page are exact for the two surfaces: every triangle of the one is cut along those of the other. Other methods take samples, so they differ:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>The whole survey lies elsewhere than when {count} decisions by hand were taken; they are taken for the points of their lines, the first for that of line {line}. Look at them on the map.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>The widest circle without a measured point has a radius of {radius:.1f} m, at E {easting:.3f} N {northing:.3f}; no other is wider than {limit:.1f} m.</source>
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
      <location filename="../plugin/core/linework/convention.py" />
      <source>The words '{words}' must be four, with commas between: for begin, end, close and arc, in this order. Leave one empty where the field has none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>Their heights were in the same unit, and were changed alike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Their reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>There are no check points on the surface, so nothing here tests it. Measure at least 30 points with an independent, better method and give them with --check-points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>There are no points to set out in what was given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>There are {count} boundaries, such as one by field codes and one that was drawn: the surface is what lies within all of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/walk_area.py" />
      <source>There is no area to walk; give a polygon.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>There is no pad to grade; give a polygon.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>There is no pond on either surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>There is no pond: noise explains every one of the {pits} pits, or they are shallower than asked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/side_slopes.py" />
      <source>There is no room for the slopes near E {easting:.3f} N {northing:.3f}: those of one part of the platform, {run:g} metres out for each metre up or down, run under or over the edge of another part. Give steeper side slopes, or bring the parts farther apart or nearer in height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>There is no survey file to merge; give at least one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>There is no survey to read; give at least one file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>There is not enough memory for this survey; split the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. Only independent check shots measure the accuracy of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>These are coordinates of the grid: a distance measured on the ground differs from theirs by the combined factor of the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Thinned   {kept} of {vertices} vertices, at most {off:.3f} m off in height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>Thinning: greedy insertion by M. Garland and P. S. Heckbert (1995, “Fast Polygonal Approximation of Terrains and Height Fields”), many points a round.</source>
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
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>This is a computation, not a certificate: a licensed professional decides what may be stated for a contract.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>This is a computation, not a payment certificate: quantities for payment are measured as the contract says, by whom it says. It defers to the contract, local codes and licensed practice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>This is a study of grades and quantities, not a design for construction: levels, drainage, retaining works and the grades that local codes and accessibility rules ask for are the work of a licensed professional.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>This is an indication from a survey, not an approval. Whether a road, walk or ramp meets its limits is decided by the codes that apply where it lies and by a licensed professional.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>This is how far the heights of this survey scatter about their common error, on even ground. Errors that all visits share (base station, geoid, pole height) do not show here; check points show them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>This is no survey of boundaries. Marks of property, and set-out that others build on, are for a licensed professional under local rules, who also checks the design against the issued drawings.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>This is the shape of the ground only: it knows nothing of inflow, outlets, seepage or freeboard. A licensed engineer designs and approves storage by the rules of the place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>This operation is not the best one known; the user accepted it by its name.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>This shows where water runs on the surface as surveyed. It is no drainage design: pipes, infiltration, ground beyond the survey and what was not measured are not in it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>To be known with it:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_area.py" />
      <source>To have it read so, repeat with --correct {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>To station ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Toe of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>Too few places were visited twice to say how far heights wander. Walk a few passes across the others.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>Too little ground agrees within {most:g} m to tell the height offset between {existing_name} and {design_name}: none is taken off, and the intervals rest on its standard deviation of {sigma:g} m. Give the offset if you know it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Top of a bank</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Top of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>U.S. survey feet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdict</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Verdicts at 95 % along the line, by the number of the rule. A stretch passes or fails when the whole interval of its slope does; else it is too close to tell, and more or better points are needed. Where the lane has a crown, the upper half of a bar is the left half of the lane.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Vertical section {name}: existing ground and design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Vertices</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Visit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Visit {number}, {file}, counts wherever it was walked, as said. Points taken in: {taken}; earlier points kept out, because they differ from it by more than noise: {superseded}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Visit {number}, {file}, counts within the polygons of {area}, as said. Points taken in: {taken}; earlier points kept out, because they differ from it by more than noise: {superseded}. Elsewhere this surface is the ground before it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Visit {number}, {file}, has no ground in common with what was there before it: no offset can be told.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>Visit {number}, {file}, is not in this surface: over {changed:.0f} m² of the {common:.0f} m² that both cover it differs from the ground before it by more than noise. Say where its ground counts (--new-ground, or on the desk in “Compare later visits”); its own surface stands in surface_visit_{number}.2dm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volume    {existing} to {design}: cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³, net {net:.1f} ± {net_95:.1f} m³ (95 %)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volume ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Volume ({unit}³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>Volume, compacted ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Volumes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Volumes as the design is raised or lowered, slopes graded anew at each height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>Volumes: {existing} to {design}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>W</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>Wall</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <source>Water     ponds: {ponds}, {volume:.1f} m³ when full; catchments: {catchments}; {nowhere:.0f} m² of {area:.0f} m² drain nowhere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>Water level ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Water runs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Water takes the steepest way down on the triangles themselves, not on a grid: along the gradient across a triangle, along an edge into which both its triangles fall, and on level ground the shortest way along edges to where it goes down (after S. Yu, M. van Kreveld and J. Snoeyink, “Drainage queries in TINs: from local to global and back again”, 1996).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>Ways of water from places {spacing} {unit} apart; channels where more than {channel} {unit}² drain. Relief shaded from the north-west, heights exaggerated {times} times for the shading only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>Westing ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>What a surveyor would look at again before handing this surface on. Each may be right: the ground decides, and nothing was changed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>What became of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What came in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>What can go wrong: where no pass crosses, a lowered kerb or a gap is bridged in a straight line, and the place of a line between passes is guessed from its course. A lasting change of the pole along several passes can look like a step. Compare the map with what you saw on the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What is done with the earth, once the topsoil is off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>What is graded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>What it needs: points every {along}, four passes or more that cross the line, best squarely and every {across}, and a step of about {least} or more; a smaller step needs less noise or more passes. Walking along foot and top, or along the bottom of a ditch, shows it too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What single points are held to: the set “{name}”</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_page.py" />
      <source>What the change does to the water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the checks found, in the order of recording: {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>What the class rests on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>What the doubt rests on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What the receiver claims agrees with what was found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>What was done to the coordinates of the file, in this order:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>What was found</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>Where both surfaces reach, full ponds hold {before} {unit}³ before and {after} {unit}³ after the change. Of each whole surface {kept} {unit}² drained nowhere before, {keeps} {unit}² do after.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>Where lines cross or meet and were joined; {shown} of {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>Where nothing changed the surveys differ {scale:.1f} times as much as the noise stated for them makes likely; intervals and the share of noise rest on what they do differ by.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>Where the doubt comes from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>Where the ground was measured, and where not. Circles hold no measured point and are wider than {limit} in radius; triangles are marked from an edge of {edge}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Where the lane has a crown, found from the surface, with ± one standard deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Where the surface lies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/water.py" />
      <location filename="../plugin/core/report/water_page.py" />
      <source>Where the water runs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>Whether slopes stand, in the end and while they are dug, is not checked here: it depends on soil, water and loads. Slope stability and excavation safety need licensed practice and the local codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>Why the columns were taken so:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>Window</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a triangle has a standard deviation of {middle} from noise alone. What the ground does between points comes on top.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/summary.py" />
      <source>Written to {folder}:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>You decide: set the field status in lines_found.geojson to used, proposed or rejected, or draw a course anew, and give the file back with --found-lines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>You said that the rover compensates tilt, but a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), about the length of a pole. Points tilted by more than {limit:g}° and still used: {count}. Test the rover: an upright and a leaning pole on one mark must give one height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a ditch needs a depth above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>a drawing of faces, lines, contours and points (DXF)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/operations.py" />
      <source>a grid file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>a line above the points says {above}, and a line below them says {below}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a line below the points that gives their {word}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>a line of it says a pole height, and nothing says whether its heights are those of the ground or of the antenna</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>a line of words</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a list of fixes from 0 to 8, such as [4] or [4, 5]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/earthwork/comparison.py" />
      <location filename="../plugin/core/points/merge.py" />
      <source>a local grid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>a local grid: where it lies on the Earth is not known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a number above 0, without quotation marks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a part needs a width above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>a place near the site in place of this example: it tells leading digits that were left out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>a pole height or antenna offset is given, and nothing says whether its heights are those of the ground or of the antenna</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>a pond or pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a quote is opened and not closed, or closed too early</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>a row at the end whose coordinates are means, sums or limits of those of the points above it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a side has one ditch at most; remove this row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>a single pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>a slope needs a run above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>a turn and a scale too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>a whole number from 1 up, without quotation marks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>age of the correction, at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>agrees</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>all</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>all heights above one ellipsoid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>all heights above one geoid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>all of the ground compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>all of the ground with the pads in it as a mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>always</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>an outlet on the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>and perhaps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>and {count} more like it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/upright.py" />
      <source>another system of the region, with such axes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>area and volume of the basin by level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>area in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <location filename="../plugin/core/georeference/heights.py" />
      <location filename="../plugin/core/points/antenna.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>as given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>as it was read, though it does not fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>as the header says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>average end areas every {step:g} m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balance point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>balanced height ± 95 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>balanced shift of the design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>blank lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, as it lies in the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>borrow, loose on trucks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>bottom, gutter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>boundaries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>breakline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>breaklines without heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>bridged ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>building the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>by edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>by the times of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>catchments with their areas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>channel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>check points' own error ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>check shot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>check shot, kept out to test the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>checking the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>claimed by the receiver</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>claimed by the receiver, root mean square</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {columns} may be the height, but its header word '{word}' is not known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>column {column} is headed '{word}', a unit that is not read; give the lengths in another</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>column {column} is headed '{word}', and another line says {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>column {column} is headed '{word}', but its digits of minutes or seconds go beyond 59 or its degrees beyond their range</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>column {column} is headed '{word}', but the CRS is in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>column {column} is headed '{word}', but {unit} is given as its unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the code: a few texts repeat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>column {column} is the height: no other column can be</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: all texts differ</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>column {column} is the name: whole numbers that only grow</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>column {column} is {role}: its angles have the letters {letters}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/reading.py" />
      <source>column {column} is {role}: its header word is '{word}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>column {column} says zones {zones}; save the lines of each zone as a file of its own</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/column_sets.py" />
      <source>column {column}, headed '{word}', may be the height, and so may column {other}, headed '{other_word}', which runs along with it</source>
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
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} look like degrees but may be lengths</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} make a compact cloud</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>columns {first} and {second} may be easting and northing or the other way round</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/column_sets.py" />
      <source>columns {first} and {second} of line {line} are both headed {role}</source>
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
      <location filename="../plugin/core/__main__.py" />
      <source>comparing surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>comparing visits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>contour lines with level, index and depression; exact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>coordinate system</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates are in {unit}: read so they land in the area of use of the CRS, else not</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>coordinates in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>coordinates of zero</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>coordinates swapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>corners mitred</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>correction too old</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the design only, not compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>covered by the existing surface only, not compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>crossfall</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut over {low} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut placed as fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut that this fill takes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>cut there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>cut {cut} {unit}²   fill {fill} {unit}²</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>cut {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>cut, as it lies in the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>cut, fill and net with their doubt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>decided by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>decimal degrees, longitudes from 0 to 360: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>decimal degrees: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>decimal mark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>deeper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>degrees and minutes in one: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>degrees of freedom</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>degrees, minutes and seconds in one: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>degrees, minutes, seconds and their decimals in one run of digits: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>degrees, then digits of minutes and seconds: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>delimiter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>depths that count down: the height is 0 less the depth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>drains nowhere until full</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>drift: what neighbouring points share</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>easting and northing are exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so they are of another CRS or exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>easting and northing of the control points are exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>easting of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>eastings and northings are in {unit}, and nothing says whether heights are too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edge swapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>edges and breaks of the pads and their slopes, by kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges forced</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by boundaries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>edges held by voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>ellipsoidal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>empty circle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point of a later visit with its status and reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>every point with its status and reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>exact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>existing ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>factors: loose {loose}, compacted {compacted}, unusable share {unusable} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>fail</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>far from all others: look at it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>feet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill from one of cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill over {low} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>fill there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>fill {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>fill, compacted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>filling the basin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>finest class met (cm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>finishing contours for the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>fixes accepted (numbers of NMEA 0183 GGA)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>flagged stretch, left out of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>flagged, still used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>flatter than {limit} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>following the water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>format</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>forward</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>found, with its 95 % interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from pass to pass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>from record to record, median</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>gap in a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>gon: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>grade</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>grades and vertical curves fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>grading pads</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>grid north</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>grid of {cell:g} m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points as designed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground between the points judged from the surface's own roughness</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ground by depth of cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>ground compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>ground taken by the design, in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>ground that several sections count, in bends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>header lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height doubtful: look at it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>height less certain than allowed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>height of a point changed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>height of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>height offset between the surfaces, found from unchanged ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>height offset between the surfaces, standard deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>heights above the ellipsoid, brought to those of {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>heights in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>heights of the antenna, kept as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>heights of the antenna, to be lowered by the pole heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>heights of the ground already</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>heights of the ground, counted up, whatever the words say</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights of the surface on a grid (DEM) of {columns} x {rows} cells</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>heights of {crs} already, taken as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>heights stay as they are, and only the plan is fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>heights {scale}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>heights, grades and crossfalls at the stations of the road</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>holding the surface to its lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>how well its heights repeat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>how well the heights of the mesh repeat, for tools that read it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>in order of the walk, else within {length}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>in {crs}, which PROJ cannot compute here</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>in {unit}, whatever the header says</source>
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
      <location filename="../plugin/core/report/water_maps.py" />
      <source>inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; coordinates are read in {unit}, the unit of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>it has {count} layers or sheets that may hold the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>its 95 % interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>its column '{word}' seems to hold pole heights, and nothing says whether its heights are those of the ground or of the antenna</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its coordinate system</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>its coordinates are geocentric (X, Y and Z from the middle of the Earth); export eastings, northings and heights, or latitudes and longitudes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>its coordinates are in another CRS; its code in place of this one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>its coordinates are in {crs}, as it says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>its coordinates are in {crs}, whatever it says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its cross-sections to scale</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>its eastings have a number, {number}, before them, and {crs} has none there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>its header or a line of words says depths or heights that count down, and nothing says whether they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>its header says feet, and not whether international or U.S. survey feet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>its heights are ellipsoidal and those of {other} are {heights}; bring the heights of one file to the other kind first, or say what all are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>its heights are said to be those of the antenna, and nothing says how high it stood above the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>its heights are those of the antenna, and nothing says how high it stood above the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/fixed_places.py" />
      <source>its numbers stand side by side without a blank, and nothing says where columns begin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its profile to scale</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its rejected lines with their reasons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>its stretches against the limits, with verdicts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>jump at loss or regain of the fix</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>labels of the index contours, for a sheet at 1 : {scale}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands in the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>lands outside the area of use of the CRS ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>lane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>lane of one fall</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>largest difference found</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>leading digits are left out of the coordinates (east {easting} m, north {northing} m), as what lies near says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>left</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>left at the end (below 0: to be brought in)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>left half</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>left half, with its 95 % interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>left over: cut × factor less fill less surplus</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>lengths that were converted from {unit} once too often</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>lengths {scale}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>less the height offset between the surveys</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>less what noise makes of cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>level in place of the surface that is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>level spot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>limit {limit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>line of the sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/parts_alike.py" />
      <source>line {line} ('{words}') looks like another header, and its words are not known; if the lines behind it have other columns, save them as a file of their own; if they have the same, say so</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>line {line} heads {header} columns, but most lines have {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>line {line}, behind the first points, says “{words}”, and {crs} was chosen; where that is so only from there on, save its parts as files of their own</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/fixed_places.py" />
      <source>line {line}: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines along which there is no cut and no fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>lines that are left out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>lines where the slopes of the pads meet the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>loads of {load} {unit}: waste, borrow</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>local grid, metres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>long triangle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking along the road</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking at accuracy and coverage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking for lines of the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>looking the surface over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>mean (bias)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>mean of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>mean of the points plus geoid separation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>median</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>median slope, by area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>median {value} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>metres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>minutes of arc: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/haul_section.py" />
      <source>moved beyond the ends of the line, not in the diagram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>names that begin with #, all points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>names that stand in more than one file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>net (fill less cut)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>new</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>new at every point, along the passes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>no</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>no column can be the height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>no cut, no fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>no finite place or height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>no fixed ambiguities</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>no geoid separation was sent, so the ellipsoidal height is unknown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>no grid of a kind it knows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>no surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>no surface here</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>noise of a point's height {sigma} {unit}, drift {drift} {unit} ({within}), {ground}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>non-vegetated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>none over the limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>normalised median absolute deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>northing of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>not determined</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>not known (a layer's surface is missing)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>not on the ground, by its code</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/parts_alike.py" />
      <source>not said</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>nothing recorded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>nothing says for sure how the degrees of columns {first} and {second} are written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says for sure whether coordinates are in {units}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>nothing says for sure which columns are which</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>nothing says whether its heights are ellipsoidal or above a geoid, and {crs} has a level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>nowhere on the Earth in {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>observations, at least</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>of a kind that nothing says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>of a line of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>of it carried across rejected points ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it not fit for fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>of it unchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>of the file's column</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>of the log's own lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>off the line it is coded for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>offsets and heights of its cross-sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>on another level than the rest of the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>on {paper}, printed at 100 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>one height, both together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>one of its first lines holds numbers as a point does but begins with #, which may belong to its name or leave it out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>orthometric</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>other sentences of a receiver log</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>outside the interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>outside the regions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>outside the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>over {low} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>over {width} {unit} of {whole}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>pass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>path of water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>paths of the water and its channels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places of the surface to look at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>places to walk again, for the data collector</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>places visited twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>plan less certain than allowed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>platform</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform break</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>platform edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>point added</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>point beside a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>points follow each other at {step} in columns {first} and {second}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points kept out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>points that shape it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole lifted or its height wrong</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>pole tilted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond after the change</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>pond gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>ponds with depth, volume and where they spill to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/checks.py" />
      <source>prismoidal formula every {step:g} m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>proposed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>radians: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>radius of the widest empty circle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>random: noise of single points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>reading points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>receiver log, NMEA 0183</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>recorded while standing still</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>region</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/found_words.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
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
      <location filename="../plugin/core/report/remarks.py" />
      <source>repeats another point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>residuals at the control points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>ridge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>ridge, crown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>right half</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>rim of the existing surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/drawing.py" />
      <source>rim of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: longest edge allowed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: the same in distances of the passes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest angle allowed opposite an outer edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>rim: widest circumcircle allowed (radius)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>root mean square of all differences</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>rule does not apply</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>running balance: usable cut less fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>saddle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>sag</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>same places of several files whose heights differ</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>satellites badly spread (PDOP)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>scale {scale}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>scale {scale}, largest residual {largest} m in plan, {height} m in height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>seconds of arc: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>section line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>seen in the way of rising stations; offsets and heights in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>semicolon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/height_columns.py" />
      <source>several columns may be the height: {columns}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>shallower</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>share in the SW, SE, NW and NE quarter (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_sections.py" />
      <source>share of the site in triangles with a long edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>shift from the first height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>shift it so all the same</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>six digits before the mark, then seven, as eastings and northings often</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>slope break</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <source>slope by window, with its 95 % interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>slope of fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>small depths: noise where depths are no larger than it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>smallest and largest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>so many parts of a degree: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>spaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>spike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>spill level: noise of its height, times the area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>spill point and way of the overflow</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_figures.py" />
      <source>spills at {level}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>spot heights at summits, pits and saddles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>standard deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation in plan, at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/point_sections.py" />
      <source>standard deviation of a height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>standard deviation of the height, at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>stands in a found line, which stands for it in the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading_study.py" />
      <source>station {station:.1f} m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>steep end</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>step (kerb, wall)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>stray: farther off than the walk could have gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <source>summit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>superseded by newer ground of a later visit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface above the check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>surface below the check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>surface from the used points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>surface model: ground between the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>surface, its lines and the points used, in LandXML 1.2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_sections.py" />
      <source>surplus asked for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>systematic: height offset between the surfaces</source>
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
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>the archive holds {count} files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>the area of use of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/west_doubt.py" />
      <source>the area of use of the CRS of the project</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>the checksum is {found}, but the characters give {right}: damaged on its way</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>the control</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the control points are in {unit} in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the control points are in {unit}, heights too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the coordinate system of the mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the coordinates are in {unit}, not in {assumed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the coordinates are of another system: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the coordinates are of another zone: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the coordinates are of the other hemisphere: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the easting is usually written first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the eastings have a zone number, {prefix}, before them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the eastings of the control points have the number of a zone before them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the false origin is left out of the coordinates (east {easting} m, north {northing} m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>the feature has no place or no height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the file ends within the line, in column {count} of {width}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_said.py" />
      <source>the file itself says “{words}”, and {crs} was chosen</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>the first column has no word</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the graded pads with their slopes as a mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the header says that coordinates are in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>the height of your pole in metres, in place of this example</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the heights of column {column} would be about {height} m, and no ground is so high</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the heights of the control points are in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the heights of the survey are in {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the heights of the survey count down: each is 0 less what stands there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>the known points do not agree on one shift, they differ by {apart} m: a turn, another scale or a wrong name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>the last column has no word</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/plan_columns.py" />
      <source>the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/rejects.py" />
      <source>the line counts the columns</source>
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
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>the line is no NMEA sentence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>the longitudes of column {column} have no sign and no letter, and {why} speaks for the west</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the northings contain the 10,000,000 m added in the southern hemisphere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the northings lack the 10,000,000 m added in the southern hemisphere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>the only point lies far outside the area of use of {crs} ({area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/landmarks.py" />
      <source>the place given as near</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the points have other names: {names}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver had no position</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>the receiver sent a position without a height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rest of the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <location filename="../plugin/core/report/water_sections.py" />
      <source>the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/parts_alike.py" />
      <source>the same columns in the whole file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>the same epoch as line {line}, which is used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the same finished for the sheet; for drawing only</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/upright.py" />
      <source>the same system with axes to east and north, {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the same zone is meant, with the eastings written as in {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>the sentence has no checksum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>the slope is the same left and right; write both, once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface as a mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the surface of one visit alone, to be compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>the survey does not fit the control points as they are read: scale {scale}, expected {expected}; largest residual {largest} m in plan, {height} m in height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>the survey does not fit the control points: scale {scale}, expected {expected}; largest residual {largest} m in plan, {height} m in height; no mirrored survey, exchanged name or other unit explains it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>the survey fits the control points as they are read (scale {scale}, expected {expected}; largest residual {largest} m in plan, {height} m in height), but far better read otherwise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the survey is in {unit} in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the survey is in {unit}, heights too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>the survey is mirrored: its easting and northing are exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>the survey would be shifted by {east} m east, {north} m north and {up} m up, more than a base is put wrong by; check both positions, their order and unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the thinned surface as a mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>the tolerances of single points; edit them for --tolerances</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/length_units.py" />
      <source>the unit beside the values is {said}, but eastings and northings fit the CRS in {unit} alone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the values are latitude and longitude in degrees; read them as such</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the values are longitude and latitude in degrees; read them as such</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/other_columns.py" />
      <source>the values of column {column} are such as {role} has</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>the whole survey, with its 95 % interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/causes_said.py" />
      <source>the zone number {prefix} before the eastings is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>their mean all the same</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>they count to the east: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/angle_forms.py" />
      <source>they count to the west: {shown}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>thinning the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>this file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>tilt, at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to both edges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to neither edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the left edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>to the right edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>toe of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>toe of fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>together (root of the sum of squares)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>together, the lines of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>told</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>tolerance in height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_figures.py" />
      <location filename="../plugin/core/report/road_sections.py" />
      <source>too close to tell</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>too close to tell; {times} times the points would tell</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/remarks.py" />
      <source>too few observations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_words.py" />
      <source>top of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_lines.py" />
      <source>top of cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>topsoil, {depth} {unit} off {area} {area_unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/__main__.py" />
      <source>tracing contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle added</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangle removed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>triangles as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles in a polygon dropped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles outside the boundary or in voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>triangles taken off the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>true RMSE, 95 % confidence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>unchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>undecided</source>
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
      <location filename="../plugin/core/georeference/control_said.py" />
      <location filename="../plugin/core/georeference/operations.py" />
      <source>unknown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>upon it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/figures.py" />
      <location filename="../plugin/core/report/found_words.py" />
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_figures.py" />
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>used point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/accuracy_page.py" />
      <source>vegetated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>vertices kept</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/quality_maps.py" />
      <source>walk again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/check_sections.py" />
      <source>wandering, from one visit to another</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, as it lies in the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>waste, loose on trucks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>water goes elsewhere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_maps.py" />
      <source>way down, longer where steeper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>what the checks found in it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/output_sections.py" />
      <source>what the checks found: points, size, reasons, place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/interval.py" />
      <source>what the receiver states</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/storage_page.py" />
      <source>where it spills</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/input_sections.py" />
      <source>where the survey lies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>whole site</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>whole surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/section_sheets.py" />
      <source>widths {along}   heights {up}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>without {names} the others fit</source>
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
      <location filename="../plugin/core/report/input_sections.py" />
      <location filename="../plugin/core/report/output_sections.py" />
      <source>yes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{area:.0f} m² of the surface lie in triangles so wide that no places to walk are listed in them: they reach to points far from the others. Reject these points, or limit the rim or draw a boundary.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/wide_triangles.py" />
      <source>{area:.0f} m² of {name} lie in triangles with edges over {limit:.1f} m, straight over ground that was not measured: cut and fill there are not known, and not in the intervals. Limit the rim, draw a boundary, or ask by regions that leave this ground out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/grading.py" />
      <source>{area:.1f} m² of the platform are outside the existing surface; no volume is counted there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{area} {unit}², {share} % of the site, drain nowhere: their water stays in a pond or pit until that is full.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{area}: visit {number}, {file}, has no point in these polygons; give polygons where it was walked, in the CRS that their file says, or none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{back} back = {ahead} ahead</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{cause} in line {lines}; its point, {distance} from the others, is put aside. Mend the line, or take the point back by a decision.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{cause} in {count} lines ({lines}); their points, up to {distance} from the others, are put aside. Mend the lines, or take the points back by a decision.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} areas of at least {least} {unit}², together {area} {unit}², fall less than {limit} % in the mean over {window} {unit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>{count} breaklines have no heights, though vertices of theirs are survey points: {labels}. They are laid on the surface and do not shape it. If they are to hold edges, give them heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{count} catchments are larger than 80 ha; the rational method is not commonly used for such areas.</source>
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
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} coded points from line {line} to {last} may stand {size:+.3f} m off their line, or the line steps there: look at it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} coded points from line {line} to {last} stand {size:+.3f} m off their line and the ground beside it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{count} control points were not surveyed, and are not used: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{count} crossings of passes will tell the noise of the survey to about {percent:.0f} % (95 %, independent differences).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decided.py" />
      <source>{count} decisions by hand no longer have a point in the survey and have no effect, the first is on {name} of line {line}. They stay in the job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{count} decisions by hand that stand in {file} are used; remove them there if they are not meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} heights are too few to fit grades and vertical curves to; at least {least} are needed. Take a shorter spacing or a longer part of the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>{count} lines have the height 0 all along, where the points nearest to them lie at {low:.3f} m to {high:.3f} m: {labels}. The surface goes down (or up) to 0 there. If the drawing has no heights, give these lines as lines without heights, or give them heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/line_heights.py" />
      <source>{count} lines have the height 0 at some of their vertices, where the points nearest to them lie at {low:.3f} m to {high:.3f} m: {labels}. That makes pits or spikes. If 0 means that nobody measured a height there, leave it empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/features/ground_lines.py" />
      <source>{count} lines that the points show run within {reach:.1f} m of lines that are known already; these go first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/features/replay.py" />
      <source>{count} lines that were decided by hand are not found again where they were; they stay as they were given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{count} of its first lines hold numbers as points do but begin with #, which may belong to their names or leave them out</source>
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
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>{count} of {total} points lie far outside the area of use of {crs} ({area})</source>
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
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} pairs of cross-sections cross each other in tight bends, first those at stations {first} and {second}, {offset:.2f} m to the {side}. Ground beyond the crossings is counted twice: make the sections narrower there or fewer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} pairs of points of {first} and {second} lie within {distance_m} m and differ in height by more than {height_m} m, on average by {mean_m} m, at most by {most_m} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again on lines, where {stretches} stretches of them are carried across rejected points or end short of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again where flagged stretches were left out of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places to walk again; with them no place is farther than {limit:.1f} m from a measured one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{count} places where one more pass squarely across would settle a line that the points show in doubt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{count} point names occur in more than one file, such as '{name}'; all points are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) have heights up to {distance} beyond those of all others; they are put aside. A decision takes them back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) lie up to {distance} from all others, farther than one site reaches; they are put aside. A decision takes them back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) lie up to {distance} from all others; nothing tells whether they are control points, a base, or strays. They are kept and flagged; no ground is drawn to them, unless a line runs there, until somebody gives them the status used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) lie up to {distance} from the points recorded before and after, farther than one can have gone in that time; they are put aside. A decision takes them back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) lie up to {distance} from the points recorded next to them, where a point was stored every {step}; they are put aside. A decision takes them back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) were put aside as they were read: coordinates of zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) were put aside as they were read: coordinates swapped.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) were put aside as they were read: no finite place or height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (lines {lines}) were put aside as they were read: strays, farther off than the walk could have gone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points (the first in line {lines}) each lie more than {distance} from all others; as they are many, they are taken for a part of the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>{count} points are not explained by it and stay as they are; the first is in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the design surface: they have no design height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points are off the existing surface: cut and fill are not known there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} are beyond the tolerances '{set}' ({reasons}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} lie {size:+.3f} m off the ground around them: pole lifted or of another height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} lie {size:+.3f} m off those before and after them, which agree: pole height or fix wrong for a while.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} may lie {size:+.3f} m off, or the ground steps there: look at it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} repeat earlier ones.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last} seem to lie {size:+.3f} m off, as passes say that meet them: flagged and, as a stretch of {length:.0f} m, left out of the surface. Look at it and decide by hand, walk it again, or keep all flagged stretches in the surface (--keep-flagged).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} points from line {line} to {last}, next to a loss of the fix, lie {size:+.3f} m off the ground around them: ambiguities fixed wrongly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/gate/said.py" />
      <source>{count} points have no finite place or height (lines {lines}); they are put aside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout.py" />
      <source>{count} points have no name; choose another name field or number them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>{count} points lie well as they are and stay so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{count} points or rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{count} points share a name with another, such as “{name}”; all are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/standing.py" />
      <source>{count} points stand in found steps and agree with them in height; the lines stand for them in the surface. A point whose status was changed by hand stays.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>{count} points, {share:.0f} % of the file, are beyond a limit of the set '{set}' ({reasons}) and rejected, as you asked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>{count} points, {share:.0f} % of the file, are beyond a limit of the usual set '{set}' ({reasons}). So many are not rejected unasked: they are flagged and still used. To reject them choose the set by its name (--check {set}); to change the limit give a set of your own (--tolerances FILE).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>{count} points, {share:.0f} % of the file, are tilted by more than {limit:g}° and rejected: the rover does not compensate tilt, a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), about the length of a pole. If it does compensate, say --tilt-compensated yes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>{count} points, {share:.0f} % of the file, are tilted by more than {limit:g}°, and the heights do not tell whether the rover compensates tilt. They are flagged and still used. Say it (--tilt-compensated, in QGIS “The rover compensates tilt”): yes, and they are good; no, and they are rejected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/held_back.py" />
      <source>{count} points, {share:.0f} % of the file, have no fix that the set '{set}' accepts and are rejected: the file itself tells that their heights are {times:.1f} times as uncertain as the others. To use them all the same, give a set of your own (--tolerances FILE).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_change_sections.py" />
      <source>{count} ponds lie where only one of the surfaces reaches and are not compared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{count} positions were recorded more than once (equal to 0.1 mm); the surface takes the mean height. Largest difference {spread:.3f} m, at E {easting:.3f} N {northing:.3f}: from {lowest:.3f} m to {highest:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/column_sets.py" />
      <source>{count} sets of columns hold coordinates of the same points: {sets}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/water_sections.py" />
      <source>{count} smaller ones</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{count} statuses were set by hand against the automatic checks, the first in line {line}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/giving_way.py" />
      <source>{count} stretches of found lines, {length:.1f} m together, cross other lines and are left out of the surface; the first near {easting:.3f}, {northing:.3f}.</source>
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
      <location filename="../plugin/core/earthwork/side.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0), and no value stands in. Give the standard deviation of a height of this survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{count} vertices of the surface have no standard deviation of height (or one below 0). Give the standard deviation of a height of this survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/first_things.py" />
      <source>{count}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/upright.py" />
      <source>{crs} counts {first} and {second}: as easting and northing they make a mirrored plan, left and right exchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/area.py" />
      <source>{crs} does not say where it may be used; whether the points lie there is not checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their geometric mean is used; distances depend on direction.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
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
      <source>{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are. Maps have south at the top, and directions count from there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>{design_name} is taken to lie {offset:+.4f} m above {existing_name}, as given; this is taken off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>{design_name} lies {offset:+.4f} m above {existing_name} where nothing changed (± {half:.4f} m, 95 %), judged from {area:.0f} m² that agree. This is taken off. If that ground did rise or sink, give the offset.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/crs_doubt.py" />
      <source>{distance} from it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/surveys.py" />
      <source>{existing_name} and {design_name} have the same heights everywhere, which two surveys never have: one was given twice, or was made from the other. Give another file if that is not what you meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common inside the regions given: there is nothing to compare. Check the regions and their coordinate system.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} and {design} have no ground in common: there is nothing to compare. Check that both are of one place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/comparison.py" />
      <source>{existing} is in {existing_crs}, {design} in {design_crs}: volumes need both in one coordinate system. Bring one of them into that of the other first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_sentences.py" />
      <source>{field} cannot be read: '{value}'</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_noise.py" />
      <source>{file} does not belong to {mesh} as it is now, or cannot be read: what it says of noise is not used. Write the mesh anew, or say how well its heights repeat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file} holds several tolerance sets; say by its name which one counts: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file} holds something else than when this job was last run; it is read anew. If that is not meant, as beside a copied folder, put the right file there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file} is handed over as it was made before the surface or its contours changed; make it again if it shows them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file} is in {unit}, its CRS {crs} in {other}: read as it says. If that is a slip of who wrote it, places are up to {shift:.3f} m off; ask, and choose the unit if so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/at_work.py" />
      <source>{file} is read for this job, and a product of this name would take its place; nothing was written. Rename it, or choose another folder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file} is to be handed over too, but it is not there; it is not listed. Make it again, or leave it out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file} line {line}: control point '{name}' stands in line {first} already; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line names the columns name, easting, northing and, where known, runoff.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns name, easting, northing and, where known, height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file} line {line}: the point has no name; give it one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file} line {line}: this is no text; save it as CSV.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: this point lies outside the geoid grid {grid}; give a grid that covers the site, or a constant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: this position cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file} line {line}: {column} '{found}' is no number; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/heights.py" />
      <source>{file} line {line}: {count} points lie outside the geoid grid {grid}, the first in this line; give a grid that covers the site, or a constant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/transform.py" />
      <source>{file} line {line}: {count} positions cannot be transformed from {source} to {target}; check the CRS and the coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn_file.py" />
      <source>{file}, feature {number}: {kind} is no line or polygon of coordinates; mend or remove it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {kind} is no polygon of coordinates; give polygons only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}, feature {number}: {name} is “{value}”, which is no number; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
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
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: '{source}' is none of the files of this survey ({sources}); the decision has no effect.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: '{source}' may be any of {sources}; write the name as it stands there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ...</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: '{word}' is no status; use {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; holds a coordinate that is no number or no place on Earth; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; lacks its {attribute}; have the file written anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; needs {needed} numbers (northing before easting) but holds “{found}”; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: &lt;{element}&gt; refers to the point “{found}”, which the file does not hold just once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: LandXML of version “{found}” is not read; have it written as LandXML 1.2.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a curve of alignment “{name}” does not fit: its ends lie {start:.3f} m and {end:.3f} m from its centre.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has the corner {number}, but there is no such point; the file is damaged, have it written anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” has {count} corners; only triangles are read, have the surface written as a TIN.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a face of surface “{name}” lies on the same side of an edge as another; the surface overlaps itself, have it written anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: a quote is not closed; mend the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: a spiral of alignment “{name}” ends {gap:.3f} m beside the place that the file gives.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a gap of {gap:.3f} m before this element; its elements must follow each other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has a spiral ({kind}) that is not read; it is left out as a whole.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: alignment “{name}” has no lines or curves; it is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: applies is {value}. Write "always", "grade &gt; 1:20" or "grade &lt;= 1:20".</source>
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
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is missing. The header needs {columns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: column {column} is unknown or twice. The columns are {columns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: column {column} is unknown, missing or twice. The columns are {columns}.</source>
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
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: elements within elements, over {most} deep; this is no sound LandXML.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/parts_alike.py" />
      <source>{file}, line {line}: from here on heights count from another level than above ({first}, then {second}); save its parts as files of their own, and bring the heights of one to the level of the other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/sections.py" />
      <source>{file}, line {line}: from here on the file holds positions of another kind, degrees or lengths; save its parts as files of their own and give both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: give either at_least or at_most, one of them and not both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: lengths are in {unit} but elevations are said to be in “{found}”; programs read this either way. Ask for it, and choose the unit of the heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: line {survey_line} of {source} holds no point; the decision has no effect.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: more cells than columns. Put quotes around text that contains the separator.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: more cells than columns. Use one separator all through.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimiters.py" />
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
      <location filename="../plugin/core/points/delimiters.py" />
      <source>{file}, line {line}: nothing stands between its columns ('{start}'); export the survey with a delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: point {number} of surface “{name}” was given before; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: quantity {value} is unknown. Use one of {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: side is “{value}”; write left, right or both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: surface “{name}” is {width:.0f} km wide; a surface may measure 107 km.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: survey line {survey_line} is a point in several files ({sources}); say which file is meant in a column 'source' of the decisions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the CRS “{found}” is not understood or not one in metres or feet; choose the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: the code is empty. Fill it in or remove the row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file declares a document type or entities, which LandXML does not need and which can do harm; it is not read. Have it written anew without them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the file is no LandXML but holds &lt;{found}&gt;; choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma a decimal comma? Give --delimiter and --decimal, or mend the header.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: the header lacks {column}; it needs line, status and reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>{file}, line {line}: the header must be {columns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/named.py" />
      <source>{file}, line {line}: the point of survey line {survey_line} is not {name}, and no other point is {name} for sure; the decision has no effect.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the profile “{name}” has a vertical curve &lt;{element}&gt;, which is not read; it is left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the stations of profile “{name}” do not rise, or its curves overlap; mend it.</source>
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
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: the units are said a second time, and otherwise; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: there is a header but no data line; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}, line {line}: this is no JSON ({reason}); mend the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: this is no whole XML ({reason}); the file is damaged or cut short, have it written anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}, line {line}: this is not a list of edits; "format" must be "{format}".</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>{file}, line {line}: this is not a text table. Save it as CSV.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/codes.py" />
      <source>{file}, line {line}: this is not a text table. Save the code table as CSV.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: this is not a text table. Save the table of limits as CSV.</source>
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
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: window is {value}. Write metres above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: {attribute}=“{found}” of &lt;{element}&gt; cannot be; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>{file}, line {line}: {column} cannot be “{value}”. It must be {must}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is empty. Fill it in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a number above 0 with a decimal point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {column} is {value}. Write a ratio such as 1:20, a percentage such as 5%, or a number, not negative.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}, line {line}: {column} is “{value}”, which is no number here. Mend the cell.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter and as decimal mark? Give --delimiter or --decimal, or name every column.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}, line {line}: {count} points are of survey line {survey_line}, and it cannot be told which is meant; decide on them in the layer, or import the points again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}, line {line}: {name} already stands in line {first}. Rename or remove one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/section_table.py" />
      <source>{file}, line {line}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}, line {line}: {role} is column {column}, but the lines have {count} columns with delimiter {delimiter}; check --delimiter and --columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}, line {line}: “{found}” is no {system} unit of length of LandXML (such as {known}); mend it, or choose the unit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: '{decimal}' cannot be a decimal mark; use '.' or ','.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimiters.py" />
      <source>{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space, fixed or one sign such as '|'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: '{key}' stands twice in one set; keep one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_area.py" />
      <source>{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_area.py" />
      <source>{file}: '{name}' needs the file to be read or transformed otherwise: name the columns latitude and longitude in --columns, or give the CRS of the file as --source-crs and the one wanted as --crs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: --columns names column {column} ({role}), but no line has more than {count} columns; check --columns and --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: GDAL cannot read it as {kind} ({reason}); export delimited text (CSV).</source>
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
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: a Shapefile is read with the files beside it; give its path, or zip them all.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: a list of tolerance sets is expected, each with a name; write [ and ] around them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: a {kind} file is read through GDAL, which this Python lacks; run the Python that QGIS uses, install the package gdal, or export delimited text (CSV).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: all usable points are at one place; a surface needs at least three different ones.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: all {count} points lie on one straight line, which spans no surface. Check the column mapping (the same column for easting and northing?) or add points beside the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: brackets within brackets too deep for a list of tolerance sets; mend the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/checksums.py" />
      <source>{file}: cannot be read ({reason}), so it cannot be listed among the files handed over.</source>
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
      <location filename="../plugin/core/georeference/not_obeyed.py" />
      <source>{file}: column {column} calls the point of line {line} deleted or not to be used, “{word}”; it is used like the others. Give a decision on it, or take its line out of the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/not_obeyed.py" />
      <source>{file}: column {column} calls {count} points deleted or not to be used, the first “{word}” in line {line}; they are used like the others. Give decisions on them, or take their lines out of the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/divided_numbers.py" />
      <source>{file}: commas part its columns and stand before decimals too; numbers are read so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of the check point of line {line} is no known word; it counts as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognise.py" />
      <source>{file}: dates such as 03/04/2025 are read with the day first; nothing says so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: depths became heights: 0 less the depth, as said.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/found_lines.py" />
      <source>{file}: feature {number} has '{word}' in the field {field}, which must be one of {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/found_lines.py" />
      <source>{file}: feature {number} is no line of two places or more; mend or remove it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/sections.py" />
      <source>{file}: from line {line} on other columns or units are said; the lines behind it are read so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/changed_signs.py" />
      <source>{file}: from line {line} on {other} parts the columns in place of {sign}; {count} lines are read so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/lines_of_text.py" />
      <source>{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has no header line, but --columns names the header word '{word}'; use column numbers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: has no layer '{layer}'; give --layer with one of: {layers}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: has no layer or sheet with points; export it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/layout.py" />
      <source>{file}: has over {most} columns with delimiter {delimiter}; check --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: heights are above mean sea level as the receiver sent them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: heights are ellipsoidal: height above mean sea level plus geoid separation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: heights are those of the antenna, above the ground by the pole height, as said.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: heights are those of the ground already, as said.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/level_shift.py" />
      <source>{file}: heights cannot be shifted from line {line} on; its points are in lines {first} to {last}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn_file.py" />
      <source>{file}: heights of its coordinate system are in {own}, those of the survey in {unit}; write it anew in the CRS of the survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: heights of the antenna were lowered to the ground by {least} m, the pole height {said}, and an antenna offset of {offset} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: heights of the antenna were lowered to the ground by {least} to {most} m, the pole heights {said}, and an antenna offset of {offset} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: holds positions in degrees and {first} in lengths, or the other way round; transform the degrees before they are merged.</source>
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
      <location filename="../plugin/core/points/survey.py" />
      <source>{file}: is a receiver log with latitudes and longitudes, but plan coordinates are needed here; transform them to a projected CRS first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: is empty; export the survey again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is given twice; give each file once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: is in {crs}, but {first} is in {first_crs}; transform one of them before they are merged.</source>
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
      <location filename="../plugin/core/job/visits.py" />
      <source>{file}: is part of the job already; add each file once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: it cannot be read ({reason}); give a GeoJSON file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: its EPSG code means {epsg}, its WKT {wkt}; the code is taken. Choose the CRS if that is wrong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its columns hold eastings and northings, but {crs}, given as --source-crs, is in degrees; give the projected CRS they are in, or name the columns latitude and longitude in --columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: its columns stand at fixed places and begin at the characters {places}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: its coordinate system “{crs}” is not understood here; write it anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_place.py" />
      <source>{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn_file.py" />
      <source>{file}: its heights are taken as they stand, as heights of the survey; only plan coordinates are changed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>{file}: its heights are taken as {heights}, as said, though the file itself says {found}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>{file}: its heights are taken as {heights}, as said.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>{file}: its heights are {heights} already, so the geoid separation would be counted twice; leave --geoid out, or say with --heights-are what they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/merge.py" />
      <source>{file}: its heights are {heights}, those of {first} {first_heights}; bring them to one kind first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: its positions are in degrees, but {crs}, given as --source-crs, is projected; give a geographic CRS, such as EPSG:4326.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: its positions are in degrees; give a projected CRS as --crs to bring them to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are in degrees; give the projected CRS they are wanted in, not a local grid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/place.py" />
      <source>{file}: its positions are taken as {source}, as receivers send them; a correction service may work in another datum, which the file does not tell.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: its table stands on its side and was turned; lines count as in the turned one of {count} lines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: latitudes and longitudes of control points are taken as those of {datum}, the datum of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: line {line} is no point; the rejects give its reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/found_lines.py" />
      <source>{file}: line {number} was drawn by hand and has no heights; give its vertices heights, or remove the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/crossings.py" />
      <source>{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting them at their crossings makes new ones. Remove one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/meetings.py" />
      <source>{file}: lines with different heights cross or meet at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/meetings.py" />
      <source>{file}: lines with different heights cross or meet at {count} places, the first at E {easting:.3f} N {northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for crossings (mean, first).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: no characters are blank in every line, so its columns do not stand at fixed places; give another --delimiter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/ground_said.py" />
      <source>{file}: no point is left to compute a scale from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control.py" />
      <source>{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{file}: no three of its columns can be easting, northing and height (first line: {words}); export it again with all three.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: no tolerance set is called '{name}'; there are {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/build.py" />
      <source>{file}: no triangle is left inside the boundary and outside the voids with rim edges up to the limit. Check the boundary's place and the maximum rim edge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: none of the {count} check points lies on the surface (the first is line {line}); check their coordinate system, units and the order of easting and northing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/geojson_file.py" />
      <source>{file}: not all of its coordinates can be brought from {source} to {target}; write it anew in the CRS of the survey (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); give --columns, such as {options}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/grading.py" />
      <source>{file}: nothing says how high {name} is; give --pad-level, a height or “balance”, or a property level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/run.py" />
      <source>{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local for a local grid in metres.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>{file}: on the user's word the point outside the area of use stays where it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <source>{file}: on the user's word the points stay where they are, though {count} of them lie outside the area of use.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: one of the first lines holds numbers as a point does but begins with # and is left out as a comment; give --comment none to read it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: one of {total} positions has no GST sentence; its accuracy is unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: one point has no pole height; the one before it counts, else the one behind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: read as {columns} with delimiter {delimiter}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/gdal_source.py" />
      <source>{file}: read through GDAL as {kind}, layer {layer}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <source>{file}: says itself that its coordinates are in {own}, but {given} is given as --source-crs; leave --source-crs out, or save the file with the right CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': '{key}' is no tolerance; use {keys}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: set '{name}': {key} is {value}; it must be {wanted}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the LandXML file cannot be read ({reason}); check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/accuracy.py" />
      <source>{file}: the check point of line {line} does not lie on the surface; check its coordinate system, units and the order of easting and northing.</source>
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
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: the control file cannot be read ({reason}); check path and permissions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: the coordinates look like degrees, and the file names no other system. Save the line in the survey's CRS (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}: the decision in line {line} names no file of the survey; it is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/named.py" />
      <source>{file}: the decision on {name} was found by its name in line {now} of the survey (it was line {survey_line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/edits.py" />
      <source>{file}: the edits cannot be read ({reason}). Check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: the file does not say its unit of length (element Units); ask for it and choose it here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/files.py" />
      <source>{file}: the folder cannot be made ({reason}); choose another one for --out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: the height {value} of '{name}' stands for none, and counts as not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: the heights of all control points are 0, and count as not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets are in {found}, the surface in {wanted}; reproject them or give them as CSV.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the inlets cannot be read ({reason}); check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>{file}: the last row must have neither words nor kind, so that every line is drawn. Add one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh file cannot be read ({reason}); check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_records.py" />
      <source>{file}: the mesh has no triangles; choose another file or write it anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the point of line {line} has fewer columns than the rest; what is missing counts as unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/network.py" />
      <source>{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. Check the column mapping, the units and single points far off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: the runoff coefficient of inlet '{name}' is {found}; it is above 0 and at most 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check_points.py" />
      <source>{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code table that is shipped) and use field codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table cannot be read ({reason}). Check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/design_table.py" />
      <source>{file}: the table has no rows. Give a header with the columns {columns}, and rows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table has no rows. Give a header with {columns} and at least one row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{file}: the table of limits cannot be read ({reason}). Check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/plan_symbols.py" />
      <source>{file}: the table of line symbols cannot be read ({reason}). Check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: the table of {count} lines in it was read as {kind}; lines count as in that table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances are no text in UTF-8; save the file in that encoding.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: the tolerances cannot be read ({reason}); check the path and the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: the value of {role} in line {line} cannot be read and counts as unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn_file.py" />
      <source>{file}: there are no lines or polygons in it; give a GeoJSON file of such.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pad_file.py" />
      <source>{file}: there are no polygons in it; give a file of polygons.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/landxml_texts.py" />
      <source>{file}: there are no surfaces, points or alignments in this file that could be read; choose another.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there are {count} lines in it ({names}). Give a file with one; join the parts of a line first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/convention.py" />
      <source>{file}: there is no column {column} for the linework. Columns kept: {columns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: there is no control point in this file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: there is no inlet in this file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: there is no line in it. Give a file with one LineString.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/job_file.py" />
      <source>{file}: there is no such file, so {folder} is not the folder of a job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/source.py" />
      <source>{file}: there is no such file; check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{file}: there is no such file; nothing was added.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{file}: there is no such file; say all, none, or a GeoJSON file of polygons where new ground counts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/inlet_list.py" />
      <source>{file}: this is no GeoJSON of points or lines ({reason}); export the layer of inlets as GeoJSON.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/job_file.py" />
      <source>{file}: this is not the file of a job ({reason}); mend it, or move it away to begin anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_area.py" />
      <source>{file}: to have lines that were put aside as swapped read the other way round, use --correct {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/tolerances.py" />
      <source>{file}: two sets are called '{name}'; rename one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/job_file.py" />
      <source>{file}: version {version} of the file is not known here (known: {known}). Update.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/found_lines.py" />
      <source>{file}: vertices of line {number} without a height, or with exactly 0: {count}; they take it from those before and after.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/named.py" />
      <source>{file}: {count} decisions are on points that stand in other lines of the survey now and were found by their names, the first, on {name}, in line {now} (it was line {survey_line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/decisions_said.py" />
      <source>{file}: {count} decisions name no file of the survey, the first in line {line}; each is taken for the only point of its line. A column 'source' says which file is meant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/detect.py" />
      <source>{file}: {count} of the first lines hold numbers as points do but begin with # and are left out as comments; give --comment none to read them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/nmea_said.py" />
      <source>{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/delimited.py" />
      <source>{file}: {count} points have fewer columns than the rest, the first in line {line}; what is missing counts as unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/antenna.py" />
      <source>{file}: {count} points have no pole height; the one before them counts, else the one behind.</source>
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
      <location filename="../plugin/core/points/questions.py" />
      <source>{file}: {question}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_file.py" />
      <source>{file}: {question}; head the columns of control points name, easting, northing and height, with the unit in brackets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{file}: {question}; type one of: {options}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake.py" />
      <location filename="../plugin/core/georeference/operations.py" />
      <source>{file}: {said}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/level_shift.py" />
      <source>{file}: {shift:+.3f} m added to the heights of {count} points, from line {line} on, as said.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{file}: {shift:+.4f} m added to the heights of {count} points, by which visit {number} meets the ground before it where nothing changed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{file}: {value} stands for no {role} in line {line}, far from all other values; this line is no point. If it is meant, give --no-value none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{file}: {value} stands {count} times for no {role}, far from all other values; these lines are no points. If it is meant, give --no-value none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/intake_heights.py" />
      <source>{file}: {wanted} heights are wanted and those of the file are {heights}; give the geoid separation as --geoid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/line_file.py" />
      <source>{file}: {what} has no list of coordinates as GeoJSON asks for. Save the layer again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/not_obeyed.py" />
      <source>{file}: “{words}” may mean that a constant was taken off the heights or added to them; they are read as they stand. To change them give --shift-heights {line}:{metres} or --shift-heights {line}:-{metres}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is one line, join it there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is one line, join it there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and a triangle bridges the gap. If it is a ring, close it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/surface/find_gaps.py" />
      <source>{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles bridge the gap. If it is a ring, close it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/at_work.py" />
      <source>{folder}: another run is at work on this job, in the desk or in another terminal; wait until it ends.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station equation. Write back = ahead, such as 1+200 = 1+250; part several by semicolons.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{given} is no station. Write it such as 1+234.50 or 1234.5; part several by semicolons.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: a part has {places} of the {needed} places that it needs; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: a point beside {point} (line {line}), the middle of an arc, cannot be used; no arc there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
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
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all heights are 0. If it was drawn without heights, switch their use off, or take them out of the file; breaklines can be given as lines without heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: all points of the ring lie on one straight line; left out. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: carried straight across {length:.1f} m between lines {before} and {after}; points left out there: {count}, first {point} (line {line}). Walk it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: fewer than three places, so it stays open. It ends at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/drawn.py" />
      <source>{label}: it has no vertices; left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a circle between each two; straight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: no point of it can be used; no line. It began at {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: only one place, {point} (line {line}); no line, the point stays a ground point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points at the place of the one before them left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: rejected points left out of the line. Points: {count}, first {point} (line {line}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second line: {count}, first at {x:.3f}, {y:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; the first one is used there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/faces.py" />
      <source>{label}: the face height {value} m cannot be used. Give a height other than 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/parallel.py" />
      <source>{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
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
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {length:.1f} m shorter at its end, it ends at line {before}; points left out there: {count}, first {point} (line {line}). Walk it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {length:.1f} m shorter at its start, it begins at line {after}; points left out there: {count}, first {point} (line {line}). Walk it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/chain_lines.py" />
      <source>{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/linework/coded_chains.py" />
      <source>{label}: {point} (line {line}) starts a new line without a word for it, after the line of that number had ended.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} or its slopes take {area:.1f} m² of the platform of {earlier}. Move the pads apart, or plan a wall.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{later} reaches into the grading of {earlier} ({area:.1f} m²): it is graded into the ground as the other leaves it, so some earth is counted with both. The total is that of the finished ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>{lat}° {north}, {lon}° {east}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>{lat}° {north}, {lon}° {east}, in {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>{lat}° {north}, {lon}° {east}, in {crs} (for: {area})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{length:.1f} m of centreline {name} are outside the surface {surface} (stretches: {count}, the first from station {first} to {last}); nothing is said about them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/run_figures.py" />
      <source>{lines} ({count} places)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_maps.py" />
      <source>{low} to {high} %</source>
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
      <location filename="../plugin/core/georeference/control_fit.py" />
      <source>{model} needs {needed} control points with heights or more; {count} can be used: {names}. Without them heights stay as they are: type --control-heights keep.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/grading_figures.py" />
      <source>{name}   (heights {times} times)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/volumes.py" />
      <source>{name} is a mesh, which does not hold how its heights were measured: it is taken to be as good as this survey, with {sigma:.0f} mm new at every point and {drift:.0f} mm of drift. Give --other-sigma and --other-drift if you know them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/mesh_noise.py" />
      <source>{name} is taken with the noise of its own survey, as {file} beside it holds it: {sigma:.0f} mm new at every point and {drift:.0f} mm of drift.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/road_sections.py" />
      <source>{name} is {length} long, from station {begin} to {end}, seen in the way of rising stations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/rational.py" />
      <source>{name} is {value}: a runoff coefficient is above 0 and at most 1, an intensity is above 0. Correct it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/ponds.py" />
      <source>{name} is {value}: ponds need a standard deviation and a least depth of 0 m or more, and a chance between 0 and 1. Correct it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/level_ground.py" />
      <source>{name} is {value}: the slope limit and the window for flat areas must be finite and not negative. Correct it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/materials.py" />
      <source>{name} is {value}; give a number {least} or more, up to {most}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/drainage/study.py" />
      <source>{name} is {value}; it must be a number from 0 up. Correct it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/alignment/texts.py" />
      <source>{name}: a kerb or step lies within the lane at stations {stretches}. Crossfall is taken up to it there; give offsets inside the kerbs if that is not what you mean.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/earthwork/pads.py" />
      <source>{name}: {said}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>{offset} {unit}, standard deviation {sigma} {unit} (of it random and drift above); noise there {scale} times as stated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/surface_sections.py" />
      <source>{off}, at E {easting} N {northing}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{one} Then: {more}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{one} | {more}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/correction_said.py" />
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>{one}, and {more}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/recognition.py" />
      <source>{one}, {more}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/road.py" />
      <source>{option} is about a road, whose line is given with --line; give that too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for grading; give the polygon with --pad too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for peak flows; give the intensity with --rain too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/settings.py" />
      <source>{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/volumes.py" />
      <source>{option} is for volumes; say from or to what: --against, --since or --volume-level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/water.py" />
      <source>{option} is for where the water runs; ask for that with --water too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>{option} is in degrees, and the survey is on a local grid; give easting,northing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
      <source>{option} is said of a job that is there already; give its folder with --job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{option} is said of the last visit, but this job has only one; add a file with --add.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number above zero, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number from zero up, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/numbers.py" />
      <source>{option} must be a number, not {value}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/base_shift.py" />
      <source>{option} must be easting,northing or easting,northing,height in the unit of the CRS, or a latitude and a longitude in degrees with their letters such as 51.4512345N,9.0012345E,146.25; not '{value}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/site.py" />
      <source>{option} must be two numbers such as 500000,5700000, not '{value}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/plan.py" />
      <source>{option} of the walking plan is {value}; give a number in its range.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/given.py" />
      <source>{option}: '{word}' is no length from {least} to {most} m; give metres, such as 2.000.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and fit again without it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: no redundancy; the fit is exact, and an error in a point would not show.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: one of these control points does not fit, and it cannot be told which: {suspects}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points do not fit within the standard deviation given, and with so few it cannot be told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: the control points fit within the standard deviation given; were one wrong, it could not be told which.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or several points may be wrong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/control_said.py" />
      <source>{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest {largest_mm} mm, at '{worst}'), and use more control points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>{place}; it overlaps {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>{place}; {name} is {distance} away at {bearing}°</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/pass_figures.py" />
      <source>{reason}, and more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/arguments/parser.py" />
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
      <location filename="../plugin/core/points/recognition.py" />
      <source>{role} in column {column}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{role} is 0 in all lines and may be meant or may stand for no value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/job/visits.py" />
      <source>{said} A later visit is read by the choices of its job: write its file with the columns, units and CRS of the first, or make a job of its own of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/claims.py" />
      <source>{share:.0f} % of the points are flagged: look at them and decide by hand.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/coverage.py" />
      <source>{share:.1f} % of the site ({area:.0f} m²) lies in triangles with an edge over {limit:.1f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: row {row} was changed by hand but has no line of the survey file; import the points again, so that the decision can be kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} has '{word}' in column {column}; use one of {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/overrides.py" />
      <source>{source}: the point of line {line} was changed in two rows (the second is row {row}); keep one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>{status}, by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/found_sections.py" />
      <source>{status}, drawn by hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/quality/check.py" />
      <source>{stored} points from line {first} to {last} were stored in one place; the first now has their weighted mean, the others are kept out. Spread {plan:.3f} m in plan, {size:.3f} m in height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/profile_sheets.py" />
      <source>{surface} ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_readings.py" />
      <source>{surveyed} in the survey is {known}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{typed} ({label})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/questions.py" />
      <source>{typed} ({label}; {place})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{value} is meant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{value} stands for no value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/points/no_value.py" />
      <source>{value} stands {count} times as {role}, from line {line} on, and may be meant or may stand for no value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/visits.py" />
      <source>± (95 %)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 % (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/report/volume_sections.py" />
      <source>± 95 % ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/fit_question.py" />
      <source>–</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/georeference/position.py" />
      <source>“{name}”</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/core/handover/setout_table.py" />
      <source>“{word}” is no column of a set-out table; choose among {known}.</source>
      <translation type="unfinished" />
    </message>
  </context>
  <context>
    <name>hummock</name>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>&amp;Unit of easting and northing:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>, and </source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>0 fits one grade to the whole line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>0 for a design, which is exact; for a second survey the noise of its points. Empty: as the file .noise.json beside its mesh says; where there is none it counts as a design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 for level pads.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for a level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>0 is north, 90 east, 180 south, 270 west; without meaning for level pads.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>0.02 is usual for a fixed solution on a pole that is walked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>0.5 m is 1 mm on paper at 1 : 500.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>100 is 1 : 100. Long lines take several sheets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>1250 for 1+250.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>2DM meshes (*.2dm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>2DM meshes, such as the surface of rock; the layer's name is the material's.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;Circle {rank}&lt;/b&gt;&lt;br&gt;Nothing was measured within {radius} m of its middle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>&lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;Walk here again: nothing was measured within {radius} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>&lt;p&gt;A projection changes lengths, and so does the height above the ellipsoid. The combined factor (grid distance over ground distance) is computed at the origin: projection scale factor times height factor. Distances from the origin are divided by it to get ground coordinates, and multiplied to get back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; one factor for the whole site; how much it varies over the site is told, and what that makes of a line of 100 m. A sample line is shown with both of its distances. Heights stay as they are. The mean height of the points is used for the height factor, plus the geoid separation if you give it.&lt;/p&gt;&lt;p&gt;Ground coordinates belong to no CRS: the layer has none. Add a shift so that nobody takes them for grid coordinates, and note origin, factor and shift: the way back needs the same ones.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without the geoid separation the height is wrong by it, which makes some 5 mm in a kilometre for 30 m. Ground coordinates need the origin about which they were made; with another one everything is shifted by the factor's share of the distance between the two.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>&lt;p&gt;A rover measures from its base: a base set up at a guessed position moves the whole survey by the same vector. Give the position that the base was used with and the one worked out afterwards, or known points that were surveyed too; one will do. Every point is moved by that vector in space.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that all points were measured from this one base, and that both positions are in the CRS and datum of the survey. Positions are written easting,northing,height in the unit of the CRS, or in degrees with letters, as 51.4512345N,9.0012345E,146.25; both with a height or both without.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a shift tells no rotation, scale or tilt, and an error of the position it rests on is in every point. Several known points that do not agree on one shift are refused, and so is a shift of more than 100 m, until you take it on your word. A base worked out in another datum, such as a worldwide one for a continental CRS, puts decimetres into all points.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>&lt;p&gt;Asks the surface at each point and adds columns: &lt;b&gt;tin_height&lt;/b&gt;, the height on the surface in the unit of its CRS; &lt;b&gt;slope_pct&lt;/b&gt; and &lt;b&gt;slope_deg&lt;/b&gt;, the slope of the triangle; &lt;b&gt;aspect_deg&lt;/b&gt;, the way down in degrees clockwise from grid north; &lt;b&gt;triangle&lt;/b&gt;, its number. Points with heights of their own also get &lt;b&gt;over_tin&lt;/b&gt;: their height less the surface's, in the same unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Points in another CRS are asked at their place in the surface's CRS and stay as they are; their heights are taken to be in the surface's unit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;On an edge&lt;/b&gt; the triangle of lower number answers. A level triangle has no aspect.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points off the surface get empty columns and are counted in the log. Between the survey's points the height is interpolated: it is no measurement.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>&lt;p&gt;Brings a survey in local or assumed coordinates into the CRS of known control points: in plan by a turn, a scale and two shifts (four parameters), in height by a shift or a tilted plane; or in space by seven parameters. The fit is by least squares.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the points of the survey carry the names of the control points that they were measured at, written alike. The coordinates of the survey layer are taken as they are in the unit you give, whatever CRS the layer says. Several measurements of one control point are averaged.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The residuals&lt;/b&gt; are fitted minus control, in millimetres. Redundancy numbers say how far an error in a point would show in its residual (0: not at all). A point that does not fit is named by a statistical test; fit again without it and see whether the rest agrees.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The fit is judged&lt;/b&gt; before it is used: its scale against that of the projection, its residuals, and whether a mirrored survey, exchanged names or other units fit better. One that does not is refused with the reading that does, and where it puts the site; nothing is read otherwise without your word.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; two points in plan, or three in height with a plane, fit exactly and check nothing; with one point more an error shows but not whose it is. Control points on one line do not hold a plane, and do not tell a mirrored survey. A scale a little off means ground distances against grid coordinates.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>&lt;p&gt;Compares a surface with check points and says what that shows: bias, RMSE, the 95 % accuracy of the NSSDA (FGDC-STD-007.3-1998), and the vertical class of the ASPRS Positional Accuracy Standards, edition 2 (2023), with the check points' own error in it. Where there are fewer check points than a standard asks for, it says so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and check points that did not shape it: a point layer, or a CSV file with the columns name, easting, northing, height and, where known, sigma_h, sigma_v and cover, in the CRS of the surface and its units. With neither, the check shots among the survey's points are taken (rejected as check_shot): those are of the same receiver, so the result is an internal check and no test by a standard.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Cover:&lt;/b&gt; words such as hard, bare, short grass count as non-vegetated; tall grass, crops, brush, forest as vegetated. The two are reported apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Plan:&lt;/b&gt; with the survey's points, marks of the same name in both tell the accuracy in plan.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; points from the same base station, pole or geoid share its errors and hide them. The sentences follow the standards in meaning; compare them with your copy before you sign. A licensed professional decides what may be stated for a contract.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>&lt;p&gt;Compares the grades and crossfalls along a line with a table of limits. A stretch passes or fails only when the whole interval in which its true slope lies with 95 % is on that side of the limit; else it is too close to tell, and more or better points are needed. The layer shows each rule as a band of its own beside the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS, such as a centreline or the middle of a walk. Crossfall is taken between two offsets; keep them inside kerbs. Where the surface shows a crown, each half of the lane is judged by itself. Windows beside each other help each other, as far as the road is smooth.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table of limits&lt;/b&gt; is a CSV file with the columns rule, quantity (grade, crossfall, crest_k, sag_k), at_least or at_most (1:20, 5% or 0.05; K in metres), window (m), applies, source, checked, note. Without one the table that comes with Hummock is used; each of its limits names the published source. Compare them with your copy, and with the code that applies where you build.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Indications&lt;/b&gt;, none of them a proof: to which edge the crossfall leads water; low points along both edges where water stands, deeper than the noise; and with a table of speeds (columns speed and least_k, m/%), the speed that each fitted crest suits.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; of many windows near a limit a few are judged wrongly. What lies off the surface is not judged. Whether a road, walk or ramp complies is a matter of local codes and of licensed practice, not of this check.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>&lt;p&gt;Computes cut, fill, net, areas and mean depths between two surfaces, or from a surface to a level, in each polygon of a layer: parcels, phases of work, materials on the ground. The polygons' edges cut the triangles exactly, so that the regions and what is outside add up to the whole; where polygons overlap, each counts the ground and the log names them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes in one CRS with one height datum. The polygons are brought into that CRS. &lt;b&gt;Materials:&lt;/b&gt; surfaces of the tops of layers below the ground, such as rock, from above to below; cut is then parted by them. Where a layer's surface is missing the material is “not known”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the polygons with their numbers (± columns are half of the 95 % interval), tables by quantity with the parts of the doubt, by depth class, by material, depth polygons of the whole, and a report. How sure the numbers are, and what is taken off between two surveys: see “Volume between two surfaces”. Offset and noise are found once, from all of the ground, and hold for each region.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; intervals of regions do not add up: a height offset moves all of them together, noise does not. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Parcels drawn here are no legal boundaries. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>&lt;p&gt;Computes the earth between an existing surface (or an earlier survey) and a design (or a later survey). Every triangle of the one is cut along those of the other, so that the volume is exact for the two surfaces: it depends on no cell size and no stations. &lt;b&gt;Cut&lt;/b&gt; is where the existing surface is above the design, &lt;b&gt;fill&lt;/b&gt; where it is below, both positive; net is fill less cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS and with one height datum. Only ground that both cover is compared, and only inside the polygons if a layer of them is given; what is left out is told in square metres. A level in place of the missing surface counts the rest as well.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Two surveys&lt;/b&gt; (both with noise): noise alone makes cut and fill where nothing changed. What it makes is taken off, so that such ground comes to 0 on average (a volume a little below 0 means none). The height offset between them is found from the ground on which they agree best, and taken off, unless you give it; how much noise there is follows from the same ground. What the triangles say as they are is told beside (triangles_m3).&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; each volume comes with its 95 % interval and five standard deviations: random (noise of single points), drift (shared by neighbours), systematic (a height offset between the surfaces, times the area), surface model (ground between the points) and small (noise where depths are no larger). They rest on what you say of the points; the log and the report name it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tables:&lt;/b&gt; volumes with half_95, low_95 and high_95; random, drift, systematic, model and small are standard deviations, all in m³. &lt;b&gt;Polygons:&lt;/b&gt; kind, from_m and to_m (depth), area_m2, volume_m3.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; an offset of 1 cm between two surveys is 100 m³ on a hectare: check a few points that did not move. Where most of the ground rose or sank evenly by less than 0.1 m, that is taken for an offset: give the offset then. Against a design, where nothing is deeper than the noise, cut and fill are both too large. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>&lt;p&gt;Computes what must be cut (ground above) and filled (ground below) to make the surface one plane: a &lt;b&gt;level&lt;/b&gt;; a &lt;b&gt;sloping plane&lt;/b&gt;, given by its height at a place, how steeply it falls and which way; or the plane through &lt;b&gt;three points&lt;/b&gt;. Exact, triangle by triangle, without side slopes; for a pad with slopes to the ground see “Grade a pad”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Polygons limit the ground. Heights are in the unit of the CRS, the direction is an azimuth: degrees clockwise from grid north.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; see “Volume between two surfaces”; the plane itself is exact, and the height offset is that between the survey and the datum of the level.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a polygon the whole surface is levelled, rim and all. This is no payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>&lt;p&gt;Cuts a surface, and a second one if you like, at right angles to a line: at whole multiples of an interval, at stations you name, at the line's ends and at its vertices. At a vertex the section halves the angle. You get the sections as lines with heights, their points with offset (right positive) and height, the areas of cut and fill, and sheets in PDF at true scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them and one line, all in one CRS. Heights are those of the triangles, with a point wherever a section crosses an edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Areas:&lt;/b&gt; cut is where the second surface is below the first, fill where it is above; exact between the surfaces as they are. Their standard deviations follow from the noise of the heights. Where both surfaces are within the noise of each other, cut and fill both come out too large; fill less cut does not.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; in tight bends wide sections cross and ground beyond counts twice, which is said. A section partly off a surface has areas only over the width covered, which a column tells. Quantities for payment are a matter of the contract and of licensed practice. Locate buried services before any excavation.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>&lt;p&gt;Divides a line into windows and gives for each the grade along it and the crossfall across it, with the standard deviation that the noise of the points makes. Both layers are coloured by class of slope, steeper darker and wider.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. A grade is positive where the surface rises with the stations, a crossfall where it rises to the right. A grade is the straight line that fits the heights in the window best. A crossfall is that of sections half a metre apart, from one offset to the other, which all have one slope in the window. Where the surface shows a crown, each half of the lane has a crossfall of its own; a kerb within the offsets ends the lane.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (from 0, the flattest, by the size of the slope), label; of crossfalls also part (lane, left, right) and crown, its offset from the line. Twice the standard deviation is the doubt at 95 %.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; crossfall over a ditch, or a kerb that the surface makes a ramp of, is no crossfall: keep the offsets in the lane. A crown that noise hides is not seen. Drift tilts a crossfall and counts only if you give it. A window that the surface does not cover has no slope. For limits use “Check a line against limits”.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>&lt;p&gt;Divides the surface along lines of steepest descent by where its water goes: to an inlet, a pond, an outlet on the rim where a channel leaves, or over the rest of the rim. The areas add up to that of the surface. With it come the channels and, between their grounds, the ridges.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Inlets are points or lines; for the catchments of points on a line give the line and the length of its stretches: each has its own catchment.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; name (the inlet's; P1, P2 … ponds by depth; O1, O2 … outlets and H1, H2 … pits by area), drains_to (inlet, pond, outlet, rim, pit), area_m2 in plan and share_pct of the surface, nowhere_m2 and nowhere_pct, the part of it whose water stays in a pond until that is full, and out_x and out_y, where it goes, in the CRS. Channels have area_m2, the ground that drains through their end.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; ground beyond the rim was not measured, so its water is missing. The catchments of a noisy survey are no finer than its points; the noise given keeps pits of noise from dividing them. An inlet takes all that comes near it: whether it can swallow that is not asked.&lt;/p&gt;&lt;p&gt;Catchments are no drainage design: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>&lt;p&gt;Does the same on two surfaces, such as the ground and a design, and says what differs: ponds that are new, gone, deeper or shallower, ground whose water goes elsewhere, and paths before and after from the same places.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; two 2DM meshes in one CRS that cover much the same ground, and the same inlets on both. A pond is the same one where the pit of one lies under the water of the other. All places of the rim are taken for one, and so are all ponds, when it is asked whether water goes elsewhere.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; of ponds: change (new, gone, deeper, shallower, unchanged), before and after (their numbers on each surface), and the change in depth_m, area_m2 and volume_m3; of moved ground: from_what, to_what, area_m2; of paths: when (before, after) and those of “Paths of water”.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where only one surface reaches, nothing is compared; a design that ends in the middle of the site has its rim there. Put the design into the ground first. The noise given holds for both surfaces: a design has none of its own.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design. Water turned onto a neighbour's ground is a legal matter in most places: local codes and licensed practice decide.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>&lt;p&gt;Draws contours as a plan shows them: noise calmed, corners rounded, labels that read uphill on the straight places of the lines, and spot heights at summits, pits and saddles.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and the scale at which the plan will be printed: labels keep their size on the ground, so that they fit at that scale.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Calming&lt;/b&gt; moves no height by more than the tolerance you state; vertices on breaklines and on the rim stay. &lt;b&gt;Smoothing&lt;/b&gt; moves no place of a line by more than the distance you state; lines never cross each other or a breakline, rings stay closed, and each survey point stays on its side. The log says how much of both was used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For half-foot contours&lt;/b&gt; choose interval 0.5, feet, and an index contour every 2.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; these lines are for drawing. Take numbers, volumes and hand-over from the surface, or from “Contours of a surface”. Labels for another scale are too large or too small: run it again for that scale. Short or crowded lines get no label.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>&lt;p&gt;Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. Interval and base are in the unit you choose, which need not be that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; level in the chosen unit and in metres, index (drawn heavier), depression (a ring with the lower ground inside) and closed. Each line also carries its level as height.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours finer than the points allow show noise, not ground: with heights good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not smoothed: their corners are where they cross the edges of triangles.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>&lt;p&gt;Draws the topographic plan of a surface: contours with labels, spot heights that do not touch each other, your lines and parcels, grid marks with coordinates, north arrow, scale bar, legend, and what a reader must know: CRS, height datum, accuracy, contour interval, date. Where the site does not fit on one sheet at the scale, several are made, with a key map on each.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You get&lt;/b&gt; a PDF with lines and text as vectors and its fonts inside, a GeoPackage with the layers and their styles, and a print layout in the project to change by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Title and author come from the project’s properties (Project › Properties › Metadata) where you leave them empty here. The height datum is that of a compound CRS; for another CRS say it, else the plan says that it is not stated.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Accuracy:&lt;/b&gt; with check points the plan carries the sentences of the accuracy statement; otherwise it says that the heights were not tested.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; contours on the plan are calmed and smoothed within the limits you state; take numbers from the surface. Layers with transparency or blending turn the map into an image in the PDF. A second run for the same files replaces the layers and the layout of the first; duplicate a layout that you want to keep. Parcels on a plan are no boundary survey, buried services are not shown, and a plan is not for setting out without independent checks: local codes and licensed practice decide who may sign it.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>&lt;p&gt;Fills every hollow of the surface to its brim and says which of them count: a hollow that the noise of the heights explains is no pond. Ponds that join as they rise are parts of a larger one; those whose sills are at one height join at once.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, heights with independent normal errors of the standard deviation given, and ground that lets no water in. Water leaves over the rim of the surface and through inlets.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; pond (P1 is the deepest) and parent, the pond it is a part of; depth_m at the pit with sigma_m, its standard deviation from those of pit and spill point; chance_pct, the probability that noise alone makes such a hollow anywhere in the survey; area_m2 and volume_m3, exact on the triangles; level, the height of the full pond in the unit of the CRS; points, how many of the survey are under water; spills_to, a pond, an inlet or the rim.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; errors that neighbours share, as from one bad fix over a minute, make wider hollows than this allows for: set a least depth. At the rim of a survey a pond can run out over ground that nobody measured. Gullies and soakaways drain ponds only when they are given.&lt;/p&gt;&lt;p&gt;Ponds are an indication from the surface as surveyed, no drainage design: infiltration, pipes and local codes are matters of licensed practice.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>&lt;p&gt;Finds the height at which cut, times the fill that one cubic metre of it makes, equals fill and a stated surplus: the level of a pad, one shift of several pads, or the shift of a strip's whole profile. Slopes are graded anew at each height. Give pads &lt;i&gt;or&lt;/i&gt; a centreline.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Result:&lt;/b&gt; the height with its 95 % interval, volumes there, and a table and figure of cut, fill and what is left over against height: flat curves mean that a little height moves much earth, and the other way round. To make the design itself use “Grade a pad” or “Grade a strip along a line” with the balance switched on.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what those assume. The interval comes from the doubt of the volumes; the factor from cut to fill is taken as given, though it is often the less certain of the two.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where no height balances, as with a surplus larger than there is earth, it says so. Where slopes run over a brow the volume jumps; what is left over is told. Quantities for payment, slopes that stand and safety need the contract, licensed practice and the local codes.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>&lt;p&gt;Finds the pit of a basin and the lowest place where water leaves it, and computes area and volume of the water at even levels between them, exactly. Pits inside join as the water rises: it is the outermost of the ponds that “Pits and ponds” finds without noise where the water of the place runs.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it that takes in the basin's whole rim. A void in the surface, and its edge, let water out. Without a place the basin is that of the lowest place of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Outputs:&lt;/b&gt; the curve as a table (level in the unit of the CRS, the rest metric), the water at the spill level by depth, pit and spill as points, and a report with the curve.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points, ground between them, and the noise of the one height at which the basin spills, which counts over the whole water.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a wrong point on the rim sets the spill: look at it. This is the shape of the ground only, without inflow, outlets, seepage or freeboard; a licensed engineer designs storage.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>&lt;p&gt;Fits straight grades joined by parabolas to the heights along a line: where they begin and end, where two grades meet, and K, the length of curve for each percent that the grade changes. Grades, K and the heights that depart from the fit come with their standard deviations or residuals.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and one line in its CRS. Heights are taken at equal distances; those far off, at a cover or a kerb crossed, count little. As many curves are used as the heights are worth by the Bayesian information criterion.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Layers:&lt;/b&gt; grades and curves along the line; the points where grades meet, at the height where they do, which is not on the ground; and the residuals, surface less fit.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; take about the distance of the survey's points for the spacing of heights: closer ones repeat the same points, and standard deviations come out too small. A short curve between points far apart cannot be told from a kink. This describes what is there; a design is the work of a licensed professional.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>&lt;p&gt;Follows water from places down the surface itself: across each triangle the steepest way, along a channel where two triangles fall into their edge, to a pit, an inlet or the rim. Level ground drains by the shortest way along its edges to where it goes down.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Paths start at points, along lines and inside areas at the spacing given, or all over the surface where no layer is. In another CRS they are brought into that of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; feature (of the starts), end (pit, pond, rim, inlet, or undecided where heights are equal to rounding), ends_in (the pond or inlet), length_m in plan, drop_m, and slope_pct, the mean of the path.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; noise makes pits: with its standard deviation given, paths pass hollows that noise explains, straight from the pit over the brim. Ponds are numbered from the deepest, P1, as in “Pits and ponds” with the same settings. What is not measured, such as a kerb between two passes or a pipe under a road, leads no water here.&lt;/p&gt;&lt;p&gt;Paths show where water runs on the surface as surveyed. They are no drainage design.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>&lt;p&gt;Given an area and what you want of the survey, a contour interval or a height error, it proposes how far apart to walk, draws the lines in walking order, and tells the number of points, distance and time.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a rover that stores a point by itself at the step given. The height error between passes is reasoned from the noise of one height and from how the ground bends; no standard says it. A contour interval asks for an RMSE of a third of it (ASPRS Positional Accuracy Standards, 2014, annex B).&lt;/p&gt;&lt;p&gt;&lt;b&gt;Lines:&lt;/b&gt; the perimeter first, then passes to and fro, then a few passes across: where those cross the others, the survey tells its own noise. Columns: order, use (perimeter, pass, cross, link), name, length_m, from_start_m, minutes. To take them along save the layer as GPX or for your data collector (Export &gt; Save Features As).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; kerbs, ditches and banks narrower than two passes are missed: walk their edges as coded lines, or cross them squarely every 3 m, from which “Find lines of the ground” finds them. The plan knows no fences, water, traffic or cattle. Links lead along the outline, but between parts of an area that do not touch they are straight.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>&lt;p&gt;Gives every point a &lt;b&gt;status&lt;/b&gt;: used, flagged (look at it) or rejected (kept out of the surface), with every &lt;b&gt;reason&lt;/b&gt;. Nothing is deleted. The map tip of a point tells its reasons.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Before all else&lt;/b&gt; stray points are put aside, with their lines and the likely cause: coordinates swapped, zero or not finite, and points farther off than the walk could have gone, by the times or by the spacing of the points. Where nothing tells a stray from a control point, a base or another part of the site, the point is kept and flagged as far off, and no ground is drawn to it until you give it the status used.&lt;/p&gt;&lt;p&gt;Single points are held to a &lt;b&gt;tolerance set&lt;/b&gt;: fixes, standard deviations, tilt, PDOP, age of the correction, observations. Heights are held against the walk, the passes beside it, places walked twice and coded lines: a pole lifted, dropped or of another height, a fix regained wrongly, points stored while standing still (one point with their mean stays), lines stored twice. How much noise is usual is found in the survey itself. What crossing passes confirm is ground, however low or high it lies, and so is what lines of the ground explain: kerbs, walls, ditches. Rejected is only what meetings or sharp steps off the ground and back decide; the rest is flagged. Heights that change their &lt;b&gt;level&lt;/b&gt; for long (pole, antenna, base, fix) are told with the size and its doubt; where nothing says which part is right, none is rejected.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tilt&lt;/b&gt; is a fault only where the rover does not compensate it. You know; else the heights tell: a leaning pole without compensation gives heights that are too low by its length times 1 - cos of the tilt. &lt;b&gt;A limit that would reject more than a tenth of the points&lt;/b&gt; is not applied unless you chose the set: the points are flagged, and the log says first which limit, how many points, and what to do. Points without a fix that the file itself shows to be worse are rejected, and that is said first too.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Flagged points are in the surface&lt;/b&gt;, but for one kind of stretch: 5 m or longer, met by at least two passes along at least half of it, which all say that it is off, by more than its doubt (twice the standard deviation of what they say). It is left out, told in the log and a place to walk again. &lt;i&gt;Keep flagged stretches in the surface&lt;/i&gt; puts all of them back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;You decide:&lt;/b&gt; change the field status of a point in the output, and run this on that output again, or build the surface from it. Your decision stays: check_status and check_reason keep what the checks said, and the log reports where you overruled them.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; points in the order of recording, such as the output of “Import survey points”, in a projected CRS. Statuses that points bring along without check_status count as decisions by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How heights repeat:&lt;/b&gt; where passes cross or run side by side, the log gives the standard deviation of a height found there, with its degrees of freedom, and what the receiver claims.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what no other pass and no line has seen can be a fault or a form of the ground: such points are flagged. Errors shared by the whole survey (base station, geoid, pole height) cannot show here: use check points. The tolerances are common practice, no standard.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>&lt;p&gt;Grades each polygon to a level or a sloping plane, and from its edges slopes of cut up and slopes of fill down until they meet the ground (daylight). The result is an exact surface: the design, and the finished ground with it in.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Levels are heights in the unit of the CRS, at the middle of a pad's bounding box; slopes are 1 up or down in n out, square to the edge. Holes keep their ground but for the slopes into them. Several pads are graded one after another, in the order of the layer: each into the ground as those before it leave it, so that where they meet, touch or overlap the later one counts. Where one reaches into another, that is said. Ground that lies on a slope already stays as it is.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Slopes of single edges:&lt;/b&gt; lines along them, with the fields cut_run and fill_run. They can differ where edges meet at a corner sharp enough for the slopes to meet, on outlines whose slopes do not run back across the pad; else they are refused.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance:&lt;/b&gt; the height at which cut, times the fill one cubic metre of it makes, equals fill and a stated surplus, to a tenth of a millimetre, and how sure it is. For several pads: one shift of all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; volumes come with their 95 % interval from what you say of the points; see “Volume between two surfaces”. The page compares them with a grid, average end areas and the prismoidal formula.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where the survey ends before the slopes meet the ground it says so, and volumes stop there. This is no design for construction: whether slopes stand, drainage, walls, and safety while digging need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>&lt;p&gt;Joins the triangles whose slope is below a limit to areas.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The slope is that of the mean gradient, by area, of the triangles within the window around each one. The limit is yours: local codes and the kind of paving decide what is too flat.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; number (1 is the largest), area_m2, limit_pct.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles of a survey with points every half metre are as steep as its noise, some percent: with a window of 0 flat ground goes unseen. A wide window averages a ridge or a channel to level ground.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>&lt;p&gt;Lays a typical section along a line: lanes and shoulders with their crossfalls, ditches where the ground is above, and slopes to daylight. Heights of the centreline come from the Z of the line or from a table of stations and heights, with vertical curves (parabolas) where the table gives their length.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Tables are in metres. Between stations the strip is straight; bends are made of chords, so set a short distance of stations there. Both sides have the same slopes. At corners the edges of the strip run to where they meet; outer ones are rounded or mitred as chosen for the slopes, but mitred where a jog leaves a rounded one no room, and rounded where the line turns so far that a mitre would run far out.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Mass diagram:&lt;/b&gt; exact cut and fill from station to station, usable cut less fill summed along the line, and how far earth is hauled between places where they balance: in the layer and on the page.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Balance&lt;/b&gt; shifts the whole profile. &lt;b&gt;How sure&lt;/b&gt; the volumes are rests on what you say of the points; the page compares them with average end areas and the prismoidal formula along the line.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; where a bend leaves the strip's edge no room, and where the strip runs over itself, it is refused, with the place. Ends without slopes stand as steep faces. This is no design for construction: alignment, sight, drainage, slopes that stand and traffic need licensed practice and the local codes. Locate buried services before anyone digs.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>&lt;p&gt;Lays lines on a surface. They keep their place and their vertices in plan and get a new vertex wherever they cross an edge of a triangle: heights are those of the surface all along the line, not only at its vertices.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Lines in another CRS are brought into the surface's; curves become chords. Heights that the lines have are not used.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; part, the number of the piece of its line; start_m, its distance from the line's beginning, and plan_m and slope_m, its length in plan and on the ground, in metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; what lies off the surface, over voids too, is left out: the line falls into several pieces. Each gap is a row of the second output. A line all off the surface gives none.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>&lt;p&gt;Looks a surface over and marks each place that a surveyor would ask about: &lt;b&gt;level spots&lt;/b&gt;, whose corners all lie on one level line; &lt;b&gt;gaps&lt;/b&gt; in breaklines that triangles bridge; &lt;b&gt;long triangles&lt;/b&gt;, over ground that nobody walked; &lt;b&gt;spikes&lt;/b&gt;, points far above or below their neighbours; &lt;b&gt;points beside a line&lt;/b&gt; at another height than its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Give the survey's points, and the “Lines of the surface” with their labels, too: gaps are only found among lines, and file lines are only named for points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; kind, value and unit (an area, a width, a length or a height), text, and lines, the lines of the survey file behind the place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a finding is a question, no verdict: a wall is a spike to this search. A surface without findings can still be wrong, where nothing was measured or all of it is off. The limits are our own choice for points stored every half metre; no standard sets them.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>&lt;p&gt;Looks for what passes share: &lt;b&gt;steps&lt;/b&gt; (kerb, wall, edge of paving), each with a foot and a top, and &lt;b&gt;changes of slope&lt;/b&gt; (top and toe of a bank, bottom of a ditch, gutter, crown). Each line has its height of step or change of slope, its doubt in plan and height, how many passes show it, and its evidence: the decimal logarithm of how many times less than once so orderly a line is expected by chance.&lt;/p&gt;&lt;p&gt;Lines with strong evidence get the status &lt;b&gt;used&lt;/b&gt;: “Build the surface” holds to them when you give it this layer, and a used step stands there for the points in it that agree with its heights. A step that runs along another at an even distance, as the two kerbs of a street do, needs less evidence of its own. The others are &lt;b&gt;proposed&lt;/b&gt;; give the layer to “Check the coverage”, and the places where one more pass would settle them are among the places to walk. &lt;b&gt;You decide:&lt;/b&gt; change the status to used, proposed or rejected, or move and draw vertices in QGIS’s own editing; when this runs again into the same file, or with the layer as “Lines with your decisions”, your decisions are kept for the lines that lie where they lay.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; points in the order of recording, in a projected CRS, best the output of “Check the survey”; rejected points take no part. Lines of the field codes go first: a found line within 0.3 m of one over most of its length is dropped.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What it needs:&lt;/b&gt; points every half metre; four passes or more across the line, best squarely and every 3 m; steps of about 60 mm or more, or less noise. Walking along foot and top, or along the bottom of a ditch, shows a line too.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a lowered kerb or a gap that no pass crosses is bridged in a straight line (bridged_m says how much), and so is the way from the end of a line to another that it heads for within about one distance of passes. Between passes the place of a line is guessed from its course; a ditch is drawn with one section for all its passes, each somewhat wider or deeper, so that a rounded swale has edges too. A wall that is narrower than the distance of points shows no step. A pole whose height changes on several passes can look like a step. Look at the map before you build on it.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>&lt;p&gt;Makes a lighter surface: vertices are dropped as long as every one of them stays within the tolerance of the new surface. The rim, breaklines and their heights are kept.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and a tolerance in metres whatever the CRS. The result is a 2DM file with its CRS beside it as .prj.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What was reached&lt;/b&gt; is measured on the finished surface at every vertex of the given one and stands in the log and the results: the largest difference with its place, and the root of the mean square.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between the vertices, where an old edge crosses a new one, the surfaces may be farther apart than the tolerance. A tolerance below the noise of the heights drops little. Volumes of a thinned surface differ: compute them from the full one.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>&lt;p&gt;Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary and voids become edges exactly; no points are added along lines with heights.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that plan and heights are in the unit of the points' CRS. Lines come from the field codes of the points, in recording order, and from layers. A line without heights takes them from the surface around it and keeps its edge.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Points at the same place&lt;/b&gt; (equal to 0.1 mm) count once, with their mean height, and are reported.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Kerbs and walls&lt;/b&gt; are drawn as one line with heights and the height of the face; each becomes two breaklines a small offset apart.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Edits&lt;/b&gt; by hand come from layers that you draw and from a file; they are replayed in their order at each run, and those that no longer apply are reported. Keep the file of edits that is written beside the survey, and give it to the next run instead of the layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; lines that cross at different heights are refused unless you choose a rule. Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: their ground was not surveyed. A boundary drawn around nothing leaves no triangle.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The mesh&lt;/b&gt; is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;How well the heights repeat&lt;/b&gt; is measured once more on points that “Check the survey” has been over, and kept in a file .noise.json beside the mesh: volumes rest on it. Keep the files together.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>&lt;p&gt;Makes points to set out from a layer: its points, the corners of its lines and polygons, a grid over its polygons, or offsets along its lines. Each gets a design height, the height of the existing ground, and cut or fill: the design less the ground, above 0 fill, below 0 cut.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh of the existing ground as “Build the surface” writes it, places in its CRS, and a design that whoever answers for it has released.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Design heights&lt;/b&gt; come from a field, or else from the Z of the layer where that is ticked, or else from a design surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Doubt:&lt;/b&gt; the standard deviation of cut and fill has two parts: the noise of the surveyed heights, carried through the triangle, and the doubt of set-out in plan times the slope of the ground. The design counts as exact, and ground between the survey's points may differ by more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The table&lt;/b&gt; has the columns you name, in that order, in the unit you choose; the control points stand at its end with the code CONTROL. Names are unique, capitals or not: clashes are refused. Notes and cautions stand at its head and in a text beside it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; grid coordinates used as distances on the ground: check the combined factor. A data collector in another foot, another datum or another height system. An outdated design.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; check on control before, during and after the work. Have buried services located before anything is dug or driven in. This is no survey of boundaries: property marks, and set-out that others build on, are for a licensed professional under local rules. For machine guidance check at known points, away from the machine's path.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>&lt;p&gt;Multiplies the area of each catchment by its runoff coefficient and the intensity of the rain: the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889).&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; rain of constant intensity for as long as water takes from the farthest place to the outlet; find that intensity for the duration and the frequency that your code asks for. Catchments are polygons, as “Catchments” makes them. The runoff coefficient comes from polygons of ground cover, weighted by area, else from a field of the catchments, else it is one number for all.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns added:&lt;/b&gt; runoff, the coefficient; area and area_unit; intensity and intensity_unit; flow and flow_unit (l/s, or ft³/s).&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the method is for small areas of one kind; beyond some 80 ha (200 acres) it is commonly not used. It knows no storage: a pond upstream makes the true peak smaller. Water from beyond the surveyed ground is not counted. The flow over “the rest of the rim” is that of many places, not of one.&lt;/p&gt;&lt;p&gt;This is an indication and no drainage design: coefficients, intensities and methods are set by local codes, and a licensed professional answers for a design.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>&lt;p&gt;Puts a point with the direction and the slope of the way down at the places of a square grid. The style turns an arrow by the direction and sizes it by the slope.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. The direction is the mean gradient, by area, of the triangles around: within the window.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; direction, degrees clockwise from grid north, and slope_pct, the fall over run in percent.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; single triangles between points half a metre apart are as steep as their noise, some percent; with a window of 0 the arrows show that. A wide window hides kerbs and ditches. On level ground there is no arrow.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>&lt;p&gt;Puts each triangle of a surface into a class by its slope and joins the triangles of a class to areas. A slope equal to a limit belongs to the class below it.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Slopes are rise over run in percent, the steepest way down each triangle. Limits are written such as 1; 2; 5; 8.33; 20; 50: 5 is 1 in 20, 8.33 is 1 in 12. They are no standard: set those of your site.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; class (from 0, the flattest), from_pct and to_pct (empty for the last class), label, plan_m2 and slope_m2, the area in plan and on the slope, in square metres.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; between points half a metre apart that are good to 15 mm the slope is only good to some 4 percent: noise speckles the map of nearly level ground. Thin the surface first, or judge larger areas. This map does not replace a check against the rules that apply to your site.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>&lt;p&gt;Reads the open standard LandXML 1.2 (and 1.0, 1.1): each surface becomes a 2DM mesh that all tools for surfaces take; points, source lines and alignments become layers. Units and CRS are those the file says; what you choose here wins.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; surfaces of triangles. Faces marked invisible are holes. Curves of alignments become chords that lie within 1 mm of them; heights of their lines are those of the first profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a file that is damaged, cut short, without units, with a corner that is missing or faces that overlap is refused, with the line and the reason: nothing of it is loaded. Files that declare entities or a document type are refused too: LandXML needs none. Faces without area in plan (walls) and spirals other than clothoids are left out and said. A file in one kind of feet with a CRS in the other is told: ask which is meant.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; a design from elsewhere is no better than its source: compare it with the ground and with its drawings before you set out from it.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>&lt;p&gt;Reads the survey file, checks it, builds the surface and its contours, and writes one report of it all: what came in and what was rejected and why, coordinates, how far the survey can be trusted, the surface, the contours, water, volumes, a road’s grades and a pad’s earthwork where you ask for them, and the files handed over, each with its SHA-256. HTML and PDF say the same.&lt;/p&gt;&lt;p&gt;It starts from the &lt;b&gt;file&lt;/b&gt;, so that each number can be traced to a line of it. A layer in place of the file comes with the statuses that its points have.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The folder is a job&lt;/b&gt;: it keeps your choices, and a later run does only what has changed. With no file and no layer the job that is in the folder goes on with its own choices, such as those of the “Survey desk”. The advanced parameters are those of the steps by hand.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Files of later visits&lt;/b&gt; are not mixed with the survey: each has its own surface, which stays, and the report tells its height offset to the ground before it and how much ground changed. Where you say so, its ground counts in place of what differs by more than noise.&lt;/p&gt;&lt;p&gt;&lt;b&gt;More files&lt;/b&gt;, such as a plan or a drawing, are listed with the others and their SHA-256.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; what “Import survey points”, “Check the survey” and “Build the surface” assume.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the report tells of this run, not of layers you changed by hand since. It is no certificate: licensed practice and local codes decide what a survey may be used for.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>&lt;p&gt;Reads what a rover wrote, delimited text (comma, semicolon, tab, blanks or columns at fixed places; point or comma as decimal sign; with or without a header; eastings and northings, or latitudes and longitudes), a receiver log (NMEA 0183), or GPX, KML, GeoJSON, GeoPackage, Shapefile, XLSX and ODS, zipped or not, into a layer of points with heights. Several files of one site become one layer that keeps the source of each point. A layer of points that is loaded already can take the place of a file, alone or merged with files and other layers.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns&lt;/b&gt; are recognised from header words in many languages, from the values, and from the area in which the CRS may be used; units that a header says are obeyed, and numbers that stand for no value, such as -9999, are named and are no points. What stays open is asked, not guessed: “Preview” shows the first lines, the role of each column, the lines that would be rejected, and where the points would land.&lt;/p&gt;&lt;p&gt;Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line is in the second output with its reason.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Strays are put aside&lt;/b&gt; as rejected points, with their lines and the likely cause where it can be told: coordinates swapped, zero or not finite, and points farther off than the walk could have gone, by the times or by the spacing of the points. The area of use and the transformation are worked out from the other points. A control point, a base or another part of the site stays; where nothing tells it from a stray, it is flagged as far off and no surface is drawn to it. A decision, or the status used in the layer, takes any point back.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; that the coordinates are in the CRS wanted unless another one is given for the file; then they are transformed by one operation that is named with its accuracy. Degrees without a CRS are taken as WGS 84. Heights are taken as they are unless a geoid separation is given, or they are those of the antenna: then the pole height and the antenna offset bring them down to the ground, and the report says so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The status&lt;/b&gt; of a point is used, flagged or rejected. Only rejected points stay out of the surface. You can change it in the layer; later steps read it there. Plan and height are read from the geometry, so the columns easting, northing and height only inform.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; easting and northing can be swapped, and a wrong unit makes a surface of the right form and the wrong size. Points outside the area of use of the CRS are reported with the likely cause; nothing is corrected without your word. A ballpark operation, or one that lacks its grid file, is refused until you accept it by its name.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>&lt;p&gt;Samples a surface at the centres of square cells, whose edges lie at whole multiples of the cell size. &lt;b&gt;Exact&lt;/b&gt;: the height on the triangle. &lt;b&gt;Smooth&lt;/b&gt;: a Clough-Tocher interpolant through the same vertices, sharp at breaklines: it is for drawing only, such as a hillshade, never for numbers; its largest difference from the surface is in the log.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Cells without the surface under their centre have no data (-9999).&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; is a GeoTIFF of 32-bit numbers (rounded to 0.02 mm below 512 m, 0.3 mm below 8192 m), compressed without loss and tiled, with the CRS; the band names method and unit of the heights, which is that of the CRS.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a raster cannot hold a kerb: what is narrower than two cells is blurred. Take volumes and contours from the surface itself. Small cells make large files.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>&lt;p&gt;Spans a base inside each closed line (the toe of a stockpile, the rim of a pit) and computes what of the surface stands above it and what is missing below it, exactly. Bases: &lt;b&gt;triangles through the line&lt;/b&gt;, which follow uneven ground around; the &lt;b&gt;best-fit plane&lt;/b&gt; of the line, for a pad built even; a &lt;b&gt;level&lt;/b&gt; at its lowest or highest place.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and lines drawn at the toe or rim itself, in a polygon or line layer, one feature each. A line is laid on the surface to get its heights, or keeps its own Z where you say so. Breaklines along toe and crest make the surface right.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns:&lt;/b&gt; above_m3 and below_m3 with their ± (half of the 95 % interval), areas, the base's lowest and highest height, not_measured_m2 (ground inside the line without surface).&lt;/p&gt;&lt;p&gt;&lt;b&gt;How sure:&lt;/b&gt; noise of the points and of the base's line, ground between the points, and, for a line with its own heights, a height offset times the area.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; the base under a heap is a guess, unless the ground was surveyed before it was heaped: then use “Volume between two surfaces”. A toe drawn too wide counts ground, too narrow leaves out the foot. This is no payment certificate; for tonnage measure the density.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>&lt;p&gt;Takes the heights of one or several surfaces along a line: as points at stations, as lines in a plane of their own, and as a sheet in PDF at true scale, with stations, heights, differences and grades below the profile.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; 2DM meshes as “Build the surface” writes them, all in one CRS, and one line in that CRS. Heights are those of the triangles all along, not of a grid. A grade is the straight line that fits the heights in its window best; its standard deviation follows from the noise of the points.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Columns of the stations:&lt;/b&gt; station, distance_m, easting, northing, height, height_sd, grade_pct, grade_sd_pct, and for further surfaces height_2, diff_2 and so on. Save them as CSV by giving the output a file name that ends in .csv.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The profile in its plane&lt;/b&gt; is no place on a map: to the right the distance along the line, up the height, exaggerated, both in the unit chosen. It has the CRS of the surface only so that files can hold it; look at it in a map view of its own.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; stretches off a surface are left out and said. Standard deviations know the noise of the heights you give, not errors in plan, nor ground that was not walked. Not for construction or setting out without independent checks.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>&lt;p&gt;Tells how densely a site was recorded and where not: the largest &lt;b&gt;circles without a measured point&lt;/b&gt;, the &lt;b&gt;long triangles&lt;/b&gt;, their share of the site, and &lt;b&gt;places to walk again&lt;/b&gt; in walking order. With those places measured no ground is farther from a point than the limit. Where a line from field codes is carried across rejected points, or ends short of them, is among them. The log also names the smallest contour interval that the data support.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it and the points that it was built from, in the order of recording and in the CRS of the surface.&lt;/p&gt;&lt;p&gt;&lt;b&gt;For the data collector:&lt;/b&gt; the places can also be written as CSV (name, easting, northing, height, line, in the units of the CRS) and as GPX way points in WGS 84.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Interval:&lt;/b&gt; three times the RMSE of the heights (ASPRS Positional Accuracy Standards, 2014, annex B). The RMSE is reasoned from the noise of a height (what “Check the survey” found, or else what the receiver states) and how the ground bends between passes; check points tell more.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; without a limit an edge is long from about twice the distance of the passes: our own choice, no standard. A mesh does not hold which edges are lines, so a long straight breakline counts as a long edge. Ground under a building stays empty unless the surface was built with a void there.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>&lt;p&gt;Writes one or several surfaces in the open standard LandXML 1.2: points and faces, and as source data the breaklines and the boundary. Points of a layer, and lines with stations and the ground's profile, can go into the same file.&lt;/p&gt;&lt;p&gt;&lt;b&gt;The file&lt;/b&gt; says its units and CRS; numbers are northing before easting, as the standard has it, plan with 4 decimals and heights with 6, all in the unit of the CRS's plan. Read again it is the same surface to the last decimal.&lt;/p&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it. Breaklines, boundary and voids are those the surface was held to, unless layers are given.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; some programs ignore the faces and triangulate the source data anew: their surface differs where lines or the boundary are missing, so leave the rim in. Some ignore the CRS: tell it beside the file. In feet make sure which foot the receiver takes: international and US survey feet are 2 parts in a million apart, a metre or more at state-plane coordinates.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; before construction or machine guidance compare heights at points measured independently; what may be used for it is for the responsible licensed professional and local rules.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>&lt;p&gt;Writes one surface with its lines, contours and points into the files that others load, all from the same numbers, with a list of their SHA-256.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;&lt;b&gt;LandXML&lt;/b&gt;: faces, breaklines, boundary, points; see “Surface to LandXML”.&lt;/li&gt;&lt;li&gt;&lt;b&gt;DXF&lt;/b&gt; (release 12): 3D faces, contours and lines as 3D polylines, points with names and heights; layers by kind or by level. It has no CRS; unit and CRS stand in a comment.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoPackage&lt;/b&gt;: points (rejected ones too, marked), contours, lines, triangles and further layers, each with its style.&lt;/li&gt;&lt;li&gt;&lt;b&gt;GeoTIFF&lt;/b&gt;: heights on a grid, compressed and tiled, with CRS, unit and no data outside.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mesh&lt;/b&gt;: 2DM with its CRS in a .prj file.&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;&lt;b&gt;It assumes&lt;/b&gt; a 2DM mesh as “Build the surface” writes it, and points in its CRS. A surface without a boundary is given its rim as one in LandXML.&lt;/p&gt;&lt;p&gt;&lt;b&gt;What can go wrong:&lt;/b&gt; a drawing read in another unit: millimetres are usual elsewhere. A grid cannot hold a kerb: volumes and levels come from faces. Files of the same names in the folder are replaced, each when it is whole; a run that is cancelled leaves the others as they were.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Caution:&lt;/b&gt; say with the files when they were made, from which survey, and how accurate they are. They are no licence to build or dig: that is for the responsible professional and local rules.&lt;/p&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, or taken from the mesh layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>A CSV file of your own that says how lines are drawn: words, kind, name, colour, width_mm, dashes, mark, every_mm. Empty: the table in the plugin’s folder core/handover (plan_symbols.csv), a start for yours.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/jobtask.py" />
      <source>A fault in the program, not in your file: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>A feature for each class of depth that occurs, with its exact area and volume.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>A feature for each class that occurs, from the flattest to the steepest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>A feature for each connected area, the largest first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A feature for each finding, at all of its points, the size in metres.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>A feature for each, the largest first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A file of edits as this algorithm writes it; they come before those of the layers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flaggedoption.py" />
      <source>A flagged stretch of 5 m or more is left out of the surface where at least two passes meet it, along at least half of it, all of them say that it is off by its size, and the size is more than its doubt. Whoever knows the site puts all of them back here, on the command line with --keep-flagged, or single points by giving them the status used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A grid file of geoid separations; it must cover the whole site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>A height; empty where a design is given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>A hollow counts as a pond only where noise alone makes one like it anywhere in the survey with a smaller probability than this. 100: every hollow counts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>A hollow outline found from the points: triangles are taken off the rim while the circle through their corners is wider. About 1.5 times the distance of the passes follows the bays of a site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>A layer is given twice; give each layer once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>A layer of exactly three points with Z, in the CRS of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>A layer with one line, or with one selected. Stations count from its first vertex.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>A line for each start with a way down, in the direction of the water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A line for each surface, for a map view of its own or a print layout.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A list of sets, each with a name; “Tolerances as a file to edit” writes one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>A map and a table of the ponds, with the method, its source and its limits.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>A mesh (2DM) for each surface, named after it, with its CRS beside it as .prj.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>A mesh layer or a mesh file, as “Build the surface” writes it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>A pad whose field is empty takes the value given for all.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>A page for each sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>A place in the basin (empty: the lowest of the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>A point at each station with heights, grade and their standard deviations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>A point for each arrow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>A point for each curve, with the height where its grades would meet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>A point for each edit: whether it applied, and if not, why.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A point for each finding, on the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>A point is stored every (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>A projected CRS, or a compound one with heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A projected CRS, or a compound one with heights; usually the one that the rover was set to. The file does not say it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>A projected CRS, which the fitted points get. Empty: that of the control layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A receiver log can give both; other files need a geoid separation to change them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>A receiver log has heights of the antenna: give the pole height below, or choose the antenna here to keep them. A table with a column of pole heights may have either.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>A road, path or bank from a typical section at given heights, with its haul.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at each bend.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A section at the beginning and at the end.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>A spike is off its neighbours by more than this, and far more than they scatter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>A surface has one height at a place, so faces lean by this much.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of lines of the file to use, flag or reject: columns line, status and reason; of several files also source, the name of the file as in the field source of the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>A table of the ground that drains to each inlet, the rim and hollows, in m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>A table of the lines that are no points: line number, reason and text.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>A table of the stretches off the surface: feature, start and end along the line and length (m), and their places in the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, boundary, void, not_ground or check.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>A table, a row for each section; only with a second surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>A table: where a run met others (places_met, the degrees of freedom), the standard deviation of a height with its 95 % interval, and what the receiver claims, in millimetres.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>About 4 walking; what you drive with a vehicle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>About so far from one label to the next; a line shorter than that has one at most.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>About the distance of the survey's points along the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>About the spacing of the survey's points shows all that they know.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Above 0 and at most 1: the share of the rain that runs off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Above the bases, all together (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Accept “{name}”</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy at 95 % by NSSDA (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Accuracy statement</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Add the meshes to the map when done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Add the surface to the map when done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Add the surfaces to the map when done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to ground coordinates, taken off on the way back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Added to the mean height of the points to get the ellipsoidal height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Adds how far the ground departs from the straight lines between points, judged from the surface's own roughness. Switch it off where the existing surface is a design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Adds the surface's height, slope, aspect and triangle to points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Add…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Alignments read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Alignments written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>All edits of this run in their order, for the next one, those that did not apply too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>All points of the survey in the CRS of the control.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>All points of the survey, with their attributes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>All points with their attributes; without a CRS where they are on the ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>All points, with status, reason, check_status and check_reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>All water that comes to a triangle no farther than this from the inlet. 0: the triangles it is in or touches. Between points far apart a triangle is large.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Along its first feature the volume is also told by average end areas and by the prismoidal formula, in the HTML report.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Also as PDF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Also at the corners of lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the ends of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Also at the vertices of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>An earlier output. Where it is empty and the output is written over one, that one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>An indication of the peak flow of catchments, Q = C i A.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: to which edge the lane leads water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>An indication: where water stands along the two offsets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Answered: {answer}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Antenna offset</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Antenna offset (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Any lines, such as a centreline or the edges of parcels.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Any points; a multipoint counts as its points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Area (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area and volume of the water in a basin by its level, from the pit to the spill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Area at the spill level (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Area compared (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Area of cut (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Area of fill (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area of the surface (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Area that drains nowhere until ponds are full (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Area under water when all are full (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than a limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Areas flatter than {limit:g} %: {count}, together {area:.1f} m², {share:.1f} % of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Areas of cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows down the slope at a stated spacing, larger where it is steeper.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows of flow</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Arrows: {count}, {spacing:g} m apart.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>As in 1.5 or 1,5.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>As in the check of a road against limits.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>As left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>As left. One side may be negative for a walk that lies all on the other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>As polygons with slope and area; they make it large.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>As the data collector takes it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>As you look along the line from its first vertex.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As “Check the survey” does.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>As “Find lines of the ground” does; those with strong evidence are breaklines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>At the middle of each pad's bounding box. Where cut and fill are to balance: a first guess.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>At their design heights, coloured by cut and fill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>At this scale labels have the size and spacing they need.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Balanced height (in the unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Base</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Base (in the unit above)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Bearing of the grid (degrees)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Before numbers and stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Before or after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Below the bases, all together (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Besides whole stations and the ends.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Between cells</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Between several codes on one point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Between them the strip runs straight; corners of the line have stations of their own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Bottom, gutter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Boundary</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Boundary (empty: that of the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Breakline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Breaklines (empty: those of the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Breaklines and boundaries read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Breaklines of the design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines without heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Breaklines, boundary and voids from code and line number of the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Breaklines, boundary and voids, such as the layer that “Build the surface” writes, and lines found without codes. Each is drawn as what its label or kind says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Build the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>By class of depth.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>By hand; the checks said:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>CRS (empty: as the file says)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>CRS of the control points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>CRS of the coordinates in the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>CRS of the coordinates in the file, if another</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>CRS of the grid (empty: that of the points)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>CRS of the points wanted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>CRS of the surface (empty: as stored with it)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <location filename="../plugin/processing/coverage.py" />
      <source>CSV files (*.csv)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Calm noise: move heights by up to (m; 0: not at all; empty: by their noise)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Cancel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/gui/running.py" />
      <source>Cancelled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Cancelled: there is no result.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/jobtask.py" />
      <source>Cancelled: what was done before is kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Catchment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Catchments</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Catchments before and after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Catchments: {CATCHMENTS}, together {AREA:.1f} m²; {NOWHERE:.1f} m² of it drain nowhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cell size (in the unit of the surface's CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cell size of the depth raster (in the unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Cells of the GeoTIFF (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Cells on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Centreline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Centreline (one line)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Chance of noise (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Change</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Change of grade (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Change of the water in full ponds (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Changed surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Channels: least ground that drains to them (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Check a line against limits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Check points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (CSV file)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Check points (layer)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Check points on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Check the coverage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Check the points automatically</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Check the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Check them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Checked points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose a folder for the products.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Choose a survey file first; then it can be shown here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Choose a survey file or a layer of points, one of both, or the folder of a job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose the CRS from a list</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Choose the survey file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles without a measured point, the widest first; they do not overlap.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: at most so many</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Circles: wider than this radius (m; empty: half of that)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Class of slope (from 0)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Classes that occur</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Clockwise from grid north.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Code</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Code field (empty: “code” where there is one)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Code field (of points)</source>
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
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Columns</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Columns (empty: as recognised)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Columns of the table</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns side (left, right, both), part (its name, or ditch, cut slope, fill slope), width (m), crossfall (%), depth (m) and run (1 : n), rows from the centreline outward.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Columns station and height, in metres, and if wanted curve, the length of the vertical curve about the place. Straight between them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Columns: {roles}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Combined factor (empty: computed at the origin)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Comment lines start with</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Compare later visits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Compares ponds, catchments and paths on the ground and on a design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Contour interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Contour interval to expect (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Contour interval {interval:g} {unit}, index every {every}. For drawing, heights were moved by up to {moved:.3f} m and lines by up to {shifted:.2f} m in plan.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contour labels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours every {interval} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Contours for the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours of a surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Contours, labels, spot heights and sheets, with their styles.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Contours: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Control point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Control points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>Control points (CSV)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points left out of the fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Control points that do not fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Coordinate operations accepted by name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Coordinates: {crs}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Copies an invented survey into a folder that you choose, and fills in the rest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Corners that lines or polygons share are set out once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Correct the base of a survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Cover field (empty: the field cover, if there is one)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Crest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Cross pass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Cross passes: {length:.0f} m (lines: {count})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cross-sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Crossfall is taken from here to the right end; in the unit chosen. Keep both inside kerbs and edges.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the lane (%; below 0 falls outward)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Crossfall of the shoulder (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Crossfall to the edges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Crossfalls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Crown, right of the line ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Curves at most</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Cut (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance at {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut and fill balance with the design shifted by {shift:+.3f} ± {half:.3f} m (95 %).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Cut and fill from it to the survey. Give a design or an earlier surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Cut and fill from the survey to it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Cut and fill of level pads, with slopes to the ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Cut by region and material</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Cut of the triangles as they are (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Cut or fill not known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Cut there (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Cut {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and net with their doubt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Cut, fill and the running balance from station to station.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, fill and what is left over about the balanced height; empty without a balance.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Cut, half its 95 % interval (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Cut, second surface below ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Cuts surfaces square to a line, with areas of cut and fill, also as sheets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Daylight lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Decimal sign</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Decimals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Decimals of spot heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Decisions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Decisions kept from the layer that is replaced: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Decisions on points (CSV)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Deeper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Deepest cut (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Delimited text or a receiver log, as the rover or its software wrote it. It is only read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Delimited text or a receiver log. It is only read. With no file and no layer, the job in the folder below goes on with its own choices.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Departure not worth a curve (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Depression contour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth (GeoTIFF)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Depth (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Depth below the sill (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth classes (m; empty: round ones)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/depthstyles.py" />
      <source>Depth of cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Depth of cut and fill (polygons)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Depth of the ditch below the edge (m; 0: none)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Design height (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Design heights are the Z of the layer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Design less existing height at the cell middles, in the unit of the CRS; fill above 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Design surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, for the next step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Design, height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Design, or the later survey (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Direction</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Direction (degrees from grid north)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Direction of the passes (degrees from grid north)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Distance (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Distance along the line (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Distance between heights (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Distance between stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Distance of labels along a line on the plan (mm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Distance of stations (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Distance of the sections (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Divides a surface by where its water goes: inlets, ponds, outlets, the rim.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Divides a surface into areas by classes of slope.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Does the whole job from the survey file and tells it in HTML and PDF.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Done.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Doubt of the ground between the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Doubt of the height offset (m, 1 sigma)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drained to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains now to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until full</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains nowhere until ponds are full (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drains to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Draw the contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below all else as outlines with what the layer’s display name says of each.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn below the contours in their own styles, the first on top. QGIS places the labels they have; where labels crowd, not alike in every run.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn by</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Drawn from point to point (snap to them); they become edges. A column “edit” may say swap_edge: the line then lies on the edge to be replaced by the other diagonal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Drawn on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Draws a plan at a scale as print layout and PDF, on one sheet or several.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Draws calm, smooth contours with labels and spot heights for a plan.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Draws contours exactly on the triangles of a surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Drop (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Drops vertices as long as the surface stays within a tolerance in height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Each check point with the height of the surface there; off_m is surface less check.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>Each is read, checked and made a surface by itself and compared with the ground before it. It is not in the surface of the job until you say so below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Each line becomes two breaklines a small offset apart, a vertical face between them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Each polygon feature is one region, with all its parts and holes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Each polygon is graded to a level or a sloping plane; holes stay as they are, but slopes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Each stretch of a line, around its station, is an inlet of its own. Empty: each line is one inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Each triangle as a polygon with its slope (%) and plan area (m²).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Earlier surface (2DM mesh)</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Easting (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Easting of the origin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Edges and breaks of platform and slopes with their heights, by kind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Edges with slopes of their own (lines)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits (*.json);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits applied: {applied}, not applied: {missed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits kept from before (JSON)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Edits that did not apply</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits to keep (JSON)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: a point is meant from up to (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: lines to force an edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: points to add or move</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Edits: polygons to drop triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ellipsoidal height of the site (m; empty: from the points)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Empty where a point never has several codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: as many as tell the noise of the survey to 15 %, at most five.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>Empty: as the file .noise.json beside its mesh says; where there is none 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Empty: by the noise of a height, as the survey tells it in the file .noise.json beside the mesh; where there is none by 0.015 m. In metres whatever the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Empty: ground that only one surface covers is left out. A height, in the unit of the CRS, counts it against that level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <location filename="../plugin/processing/flowpaths.py" />
      <location filename="../plugin/processing/waterchange.py" />
      <source>Empty: one that suits the size of the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Empty: so that the fewest passes are needed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the author in the project’s properties.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Empty: the finest class of whole centimetres that is met.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Empty: the title in the project’s properties.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Ends in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Ends of lines farther apart are taken for different lines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Even depth, wherever earth is moved; cut and fill are then told from the bared ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Every height taken, and how far it is from the fit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Every point with section, offset and height; as CSV where the file ends in .csv.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Every rule along the whole line; as CSV where the file ends in .csv.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Every so many contours one is drawn heavier and labelled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Every start with the same columns, also those in a pit or off the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Exact cut and fill from one surface to another, with how sure they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Exact cut and fill in each polygon of a layer, by depth and by material.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Exact cut and fill to make a surface level, or an even slope.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Exact for all work; smooth for hillshades and pictures.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Exact volume above and below the base that a toe or rim line spans.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Exaggeration of heights in the plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Existing height (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Existing surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Existing surface, or the earlier survey (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces name their neighbours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Faces written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Fail</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Fall of the pads (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Fall over run in percent.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the left edge (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Fall to the right edge (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Falls towards (degrees from grid north)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Feature of the start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Field of design heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field of the ground cover with its runoff coefficient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the line number (empty: it stands in the code)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Field of the words (empty: they stand in the code)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the direction of the fall (degrees)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the fall (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Field with the height of the face (m; empty: as above)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the intensity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the pads' names</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Field with the runoff coefficient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of cut (1 : n)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Field with the slope of fill (1 : n)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Field with their names (empty: numbers)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Figures, verdicts, sources and cautions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Files of any size; those in a zip are to be unpacked first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>Files of later visits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Files of the site as it was another day. Each is compared with the ground before it; in “Compare later visits” you say where its ground counts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Files written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Fill (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Fill from one cubic metre of cut (m³ compacted)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Fill less cut (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill less cut ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Fill less cut of the triangles as they are (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill less cut {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² compared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill less cut, half its 95 % interval (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Fill of the triangles as they are (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Fill there (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill to be left over for use elsewhere, or to be had from there. Topsoil that is stripped first is not in the balance.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Fill {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Fill, cut below 0 (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Fill, half its 95 % interval (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Fill, second surface above ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Find lines of the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Find the height that balances</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Findings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <source>Findings of the checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/joblayers.py" />
      <source>Findings on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Finds the grades and parabolas that an existing profile follows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Finds what auto-recorded points get wrong: lifted poles, lost fixes, stops, repeats.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Finds where water stands, how deep and how much, and where it spills to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Finest class met (cm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, for the next step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Finished ground, height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>First line names the columns</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First line of the table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>First lines of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>First number</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>First say what is open: press one of the answers above, or choose the roles.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>First surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>First surface, for the next step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fit a survey to control points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Fit grades and vertical curves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Fitted points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Flagged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat area (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flat areas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Flatter than (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Folder</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Folder for the demo survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Folder for the surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Folder of the job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Folder of the products</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Follows water from points, lines or areas down a surface to where it ends.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>For a survey that is fitted to control points in a later step.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>For drawing only: heights were moved by up to {moved:.3f} m, then lines by up to {shifted:.3f} m in plan. Contours: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>For files that say one unit for lengths and another for elevations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>For points and corners that were drawn in 3D; goes before the design surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>For points whose geometry has no heights. In the unit of the heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>For surveys that keep it in a column of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>For the accuracy in plan, and for the survey's own check shots.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>For the areas of cut and fill; in the CRS of the first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the contour interval. Empty: as the survey tells in the file .noise.json beside the mesh; where there is none what the receiver claims, which may be less than there is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>For the data collector.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>For the number of loads of waste and borrow; empty: none are told.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>For the raster and the check by a grid only; volumes do not depend on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>For the time of concentration and the frequency that your code asks for.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Found from header and digits; only where these leave it open.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From (m along the line)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>From here water runs down to the pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>From offset, right positive ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>From places that have a path on both surfaces and another one after the change.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>From section to section along the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>From station</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>From the drawn line to the second one, such as 0.12 for a kerb drawn at its foot.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>From the ground to the mount of the antenna. Heights of the antenna are lowered by it to the ground. Empty: as a column or the lines of a log say it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>From the mount to the antenna's phase centre, to which heights of a log belong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>From the standard you work to. None comes with Hummock.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>From window to window (m; empty: no overlap)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Further layers for the GeoPackage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Further note</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Further stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Further surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>GPX files (*.gpx)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Gap in a breakline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gaps of the lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>GeoPackage (*.gpkg)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Geoid separation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Geoid separation (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a constant (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Geoid separation, a grid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Give a design or a level to compare with: one of them, not both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>Give a file of control points, or a layer in its place (not both).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Give a survey file, or a layer of points in its place (not both).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Give check points as a layer or as a file, not as both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Give pads or a centreline, one of both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Give the plane by a level or by three points: one of them, not both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Give the two positions of the base, or known points in their place (not both).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Gives lines the surface's heights, with a vertex at every triangle edge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Goes into the source data of the first surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Grade a pad</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Grade a strip along a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grade along a line and crossfall across it, with standard deviations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade along the line (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade at the end (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Grade, of a curve the one it begins with (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Grades and crossfall</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Grades and crossfalls against a table of limits: pass, fail or too close to tell.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Grades and curves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/planlayout.py" />
      <source>Grid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Grid distance over ground distance, where one is prescribed for the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plancolumn.py" />
      <source>Grid north</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Grid north is {angle:.2f}° {side} of true north here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Ground cover</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Ground taken by the design (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Ground to grid and back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ground whose water goes elsewhere (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Gullies along the edges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Gullies and the like, where water leaves the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>HTML files (*.html)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Half the 95 % interval of the shift (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Hand over files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Hand-over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Height (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Height datum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Height error to expect: {error:.3f} m (RMSE), good for a contour interval of {interval:.2f} m or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>Height field (empty: Z)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (empty: the points' Z)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Height field (in the unit of the CRS; empty: the points' Z)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of grades and curves ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of surface {number} ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Height of texts in DXF (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Height of the faces (m; below 0: the second line is lower)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Height of the pads (a number, or balance)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Height of the pit (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height of the surface ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Height offset that was taken off (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Height that balances cut and fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Height where they meet ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights (GeoTIFF)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Heights and grades along a line over one or several surfaces, also as a sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Heights and slopes at points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights between the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights in the file are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights in the file are those of</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Heights of the first surface along the lines with stations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights shifted from a line on (line:metres)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Heights wanted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Heights were not tested against independent check points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Heights, smooth (drawing only)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>Heights: {datum}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Highest fill (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Highest height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Highest height of the first surface (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>How far a summit stands above, or a pit below, the way to the next one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>How far an arc may stand off the chords that replace it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>How heights repeat, run by run</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>How high a pad or a strip must lie for its cut to make its fill, and how sure that is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>How much higher it lies where nothing changed; this is taken off. Empty: found from the ground that did not change.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>How much the ground bends: our own choice of values, no standard.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>How steeply the plane falls; 0 is level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>How sure it is that the survey and what it is compared with have the same height datum, or the offset given: other base, other geoid, other pole. It moves the volume by itself times the area, and is mostly the largest part. An offset that was found from unchanged ground brings its own doubt in place of this. Nothing beside a mesh tells it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/jobchoices.py" />
      <source>How the survey is fitted to control</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>How well the heights repeat is kept in {file} beside the mesh: {sigma:.0f} mm new at every point and {drift:.0f} mm of drift.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>How well the heights repeat is not known, and not kept beside the mesh: for that the points must have been checked (“Check the survey”), and passes must cross or meet.</source>
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
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>In DXF a layer for each level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>In file order, such as name,easting,northing,height,code with - for a column to skip and +word to keep one as it is; or by header or number, such as easting=X,northing=Y,height=3. “Preview” fills it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>In place of the layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>In the CRS that they shall keep.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>In the CRS wanted. Points without a height do not count in height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>In the grid, or on the ground; these may have no CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>In the order of recording, such as the output of “Check the survey”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>In the order of recording, such as the output of “Import survey points”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>In the order of the line, with grade, K and their standard deviations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the order wanted, of: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, sigma, code, station, offset.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>In the unit chosen, right positive: 0 for the line itself, else its parallel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen, seen in the way of rising stations.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>In the unit chosen: sections at whole multiples of it; 0 for none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>In the unit chosen: whole multiples of it, and both ends of the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the CRS; goes before Z and design surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>In the unit of the heights of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>In the unit of the interval.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>In the unit of the interval. Empty: as many as the survey’s own noise supports.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table. Rows lie at whole multiples of the coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>In the unit of the table: 1250 for 1+250.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>In walking order.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Independent check points in the CRS of the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Independent check points in the CRS of the surface, for the accuracy on the plan.</source>
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
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Inlets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets and outlets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets take water within (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Inlets without a name are numbered.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Inner side of the ditch, 1 : n</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Inspect a surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Intensity of the rain (mm/h or in/h)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Interval (in the unit below)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>It appears only when it is whole.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>It holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², filled to {spill:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>It is taken away, whatever the balance.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its degrees of freedom</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Its name; may be empty where the file holds one set.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>Its points are taken in, and earlier points that differ from it by more than noise are kept out. Without it, and without polygons below, its ground counts nowhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Its standard deviation (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Its standard deviation ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>JSON files (*.json);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Join lines by the field codes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>K ({unit} for each percent)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flaggedoption.py" />
      <source>Keep flagged stretches in the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Kerbs and walls (lines with heights)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Kerbs, walls, ditches and edges of slopes, from points that carry no codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plancolumn.py" />
      <source>Key map</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Kind: grade, crest or sag</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>Known height offset of the last visit (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Label</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Label index contours only</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>LandXML files (*.xml *.landxml);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>LandXML files (*.xml)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the left of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Lane to the right of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Larger gives fewer curves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest change of a height (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Largest crossfall, either way (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Largest difference from the surface (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Largest difference in height (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Largest empty circles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Largest peak flow (l/s or ft³/s)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Largest residual (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Largest shift of a line (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Later visits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Latitudes and longitudes are written as</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lay lines on a surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>Layer of control points in place of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Layer of points in place of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Layer, sheet or file of an archive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Layers of the plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/hummock.py" />
      <source>Leads through a survey, from its file to plan and report.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Least area (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Least depth of a pond (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Least fall to an edge (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Least height of a spike (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Least piece of moved ground (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Least prominence of spot heights (m; empty: the interval)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Leave it empty to compare with a level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Leave them there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Left empty, points are numbered, and offsets named by station and side.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>Left over (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plancolumn.py" />
      <source>Legend</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Length in plan (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the curve ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Length of the gaps (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Length of the line (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Length of the water along the line (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Level (height in the unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Level (height, in the unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Level (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Level in place of a surface that is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Level in the unit of the CRS, above_pit_m, area_m2 and volume_m3.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Level instead of a design (in the unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Level spot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Levels of the curve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>Levels polygons, or slopes them, with slopes of cut and fill to daylight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Limit (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Limits as a file to edit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <location filename="../plugin/processing/slopemap.py" />
      <source>Limits between the classes (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Limits of the road (CSV; empty: those that come with Hummock)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Line for sections (check by other methods)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Line of a road</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Line of column names</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Line of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines drawn along edges of the pads. Edges within 0.1 m of a line take its slopes, from the fields cut_run and fill_run (1 : n) of the layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Lines in the direction of the water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Lines in the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Lines of codes go first: what doubles them is dropped.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Lines of no cut and no fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <source>Lines of the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Lines of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines or polygon outlines that must be edges of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Lines proposed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Lines rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that become edges and take their heights from the surface around them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Lines that begin with #; switch off for a data collector that cannot skip them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines that cross, or end on each other, are joined there; this gives the height. Survey points that a line runs through keep theirs. What differs is told.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Lines that follow no edge of a pad, not used: {count} of {total}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Lines to walk</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Lines used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Lines used: {used} ({length:.1f} m), proposed: {proposed}, rejected: {rejected}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Lines whose heights differ by up to this where they meet are joined at their mean.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>Lines with heights by kind and status; change the status, or reshape them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Lines with heights from left to right, one for each surface and part.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Lines with level, index and depression.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Lines with level, index and depression; for drawing only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Lines with stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Lines with your decisions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Lines: {lines}, pieces on the surface: {pieces}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Link</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Links between them: {length:.0f} m (lines: {count})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Load of a truck (m³ loose)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Loads: {waste} of waste, {borrow} of borrow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Long edges: longer than (m; empty: from the spacing)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Long edges: more than … times the distance of the passes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Long triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Longest edge at the rim (m; empty: no limit)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Loose from one cubic metre in the ground (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Low points of the edges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Lower it to see more of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Lowest height ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Lowest height of the first surface (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Made if missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Made only when asked for.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Make the plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Maps and tables of paths, ponds and catchments, with method, sources and limits.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Maps before and after, tables of ponds and of moved ground, with limits.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Marks ground that falls too little to shed water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Marks what a surveyor would warn of: spikes, gaps, long and level triangles.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>Mass diagram (pieces of the centreline)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Material at the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Mean depth of cut (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Mean depth of fill (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Mean difference, the bias (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Mean gradient over (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Method: rational, Q = C i A ({source}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre down.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Metres out for each metre up. What stands depends on the soil: see the cautions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/choicesdialog.py" />
      <source>More</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>More breaklines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>More files of the same site</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>More files that are handed over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>More findings, all in the layer of findings: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>More layers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>More layers of points of the same site</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>More surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Name field (empty: “name” where there is one)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Name field (of points)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Name of an inlet (empty: the field name, if there is one)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Name of the files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Name of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Names in more than one file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Names parted by commas.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Names parted by commas. Their residuals are shown all the same.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Names that come again get a number behind them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Neighbours share drift within (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>New pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>No cell centre lies on the surface: the raster is empty. Choose smaller cells.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>No cut, no fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there are no contours. Choose a smaller interval.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>No place of a line moves farther. In metres whatever the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>No place should be farther than this from a measured point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>No surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>No vertex of the given surface is farther above or below the new one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Noise from point to point {white:.1f} mm; no place was visited twice to tell more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Noise of a height (m, 1 sigma)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>Noise of a height (m, 1 sigma; empty: as the survey tells)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Noise of a height, found in the survey (m, 1 sigma)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Noise: {count} of {vertices} vertices of the surface are points of {layer}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Northing (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Northing of the origin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Not a design for construction: whether slopes stand, and safety while they are dug, need licensed practice and the local codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Not a payment certificate: the contract says what is measured and by whom. Locate buried services before anyone digs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Not applied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Not compared: design only (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>Not compared: existing surface only (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Not for setting out without independent checks. Parcels are no boundary survey; buried services are not shown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Notes at the head of the table</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Number of areas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Number of arrows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <location filename="../plugin/processing/peakflow.py" />
      <source>Number of catchments</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of contours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Number of cross-sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Number of findings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of gaps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Number of labels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Number of paths</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Number of pieces on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of pits, those of noise too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Number of places to walk again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Number of points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Number of ponds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of sheets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Number of spot heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the cross-section</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the curve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Number of the rule</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Number of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Number of triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Number of vertical curves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Numbers and words, with commas between, such as -9999,*; none where every number is meant. Empty: words such as NULL, and numbers far from all others, such as -9999, are found and named; where it is not certain, it is asked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Of a file that holds several, the one with the points; * for all layers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of a fit with four parameters. A plane takes up a slope of the geoid over the site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobchoices.py" />
      <source>Of a survey to the control points above. Seven parameters also tilt the survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates and heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Of coordinates, heights and stations in the table, and of the lengths given here. Empty: that of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of easting, northing and height as they stand in the layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>Of it drift (m, 1 sigma; empty: as the survey tells)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>Of it drift (m; second surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of its easting, northing and height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: a table of the points that share a name. All of them are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Of several files: pairs of points at one place whose heights differ.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Of survey and control together. Empty: estimated from the residuals, which tells fewer errors.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Of the intensity and of the results. Nothing is rounded between them. Empty: the first, or the second where the CRS is in feet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Of the plane; where it slopes, its height at the place below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Of the profile as a layer; the sheet has scales of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of the sheets in PDF. Print them at 100 %, without fitting to the page.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Of the slopes, and of a strip's edges where its line turns. Round slopes are cones in facets of 10 degrees; mitred ones carry both slopes on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Of the value.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Of what is given and shown here. Empty: that of the CRS, in which coordinates of layers always are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Off the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Offset of the line whose grade is taken</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Offset of the second line in plan (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Offset, right above 0 (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Offset, right positive ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Offsets from lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Offsets: “{text}” is no list of numbers, such as -3.5, 0, 3.5.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>On a slope a pole held aside meets another height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>On a street that was crossed every 2.5 m, without a code:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>On the demo survey:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>One band of heights in the unit of the CRS; the file's name ends in .tif.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>One line, such as a centreline, in the CRS of the surface. Stations grow in the way it was drawn. Of a layer with several lines select one and tick “Selected features only”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>One page with numbers, doubt, map, histogram, other methods and cautions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>One page: plan, sections, volumes with their doubt, balance, other methods, cautions.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>One row for each control point that was surveyed, at its known place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>Only for points whose geometry has no heights.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Only inside these polygons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Only the first part of a long file is shown and counted here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Only where heights are in another unit than easting and northing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Only where the file does not say it and heights are to be changed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Only where the fit is refused: what the refusal names, such as mirrored, names:A=B,B=A or survey:ft; several are joined by +. as-read takes a fit that does not fit as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Open</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Open: {question}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Opens its dialog; what you run there becomes a step of the job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Optional in the standard; makes the file larger.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Options…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Origin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Origin in the grid (empty: the middle of the points)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Other days or rovers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Other days or rovers. All points are kept with their file; names that occur twice and same places with different heights are reported.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Other surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Otherwise contours lie on CONTOUR and CONTOUR_INDEX.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Otherwise the strip ends with a steep face where it is above or below the ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Otherwise they are laid on the surface. Z is in the unit of the CRS of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Outer corners</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Outlets on the rim: least catchment (m²)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Outside the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>PDOP</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used only when its name, as the refusal shows it, is written here; several are parted by |.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pad {name}: nothing says how high it is; give a level, or fill the field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Pads (polygons)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Pads to be graded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Page (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pages.py" />
      <source>Page {page} of {pages}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Pairs of cross-sections that cross</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Paper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Parcels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Parcels for the plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Parcels or phases whose volumes are told apart; the field name names them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Part of pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Part of the lane: lane, left, right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Part of the section on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Pass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Pass walked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes across</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are at most half of it apart.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes are {spacing:.2f} m apart.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Passes never farther apart than (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Passes: {length:.0f} m (lines: {count})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Path before</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Paths before and after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths of water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Paths, ponds and catchments.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Paths: {PATHS}. Starts whose water leaves over the rim: {TO_RIM}, comes to an inlet: {TO_INLETS}, stays in a pit or pond: {STAY}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Pattern of a code (regular expression; empty: code, line number, words)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flow (rational method)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Peak flows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per depth class.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Per material.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Perimeter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>Perimeter: {length:.0f} m (lines: {count})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Pit and spill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and ponds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits and spill points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Pits: {PIT_COUNT}; ponds that noise does not explain: {PONDS}, {AREA:.1f} m² and {VOLUME:.2f} m³ when all are full.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Place that has the level (empty: middle of the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <source>Places to walk again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as CSV</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Places to walk again as GPX</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <location filename="../plugin/processing/planlayout.py" />
      <source>Plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Plan (PDF)</source>
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
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Platform and slopes to daylight; the CRS is written beside it as .prj.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform break</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Platform edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Point beside a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Points (gullies, the end of a pipe, an outlet on the rim) or lines (a trench drain). Each takes all water that reaches a triangle near it. In another CRS they are brought into that of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: nearer in plan than (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points beside a line: off in height by more than (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points changed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points decided by hand against the checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points flagged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Points for which a found line stands</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points of lines were placed on purpose: they are held against their line only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Points of the cross-sections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points off the surface or without a place, left empty: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Points on the ground carry none, so it has to be given for the way to the grid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points on the surface: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Points or lines that take all water of the triangle they are in, so that none stands there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points outside the area of use of the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Points read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Points rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Points shifted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Points so near to a breakline should have its height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Points that may shape the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points to ask at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points to set out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Points under water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
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
      <location filename="../plugin/processing/checksource.py" />
      <source>Points with Z or with a height field, in the CRS of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Points with Z or with a height field. Its CRS is that of its coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Points with a name, in walking order; radius_m is how far anything measured was, line the line to be walked again, or crossed once more, there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>Points with heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Points with heights are added. A column “edit” may say move_point (a new height, or a “difference”), swap_edge, remove_triangle or add_triangle instead; “height” goes before Z, in the CRS's unit.</source>
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
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Points with text, rotation (degrees clockwise) and size, styled to show the text.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points without design height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Points written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Points, lines or polygons in the CRS of the existing surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Points: {points}, control points: {control}. Fill up to {fill:.3f} m, cut up to {cut:.3f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Pole height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Pole height (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons in a projected CRS.</source>
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
      <location filename="../plugin/processing/peakflow.py" />
      <source>Polygons, each with a runoff coefficient. Ground without one takes that of its catchment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Polygons, in a projected CRS; holes are left out. Select features to plan some only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Polygons, or lines that are closed; one feature a stockpile or pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Pond before</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Ponds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds new: {NEW}, gone: {GONE}, deeper or shallower: {CHANGED}; {VOLUME:+.2f} m³ in full ponds; {MOVED_AREA:.1f} m² whose water goes elsewhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are deeper or shallower</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Ponds that are new</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Ponds: chance of noise at most (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/correctbase.py" />
      <source>Position of the base as it is</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/correctbase.py" />
      <source>Position of the base as it was used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Preview of the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Preview…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Profile (CSV; empty: the Z of the line)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile along a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Profile in its plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Profile, sections and grades along it, checked against limits.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Profiles take the largest usual scale that fits, cross-sections that of the lengths.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Project</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Proposed (not in the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Proposes where to walk on an area, how far and how long, before going out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Put layers and layout into the project</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>QGIS knows no CRS of this code.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Quality</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Quantity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>RMSE (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Radius of the widest empty circle (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Raise it where edits were drawn without snapping to the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Raises or lowers the whole design until cut, times the fill that a cubic metre of it makes, equals fill and the surplus.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Read LandXML</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Read coordinates outside the area of use as</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Read survey and control as</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/findlines.py" />
      <source>Read the field codes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Read the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Read them so: {cause}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Reads a survey file into a point layer and accounts for every line of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Reads surfaces, points, lines and alignments of a LandXML file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Regions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Regions of the volumes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Rejected (not in the surface)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <source>Rejected lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>Remove</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/surveyreport.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Report (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report (PDF)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Report of the change (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Report of the ponds (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report of the survey {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Report of the water (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Report, surface, contours and tables; files of these names there are replaced.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Residuals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Residuals at control</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Ridge, crown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Ridges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Rim as boundary where there is no other</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rising depths such as 0.1; 0.25; 0.5; 1, used for cut and for fill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Rising numbers with semicolons or blanks between them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Rising numbers with semicolons or blanks between them. They are no standard.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Roads and lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>Role of column {number}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Root mean square difference (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Rows of cut, fill and net (m³) with the ends of the 95 % interval and the standard deviations apart: random, drift, systematic, surface model and small depths. triangles_m3 is what the triangles say.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Rule</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Rule does not apply</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Rules bring the window over which their slope is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Run everything</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>Run what is out of date</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Runoff coefficient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Runs that met others at {least} places or more: {met} of {count}, standard deviations {low:.1f} to {high:.1f} mm; claims outside the 95 % interval of their run: {off}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>S makes S001, S002, …; give each job another one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Saddle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Sag</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/tiltoption.py" />
      <source>Said by whoever set up the rover. On the command line --tilt-compensated. Where the heights do not tell, tilted points are flagged if they are many, and you are asked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Same places with different heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line in the grid (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Sample line on the ground (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Say the CRS of the survey, such as EPSG:25832.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Say which field of the ground cover holds its runoff coefficient.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/plansheet.py" />
      <source>Scale</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of heights (1 : N; empty: chosen)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Scale of lengths (1 : N)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Scale of the plan, 1 : …</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Scales points between ground distances and the grid of the CRS about an origin.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Second line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Second surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Second surface (2DM mesh), such as a design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Sections reach to each side (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Separator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Set of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Set out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Set-out points with design height, cut and fill, and a table for data collectors.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Seven parameters also tilt the survey; level instruments need four.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Shallower</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Shallower hollows do not count, however sure they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Share of cut that cannot be used as fill (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Share of the site in long triangles (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Share of the surface (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plancolumn.py" />
      <source>Sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>Sheets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <location filename="../plugin/processing/roadprofile.py" />
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Sheets (PDF)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Sheets: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground eastings (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Shift of ground northings (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Shift that balances (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Shift to the east (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Shift to the north (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Shift upwards (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Shifts a survey to the base's position worked out later, or to a known point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Shorter than the window, windows overlap and neighbours share points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>Shows the file, the role of each column, rejected lines, and where points would land</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Shows where nothing was recorded, and lists the places to walk again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Shrinkage: 0.9 where ten cubic metres in the ground make nine of fill. It depends on the material; take it from tests or the contract.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Size of the labels on the plan (mm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Slivers at the rim are taken off while it is wider; 165 is a good value.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Slope (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Slope break</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope classes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>Slope map</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Slopes at both ends too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of cut, 1 : n</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>Slopes of fill, 1 : n</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>Smaller areas are left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller gives more channels, and ridges between them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Smaller ones are counted together with the rest of the rim.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Smaller pieces, as along edges that are drawn twice, are left out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Smallest contour interval supported (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Smallest form to be shown (m wide)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Smooth heights are for drawing only: they are up to {largest:.3f} m off the surface, most at E {easting:.3f} N {northing:.3f}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Smooth: move lines by up to (m in plan; 0: not at all)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>So many even steps from the pit to the spill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>So that a program that triangulates anew ends where the surface ends.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Source of the limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Spacing along lines and in areas (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Spacing along the passes (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>Spacing of the arrows (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Spacing of the grid, or interval along lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Spacing of the passes (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>Spacing of the starts of paths (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Speed (km/h)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Speeds and least K of crests (CSV)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Spike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Spikes: more than … times the scatter of the neighbours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Spill level (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spill point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Spills to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <location filename="../plugin/processing/planlayers.py" />
      <source>Spot heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Stage, area and volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of K ({unit}/%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Standard deviation of a height (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Standard deviation of a height: {total:.1f} mm ({low:.1f} to {high:.1f} mm at 95 %, {freedom:.0f} degrees of freedom, {places} places visited twice).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Standard deviation of a plan coordinate (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Standard deviation of it (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>Standard deviation of one surveyed height, drift included. Empty: as the survey tells in the file .noise.json beside the mesh; where there is none 0.015 m, usual for RTK in the open (common practice, no source). The log says which was taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Standard deviation of set-out in plan (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Standard deviation of the depth (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Standard deviation of the grade (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Standard deviation of the residuals, robust (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts and their ends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts off the surface, without a path: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water comes to an inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water leaves over the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts whose water stays in a pit or pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Starts: points, lines or areas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Statement (HTML)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Station</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutlayer.py" />
      <source>Station (unit of the table)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station equations (back = ahead)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the highest or lowest place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Station of the line's beginning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Station of the lines' beginning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Station of the lines' beginning (unit of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the lowest place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the sill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station of the value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Station where the grades meet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Stations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Steep end</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Steepest grade, either way (%)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Step (kerb, wall)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpile or pit volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Stockpiles and pits on {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Stopping, turning, looking for the next line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Storage of a basin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Straight grade</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Straight grades and parabolas fitted to that profile, as “Fit grades and vertical curves” does, as the alignment's profile. It describes what is there; it is no design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Stretches of line inlets (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>Stretches off the surface, left out: {count}, together {length:.2f} m of line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that fail</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches that pass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches too close to tell</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Stretches with verdicts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Such as -3.5, 0, 3.5 in the unit of the table: left is below 0, right above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Such as 1+234.50; 1+300, parted by semicolons.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Such as 1+250.00 or 1250: a plus stands after kilometres, in feet after hundreds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>Such as 500012.345,5700123.456,146.25 or 51.4512345N,9.0012345E,146.25.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a centreline; stations grow in the way it was drawn.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Such as a design. Differences are theirs less the first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Such as a design; named by their files, in the CRS of the first surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>Such as a plan; the report lists them with their SHA-256.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such as utf-8 or latin-1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Such as “Import survey points” makes them without a CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Such lines are counted, not read. With auto the sign is found from the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Summit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Summits, pits and saddles with height and prominence, on the surface as measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/jobmap.py" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>Surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface above the check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface above the fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Surface as a raster (DEM)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Surface below the check point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Surface below the fit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface less fit (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surface to LandXML</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Surface {number} less the first ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Surface, for the next step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Surface, height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Surfaces written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Surfaces: {surfaces}, points: {points}, breaklines and boundaries: {lines}, alignments: {alignments}. Unit of the file: {unit}; CRS: {crs}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Surplus of the balance (m³ of fill; below 0: brought in)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <location filename="../plugin/hummock.py" />
      <source>Survey desk</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importsources.py" />
      <source>Survey file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>Survey files</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log *.gpx *.kml *.kmz *.geojson *.json *.gpkg *.shp *.xlsx *.ods *.zip *.gz);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/jobtask.py" />
      <source>Survey job {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Survey or control points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <location filename="../plugin/processing/accuracystatement.py" />
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/checksurvey.py" />
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/coverage.py" />
      <location filename="../plugin/processing/findlines.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <location filename="../plugin/processing/inspectsurface.py" />
      <location filename="../plugin/processing/joblayers.py" />
      <source>Survey points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Survey points (for times and own deviations)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Survey points in local coordinates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Surveyed on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Swell: how much room dug earth takes on a truck, such as 1.25.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/gradingresults.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Switch it off for a step inside a model.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>Switch it off to label every contour.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Switch it off when the lines were drawn with heights of 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Table for the data collector</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Table of limits (CSV; empty: the one that comes with Hummock)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Table of line symbols</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>Tables (*.csv *.txt);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>Tell where the water runs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Test accuracy and look for gaps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Tests a surface against check points, by NSSDA and ASPRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Text encoding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Text encoding (empty: found)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text files (*.csv *.txt)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>Text in UTF-8; its notes stand in a second file, NAME_notes.txt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>That of the mesh where it is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The catchments with their peak flow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The changed surface is in {other}, the other in {crs}; bring both into one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The coordinates are local or assumed: no CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The day of the survey, as it shall be written. Empty: by the times of the survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The design, or a later survey, in the same CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The difference from the height of the line there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The difference in height between two neighbouring contours. Empty: 0.25 m, or half a foot where heights are in feet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The distance from pass to pass is found from the surface itself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The distance of the passes is measured from the triangles themselves; with 1.5, bays wider than three passes stay open. For surveys recorded while walking to and fro.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>The existing surface with the design in it: what the ground will be.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that holds what the surveyor typed beside the point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointsource.py" />
      <source>The field that names the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>The first line names the columns name, easting, northing and, where known, height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>The ground cover overlaps within a catchment ({over:.2f} map units² twice); mend it first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The ground inside each line with the volumes above and below its base.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The height from which the levels are counted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The interval, error or spacing, in the unit below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The job in this folder goes on with its own choices: leave out {names}, or choose the survey file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>The last visit counts wherever it was walked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>The last visit counts within these polygons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The layer of that name from “Build the surface”, with the columns kind and label.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>The layer {layer} has edits that are not saved: save or drop them first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The layout is then under Project › Layouts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The length over which a grade is taken: shorter shows more, and more noise.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The length over which a slope is taken: shorter shows more, and more noise.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>The levels of the contours are whole multiples in this unit. Empty: the unit of the heights of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>The limits “{text}” are no list of numbers; write them such as 1; 2; 5; 8.33; 20.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the crossfall; drawn beside the grades.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>The line in windows, with the grade along it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>The lines have heights of their own (Z)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The lines that the surface was asked to hold to, by kind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>The lines with heights in the unit of the surface's CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>The lowest place, and the place where water leaves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The lowest point of each pond and the one over which it spills.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>The memory of this machine does not suffice; take fewer points at a time.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj, the noise of its survey as .noise.json.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The mesh file; its CRS is written beside it as .prj.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>The name of a likely cause, such as swapped, as the question or warning shows it: the lines that it explains are then read so, the others stay. as-read leaves all of them where they are. Nothing is corrected without it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The outermost ponds of both surfaces; those gone as they were.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sinks.py" />
      <source>The output cannot be written ({reason}); choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>The output of “Find lines of the ground”, with what you decided in it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The output of “Find lines of the ground”: those with the status used are breaklines with their heights, and give way where they cross other lines. For points that stand in a used step and agree with it in height the line stands in the surface; a point whose status you changed stays.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The output of “Find lines of the ground”: where one more pass squarely across would settle a proposed line is a place to walk too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The paper's long side upright.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>The part of the noise that wanders within a minute or two, so that points recorded near each other share it: it hardly matters for a grade along a line, but tilts a crossfall and moves a volume. Empty: as the file .noise.json beside the mesh says; where there is none 0.007 m. 0 if every height has an error of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>The place that keeps its coordinates. From ground to grid it has to be given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>The plane needs a layer of exactly three points with Z; {count} were found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>The points as they are, with the answers as columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The points have no code field: no lines are joined by codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>The points that the surface was built from, in the CRS of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>The points that the surface was built from. Their times tell which drift together, their field sigma_v takes the place of the noise above. Without them the times are those that the file .noise.json beside the mesh holds; where it holds none each strip of 1 m along the line counts as a pass of its own, which is cautious.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The points that the surface was built from; rejected ones do not count.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>The polygons with cut, fill, net, their ± (95 %), areas and mean depths.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>The profile to scale with grades and K.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>The profile to scale with its table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>The project's name in the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>The receiver claims {claimed:.1f} mm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>The recording distance set in the receiver.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/tiltoption.py" />
      <source>The rover compensates tilt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobvisits.py" />
      <source>The same inside the polygons alone; elsewhere the ground before it stays.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>The same of the second surface (m; 0: a design; empty: as its survey tells)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>The same radius in distances of the passes (empty: no limit)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>The second surface is too high by (m; empty: found)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>The sections to scale.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The short side of the paper is below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>The size of a sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>The size of the typeface; figures are about 0.7 of it high.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>The statement with its statistics, a map and every check point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm above the check point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>The surface lies {off} mm below the check point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>The triangles as they are: cut {cut:.2f} m³, fill {fill:.2f} m³, fill less cut {net:.2f} m³.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>The two surfaces do not overlap; check that both belong to one site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>The unit in the file. Empty: as its header says or its numbers show, else that of the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The water of each full pond; parts lie over the pond they are parts of.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>The way of the overflow to the next pond, an inlet or the rim.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>The widest ones are kept.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>The width of the window around each place. 0: the triangle there alone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>The width of the window around each triangle. 0: the triangle alone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>There are no check points; give a layer or a file of them, or the survey.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>There is no walk long enough to tell how heights repeat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>There is no {what} for {count} catchments, the first is feature {feature}; give one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>They are merged with the files and the layer above. Heights are their Z, or their field height where the points have none; name and code are taken from fields called so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>They go in as they are, with the style they have in the project.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thin a surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface (2DM mesh)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Thinned surface, height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Three points of the plane (instead of a level)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time (minutes)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Time for each turn (s)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Title</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To (m along the line)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To a pond</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To an inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>To begin one of your own, have the table written by “Limits as a file to edit”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To both edges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>To go on where another table ended.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To neither edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>To offset ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>To station</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the left edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>To the right edge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>To the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>To walk: {distance:.0f} m, {time}. Points: {points}, turns: {turns}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Toe of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Toe of fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>Toe or rim lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Tolerance at crossings (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Tolerance in height (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Tolerance of arcs (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerance sets of your own (JSON)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Tolerances as a file to edit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadstyles.py" />
      <source>Too close to tell</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Top of a slope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/styles.py" />
      <source>Top of cut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Topographic plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Tops of layers below the ground, from above to below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/earthmaterials.py" />
      <source>Topsoil stripped first (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Topsoil {volume:.1f} m³ off {area:.1f} m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>Triangle with an edge of {longest} m, {area} m²: straight over ground nobody walked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Triangles in the GeoPackage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>Triangles whose centre lies inside are left out. A column “edit” may say remove_triangle (the one inside) or add_triangle (take back one that boundary, void or rim left out) instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with a longer edge count as ground that nobody walked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Triangles with an edge over the limit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Triangulates survey points with breaklines, boundary and voids into a mesh.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskwidgets.py" />
      <source>Try it on a demo survey…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turn (degrees, counter-clockwise)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Turns, scales and shifts a local survey onto control points by least squares.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Two geoid separations are given, a constant and a grid; give one of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Typical section (CSV; empty: from the values below)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>US survey feet (ftUS, 1200/3937 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Unchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Undecided</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit (empty: as the file says)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Unit of &amp;heights:</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of easting and northing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>Unit of heights, if another</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>Unit of interval and base</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Unit of stations, offsets and heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the control file (empty: that of the CRS)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>Unit of the heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>Unit of the heights, if another</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>Unit of the survey's coordinates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>Unit of the table</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Unit of the value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/previewquestions.py" />
      <source>Unit: {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Units that a header says are obeyed, such as Height [cm].</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <location filename="../plugin/processing/roadinput.py" />
      <source>Upright</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>Use as shown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Use the heights (Z) of the lines in these layers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <location filename="../plugin/processing/styles.py" />
      <source>Used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Value nearest to or farthest beyond the limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Value wanted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Verdict at 95 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>Vertical class wanted (cm RMSE)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices dropped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>Vertices kept: {kept}, dropped: {dropped}. Largest difference {largest:.4f} m at E {easting:.3f} N {northing:.3f}, root mean square {rms:.4f} m; asked for: {tolerance:g} m.</source>
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
      <location filename="../plugin/processing/waterstyles.py" />
      <source>Volume (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Volume at the spill level (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Volume between two surfaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volume by region</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Volume to a level or plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Volumes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes (table)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Volumes by height (table)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and depth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>Volumes by region and quantity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walk the perimeter too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Walking plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Wanted is</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Waste {waste:.1f} m³ ({waste_loose:.1f} m³ loose), borrow {borrow:.1f} m³ ({borrow_loose:.1f} m³ loose).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>Water at the spill level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Water in all full ponds (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>Water in hollows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Water runs to: left, right, both, neither, unsure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>What a change does to the water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildedits.py" />
      <source>What became of the edits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>What becomes of water that comes to a place with nothing lower around it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>What each half of the lane should fall to its edge; common practice, no source.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksource.py" />
      <source>What grows at the point, such as hard, short grass, tall grass.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>What heights are measured from. Empty: as a compound CRS says it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>What is above the first of these layers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What is set out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>What lies beyond is not in that check.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What lies under the heap, or lay over the pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>What parts the columns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>What single points are held to; a file of your own goes before. topographic, control and a file are applied as they stand. The usual choice flags points where a limit would reject more than a tenth of them; the log says so first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>What stands for no value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>What the coordinates are in, whatever the file says. Nothing is transformed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>What the data collector shows with the point.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>What the fit does to heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>What the points are, and what they become.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>What the receiver reads; the mesh's file name where it is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>What the results call them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>What the surveyor types beside a code where a line begins, ends, closes, or runs in an arc through the point. Commas between them; leave one empty where the field has no word.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>What the value below means.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/groundgrid.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>What was done to coordinates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Whatever the formula allows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>Where a line is carried across rejected points, or ends short of them, is walked again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>Where catchments differ; in place of the one for all.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>Where grades meet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <location filename="../plugin/processing/importoptions.py" />
      <source>Where header and options differ, the unit is</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>Where it is known otherwise than from the points.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Where lines cross or meet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>Where lines differ. A line whose field is empty takes the height above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Where nothing changed: other base, other geoid, other pole. It is taken off. Left empty, it is found between two surveys (both with noise) from the ground on which they agree best; none against a design.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where polygons overlap the ground counts once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>Where polygons overlap the ground counts once; for one row each see “Volume by region”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>Where ponds spill to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Where the check tells that heights change their level at a line of the file and you know which part is right: the line and the metres to be added from there on, such as 1153:+0.234; several are parted by commas. It is recorded like every other change of coordinates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>Where the design meets the ground: top of cut, toe of fill, and ends without slope.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>Where the numbering jumps, such as 1+200 = 1+250; 3+000 = 0+000, in the order of the line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/certainty.py" />
      <source>Where the points of the mesh are in the order of the walk, drift goes by that. Otherwise this is the side of a square of ground in which drift is one and the same.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/landing.py" />
      <source>Where the points would land</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadlayers.py" />
      <source>Where the rule applies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>Where the sloping plane has the height given as level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>Where the surfaces cross, with the height there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/importpoints.py" />
      <source>Where the survey lies</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>Where the water of two channels parts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>Where water starts. Empty: a square grid all over the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Where you come from. Empty: the south-west.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>Whether the first line that is no comment is a header.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Which are made.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest angle opposite to an outer edge (degrees; empty: no limit)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>Widest circle of triangles at the rim (radius in m; empty: no limit)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>Widest gap in a breakline (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the ditch's bottom (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the lane on each side (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width of the section ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Width of the shoulder on each side (m; 0: none)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the left</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>Width to the right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/sectionlayers.py" />
      <source>Width with both surfaces ({unit})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Window (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>Window of a grade (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Window of the indications (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>Windows that the surface does not cover, without a slope: {count} of {all}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>With a field “name”; they stand at the end of the table and in the layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With grades and vertical curves fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>With the groups (?P&lt;code&gt;…) and, if there are any, (?P&lt;line&gt;…) and (?P&lt;words&gt;…), for codes that are written in another way.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>With the profile of the surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>With where its water went and where it goes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>Without a typical section out of a table. Ditches are dug where the ground is above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>Without it the surface ends at the outermost passes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/codeoptions.py" />
      <source>Words for begin, end, close and arc</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steps.py" />
      <source>Write the report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Writes a surface as LandXML, DXF, GeoPackage, GeoTIFF and mesh into one folder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>Writes surfaces, points, breaklines and alignments as LandXML 1.2.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>Writes the heights of a surface as a GeoTIFF, exact or smooth for drawing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>Writes the set that was used. Change the numbers and give the file back above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>Writes the table that was used. Change it and give the file back above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>Written with the other notes on every sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>Written: {file}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a contour interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>a design, as nothing tells otherwise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>a grid over its polygons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a height error of the surface (RMSE)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>a spacing of the passes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/accuracystatement.py" />
      <source>accuracy,check points,RMSE,bias,NSSDA,FGDC,ASPRS,vertical class,95 percent,test</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>age of the correction</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>all of the ground compared</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>as found</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>as given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as in the file (with a geoid separation: orthometric)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/columns.py" />
      <source>as recognised</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>as the file says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>as {file} tells</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>as-read takes a shift that was refused on your word.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>asked for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>balance,cut,fill,level,grading,pad,strip,profile,surplus,shrinkage,earthwork</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>balance: the height where cut makes up for fill.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>base of {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/correctbase.py" />
      <source>base,reference station,shift,offset,known point,localization,autonomous,ppp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>basin,pond,storage,stage,volume,capacity,spill,water level,retention,detention</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>best-fit plane of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>billionths of a degree</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>blank</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>blanks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>blunders,outliers,tolerances,pole height,fix,tilt,status,reject,flag,repeatability,noise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/findlines.py" />
      <source>breaklines,kerb,curb,ditch,bank,edge,gutter,crown,step,feature lines,without codes,linework</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>broken: banks, mounds, building sites</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>centimetres (cm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>check,limits,rules,accessible,running slope,cross slope,grade,crossfall,kerb,ponding,gutter,sight,crest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>check,quality,warnings,spikes,flat triangles,long triangles,gaps,breaklines,tin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>code</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>comma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contours.py" />
      <source>contour lines,isolines,levels,interval,tin,mesh,feet,metres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/contoursheet.py" />
      <source>contour lines,smooth,labels,spot heights,summit,pit,plan,drawing,feet,half foot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>control,helmert,similarity,transformation,local,site,calibration,residuals,least squares,outlier</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>control: several observations, points others are built on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/crosssections.py" />
      <source>cross section,sections,offset,cut,fill,area,road,sheet,pdf,csv,line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut over {low} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>cut {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>date</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>datum not stated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>decimal degrees, longitudes from 0 to 360</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>decimal degrees, longitudes that count to the west</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>decimal degrees, or with signs between degrees, minutes and seconds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>decimetres (dm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>degrees and minutes in one (4807.035)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>degrees, minutes and seconds in a run of digits, the last {count} decimals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>degrees, minutes and seconds in one (480702.1)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>dem,dtm,raster,grid,heights,elevation,geotiff,interpolate,hillshade,clough-tocher</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>depths that count down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>digits of minutes and seconds behind the mark (48.07021 is 48°07'02.1")</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>drape,lines,height,elevation,profile,z values,centreline,tin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>east</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>easting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>ellipsoidal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>ellipsoidal height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>en</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>even: fields, car parks, pitches</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>exact: linear on the triangles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>export,dxf,cad,geopackage,gpkg,geotiff,dem,landxml,mesh,deliver,checksums</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>failed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill over {low} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>fill {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/tiltoption.py" />
      <source>find out from the heights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>fix</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>found from the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/jobchoices.py" />
      <source>four parameters in plan, heights by themselves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from grid to ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>from ground to grid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/coverage.py" />
      <source>gaps,density,spacing,empty circles,walk again,waypoints,gpx,contour interval</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>gon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadgrades.py" />
      <source>grade,gradient,crossfall,cross slope,superelevation,camber,slope,percent,road</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>grading,pad,platform,yard,level,slope,batter,daylight,cut,fill,balance,earthwork</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripgrading.py" />
      <source>grading,strip,road,path,bank,corridor,typical section,ditch,mass diagram,haul,cut,fill,earthwork</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/groundgrid.py" />
      <source>ground,grid,scale factor,combined factor,projection,distance,elevation factor</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceatpoints.py" />
      <source>height,elevation,slope,aspect,sample,query,check points,triangle,tin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>in/h, acres, ft³/s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>inches (in, 0.0254 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>intensity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>international feet (ft, 0.3048 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>its points, or the corners of its lines and polygons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>kept as they are</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>kilometres (km)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exportlandxml.py" />
      <source>landxml,xml,tin,surface,export,exchange,design,alignment,breaklines,machine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>landxml,xml,tin,surface,import,design,alignment,breaklines,points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>lane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>latitude</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>left of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its highest place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>level at its lowest place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>level {level:.3f}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>longitude</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <source>mesh (2DM)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>metres (m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>millimetres (mm)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>millionths of a degree</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>minutes of arc</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>mitred</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>mm/h, hectares, l/s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>no</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/jobchoices.py" />
      <source>no fit: shifted as a whole (base corrected later)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/algorithm.py" />
      <source>no further details</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <location filename="../plugin/processing/sinks.py" />
      <location filename="../plugin/processing/trustlayers.py" />
      <source>no reason given</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/tiltoption.py" />
      <source>no: points beyond the limit are rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>none: columns at fixed places</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>northing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumelayers.py" />
      <source>not known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>nothing yet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>observations of a point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>offsets along its lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>orthometric (above a geoid)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/steprow.py" />
      <source>out of date</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>over {low:.4g} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>over {low} {unit} deep</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>plan,passes,lines,spacing,before the survey,distance,time,contour interval,rover</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plansheet.py" />
      <source>plan,sheet,pdf,print,layout,topographic,contours,spot heights,title block,key map,scale,paper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>plane of {level:.3f} at E {east:.2f} N {north:.2f}, {slope:g} % down to {towards:g}°</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>pole height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>profile,longitudinal section,line,centreline,station,heights,grade,sheet,pdf,csv</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>radians</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>refuse when the heights differ by more than the tolerance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report,documentation,pdf,html,sha-256,checksums,hand over,accuracy,rejects,whole job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf beside report.html.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surveyreport.py" />
      <source>report.pdf: {pages} pages.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterlayers.py" />
      <source>rest of the rim</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>right of the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>role</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>rolling: parks, pastures</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>round</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>runoff coefficient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>runs on over full ponds, to the rim or an inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>satellites</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>seconds of arc</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
      <source>semicolon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>set-out,stake out,staking,layout,grid,offsets,cut,fill,design,data collector,csv,control</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <location filename="../plugin/processing/jobchoices.py" />
      <source>seven parameters in space</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/fitcontrol.py" />
      <source>shifted and tilted (a plane)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>shoulder</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma in plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma to the east</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>sigma to the north</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>slope,grade,gradient,steepness,classes,percent,areas,accessibility</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>smooth (Clough-Tocher): for drawing only</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>soil</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in every pit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>stays in ponds and passes hollows that noise explains</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>stockpile,heap,pile,pit,volume,toe,rim,base,inventory,tonnage,excavation,earthwork</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <location filename="../plugin/processing/setoutoptions.py" />
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
      <location filename="../plugin/processing/importoptions.py" />
      <source>ten-millionths of a degree</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>that of the header</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>that of the options or the CRS</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>the antenna</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/balanceheight.py" />
      <source>the height that balances</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>the plane through three points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>the usual value, as nothing tells</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/thinsurface.py" />
      <source>thin,simplify,reduce,decimate,fewer points,tolerance,tin,mesh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>tilt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>time</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildsurface.py" />
      <source>tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>topographic: single observations while walking</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>triangles through the line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>unchanged</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checksurvey.py" />
      <source>usual: topographic, but no limit rejects more than a tenth of the points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>vertical bar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>vertical curve,parabola,K value,crest,sag,grade,profile,fit,alignment,road</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volume.py" />
      <source>volume,earthwork,cut,fill,cut and fill,quantities,cubic metres,difference,excavation,uncertainty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumetoplane.py" />
      <source>volume,earthwork,cut,fill,level,plane,slope,datum,levelling,platform,uncertainty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumebyregion.py" />
      <source>volume,earthwork,cut,fill,region,parcel,phase,polygon,quantities,depth,material,rock,topsoil</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/catchments.py" />
      <source>water,catchment,watershed,basin,drainage area,inlet,gully,outlet,channel,ridge,divide,contributing area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterchange.py" />
      <source>water,change,design,difference,compare,before,after,ponds,catchments,diversion,drainage,impact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flatareas.py" />
      <source>water,flat,level,slope,fall,minimum slope,drainage,puddles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowarrows.py" />
      <source>water,flow,direction,arrows,slope,aspect,downhill,drainage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/flowpaths.py" />
      <source>water,flow,path,drainage,steepest descent,downhill,runoff,raindrop,trace,inlet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/peakflow.py" />
      <source>water,peak flow,runoff,rational method,rain,intensity,coefficient,stormwater,C i A</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/ponds.py" />
      <source>water,pond,puddle,pit,sink,depression,hollow,ponding,standing water,volume,spill,drainage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/plantexts.py" />
      <source>west</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/gradingresults.py" />
      <source>whole design</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>yards (yd, 0.9144 m)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importoptions.py" />
      <source>yes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/tiltoption.py" />
      <source>yes: tilt is no fault</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <source>{columns} × {rows} cells, {filled} of them on the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadprofile.py" />
      <source>{count} of the further surfaces cannot be loaded as meshes; check their files.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padgrading.py" />
      <source>{count} pads</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{count} remarks, the worst first; all are in the report: {first}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/verticalcurves.py" />
      <source>{curves} vertical curves; the surface departs from them by {spread:.1f} mm (robust standard deviation) and {worst:.1f} mm at most.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: cannot be read so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/preview.py" />
      <source>{files}: {lines} lines, {points} points, &lt;b&gt;{rejects} rejected&lt;/b&gt;, {others} others.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/planlayers.py" />
      <source>{file}: cannot be opened again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/trustlayers.py" />
      <source>{file}: cannot be written ({reason}); choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{file}: the file does not say its CRS; ask for it and choose it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/geopackage.py" />
      <source>{file}: the layer {layer} cannot be written ({reason}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/planproject.py" />
      <source>{file}: the plan cannot be written {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/geotiff.py" />
      <source>{file}: the raster cannot be written ({reason}); choose another file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/deskform.py" />
      <source>{file}: there is no such file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceraster.py" />
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{file}: this makes a GeoTIFF; choose a name that ends in .tif.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/handoverfiles.py" />
      <location filename="../plugin/processing/readlandxml.py" />
      <source>{folder}: the folder cannot be made ({reason}); choose another.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{hours} h {minutes:02d} min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/buildfaces.py" />
      <source>{label}: the height of its face is not known; give one, or fill the field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{label}: {area:.1f} m² in plan, {share:.1f} % of the surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: a grid is laid over polygons; choose a layer of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>{layer}: control point {number} has no name; give it one, or choose the name field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>{layer}: control point “{name}” occurs twice; keep one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: feature {id} has no geometry; delete or draw it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} has no heights (Z); switch their use off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: feature {id} is not one closed line (parts: {count}); close it, without holes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: features without a place or a height left out: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/waterinput.py" />
      <source>{layer}: features without a usable geometry left out: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/drapelines.py" />
      <source>{layer}: features without a usable line left out: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/controlsource.py" />
      <source>{layer}: is in {crs}, not in the CRS chosen; leave the CRS empty or reproject the layer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{layer}: it has neither a field cut_run nor fill_run; add one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{layer}: it has {count} lines; a strip follows one. Select it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/inspectsurface.py" />
      <source>{layer}: its CRS is not that of the surface; its points are compared as they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: its CRS is {crs}, that of the first surface {other}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfaceinput.py" />
      <source>{layer}: its CRS is {crs}, that of the surface {other}; reproject the layer first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: lines of another kind left out: {count}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: no point has a height; give points with Z values or choose the height field.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/setout.py" />
      <source>{layer}: offsets are laid along lines; choose a layer of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, left as checked: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/exchangeinput.py" />
      <source>{layer}: rejected points that are not handed over: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{layer}: there are no lines in it; draw one around each stockpile or pit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/regionsource.py" />
      <source>{layer}: there are no polygons in it; draw one or leave it out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/pointlayer.py" />
      <source>{layer}: there is no field {field}; choose one of {fields}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumeresults.py" />
      <source>{layer}: there is no line in it; draw one or leave it out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/roadinput.py" />
      <source>{layer}: {count} lines are in it; select one and tick “Selected features only”, or join them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/importpoints.py" />
      <source>{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks, header and other sentences of a log.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/slopemap.py" />
      <source>{low:.4g} to {high:.4g} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>{low} to {high} {unit} deep</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/walkingplan.py" />
      <source>{minutes} min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stripinput.py" />
      <source>{name}: the line has no heights; give it Z, or a profile.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/stockpile.py" />
      <source>{name}: {above:.2f} ± {above_95:.2f} m³ above its base, {below:.2f} ± {below_95:.2f} m³ below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/padinput.py" />
      <source>{name}: {field} is “{value}”, which is no number; mend it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>{order}: {use} &lt;b&gt;{name}&lt;/b&gt;&lt;br&gt;{length} m long, {walked} m walked at its end</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/maptips.py" />
      <source>{passes} passes, evidence {evidence}, {length} m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/checkline.py" />
      <source>{rule}: pass {good:.1f} m, fail {bad:.1f} m, too close to tell {close:.1f} m.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/desk.py" />
      <source>{step} …</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>{surface}: heights are {datum}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/surfacenoise.py" />
      <source>{surface}: noise of a height {total:.4f} {unit} ({source}), of it drift {drift:.4f} {unit} ({other}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/parameters.py" />
      <source>{what}: the CRS is not known; choose a projected one, such as EPSG:25832.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit needs a height; give a Z or fill the column height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: the edit “{kind}” is none of {known}; correct the column edit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/editlayers.py" />
      <source>{where}: {value} in the column {name} is no number; correct it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>± of cut, 95 % (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>± of fill less cut, 95 % (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/volumenumbers.py" />
      <source>± of fill, 95 % (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/basinstorage.py" />
      <source>± of it, 95 % (m³)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/gui/roletable.py" />
      <source>– (kept beside)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../plugin/processing/reportquestions.py" />
      <source>“{name}” counts for nothing without “{other}”: give that too.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
