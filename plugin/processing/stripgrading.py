"""A strip along a centreline graded into the ground."""

from __future__ import annotations

from typing import Any, Dict, Optional

import numpy as np
from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.balance import Balance
from ..core.earthwork.graded_site import site_of_strip
from ..core.earthwork.grading import Grading
from ..core.earthwork.strip import balance_strip, grade_strip, strip_lines
from ..core.progress import part
from ..core.surface.tin import Tin
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
    write_haul,
)
from .padinput import add_slope_parameters, chosen_slopes
from .stripinput import StripChoice, add_strip_parameters, read_strip
from .surfaceinput import SurfaceAlgorithm
from .versions import LINE_SOURCE

translate = QCoreApplication.translate


class GradeStrip(SurfaceAlgorithm):
    """``hummock:stripgrading``"""

    NAME = "stripgrading"
    ICON = "stripgrading.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Grade a strip along a line")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "A road, path or bank from a typical section at given heights, with its haul.")

    def words(self) -> str:
        return translate(
            "hummock",
            "grading,strip,road,path,bank,corridor,typical section,ditch,mass diagram,haul,cut,fill,earthwork",
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Lays a typical section along a line: lanes and shoulders with their crossfalls, ditches where "
            "the ground is above, and slopes to daylight. Heights of the centreline come from the Z of the "
            "line or from a table of stations and heights, with vertical curves (parabolas) where the table "
            "gives their length.</p><p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Tables "
            "are in metres. Between stations the strip is straight; bends are made of chords, so set a short "
            "distance of stations there. Both sides have the same slopes. At corners the edges of the strip run to "
            "where they meet; outer ones are rounded or mitred as chosen for the slopes, but mitred where a jog leaves "
            "a rounded one no room, and rounded where the line turns so far that a mitre would run far out.</p>"
            "<p><b>Mass diagram:</b> exact cut and fill from station to station, usable cut less fill summed along the "
            "line, and how far earth is hauled between places where they balance: in the layer and on the page.</p>"
            "<p><b>Balance</b> shifts the whole profile. <b>How sure</b> the volumes are rests on what you say of the "
            "points; the page compares them with average end areas and the prismoidal formula along the line.</p>"
            "<p><b>What can go wrong:</b> where a bend leaves the strip's edge no room, and where the strip runs over "
            "itself, it is refused, with the place. "
            "Ends without slopes stand as steep faces. This is no design for construction: alignment, sight, drainage, "
            "slopes that stand and traffic need licensed practice and the local codes. Locate buried services before "
            "anyone digs.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        add_strip_parameters(self)
        add_slope_parameters(self)
        add_balance_parameters(self, choice=True)
        add_earthwork_options(self)
        self.add_surface_crs()
        add_design_outputs(self)
        self.add(
            QgsProcessingParameterFeatureSink(
                "MASS", translate("hummock", "Mass diagram (pieces of the centreline)"), LINE_SOURCE, optional=True
            ),
            translate("hummock", "Cut, fill and the running balance from station to station."),
        )
        self.add_numbers(*design_numbers())

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = study_options(self, tin, parameters, context, feedback)
        chosen = read_strip(self, tin, chosen_slopes(self, parameters, context), parameters, context, feedback)
        surplus = self.parameterAsDouble(parameters, "SURPLUS", context)
        balance: Optional[Balance] = None
        if self.parameterAsBool(parameters, "BALANCE", context):
            balance = balanced_strip(tin, chosen, balance_factor(options), surplus, part(progress, 0.1, 0.4))
        shift = 0.0 if balance is None else balance.shift
        graded = graded_strip(tin, chosen, shift)
        site = site_of_strip(tin, graded, chosen.line, lines_of(tin, chosen, shift))
        found = studied(
            site, options, chosen.step, balance, float("nan"), lambda by: graded_strip(tin, chosen, by).volume, surplus,
            wants_curve(self, parameters, context), part(progress, 0.5, 0.9),
        )  # fmt: skip
        progress(0.9, "layers")  # nothing is written once the user cancelled
        results = write_design(self, found, chosen.name, parameters, context, feedback)
        results.update(write_haul(self, found, chosen.step, parameters, context))
        progress(1.0, "layers")
        return results


def _raised(chosen: StripChoice, by: float) -> np.ndarray:
    result: np.ndarray = chosen.profile + np.array([0.0, by])
    return result


def graded_strip(tin: Tin, chosen: StripChoice, by: float) -> Grading:
    """The strip with its profile so many metres higher."""
    return grade_strip(tin, chosen.line, _raised(chosen, by), chosen.section, chosen.step, chosen.sloped_ends)


def lines_of(tin: Tin, chosen: StripChoice, by: float) -> Any:
    return strip_lines(chosen.line, _raised(chosen, by), chosen.section, tin, chosen.step)


def balanced_strip(tin: Tin, chosen: StripChoice, factor: float, surplus: float, progress: Any) -> Balance:
    return balance_strip(
        tin, chosen.line, chosen.profile, chosen.section, chosen.step, factor, surplus, progress, chosen.sloped_ends
    )
