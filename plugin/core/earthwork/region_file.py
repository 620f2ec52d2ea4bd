"""Regions out of GeoJSON files, whose coordinates are as :mod:`..linework.geojson_file` says."""

from __future__ import annotations

from typing import Any, NamedTuple, Optional, Sequence, Tuple

from ..files import PathLike
from ..messages import Message
from .pad_file import read_pads
from .partition import Region


class RegionFile(NamedTuple):
    """The regions of a file, and what is to be told of how they came into the survey's CRS."""

    regions: Tuple[Region, ...]
    messages: Tuple[Message, ...]


def read_region_file(path: PathLike, crs: Optional[Any], accept: Sequence[str] = ()) -> RegionFile:
    """The polygons of a GeoJSON file as regions in metres of ``crs`` (None: a local grid).

    Names are the property ``name``, or numbers from 1; names that come again get a number behind them. Parts of a
    multipolygon are regions of their own. ``accept``: names of coordinate operations that the user takes. Raises
    SurveyError.
    """
    shapes, said = read_pads(path, crs, accept)
    regions = []
    met = []
    for number, shape in enumerate(shapes, 1):
        name = shape.name or str(number)
        met.append(name)
        times = met.count(name)
        regions.append(Region(name if times == 1 else f"{name} ({times})", shape.rings))
    return RegionFile(tuple(regions), said)
