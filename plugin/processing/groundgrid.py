"""Between distances on the ground and distances in the grid of the CRS, about a stated origin."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, Optional, Tuple

from pyproj import CRS
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputString,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterPoint,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import height_unit, plan_unit
from ..core.georeference.ground_grid import GroundGridUse
from ..core.georeference.site import Grounded, GroundOptions, GroundWay, between_ground_and_grid
from ..core.points.pointset import PointSet
from ..core.progress import Progress, part
from ..core.units import heights_to_crs_units, metres_per_unit, to_crs_units
from .algorithm import HummockAlgorithm, progress_of, say, tell
from .localnumbers import use_units
from .parameters import chosen_source, core_crs, number, optional_number, qgis_crs
from .pointlayer import point_fields, read_points_layer, write_points
from .pointsource import add_field_parameters, add_layer_parameter, chosen_columns
from .styles import POINTS, dress_vector
from .versions import POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate

#: In the order of the choices of WAY.
WAYS = (GroundWay.TO_GROUND, GroundWay.TO_GRID)


class GroundAndGrid(HummockAlgorithm):
    """``hummock:groundgrid``"""

    NAME = "groundgrid"
    ICON = "groundgrid.svg"
    GROUP_ID = "points"

    def title(self) -> str:
        return translate("hummock", "Ground to grid and back")

    def group(self) -> str:
        return translate("hummock", "Points")

    def summary(self) -> str:
        return translate("hummock", "Scales points between ground distances and the grid of the CRS about an origin.")

    def words(self) -> str:
        return translate("hummock", "ground,grid,scale factor,combined factor,projection,distance,elevation factor")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>A projection changes lengths, and so does the height above the ellipsoid. The combined factor (grid "
            "distance over ground distance) is computed at the origin: projection scale factor times height factor. "
            "Distances from the origin are divided by it to get ground coordinates, and multiplied to get back.</p>"
            "<p><b>It assumes</b> one factor for the whole site; how much it varies over the site is told, and what "
            "that makes of a line of 100 m. A sample line is shown with both of its distances. Heights stay as they "
            "are. The mean height of the points is used for the height factor, plus the geoid separation if you give "
            "it.</p>"
            "<p>Ground coordinates belong to no CRS: the layer has none. Add a shift so that nobody takes them for "
            "grid coordinates, and note origin, factor and shift: the way back needs the same ones.</p>"
            "<p><b>What can go wrong:</b> without the geoid separation the height is wrong by it, which makes some "
            "5 mm in a kilometre for 30 m. Ground coordinates need the origin about which they were made; with another "
            "one everything is shifted by the factor's share of the distance between the two.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        add_layer_parameter(
            self,
            "INPUT",
            translate("hummock", "Points"),
            translate("hummock", "In the grid, or on the ground; these may have no CRS."),
            optional=False,
        )
        add_field_parameters(self, "INPUT")
        ways = [translate("hummock", "from grid to ground"), translate("hummock", "from ground to grid")]
        self.add(
            QgsProcessingParameterEnum("WAY", translate("hummock", "Direction"), ways, defaultValue=0),
            translate("hummock", "What the points are, and what they become."),
        )
        self.add(
            QgsProcessingParameterCrs(
                "CRS", translate("hummock", "CRS of the grid (empty: that of the points)"), optional=True
            ),
            translate("hummock", "Points on the ground carry none, so it has to be given for the way to the grid."),
        )
        self.add(
            QgsProcessingParameterPoint(
                "ORIGIN", translate("hummock", "Origin in the grid (empty: the middle of the points)"), optional=True
            ),
            translate("hummock", "The place that keeps its coordinates. From ground to grid it has to be given."),
        )
        self._add_numbers()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Points changed"), POINT_SOURCE),
            translate("hummock", "All points with their attributes; without a CRS where they are on the ground."),
        )
        self.add_numbers(
            ("FACTOR_USED", translate("hummock", "Combined factor")),
            ("ORIGIN_EASTING", translate("hummock", "Easting of the origin")),
            ("ORIGIN_NORTHING", translate("hummock", "Northing of the origin")),
            ("SAMPLE_GRID", translate("hummock", "Sample line in the grid (m)")),
            ("SAMPLE_GROUND", translate("hummock", "Sample line on the ground (m)")),
        )
        self.addOutput(QgsProcessingOutputString("STATEMENTS", translate("hummock", "What was done to coordinates")))

    def _add_numbers(self) -> None:
        for name, label, help_text, default, advanced in (
            (
                "FACTOR",
                translate("hummock", "Combined factor (empty: computed at the origin)"),
                translate("hummock", "Grid distance over ground distance, where one is prescribed for the site."),
                None,
                False,
            ),
            (
                "GEOID",
                translate("hummock", "Geoid separation (m)"),
                translate("hummock", "Added to the mean height of the points to get the ellipsoidal height."),
                None,
                False,
            ),
            (
                "HEIGHT",
                translate("hummock", "Ellipsoidal height of the site (m; empty: from the points)"),
                translate("hummock", "Where it is known otherwise than from the points."),
                None,
                True,
            ),
            (
                "SHIFT_EASTING",
                translate("hummock", "Shift of ground eastings (unit of the CRS)"),
                translate("hummock", "Added to ground coordinates, taken off on the way back."),
                0.0,
                True,
            ),
            (
                "SHIFT_NORTHING",
                translate("hummock", "Shift of ground northings (unit of the CRS)"),
                translate("hummock", "Added to ground coordinates, taken off on the way back."),
                0.0,
                True,
            ),
        ):
            parameter = number(name, label, default)
            if name == "FACTOR":
                parameter.setMetadata({"widget_wrapper": {"decimals": 12}})
            self.add(parameter, help_text, advanced=advanced)

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        points, crs = self._points(parameters, context, feedback, part(progress, 0.0, 0.4))
        done = between_ground_and_grid(points, self._options(parameters, context, crs), crs)
        for one in done.record.statements:
            feedback.pushInfo(tell(one))
        use = done.record.details
        assert isinstance(use, GroundGridUse)
        results: Dict[str, Any] = {
            "FACTOR_USED": done.ground_grid.factor,
            "ORIGIN_EASTING": done.ground_grid.origin_easting / metres_per_unit(crs),
            "ORIGIN_NORTHING": done.ground_grid.origin_northing / metres_per_unit(crs),
            "STATEMENTS": "\n".join(say(one) for one in done.record.statements),
        }
        if use.sample is not None:
            results.update(SAMPLE_GRID=use.sample.grid, SAMPLE_GROUND=use.sample.ground)
        results["OUTPUT"] = self._write(done, crs, parameters, context, part(progress, 0.5, 1.0))
        return results

    def _points(
        self,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[PointSet, CRS]:
        """The points in metres and the CRS of the grid; ground coordinates are in its units."""
        source = chosen_source(self, parameters, "INPUT", context)
        label = source.sourceName() or "INPUT"
        given = self.parameterAsCrs(parameters, "CRS", context)
        crs = core_crs(given if given.isValid() else source.sourceCrs(), label)
        use_units(crs)
        points = read_points_layer(
            source, chosen_columns(self, parameters, context, source), label, feedback, progress, height_unit(crs),
            plan_unit(crs),
        )  # fmt: skip
        return points, crs

    def _options(self, parameters: Dict[str, Any], context: QgsProcessingContext, crs: CRS) -> GroundOptions:
        metres = metres_per_unit(crs)
        origin = None
        if parameters.get("ORIGIN") not in (None, ""):
            place = self.parameterAsPoint(parameters, "ORIGIN", context, qgis_crs(crs))
            origin = (place.x() * metres, place.y() * metres)
        shift = [
            self.parameterAsDouble(parameters, name, context) * metres for name in ("SHIFT_EASTING", "SHIFT_NORTHING")
        ]
        return GroundOptions(
            WAYS[self.parameterAsEnum(parameters, "WAY", context)],
            origin,
            optional_number(self, parameters, "FACTOR", context),
            optional_number(self, parameters, "GEOID", context),
            optional_number(self, parameters, "HEIGHT", context),
            (shift[0], shift[1]),
        )

    def _write(
        self, done: Grounded, crs: CRS, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> str:
        """The layer; ground coordinates in the units of the grid too, though without its CRS."""
        points = done.points
        if points.crs is None:
            points = replace(
                points,
                easting=to_crs_units(points.easting, crs),
                northing=to_crs_units(points.northing, crs),
                height=heights_to_crs_units(points.height, crs),
                sigma_h=to_crs_units(points.sigma_h, crs),
                sigma_v=heights_to_crs_units(points.sigma_v, crs),
            )
        shown = qgis_crs(points.crs)
        sink, destination = self.parameterAsSink(parameters, "OUTPUT", context, point_fields(points), POINT_Z, shown)
        write_points(points, sink, progress)
        dress_vector(context, destination, POINTS)
        return str(destination)
