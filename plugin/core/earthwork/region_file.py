"""Regions out of GeoJSON files, whose coordinates are as :mod:`..linework.geojson_file` says."""

from __future__ import annotations

from typing import Any, Optional, Tuple

from ..files import PathLike
from .pad_file import read_pads
from .partition import Region


def read_region_file(path: PathLike, crs: Optional[Any]) -> Tuple[Region, ...]:
    """The polygons of a GeoJSON file as regions in metres of ``crs`` (None: a local grid).

    Names are the property ``name``, or numbers from 1; names that come again get a number behind them. Parts of a
    multipolygon are regions of their own. Raises SurveyError.
    """
    regions = []
    met = []
    for number, shape in enumerate(read_pads(path, crs), 1):
        name = shape.name or str(number)
        met.append(name)
        times = met.count(name)
        regions.append(Region(name if times == 1 else f"{name} ({times})", shape.rings))
    return tuple(regions)
