"""What is written on a topographic plan: where it lies, how good it is, how it was drawn."""

from __future__ import annotations

from math import isfinite
from typing import Any, List

from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import Sheet
from ..core.georeference.crs import height_datum
from ..core.georeference.ground_grid import grid_convergence
from ..core.messages import fill
from ..core.surface.tin import Tin
from ..core.units import site_units

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
