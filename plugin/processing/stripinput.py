"""A strip: a line, its profile and its typical section, out of parameters."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.profile_design import profile_of_line, read_profile
from ..core.earthwork.section_table import read_section
from ..core.earthwork.side_slopes import SideSlopes
from ..core.earthwork.strip import Ditch, HalfSection, TypicalSection
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm
from .drawnsource import drawn_parts
from .parameters import chosen_source, given_file, number, tables
from .versions import LINE_SOURCE

translate = QCoreApplication.translate


@dataclass(frozen=True)
class StripChoice:
    """``line``: (k, 2) metres; ``profile``: (p, 2); ``step``: metres between stations."""

    line: np.ndarray
    profile: np.ndarray
    section: TypicalSection
    step: float
    sloped_ends: bool
    name: str


def add_strip_parameters(algorithm: HummockAlgorithm, optional: bool = False) -> None:
    """LINE, PROFILE, SECTION, the parameters of a simple section, STEP and SLOPED_ENDS."""
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "LINE", translate("hummock", "Centreline (one line)"), [LINE_SOURCE], optional=optional
        ),
        translate("hummock", "A layer with one line, or with one selected. Stations count from its first vertex."),
    )
    algorithm.add(
        given_file("PROFILE", translate("hummock", "Profile (CSV; empty: the Z of the line)"), tables()),
        translate(
            "hummock",
            "Columns station and height, in metres, and if wanted curve, the length of the vertical curve about the "
            "place. Straight between them.",
        ),
    )  # fmt: skip
    algorithm.add(
        given_file("SECTION", translate("hummock", "Typical section (CSV; empty: from the values below)"), tables()),
        translate(
            "hummock",
            "Columns side (left, right, both), part (its name, or ditch, cut slope, fill slope), width (m), "
            "crossfall (%), depth (m) and run (1 : n), rows from the centreline outward.",
        ),
    )  # fmt: skip
    values = (
        ("LANE_WIDTH", translate("hummock", "Width of the lane on each side (m)"), 3.0, 0.01, 1000.0),
        ("CROSSFALL", translate("hummock", "Crossfall of the lane (%; below 0 falls outward)"), -2.5, -100.0, 100.0),
        ("SHOULDER_WIDTH", translate("hummock", "Width of the shoulder on each side (m; 0: none)"), 0.0, 0.0, 1000.0),
        ("SHOULDER_FALL", translate("hummock", "Crossfall of the shoulder (%)"), -4.0, -100.0, 100.0),
        ("DITCH_DEPTH", translate("hummock", "Depth of the ditch below the edge (m; 0: none)"), 0.0, 0.0, 100.0),
        ("DITCH_BOTTOM", translate("hummock", "Width of the ditch's bottom (m)"), 0.5, 0.0, 100.0),
        ("DITCH_RUN", translate("hummock", "Inner side of the ditch, 1 : n"), 2.0, 0.0, 100.0),
    )
    for name, label, default, least, most in values:
        algorithm.add(
            number(name, label, default, least, most),
            translate(
                "hummock", "Without a typical section out of a table. Ditches are dug where the ground is above."
            ),
            advanced=name not in ("LANE_WIDTH", "CROSSFALL"),
        )
    algorithm.add(
        number("STEP", translate("hummock", "Distance of stations (m)"), 5.0, 0.01),
        translate("hummock", "Between them the strip runs straight; corners of the line have stations of their own."),
    )
    algorithm.add(
        QgsProcessingParameterBoolean("SLOPED_ENDS", translate("hummock", "Slopes at both ends too"), False),
        translate("hummock", "Otherwise the strip ends with a steep face where it is above or below the ground."),
        advanced=True,
    )


def read_strip(
    algorithm: HummockAlgorithm,
    tin: Tin,
    slopes: SideSlopes,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> StripChoice:
    """The strip asked for. Raises SurveyError, QgsProcessingException."""
    line, name = _line(algorithm, tin, parameters, context, feedback)
    path = algorithm.parameterAsFile(parameters, "PROFILE", context)
    profile = read_profile(path) if path else profile_of_line(line)
    if not path and len(profile) < 2:
        raise QgsProcessingException(
            translate("hummock", "{name}: the line has no heights; give it Z, or a profile.").format(name=name)
        )
    path = algorithm.parameterAsFile(parameters, "SECTION", context)
    section = read_section(path, slopes) if path else _simple_section(algorithm, slopes, parameters, context)
    step = algorithm.parameterAsDouble(parameters, "STEP", context)
    ends = algorithm.parameterAsBool(parameters, "SLOPED_ENDS", context)
    return StripChoice(line[:, :2], profile, section, step, ends, name)


def _simple_section(
    algorithm: HummockAlgorithm, slopes: SideSlopes, parameters: Dict[str, Any], context: QgsProcessingContext
) -> TypicalSection:
    def value(name: str) -> float:
        return float(algorithm.parameterAsDouble(parameters, name, context))

    lanes, names = [(value("LANE_WIDTH"), value("CROSSFALL") / 100)], [translate("hummock", "lane")]
    if value("SHOULDER_WIDTH") > 0:
        lanes.append((value("SHOULDER_WIDTH"), value("SHOULDER_FALL") / 100))
        names.append(translate("hummock", "shoulder"))
    ditch: Optional[Ditch] = None
    if value("DITCH_DEPTH") > 0:
        ditch = Ditch(value("DITCH_DEPTH"), value("DITCH_RUN"), value("DITCH_BOTTOM"))
    half = HalfSection(tuple(lanes), ditch, tuple(names))
    return TypicalSection(half, half, slopes)


def _line(
    algorithm: HummockAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Tuple[np.ndarray, str]:
    """The one line (k, 3) in metres and what to call it."""
    source = chosen_source(algorithm, parameters, "LINE", context)
    label = source.sourceName() or "LINE"
    drawn = drawn_parts(source, tin.crs, context, feedback)
    lines = [part for _, parts in drawn for part in parts if len(part) > 1]
    if len(lines) != 1:
        raise QgsProcessingException(
            translate("hummock", "{layer}: it has {count} lines; a strip follows one. Select it.").format(
                layer=label, count=len(lines)
            )
        )
    return lines[0], label
