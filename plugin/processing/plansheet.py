"""The topographic plan: a print layout and its PDF at a scale, over as many sheets as the site takes."""

from __future__ import annotations

from datetime import date
from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsMapLayer,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
    QgsProcessingParameterVectorLayer,
    QgsProject,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import Sheet, SheetOptions, draw_sheet
from ..core.contours.spread import spread_spots
from ..core.georeference.axes import turned
from ..core.georeference.crs import plan_unit
from ..core.handover.frames import grid_spacing, sheet_frames
from ..core.handover.plan_symbols import read_symbols
from ..core.progress import part, silent
from ..core.surface.tin import Tin
from ..core.units import metres_per_unit
from .algorithm import progress_of
from .checksource import add_check_parameters, chosen_checks
from .contours import ContourAlgorithm
from .parameters import number, optional_number, qgis_crs
from .planlayers import PlanContent, PlanLayers, write_plan_layers
from .planlayout import PAPERS, PlanSettings, PlanTexts, make_layout, sheet_paper
from .planlines import gather_lines, gather_parcels
from .planproject import add_group, export_pdf, free_name, take_away_former
from .plantexts import accuracy_notes, author_of, contour_note, place_notes, supported_decimals, surveyed_on
from .surfacenoise import told_noise
from .versions import (
    ANY_LAYER,
    LINE_SOURCE,
    NO_THREADING,
    VECTOR_SOURCE,
    WHOLE_NUMBER,
)

translate = QCoreApplication.translate

_GRID_APART = 0.1  # metres on paper
_BAR = 0.02  # metres on paper, one segment of the scale bar
_SPOTS_APART = 0.035  # metres on paper
_CLEAR = 0.002  # metres on paper, of spot heights from lines
_OVERLAP = 0.015  # metres on paper, of neighbouring sheets


class PlanSheet(ContourAlgorithm):
    """``hummock:plansheet``"""

    NAME = "plansheet"
    ICON = "plansheet.svg"
    GROUP_ID = "handover"

    def title(self) -> str:
        return translate("hummock", "Topographic plan")

    def group(self) -> str:
        return translate("hummock", "Hand-over")

    def summary(self) -> str:
        return translate("hummock", "Draws a plan at a scale as print layout and PDF, on one sheet or several.")

    def words(self) -> str:
        return translate(
            "hummock", "plan,sheet,pdf,print,layout,topographic,contours,spot heights,title block,key map,scale,paper"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Draws the topographic plan of a surface: contours with labels, spot heights that do not touch each "
            "other, your lines and parcels, grid marks with coordinates, north arrow, scale bar, legend, and what a "
            "reader must know: CRS, height datum, accuracy, contour interval, date. Where the site does not fit on one "
            "sheet at the scale, several are made, with a key map on each.</p>"
            "<p><b>You get</b> a PDF with lines and text as vectors and its fonts inside, a GeoPackage with the layers "
            "and their styles, and a print layout in the project to change by hand.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Title and author come from the "
            "project’s properties (Project › Properties › Metadata) where you leave them empty here. The height datum "
            "is that of a compound CRS; for another CRS say it, else the plan says that it is not stated.</p>"
            "<p><b>Accuracy:</b> with check points the plan carries the sentences of the accuracy statement; otherwise "
            "it says that the heights were not tested.</p>"
            "<p><b>What can go wrong:</b> contours on the plan are calmed and smoothed within the limits you state; "
            "take numbers from the surface. Layers with transparency or blending turn the map into an image in the "
            "PDF. A second run for the same files replaces the layers and the layout of the first; duplicate a layout "
            "that you want to keep. Parcels on a plan are no boundary survey, buried services are not shown, and a "
            "plan is not for setting out without independent checks: local codes and licensed practice decide who may "
            "sign it.</p>",
        )

    def flags(self) -> Any:
        """Layouts live in the main thread."""
        return super().flags() | NO_THREADING

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_level_parameters()
        self.add_drawing_parameters()
        self._add_paper_parameters()
        self._add_layer_parameters()
        self._add_text_parameters()
        self._add_outputs()

    def _add_paper_parameters(self) -> None:
        self.add(
            QgsProcessingParameterEnum(
                "PAPER", translate("hummock", "Paper"), [paper.value for paper in PAPERS], defaultValue=1
            ),
            translate("hummock", "The size of a sheet."),
        )
        self.add(
            QgsProcessingParameterBoolean("PORTRAIT", translate("hummock", "Upright"), False),
            translate("hummock", "The short side of the paper is below."),
        )
        self.add(
            number("DECIMALS", translate("hummock", "Decimals of spot heights"), None, 0, 4, WHOLE_NUMBER),
            translate("hummock", "In the unit of the interval. Empty: as many as the survey’s own noise supports."),
            advanced=True,
        )

    def _add_layer_parameters(self) -> None:
        self.add(
            QgsProcessingParameterMultipleLayers(
                "LINES", translate("hummock", "Lines of the surface"), LINE_SOURCE, optional=True
            ),
            translate(
                "hummock",
                "Breaklines, boundary and voids, such as the layer that “Build the surface” writes, and lines found "
                "without codes. Each is drawn as what its label or kind says.",
            ),
        )
        self.add(
            QgsProcessingParameterFile("SYMBOLS", translate("hummock", "Table of line symbols"), optional=True),
            translate(
                "hummock",
                "A CSV file of your own that says how lines are drawn: words, kind, name, colour, width_mm, dashes, "
                "mark, every_mm. Empty: the table in the plugin’s folder core/handover (plan_symbols.csv), a start for "
                "yours.",
            ),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterVectorLayer(
                "PARCELS", translate("hummock", "Parcels"), [VECTOR_SOURCE], optional=True
            ),
            translate("hummock", "Drawn below all else as outlines with what the layer’s display name says of each."),
        )
        self.add(
            QgsProcessingParameterMultipleLayers(
                "OTHERS", translate("hummock", "More layers"), ANY_LAYER, optional=True
            ),
            translate(
                "hummock",
                "Drawn below the contours in their own styles, the first on top. QGIS places the labels they have; "
                "where labels crowd, not alike in every run.",
            ),
        )

    def _add_text_parameters(self) -> None:
        def text(name: str, label: str, help_text: str, multi: bool = False) -> None:
            self.add(QgsProcessingParameterString(name, label, "", multi, optional=True), help_text)

        text(
            "TITLE",
            translate("hummock", "Title"),
            translate("hummock", "Empty: the title in the project’s properties."),
        )
        text(
            "AUTHOR",
            translate("hummock", "Drawn by"),
            translate("hummock", "Empty: the author in the project’s properties."),
        )
        text(
            "SURVEYED",
            translate("hummock", "Surveyed on"),
            translate("hummock", "The day of the survey, as it shall be written. Empty: by the times of the survey."),
        )
        text(
            "HEIGHT_DATUM",
            translate("hummock", "Height datum"),
            translate("hummock", "What heights are measured from. Empty: as a compound CRS says it."),
        )
        add_check_parameters(
            self,
            translate("hummock", "Independent check points in the CRS of the surface, for the accuracy on the plan."),
        )
        text(
            "NOTE",
            translate("hummock", "Further note"),
            translate("hummock", "Written with the other notes on every sheet."),
            True,
        )

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFileDestination(
                "OUTPUT", translate("hummock", "Plan (PDF)"), translate("hummock", "PDF files (*.pdf)")
            ),
            translate("hummock", "A page for each sheet."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                "LAYERS", translate("hummock", "Layers of the plan"), translate("hummock", "GeoPackage (*.gpkg)")
            ),
            translate("hummock", "Contours, labels, spot heights and sheets, with their styles."),
        )
        self.add(
            QgsProcessingParameterBoolean("KEEP", translate("hummock", "Put layers and layout into the project"), True),
            translate("hummock", "The layout is then under Project › Layouts."),
            advanced=True,
        )
        self.add_numbers(
            ("SHEETS", translate("hummock", "Number of sheets")),
            ("CONTOURS", translate("hummock", "Number of contours")),
            ("SPOT_COUNT", translate("hummock", "Number of spot heights")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = self.contour_options(tin, parameters, context)
        paper = sheet_paper(
            self.parameterAsEnum(parameters, "PAPER", context), self.parameterAsBool(parameters, "PORTRAIT", context)
        )
        scale = self.parameterAsDouble(parameters, "SCALE", context)
        on_ground = scale / 1000.0  # metres for a millimetre of paper
        frames = sheet_frames(
            tin, paper.map.width() * on_ground, paper.map.height() * on_ground, _OVERLAP * scale, scale
        )
        drawing = SheetOptions(
            self.parameterAsDouble(parameters, "SMOOTH", context),
            self.calm(tin, parameters, context, feedback),
            scale,
        )
        sheet = draw_sheet(tin, options, drawing, part(progress, 0.1, 0.5))
        spread = spread_spots(tin, _SPOTS_APART * scale, sheet.spots.xyz[:, :2], _CLEAR * scale)
        noise = told_noise(self, tin, parameters, context, feedback)
        given = optional_number(self, parameters, "DECIMALS", context)
        decimals = supported_decimals(noise, options.unit) if given is None else int(given)
        symbols = read_symbols(self.parameterAsFile(parameters, "SYMBOLS", context) or None)
        drawn = self.parameterAsLayerList(parameters, "LINES", context) or []
        lines = gather_lines(drawn, qgis_crs(tin.crs), symbols, context, feedback)
        owned = self.parameterAsVectorLayer(parameters, "PARCELS", context)
        parcels = [] if owned is None else gather_parcels(owned, qgis_crs(tin.crs), context, feedback)
        content = PlanContent(tin, sheet, spread, frames, options.unit, decimals, lines, symbols, parcels)
        place = self.parameterAsFileOutput(parameters, "LAYERS", context)
        take_away_former(context.project(), self.parameterAsFileOutput(parameters, "OUTPUT", context))
        layers = write_plan_layers(content, place, context)
        progress(0.6, "sheet")
        texts = self._texts(tin, options, sheet, surveyed_on(noise), parameters, context, feedback)
        spacing, places = grid_spacing(scale, metres_per_unit(tin.crs), _GRID_APART)
        bar, _ = grid_spacing(scale, metres_per_unit(tin.crs), _BAR)
        output = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        settings = PlanSettings(paper, scale, spacing, places, bar, plan_unit(tin.crs).symbol, output, turned(tin.crs))
        self._draw(layers, settings, texts, output, parameters, context, feedback)
        feedback.pushInfo(translate("hummock", "Sheets: {count}.").format(count=len(frames)))
        return {
            "OUTPUT": output,
            "LAYERS": place,
            "SHEETS": len(frames),
            "CONTOURS": len(sheet.contours),
            "SPOT_COUNT": len(sheet.spots) + len(spread),
        }

    # The drawing

    def _draw(
        self,
        layers: PlanLayers,
        settings: PlanSettings,
        texts: PlanTexts,
        output: str,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> None:
        """The layout in the project, or in one of its own that is thrown away, and its PDF."""
        keep = self.parameterAsBool(parameters, "KEEP", context) and context.project() is not None
        project = context.project() if keep else QgsProject()
        shown = self._shown(layers, parameters, context)
        before = set(project.mapLayers())
        if keep:
            new = [layer for layer in shown if layer.id() not in before]
            add_group(project, texts.title, layers, new, output)
        else:
            for layer in filter(None, layers):
                project.addMapLayer(layer)
        layout = make_layout(project, free_name(project, texts.title), layers, shown, settings, texts)
        export_pdf(layout, output, feedback)
        if keep:
            project.layoutManager().addLayout(layout)

    def _shown(
        self, layers: PlanLayers, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> List[QgsMapLayer]:
        """All layers of the plan, the first on top."""
        shown: List[QgsMapLayer] = [layers.labels, layers.spots]
        shown += [layers.lines] if layers.lines is not None else []
        shown.append(layers.contours)
        shown += self.parameterAsLayerList(parameters, "OTHERS", context) or []
        return [*shown, layers.parcels] if layers.parcels is not None else shown

    # The words

    def _texts(
        self,
        tin: Tin,
        options: ContourOptions,
        sheet: Sheet,
        surveyed: str,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> PlanTexts:
        def given(name: str) -> str:
            return self.parameterAsString(parameters, name, context).strip()

        metadata = None if context.project() is None else context.project().metadata()
        title = given("TITLE") or (metadata.title() if metadata else "") or translate("hummock", "Topographic plan")
        author = given("AUTHOR") or (author_of(metadata) if metadata else "")
        rows = [
            (translate("hummock", "Scale"), f"1 : {self.parameterAsDouble(parameters, 'SCALE', context):g}"),
            (translate("hummock", "Paper"), PAPERS[self.parameterAsEnum(parameters, "PAPER", context)].value),
            (translate("hummock", "Drawn by"), author),
            (translate("hummock", "Surveyed on"), given("SURVEYED") or surveyed),
            (translate("hummock", "Drawn on"), date.today().isoformat()),
        ]
        notes = [*place_notes(tin, given("HEIGHT_DATUM")), contour_note(options, sheet)]
        notes += accuracy_notes(tin, chosen_checks(self, tin, parameters, context, feedback, silent))
        notes += [given("NOTE")] if given("NOTE") else []
        notes.append(
            translate(
                "hummock",
                "Not for setting out without independent checks. Parcels are no boundary survey; buried services are "
                "not shown.",
            )
        )
        return PlanTexts(title, notes, rows)
