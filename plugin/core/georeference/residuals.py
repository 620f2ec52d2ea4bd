"""The residuals of a fit to control as a CSV table."""

from __future__ import annotations

from typing import Any, List

import numpy as np

from ..files import PathLike, TableWriter, replace_file
from ..site_columns import rows_in_site_units
from .site import Fitted

COLUMNS = (
    "name", "used", "does_not_fit", "surveyed", "east_mm", "north_mm", "height_mm", "redundancy_east",
    "redundancy_north", "redundancy_height", "normalised_east", "normalised_north", "normalised_height",
)  # fmt: skip


def write_residuals(fitted: Fitted, path: PathLike) -> None:
    """A row for each control point that was surveyed: fitted minus control, empty where not fitted.

    The column surveyed says how often. Raises SurveyError when it cannot be written.
    """
    fit = fitted.fit
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        rows = []
        for i, name in enumerate(fit.names):
            row: List[Any] = [name, int(fit.used[i]), int(name in fit.suspects), int(fitted.match.times[i])]
            row += _rounded(1000.0 * fit.residuals[i], 2)
            row += _rounded(fit.redundancy[i], 4) + _rounded(fit.normalised[i], 3)
            rows.append(row)
        writer.writerows(rows_in_site_units(COLUMNS, rows, fitted.points.crs))


def _rounded(values: np.ndarray, decimals: int) -> List[Any]:
    return [round(float(value), decimals) + 0.0 if np.isfinite(value) else "" for value in values]
