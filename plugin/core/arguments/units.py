"""The units that options are in where nothing says them: those of the CRS."""

from __future__ import annotations

import argparse
from typing import Any, Optional

from ..units import LengthUnit, SiteUnits, site_units


def units_asked(options: argparse.Namespace) -> SiteUnits:
    """Distances in the unit of the CRS, heights in that of --interval-unit, else in that of the CRS.

    Metres while there is no CRS, which the job refuses. Raises SurveyError for one that is not understood.
    """
    said = LengthUnit(options.interval_unit) if options.interval_unit else None
    return site_units(_crs(options), said)


def _crs(options: argparse.Namespace) -> Optional[Any]:
    from ..georeference.crs import read_crs

    return read_crs(options.crs) if (options.crs or "").strip() else None
