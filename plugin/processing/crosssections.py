"""Cross-sections of one or two surfaces along a line."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterMeshLayer,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.areas import NoisySurface, SectionAreas, section_areas
from ..core.alignment.line import Alignment
from ..core.alignment.noise import timed_noise
from ..core.alignment.sections import Sections, cut_sections, section_distances
from ..core.alignment.stations import parse_stations
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from .algorithm import progress_of, report, translate_core
from .parameters import number, qgis_crs
from .roadinput import RoadAlgorithm, distinct, lengths_in
from .roadlayers import plain
from .roadstyles import SECTION_POINTS, SECTIONS, dress_road
from .sectionlayers import (
    area_fields,
    section_fields,
    section_point_fields,
    write_areas,
    write_section_lines,
    write_section_points,
)
from .surfacenoise import add_second_noise, second_noise
from .versions import LINE_SOURCE, LINE_Z, NO_GEOMETRY, POINT_SOURCE, POINT_Z, TABLE_SOURCE

translate = QCoreApplication.translate


class CrossSections(RoadAlgorithm):
    """``hummock:crosssections``"""

    NAME = "crosssections"
    ICON = "crosssections.svg"

    def title(self) -> str:
        return translate("hummock", "Cross-sections")

    def summary(self) -> str:
        return translate("hummock", "Cuts surfaces square to a line, with areas of cut and fill, also as sheets.")

    def words(self) -> str:
        return translate("hummock", "cross section,sections,offset,cut,fill,area,road,sheet,pdf,csv,line")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Cuts a surface, and a second one if you like, at right angles to a line: at whole multiples of an "
            "interval, at stations you name, at the line's ends and at its vertices. At a vertex the section halves "
            "the angle. You get the sections as lines with heights, their points with offset (right positive) and "
            "height, the areas of cut and fill, and sheets in PDF at true scale.</p>"
            "<p><b>It assumes</b> 2DM meshes as “Build the surface” writes them and one line, all in one CRS. Heights "
            "are those of the triangles, with a point wherever a section crosses an edge.</p>"
            "<p><b>Areas:</b> cut is where the second surface is below the first, fill where it is above; exact "
            "between the surfaces as they are. Their standard deviations follow from the noise of the heights. Where "
            "both surfaces are within the noise of each other, cut and fill both come out too large; fill less cut "
            "does not.</p>"
            "<p><b>What can go wrong:</b> in tight bends wide sections cross and ground beyond counts twice, which is "
            "said. A section partly off a surface has areas only over the width covered, which a column tells. "
            "Quantities for payment are a matter of the contract and of licensed practice. Locate buried services "
            "before any excavation.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_line()
        self.add(
            QgsProcessingParameterMeshLayer(
                "DESIGN", translate("hummock", "Second surface (2DM mesh), such as a design"), optional=True
            ),
            translate("hummock", "For the areas of cut and fill; in the CRS of the first."),
        )
        self.add(
            number("INTERVAL", translate("hummock", "Interval"), 10.0, 0.0),
            translate("hummock", "In the unit chosen: sections at whole multiples of it; 0 for none."),
        )
        self.add(
            QgsProcessingParameterString("STATIONS", translate("hummock", "Further stations"), "", optional=True),
            translate("hummock", "Such as 1+234.50; 1+300, parted by semicolons."),
        )
        self.add(
            number("LEFT", translate("hummock", "Width to the left"), 10.0, 0.0),
            translate("hummock", "In the unit chosen, seen in the way of rising stations."),
        )
        self.add(
            number("RIGHT", translate("hummock", "Width to the right"), 10.0, 0.0), translate("hummock", "As left.")
        )
        self.add(
            QgsProcessingParameterBoolean("ENDS", translate("hummock", "Also at the ends of the line"), True),
            translate("hummock", "A section at the beginning and at the end."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("VERTICES", translate("hummock", "Also at the vertices of the line"), False),
            translate("hummock", "A section at each bend."),
            advanced=True,
        )
        self.add_numbering()
        self.add_noise()
        add_second_noise(self)
        self.add_sheet(200.0, True)
        self.add_surface_crs()
        self._add_outputs()

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Cross-sections"), LINE_SOURCE),
            translate("hummock", "Lines with heights from left to right, one for each surface and part."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "POINTS_OUTPUT", translate("hummock", "Points of the cross-sections"), POINT_SOURCE, optional=True
            ),
            translate("hummock", "Every point with section, offset and height; as CSV where the file ends in .csv."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "AREAS", translate("hummock", "Areas of cut and fill"), TABLE_SOURCE, optional=True
            ),
            translate("hummock", "A table, a row for each section; only with a second surface."),
        )
        self.add_page(
            "PDF", translate("hummock", "Sheets (PDF)"), translate("hummock", "The sections to scale."), made=False
        )
        self.add_numbers(
            ("COUNT", translate("hummock", "Number of cross-sections")),
            ("CROSSING", translate("hummock", "Pairs of cross-sections that cross")),
            ("SHEETS", translate("hummock", "Number of sheets")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        surfaces = [(self.surface_name(parameters, context), tin)]
        design = self.optional_surface("DESIGN", parameters, context)
        surfaces = distinct(surfaces + ([] if design is None else [design]))
        line = self.read_line(tin, parameters, context, feedback)
        progress(0.3, "alignment")
        sections = self._cut(line, surfaces, parameters, context, part(progress, 0.3, 0.5))
        report(sections.messages, feedback)
        areas = None
        if design is not None:
            noise = self.read_noise(line, tin, parameters, context, feedback, part(progress, 0.5, 0.55))
            own = second_noise(self, design[1], parameters, context, feedback)
            other = timed_noise(line, design[1], own.time, own.total, own.drift) if own.total > 0 else 0.0
            areas = section_areas(sections, noise=(NoisySurface(tin, noise), NoisySurface(design[1], other)))
        results = self._layers(sections, areas, tin, parameters, context, part(progress, 0.6, 0.8))
        path = self.parameterAsFileOutput(parameters, "PDF", context)
        if path:
            from ..core.report.section_sheets import SectionSheet, write_section_sheets  # matplotlib, only when drawn

            sheet = SectionSheet(**self.sheet_options(parameters, context))
            count = write_section_sheets(sections, path, sheet, areas, translate_core)
            results.update(PDF=path, SHEETS=count)
        return {**results, "COUNT": len(sections), "CROSSING": len(sections.crossings)}

    def _cut(
        self, line: Alignment, surfaces: Any, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> Sections:  # fmt: skip
        named = parse_stations(self.parameterAsString(parameters, "STATIONS", context), line.unit)
        distance = section_distances(
            line,
            self.parameterAsDouble(parameters, "INTERVAL", context),
            named,
            self.parameterAsBool(parameters, "VERTICES", context),
            self.parameterAsBool(parameters, "ENDS", context),
        )
        given = (self.parameterAsDouble(parameters, name, context) for name in ("LEFT", "RIGHT"))
        left, right = lengths_in(line.unit, *given)
        return cut_sections(line, distance, left, right, surfaces, progress)

    def _layers(
        self, sections: Sections, areas: Optional[SectionAreas], tin: Tin, parameters: Dict[str, Any],
        context: QgsProcessingContext, progress: Progress,
    ) -> Dict[str, Any]:  # fmt: skip
        line, crs = sections.line, qgis_crs(tin.crs)
        fields = section_fields(line)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(fields), LINE_Z, crs)
        write_section_lines(sections, tin.crs, sink, part(progress, 0.0, 0.4))
        dress_road(context, place, fields, SECTIONS)
        results = {"OUTPUT": place}
        fields = section_point_fields(line)
        sink, place = self.parameterAsSink(parameters, "POINTS_OUTPUT", context, plain(fields), POINT_Z, crs)
        if sink is not None:
            write_section_points(sections, tin.crs, sink, part(progress, 0.4, 1.0))
            dress_road(context, place, fields, SECTION_POINTS)
            results["POINTS_OUTPUT"] = place
        if areas is None:
            return results
        fields = area_fields(line)
        sink, place = self.parameterAsSink(parameters, "AREAS", context, plain(fields), NO_GEOMETRY, crs)
        if sink is not None:
            write_areas(sections, areas, sink)
            dress_road(context, place, fields)
            results["AREAS"] = place
        return results
