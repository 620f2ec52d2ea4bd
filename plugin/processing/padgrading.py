"""Pads graded into the ground."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.balance import Balance
from ..core.earthwork.graded_site import site_of_pads
from ..core.earthwork.pads import PadDesign, balance_pads, grade_pads, volume_of_pads
from ..core.progress import part
from .algorithm import progress_of
from .gradingresults import (
    add_balance_parameters,
    add_design_outputs,
    add_earthwork_options,
    balance_factor,
    design_numbers,
    studied,
    study_options,
    wants_curve,
    write_design,
)
from .padinput import add_pad_parameters, add_slope_parameters, read_pad_designs
from .surfaceinput import SurfaceAlgorithm

translate = QCoreApplication.translate


class GradePads(SurfaceAlgorithm):
    """``hummock:padgrading``"""

    NAME = "padgrading"
    ICON = "padgrading.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Grade a pad")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Levels polygons, or slopes them, with slopes of cut and fill to daylight.")

    def words(self) -> str:
        return translate("hummock", "grading,pad,platform,yard,level,slope,batter,daylight,cut,fill,balance,earthwork")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Grades each polygon to a level or a sloping plane, and from its edges slopes of cut up and slopes of "
            "fill down until they meet the ground (daylight). The result is an exact surface: the design, and the "
            "finished ground with it in.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Levels are heights in the unit of the "
            "CRS, at the middle of a pad's bounding box; slopes are 1 up or down in n out, square to the edge. Holes "
            "keep their ground but for the slopes into them. Several pads are graded one after another, in the "
            "order of the layer: each into the ground as those before it leave it, so that where they meet, touch or "
            "overlap the later one counts. Where one reaches into another, that is said. Ground that lies on a slope "
            "already stays as it is.</p>"
            "<p><b>Slopes of single edges:</b> lines along them, with the fields cut_run and fill_run. They can differ "
            "where edges meet at a corner sharp enough for the slopes to meet, on outlines whose slopes do not run "
            "back across the pad; else they are refused.</p>"
            "<p><b>Balance:</b> the height at which cut, times the fill one cubic metre of it makes, equals fill and a "
            "stated surplus, to a tenth of a millimetre, and how sure it is. For several pads: one shift of all.</p>"
            "<p><b>How sure:</b> volumes come with their 95 % interval from what you say of the points; see “Volume "
            "between two surfaces”. The page compares them with a grid, average end areas and the prismoidal "
            "formula.</p>"
            "<p><b>What can go wrong:</b> where the survey ends before the slopes meet the ground it says so, "
            "and volumes stop there. This is no design for construction: whether slopes stand, drainage, "
            "walls, and safety while digging need licensed practice and the local codes. Locate buried "
            "services before anyone digs.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        add_pad_parameters(self)
        add_slope_parameters(self)
        add_balance_parameters(self, choice=True)
        add_earthwork_options(self)
        self.add_surface_crs()
        add_design_outputs(self)
        self.add_numbers(*design_numbers())

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = study_options(self, tin, parameters, context, feedback)
        balancing = self.parameterAsBool(parameters, "BALANCE", context)
        pads = read_pad_designs(self, tin, parameters, context, feedback, balancing)
        surplus = self.parameterAsDouble(parameters, "SURPLUS", context)
        balance: Optional[Balance] = None
        if balancing and pads:
            balance = balance_pads(tin, pads, balance_factor(options), surplus, part(progress, 0.1, 0.4))
        shift = 0.0 if balance is None else balance.shift
        graded = grade_pads(tin, [pad.raised(shift) for pad in pads], part(progress, 0.4, 0.5))
        found = studied(
            site_of_pads(tin, graded), options, None, balance, common_height(pads),
            lambda by: volume_of_pads(tin, [pad.raised(by) for pad in pads]), surplus,
            wants_curve(self, parameters, context), part(progress, 0.5, 0.9),
        )  # fmt: skip
        progress(0.9, "layers")  # nothing is written once the user cancelled
        name = pads[0].name if len(pads) == 1 else translate("hummock", "{count} pads").format(count=len(pads))
        results = write_design(self, found, name, parameters, context, feedback)
        progress(1.0, "layers")
        return results


def common_height(pads: List[PadDesign]) -> float:
    """The height (m) of the pads, nan where they are not of one."""
    heights = {pad.plane.height for pad in pads}
    return heights.pop() if len(heights) == 1 else float("nan")
