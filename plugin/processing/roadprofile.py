"""Heights and grades along a line: points, lines in a plane, sheets."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterMultipleLayers,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.grades import WindowSlopes, grades, reach, slopes_at
from ..core.alignment.profile import Profile, make_profile
from ..core.alignment.sections import section_distances
from ..core.alignment.slopes import HeightNoise, height_forms
from ..core.progress import part
from ..core.surface.tin import Tin
from .algorithm import progress_of, report, translate_core
from .parameters import number, qgis_crs
from .roadinput import NamedSurface, RoadAlgorithm, distinct
from .roadlayers import plain, profile_fields, station_fields, write_profile_lines, write_stations
from .roadstyles import STATIONS, dress_road, surface_renderer
from .versions import LINE, LINE_SOURCE, MESH_SOURCE, POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate


class RoadProfile(RoadAlgorithm):
    """``hummock:roadprofile``"""

    NAME = "roadprofile"
    ICON = "roadprofile.svg"

    def title(self) -> str:
        return translate("hummock", "Profile along a line")

    def summary(self) -> str:
        return translate("hummock", "Heights and grades along a line over one or several surfaces, also as a sheet.")

    def words(self) -> str:
        return translate("hummock", "profile,longitudinal section,line,centreline,station,heights,grade,sheet,pdf,csv")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Takes the heights of one or several surfaces along a line: as points at stations, as lines in a plane "
            "of their own, and as a sheet in PDF at true scale, with stations, heights, differences and grades below "
            "the profile.</p>"
            "<p><b>It assumes</b> 2DM meshes as “Build the surface” writes them, all in one CRS, and one line in that "
            "CRS. Heights are those of the triangles all along, not of a grid. A grade is the straight line that fits "
            "the heights in its window best; its standard deviation follows from the noise of the points.</p>"
            "<p><b>Columns of the stations:</b> station, distance_m, easting, northing, height, height_sd, grade_pct, "
            "grade_sd_pct, and for further surfaces height_2, diff_2 and so on. Save them as CSV by giving the output "
            "a file name that ends in .csv.</p>"
            "<p><b>The profile in its plane</b> is no place on a map: to the right the distance along the line, up the "
            "height, exaggerated, both in the unit chosen. It has the CRS of the surface only so that files can "
            "hold it; look at it in a map view of its own.</p>"
            "<p><b>What can go wrong:</b> stretches off a surface are left out and said. Standard deviations know the "
            "noise of the heights you give, not errors in plan, nor ground that was not walked. Not for construction "
            "or setting out without independent checks.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_line()
        self.add(
            QgsProcessingParameterMultipleLayers(
                "OTHERS", translate("hummock", "Further surfaces"), MESH_SOURCE, optional=True
            ),
            translate("hummock", "Such as a design. Differences are theirs less the first."),
        )
        self.add(
            number("INTERVAL", translate("hummock", "Distance between stations"), 10.0, 0.0),
            translate("hummock", "In the unit chosen: whole multiples of it, and both ends of the line."),
        )
        self.add(
            number("WINDOW", translate("hummock", "Window of a grade (m)"), 5.0, 0.01),
            translate("hummock", "The length over which a grade is taken: shorter shows more, and more noise."),
        )
        self.add_numbering()
        self.add_noise()
        self.add(
            number("EXAGGERATION", translate("hummock", "Exaggeration of heights in the plane"), 10.0, 0.01),
            translate("hummock", "Of the profile as a layer; the sheet has scales of its own."),
            advanced=True,
        )
        self.add_sheet(500.0, False)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Stations"), POINT_SOURCE),
            translate("hummock", "A point at each station with heights, grade and their standard deviations."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "PROFILE", translate("hummock", "Profile in its plane"), LINE_SOURCE, optional=True,
                createByDefault=False,
            ),
            translate("hummock", "A line for each surface, for a map view of its own or a print layout."),
        )  # fmt: skip
        self.add_page(
            "PDF",
            translate("hummock", "Sheets (PDF)"),
            translate("hummock", "The profile to scale with its table."),
            made=False,
        )
        self.add_numbers(
            ("LENGTH", translate("hummock", "Length of the line (m)")),
            ("LOWEST", translate("hummock", "Lowest height of the first surface (m)")),
            ("HIGHEST", translate("hummock", "Highest height of the first surface (m)")),
            ("SHEETS", translate("hummock", "Number of sheets")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        surfaces = distinct([(self.surface_name(parameters, context), tin), *self._others(parameters, context)])
        line = self.read_line(tin, parameters, context, feedback)
        progress(0.3, "alignment")
        noise = self.read_noise(line, tin, parameters, context, feedback, part(progress, 0.3, 0.4))
        interval = self.parameterAsDouble(parameters, "INTERVAL", context)
        stations = section_distances(line, interval)
        profile = make_profile(line, surfaces)
        report(profile.messages, feedback)
        progress(0.5, "alignment")
        window = min(self.parameterAsDouble(parameters, "WINDOW", context), line.length)
        slopes = grades(line, tin, noise, window, within=reach(line, tin))
        progress(0.7, "layers")
        results = self._stations(profile, stations, slopes, noise, tin, parameters, context)
        results.update(self._plane(profile, tin, parameters, context))
        progress(0.8, "layers")
        results.update(self._sheets(profile, slopes, parameters, context))
        low, high = profile.surfaces[0].height_range
        return {**results, "LENGTH": line.length, "LOWEST": low, "HIGHEST": high}

    def _others(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> List[NamedSurface]:
        given = parameters.get("OTHERS") or []
        found = []
        for layer in self.parameterAsLayerList(parameters, "OTHERS", context) if given else []:
            found.append((layer.name(), self.read_mesh(layer, layer.source(), parameters, context)))
        count = len(given) if isinstance(given, (list, tuple)) else 1
        if len(found) < count:
            raise QgsProcessingException(
                translate(
                    "hummock", "{count} of the further surfaces cannot be loaded as meshes; check their files."
                ).format(count=count - len(found))
            )
        return found

    def _stations(
        self, profile: Profile, stations: np.ndarray, slopes: WindowSlopes, noise: HeightNoise, tin: Tin,
        parameters: Dict[str, Any], context: QgsProcessingContext,
    ) -> Dict[str, Any]:  # fmt: skip
        line = profile.line
        fields = station_fields(line, len(profile.surfaces))
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(fields), POINT_Z, qgis_crs(tin.crs))
        deviation = height_forms(tin, line.places(stations)).sigmas(noise)
        write_stations(profile, stations, deviation, slopes_at(slopes, stations), tin.crs, sink)
        dress_road(context, place, fields, STATIONS)
        return {"OUTPUT": place}

    def _plane(
        self, profile: Profile, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        fields = profile_fields(profile.line)
        sink, place = self.parameterAsSink(parameters, "PROFILE", context, plain(fields), LINE, qgis_crs(tin.crs))
        if sink is None:
            return {}
        write_profile_lines(profile, self.parameterAsDouble(parameters, "EXAGGERATION", context), sink)
        names = [own.surface for own in profile.surfaces]
        dress_road(context, place, fields, renderer=lambda: surface_renderer(names))
        return {"PROFILE": place}

    def _sheets(
        self, profile: Profile, slopes: WindowSlopes, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        path = self.parameterAsFileOutput(parameters, "PDF", context)
        if not path:
            return {}
        from ..core.report.profile_sheets import ProfileSheet, write_profile_sheets  # matplotlib, only when drawn

        sheet = ProfileSheet(**self.sheet_options(parameters, context))
        count = write_profile_sheets(profile, path, sheet, windows=slopes, translate=translate_core)
        return {"PDF": path, "SHEETS": count}
