"""The CRS of a file whose format has no place for it: a file ``NAME.prj`` beside it that holds WKT.

The custom of shapefiles, known to GDAL and QGIS for many formats; QGIS does not look for it beside a
2DM mesh (tried with 3.22), so the plugin reads it itself.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any, Optional, Union

from pyproj import CRS
from pyproj.enums import WktVersion
from pyproj.exceptions import CRSError

from ..files import replace_file


def write_prj(path: Union[str, Path], crs: Optional[Any]) -> Optional[Path]:
    """Write the ``.prj`` beside the file ``path``; remove a stale one for ``crs`` None (a local grid).

    ESRI's WKT where the CRS can be said in it, WKT 2 otherwise. Returns the file written, or None.
    Raises SurveyError when it cannot be written.
    """
    target = Path(path).with_suffix(".prj")
    if crs is None:
        if target.exists():
            target.unlink()
        return None
    with replace_file(target) as temporary:
        Path(temporary).write_text(_wkt(crs) + "\n", encoding="utf-8")
    return target


def read_prj(path: Union[str, Path]) -> Optional[CRS]:
    """The CRS in the ``.prj`` beside the file ``path``, or None where there is none that can be read."""
    target = Path(path).with_suffix(".prj")
    try:
        crs = CRS.from_wkt(target.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, CRSError):
        return None
    authority = crs.to_authority(min_confidence=70)  # ESRI's WKT has no code in it
    return CRS.from_authority(*authority) if authority else crs


def _wkt(crs: CRS) -> str:
    try:
        text = crs.to_wkt(WktVersion.WKT1_ESRI)
    except CRSError:
        text = None
    return str(text or crs.to_wkt())
