"""Labels of contours and spot heights as GeoJSON, in the system of their contours (see :mod:`.geojson`)."""

from __future__ import annotations

import json
from typing import Any, Dict, Iterator, List, Optional, Tuple

import numpy as np

from ..files import PathLike
from ..units import LengthUnit, heights_to_crs_units, to_crs_units
from .geojson import DECIMALS, write_features
from .labels import Labels
from .lines import Contours
from .spots import SpotKind, Spots

#: Of the text of a spot height.
SPOT_DECIMALS = 2


def write_labels(labels: Labels, contours: Contours, path: PathLike) -> None:
    """Write ``labels`` of ``contours`` as points at the middle of their text.

    Properties: ``text``; ``rotation``, degrees clockwise from reading eastwards, as QGIS turns labels; ``size`` of
    the typeface in the unit of the CRS; ``level`` in ``unit`` and ``index`` of the contour. Raises ``SurveyError``
    when the file cannot be written.
    """
    write_features("labels", _labels(labels, contours), len(labels), contours.crs, path)


def write_spots(spots: Spots, unit: LengthUnit, crs: Optional[Any], path: PathLike) -> None:
    """Write ``spots`` as points with height, in the units of ``crs``.

    Properties: ``kind`` ("summit", "pit", "saddle"); ``height`` and ``prominence`` in ``unit``; ``text``, the
    height to two decimals; ``height_m`` in metres; ``on_rim``. Raises ``SurveyError`` when the file cannot
    be written.
    """
    write_features("spots", _spots(spots, unit, crs), len(spots), crs, path)


def _labels(labels: Labels, contours: Contours) -> Iterator[str]:
    places = to_crs_units(labels.xy + labels.origin, contours.crs)
    size = round(float(to_crs_units(labels.height, contours.crs)), DECIMALS)
    rows = zip(places.tolist(), labels.rotation.tolist(), labels.text, labels.line.tolist())
    for place, rotation, text, line in rows:
        properties = {
            "text": text,
            "rotation": round(-rotation, 2) + 0.0,  # no minus zero
            "size": size,
            "level": float(contours.level_in_unit[line]),
            "unit": contours.options.unit.value,
            "index": bool(contours.index[line]),
        }
        yield _point(place, properties)


def _spots(spots: Spots, unit: LengthUnit, crs: Optional[Any]) -> Iterator[str]:
    plan = to_crs_units(spots.xyz[:, :2] + spots.origin, crs)
    places = np.column_stack([plan, heights_to_crs_units(spots.xyz[:, 2], crs)])
    rows: Iterator[Tuple[List[float], int, float, float, bool]] = zip(
        places.tolist(), spots.kind.tolist(), spots.xyz[:, 2].tolist(), spots.prominence.tolist(), spots.on_rim.tolist()
    )
    for place, kind, height, prominence, on_rim in rows:
        properties = {
            "kind": SpotKind(kind).name.lower(),
            "text": f"{height / unit.metres:.{SPOT_DECIMALS}f}",
            "height": round(height / unit.metres, 6),
            "prominence": round(prominence / unit.metres, 6),
            "unit": unit.value,
            "height_m": round(height, 6),
            "on_rim": on_rim,
        }
        yield _point(place, properties)


def _point(place: List[float], properties: Dict[str, Any]) -> str:
    coordinates = ", ".join(f"{value:.{DECIMALS}f}" for value in place)
    geometry = f'{{"type": "Point", "coordinates": [{coordinates}]}}'
    return f'{{"type": "Feature", "properties": {json.dumps(properties)}, "geometry": {geometry}}}'
