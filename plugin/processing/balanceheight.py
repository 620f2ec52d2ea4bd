"""The height at which a pad or a strip balances cut and fill."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingException, QgsProcessingFeedback
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.graded_site import site_of_pads, site_of_strip
from ..core.earthwork.grading_study import GradingStudy
from ..core.earthwork.pads import balance_pads, grade_pads, volume_of_pads
from ..core.earthwork.study import StudyOptions
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from .algorithm import progress_of, report
from .gradingresults import (
    add_balance_parameters,
    add_curve_output,
    add_earthwork_options,
    add_page_output,
    balance_factor,
    balance_numbers,
    studied,
    study_options,
    write_balance,
)
from .padgrading import common_height
from .padinput import add_pad_parameters, add_slope_parameters, chosen_slopes, read_pad_designs
from .parameters import optional_source
from .stripgrading import balanced_strip, graded_strip, lines_of
from .stripinput import add_strip_parameters, read_strip
from .surfaceinput import SurfaceAlgorithm
from .volumeresults import study_numbers, tell

translate = QCoreApplication.translate


class BalanceHeight(SurfaceAlgorithm):
    """``hummock:balanceheight``"""

    NAME = "balanceheight"
    ICON = "balanceheight.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Height that balances cut and fill")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate(
            "hummock", "How high a pad or a strip must lie for its cut to make its fill, and how sure that is."
        )

    def words(self) -> str:
        return translate("hummock", "balance,cut,fill,level,grading,pad,strip,profile,surplus,shrinkage,earthwork")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Finds the height at which cut, times the fill that one cubic metre of it makes, equals fill "
            "and a stated surplus: the level of a pad, one shift of several pads, or the shift of a strip's "
            "whole profile. Slopes are graded anew at each height. Give pads <i>or</i> a centreline.</p>"
            "<p><b>Result:</b> the height with its 95 % interval, volumes there, and a table and figure of "
            "cut, fill and what is left over against height: flat curves mean that a little height moves much "
            "earth, and the other way round. To make the design itself use “Grade a pad” or “Grade a strip "
            "along a line” with the balance switched on.</p>"
            "<p><b>It assumes</b> what those assume. The interval comes from the doubt of the volumes; the factor from "
            "cut to fill is taken as given, though it is often the less certain of the two.</p>"
            "<p><b>What can go wrong:</b> where no height balances, as with a surplus larger than there is "
            "earth, it says so. Where slopes run over a brow the volume jumps; what is left over is told. "
            "Quantities for payment, slopes that stand and safety need the contract, licensed practice and the "
            "local codes.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        add_pad_parameters(self, optional=True)
        add_strip_parameters(self, optional=True)
        add_slope_parameters(self)
        add_balance_parameters(self, choice=False)
        add_earthwork_options(self)
        self.add_surface_crs()
        add_curve_output(self, default=True)
        add_page_output(self)
        self.add_numbers(
            *balance_numbers(),
            ("CUT", translate("hummock", "Cut there (m³)")),
            ("FILL", translate("hummock", "Fill there (m³)")),
            ("REST", translate("hummock", "Left over (m³)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = study_options(self, tin, parameters, context, feedback)
        of_pads = optional_source(self, parameters, "PADS", context) is not None
        if of_pads == (optional_source(self, parameters, "LINE", context) is not None):
            raise QgsProcessingException(translate("hummock", "Give pads or a centreline, one of both."))
        study = self._pads if of_pads else self._strip
        found = study(tin, options, parameters, context, feedback, part(progress, 0.1, 0.9))
        progress(0.9, "layers")  # nothing is written once the user cancelled
        report(found.design_messages, feedback)
        name = translate("hummock", "the height that balances")
        results = write_balance(self, found, name, parameters, context, feedback)
        tell(found.study, feedback)
        numbers = study_numbers(found.study)
        results.update({key: numbers[key] for key in ("CUT", "FILL")})
        if found.balanced is not None:
            results["REST"] = found.balanced.balance.rest
        progress(1.0, "layers")
        return results

    def _pads(
        self, tin: Tin, options: StudyOptions, parameters: Dict[str, Any], context: QgsProcessingContext,
        feedback: QgsProcessingFeedback, progress: Progress,
    ) -> GradingStudy:  # fmt: skip
        pads = read_pad_designs(self, tin, parameters, context, feedback, True)
        surplus = self.parameterAsDouble(parameters, "SURPLUS", context)
        balance = balance_pads(tin, pads, balance_factor(options), surplus, part(progress, 0.0, 0.4))
        graded = grade_pads(tin, [pad.raised(balance.shift) for pad in pads])
        return studied(
            site_of_pads(tin, graded), options, None, balance, common_height(pads),
            lambda by: volume_of_pads(tin, [pad.raised(by) for pad in pads]), surplus, True, part(progress, 0.4, 1.0),
        )  # fmt: skip

    def _strip(
        self, tin: Tin, options: StudyOptions, parameters: Dict[str, Any], context: QgsProcessingContext,
        feedback: QgsProcessingFeedback, progress: Progress,
    ) -> GradingStudy:  # fmt: skip
        chosen = read_strip(self, tin, chosen_slopes(self, parameters, context), parameters, context, feedback)
        surplus = self.parameterAsDouble(parameters, "SURPLUS", context)
        balance = balanced_strip(tin, chosen, balance_factor(options), surplus, part(progress, 0.0, 0.4))
        graded, lines = graded_strip(tin, chosen, balance.shift), lines_of(tin, chosen, balance.shift)
        return studied(
            site_of_strip(tin, graded, chosen.line, lines), options, chosen.step, balance, float("nan"),
            lambda by: graded_strip(tin, chosen, by).volume, surplus, True, part(progress, 0.4, 1.0),
        )  # fmt: skip
