"""What is written on a topographic plan: where it lies, how good it is, how it was drawn."""

from __future__ import annotations

from datetime import datetime, timezone
from math import isfinite
from typing import Any, List, Optional

import numpy as np
from qgis.core import QgsApplication, QgsProjectMetadata
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import Sheet
from ..core.georeference.crs import height_datum
from ..core.georeference.ground_grid import grid_convergence
from ..core.handover.mesh_noise import MeshNoise
from ..core.messages import fill
from ..core.quality.accuracy import CheckPoints, accuracy_statement
from ..core.surface.tin import Tin
from ..core.units import LengthUnit, site_units
from .algorithm import say

translate = QCoreApplication.translate


def place_notes(tin: Tin, datum: str) -> List[str]:
    """CRS, heights, and where grid north lies."""
    crs: Any = tin.crs
    plan = crs.sub_crs_list[0] if crs.sub_crs_list else crs
    heights = datum or height_datum(crs) or translate("hummock", "datum not stated")
    code = ":".join(crs.to_authority() or ())
    notes = [
        translate("hummock", "Coordinates: {crs}").format(crs=f"{plan.name} ({code})" if code else plan.name),
        translate("hummock", "Heights: {datum}").format(datum=heights),
    ]
    west, south, east, north = tin.bounds
    turn = grid_convergence(crs, (west + east) / 2, (south + north) / 2)
    if isfinite(turn):
        notes.append(
            translate("hummock", "Grid north is {angle:.2f}° {side} of true north here.").format(
                angle=abs(turn), side=translate("hummock", "east") if turn > 0 else translate("hummock", "west")
            )
        )
    return notes


def author_of(metadata: QgsProjectMetadata) -> str:
    """The author in a project's properties, but for what QGIS puts there by itself: the name of the login."""
    author = metadata.author()
    return "" if author in (QgsApplication.userLoginName(), QgsApplication.userFullName()) else author


def surveyed_on(noise: Optional[MeshNoise]) -> str:
    """The days (UTC) of a survey by the times of its points; nothing where it has none."""
    if noise is None or noise.time is None or not np.isfinite(noise.time).any():
        return ""
    first, last = (
        datetime.fromtimestamp(float(limit), timezone.utc).date().isoformat()
        for limit in (np.nanmin(noise.time), np.nanmax(noise.time))
    )
    return first if first == last else f"{first} – {last}"


def supported_decimals(noise: Optional[MeshNoise], unit: LengthUnit) -> int:
    """Decimals of a height in ``unit`` whose last digit is about as large as its standard deviation; 2 if unknown."""
    if noise is None or not noise.total > 0:
        return 2
    return int(np.clip(round(-np.log10(noise.total / unit.metres)), 0, 3))


def contour_note(options: ContourOptions, sheet: Sheet) -> str:
    """Interval, and how far the drawing is from the surface."""
    text = translate(
        "hummock",
        "Contour interval {interval:g} {unit}, index every {every}. For drawing, heights were moved by up to "
        "{moved:.3f} m and lines by up to {shifted:.2f} m in plan.",
    )
    said = {
        "interval": options.interval,
        "unit": options.unit.symbol,
        "every": options.index_every,
        "moved": sheet.moved,
        "shifted": sheet.shifted,
    }
    return fill(text, said, units=site_units(sheet.contours.crs, options.unit))


def accuracy_notes(tin: Tin, checks: Optional[CheckPoints]) -> List[str]:
    """The sentences of the accuracy statement, or that the heights were not tested."""
    if checks is None:
        return [translate("hummock", "Heights were not tested against independent check points.")]
    return [say(one) for one in accuracy_statement(tin, checks).statements]
