"""The exact volume from a surface to a level or a sloping plane."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterPoint,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.comparison import Comparison
from ..core.earthwork.plane import Plane, plane_falling, plane_through
from ..core.earthwork.study import study
from ..core.progress import part
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, metres_per_height_unit, metres_per_unit
from .algorithm import progress_of
from .certainty import add_certainty
from .earthmaterials import add_earth_parameters
from .parameters import number, optional_number, optional_source, qgis_crs
from .regionsource import chosen_regions
from .surfaceinput import SurfaceAlgorithm, same_crs
from .versions import POINT_SOURCE, POLYGON_SOURCE
from .volumenumbers import volume_numbers
from .volumeresults import (
    add_depth_options,
    add_depth_outputs,
    add_table_output,
    check_raster_path,
    chosen_study,
    tell,
    write_results,
    write_table,
)

translate = QCoreApplication.translate


class VolumeToPlane(SurfaceAlgorithm):
    """``hummock:volumetoplane``"""

    NAME = "volumetoplane"
    ICON = "volumetoplane.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Volume to a level or plane")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Exact cut and fill to make a surface level, or an even slope.")

    def words(self) -> str:
        return translate("hummock", "volume,earthwork,cut,fill,level,plane,slope,datum,levelling,platform,uncertainty")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Computes what must be cut (ground above) and filled (ground below) to make the surface one plane: a "
            "<b>level</b>; a <b>sloping plane</b>, given by its height at a place, how steeply it falls and which way; "
            "or the plane through <b>three points</b>. Exact, triangle by triangle, without side slopes; for a pad "
            "with slopes to the ground see “Grade a pad”.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Polygons limit the ground. Heights are "
            "in the unit of the CRS, the direction is an azimuth: degrees clockwise from grid north.</p>"
            "<p><b>How sure:</b> see “Volume between two surfaces”; the plane itself is exact, and the height offset "
            "is that between the survey and the datum of the level.</p>"
            "<p><b>What can go wrong:</b> without a polygon the whole surface is levelled, rim and all. This is no "
            "payment certificate: the contract, local codes and licensed practice say what is measured. Locate buried "
            "services before anyone digs.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            number("LEVEL", translate("hummock", "Level (height, in the unit of the CRS)"), None),
            translate("hummock", "Of the plane; where it slopes, its height at the place below."),
        )
        self.add(
            number("SLOPE", translate("hummock", "Slope (%)"), 0.0, 0.0, 1000.0),
            translate("hummock", "How steeply the plane falls; 0 is level."),
        )
        self.add(
            number("TOWARDS", translate("hummock", "Falls towards (degrees from grid north)"), 0.0, -360.0, 360.0),
            translate("hummock", "0 is north, 90 east, 180 south, 270 west; without meaning for a level."),
        )
        self.add(
            QgsProcessingParameterPoint(
                "PLACE", translate("hummock", "Place that has the level (empty: middle of the surface)"), optional=True
            ),
            translate("hummock", "Where the sloping plane has the height given as level."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "THREE_POINTS", translate("hummock", "Three points of the plane (instead of a level)"), [POINT_SOURCE],
                optional=True,
            ),
            translate("hummock", "A layer of exactly three points with Z, in the CRS of the surface."),
        )  # fmt: skip
        self.add(
            QgsProcessingParameterFeatureSource(
                "REGIONS", translate("hummock", "Only inside these polygons"), [POLYGON_SOURCE], optional=True
            ),
            translate("hummock", "Where polygons overlap the ground counts once."),
        )
        add_certainty(self, second=False)
        add_depth_options(self)
        add_earth_parameters(self)
        self.add_surface_crs()
        add_table_output(self)
        add_depth_outputs(self)
        self.add_numbers(*volume_numbers()[:-1])

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        check_raster_path(self.parameterAsOutputLayer(parameters, "RASTER", context))
        tin = self.read_surface(parameters, context)
        progress(0.2, "surface")
        plane, name = self._plane(tin, parameters, context)
        within = chosen_regions(self, tin.crs, parameters, context, feedback)
        comparison = Comparison(
            tin, plane, within, None, (self.surface_name(parameters, context), name), part(progress, 0.2, 0.5)
        )
        options = chosen_study(self, tin, parameters, context, feedback, second=False)
        found = study(comparison, options, progress=part(progress, 0.2, 0.9))
        tell(found, feedback)
        results = {**write_results(self, found, parameters, context), **write_table(self, found, parameters, context)}
        del results["SECOND_ONLY"]
        return results

    def _plane(self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[Plane, str]:
        """The plane and what a report calls it."""
        level = optional_number(self, parameters, "LEVEL", context)
        source = optional_source(self, parameters, "THREE_POINTS", context)
        if (level is None) == (source is None):
            raise QgsProcessingException(
                translate("hummock", "Give the plane by a level or by three points: one of them, not both.")
            )
        if source is not None:
            same_crs(source, tin, source.sourceName() or "THREE_POINTS")
            return self._through(source, tin), translate("hummock", "the plane through three points")
        assert level is not None
        height = level * metres_per_height_unit(tin.crs)
        slope = self.parameterAsDouble(parameters, "SLOPE", context)
        unit = translate("hummock", "level {level:.3f}").format(level=level)
        if slope == 0:
            return Plane(height), unit
        place = np.reshape(tin.bounds, (2, 2)).mean(axis=0)
        if parameters.get("PLACE") not in (None, ""):
            point = self.parameterAsPoint(parameters, "PLACE", context, qgis_crs(tin.crs))
            place = np.array([point.x(), point.y()]) * metres_per_unit(tin.crs)
        towards = self.parameterAsDouble(parameters, "TOWARDS", context)
        text = translate(
            "hummock", "plane of {level:.3f} at E {east:.2f} N {north:.2f}, {slope:g} % down to {towards:g}°"
        )
        east, north = place / metres_per_unit(tin.crs)
        name = text.format(level=level, east=east, north=north, slope=slope, towards=towards)
        return plane_falling(height, float(place[0]), float(place[1]), slope, towards), name

    def _through(self, source: Any, tin: Tin) -> Plane:
        points = []
        for feature in source.getFeatures():
            for vertex in feature.geometry().vertices():
                points.append((vertex.x(), vertex.y(), vertex.z()))
        xyz = np.array(points, float).reshape(-1, 3)
        if len(xyz) != 3 or not np.all(np.isfinite(xyz)):
            raise QgsProcessingException(
                translate(
                    "hummock", "The plane needs a layer of exactly three points with Z; {count} were found."
                ).format(count=int(np.count_nonzero(np.all(np.isfinite(xyz), axis=1))))
            )
        rise = 1.0 / float(heights_to_crs_units(1.0, tin.crs))
        return plane_through(xyz * [metres_per_unit(tin.crs), metres_per_unit(tin.crs), rise])
