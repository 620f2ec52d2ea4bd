"""The lines of a graded design as GeoJSON, with heights."""

from __future__ import annotations

import json
from typing import Any, Iterator, Optional, Sequence

import numpy as np

from ..contours.geojson import DECIMALS, write_features
from ..earthwork.design_lines import DesignLine
from ..files import PathLike
from ..site_columns import in_site_units
from ..units import heights_to_crs_units, to_crs_units


def write_design_lines(name: str, lines: Sequence[DesignLine], crs: Optional[Any], path: PathLike) -> None:
    """Write lines as LineStrings with three coordinates in the units of ``crs``, and the property ``kind``.

    Raises SurveyError when the file cannot be written.
    """
    write_features(name, _features(lines, crs), len(lines), crs, path)


def _features(lines: Sequence[DesignLine], crs: Optional[Any]) -> Iterator[str]:
    for line in lines:
        plan, height = to_crs_units(line.xyz[:, :2], crs), heights_to_crs_units(line.xyz[:, 2], crs)
        places = (np.round(np.column_stack([plan, height]), DECIMALS) + 0.0).tolist()
        yield json.dumps(
            {
                "type": "Feature",
                "properties": in_site_units({"kind": line.kind.value, "length_m": round(line.length, 3)}, crs),
                "geometry": {"type": "LineString", "coordinates": places},
            }
        )
