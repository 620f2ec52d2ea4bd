"""Survey points from files that are no plain text, through GDAL: GPX, KML, GeoJSON, GeoPackage, Shapefile, XLSX, ODS,
and any of these, or text, in a zip or gz archive.

A layer becomes a table of text, a header and a line for each feature or row, which is then read like any other file:
units, roles and codes are recognised in it, and every line is accounted for.
"""

from __future__ import annotations

import contextlib
import os
import uuid
from typing import Any, Iterator, List, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .gdal_rows import Layer, cell_of, feature_rows, in_its_crs, sheet_rows
from .questions import Answer, Question, QuestionError, Topic
from .source import TableForm, TextSource, text_of_bytes

NO_GDAL = Text(
    "source.no_gdal",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: a {kind} file is read through GDAL, which this Python lacks; run the Python that QGIS uses, install "
        "the package gdal, or export delimited text (CSV).",
    ),
)
CANNOT_OPEN = Text(
    "source.cannot_open",
    QT_TRANSLATE_NOOP("core", "{file}: GDAL cannot read it as {kind} ({reason}); export delimited text (CSV)."),
)
NO_LAYER = Text(
    "source.no_layer",
    QT_TRANSLATE_NOOP("core", "{file}: has no layer '{layer}'; give --layer with one of: {layers}."),
)
NOTHING_IN_IT = Text(
    "source.nothing_in_it", QT_TRANSLATE_NOOP("core", "{file}: has no layer or sheet with points; export it again.")
)
NO_SIDECARS = Text(
    "source.no_sidecars",
    QT_TRANSLATE_NOOP("core", "{file}: a Shapefile is read with the files beside it; give its path, or zip them all."),
)
WHICH_LAYER = Text(
    "source.which_layer", QT_TRANSLATE_NOOP("core", "it has {count} layers or sheets that may hold the points")
)
WHICH_MEMBER = Text("source.which_member", QT_TRANSLATE_NOOP("core", "the archive holds {count} files"))
LAYER = Text("source.layer", QT_TRANSLATE_NOOP("core", "{count} points or rows"))
MEMBER = Text("source.member", QT_TRANSLATE_NOOP("core", "this file"))
READ_AS = Text("source.read_as", QT_TRANSLATE_NOOP("core", "{file}: read through GDAL as {kind}, layer {layer}."))

#: An archive may hold no more than this, bytes; more is no survey.
_MOST_BYTES = 2_000_000_000
_SHEETS = ("XLSX", "ODS", "XLS")
_MOST_ANSWERS = 12


def kind_of(file: str, raw: bytes) -> str:
    """What a file is that GDAL reads: its name for people, "" for text."""
    head = raw[:4096]
    if head.startswith(b"PK\x03\x04"):
        return "ODS" if b"oasis.opendocument.spreadsheet" in head else "XLSX" if _has(raw, b"xl/workbook") else "zip"
    if head.startswith(b"\x1f\x8b"):
        return "gz"
    if head.startswith(b"SQLite format 3\0"):
        return "GeoPackage"
    if head.startswith(b"\x00\x00\x27\x0a"):
        return "Shapefile"
    if head.startswith(b"\xd0\xcf\x11\xe0"):
        return "XLS"
    if head.startswith(b"fgb\x03fgb"):
        return "FlatGeobuf"
    text = head.lstrip(b"\xef\xbb\xbf \t\r\n").replace(b"\0", b"")
    if text.startswith(b"<"):
        return next(
            (kind for mark, kind in ((b"<gpx", "GPX"), (b"<kml", "KML"), (b"opengis.net/gml", "GML")) if mark in text),
            "",
        )
    if (
        text.startswith(b"{")
        and b'"type"' in text
        and any(mark in text for mark in (b'"Feature', b'"features"', b'"Point', b'"LineString', b'"coordinates"'))
    ):
        return "GeoJSON"
    return ""


def _has(raw: bytes, name: bytes) -> bool:
    return name in raw[:65536] or name in raw[-65536:]


def load_through_gdal(file: str, raw: bytes, kind: str, layer: str, encoding: Optional[str]) -> TextSource:
    """The table of one layer of a file, or the text of one file in an archive. Raises SurveyError, and QuestionError
    where several may be meant.
    """
    gdal = _gdal(file, kind)
    regular = os.path.isfile(file)
    if kind == "Shapefile" and not regular:
        raise SurveyError(NO_SIDECARS, file=file)
    path = file if regular else f"/vsimem/{uuid.uuid4().hex}"
    if not regular:
        gdal.FileFromMemBuffer(path, raw)
    try:
        with _settings(gdal):
            if kind in ("zip", "gz"):
                archive = f"/vsi{'zip' if kind == 'zip' else 'gzip'}/{path}"
                return _from_archive(gdal, file, archive, kind, layer, encoding)
            return _from_layers(gdal, file, path, kind, layer)
    except RuntimeError as error:  # GDAL where it is told to raise
        raise SurveyError(CANNOT_OPEN, file=file, kind=kind, reason=" ".join(str(error).split())[:120]) from None
    finally:
        if not regular:
            gdal.Unlink(path)


def _gdal(file: str, kind: str) -> Any:
    try:
        from osgeo import gdal
    except ImportError:
        raise SurveyError(NO_GDAL, file=file, kind=kind) from None
    return gdal


def _from_archive(gdal: Any, file: str, path: str, kind: str, layer: str, encoding: Optional[str]) -> TextSource:
    """What an archive holds: text, or a file that GDAL reads. ``layer``: member, or member and layer with : between."""
    members = [""] if kind == "gz" else _members(gdal, path)
    wanted, _, inner = layer.partition(":")
    fitting = [one for one in members if one == wanted] if wanted and kind == "zip" else members
    if wanted and not fitting:
        if len(members) > 1:
            raise SurveyError(NO_LAYER, file=file, layer=wanted, layers=", ".join(members[:_MOST_ANSWERS]))
        fitting, inner = members, layer
    if not fitting:
        raise SurveyError(NOTHING_IN_IT, file=file)
    if len(fitting) > 1:
        answers = tuple(Answer("--layer", one, message(MEMBER)) for one in fitting[:_MOST_ANSWERS])
        raise QuestionError(file, [Question(Topic.LAYER, message(WHICH_MEMBER, count=len(fitting)), answers)])
    whole = f"{path}/{fitting[0]}" if fitting[0] else path
    raw = _bytes_in(gdal, file, whole, kind)
    inside = kind_of(whole, raw)
    if not inside:
        return text_of_bytes(file, raw, encoding)
    return _from_layers(gdal, file, whole, inside, inner)


def _members(gdal: Any, path: str) -> List[str]:
    """Files in an archive that may hold points, without what stands beside a Shapefile or belongs to a machine."""
    found = gdal.ReadDirRecursive(path) or []
    files = [one for one in found if not one.endswith("/") and not one.startswith("__MACOSX") and "/." not in f"/{one}"]
    shapes = {os.path.splitext(one)[0] for one in files if one.lower().endswith(".shp")}
    keep = [one for one in files if one.lower().endswith(".shp") or os.path.splitext(one)[0] not in shapes]
    return [one for one in keep if not one.lower().endswith((".png", ".jpg", ".jpeg", ".xml", ".pdf", ".prj", ".qml"))]


def _bytes_in(gdal: Any, file: str, path: str, kind: str) -> bytes:
    about = gdal.VSIStatL(path)
    stream = gdal.VSIFOpenL(path, "rb") if about is not None and about.size <= _MOST_BYTES else None
    if stream is None:
        raise SurveyError(CANNOT_OPEN, file=file, kind=kind, reason="?")
    try:
        parts: List[bytes] = []
        size = 0
        while size <= _MOST_BYTES:
            part = gdal.VSIFReadL(1, 1 << 22, stream)
            if not part:
                return b"".join(parts)
            parts.append(bytes(part))
            size += len(part)
    finally:
        gdal.VSIFCloseL(stream)
    raise SurveyError(CANNOT_OPEN, file=file, kind=kind, reason=f"> {_MOST_BYTES} bytes")


def _from_layers(gdal: Any, file: str, path: str, kind: str, layer: str) -> TextSource:
    dataset, reason = _opened(gdal, path, kind)
    if dataset is None:
        raise SurveyError(CANNOT_OPEN, file=file, kind=kind, reason=reason)
    layers = []
    for i in range(dataset.GetLayerCount()):
        one = dataset.GetLayer(i)
        layers.append(Layer(one.GetName(), one.GetFeatureCount(), one))
    if layer:
        chosen = [one for one in layers if one.name == layer] if layer != "*" else layers
        if not chosen:
            raise SurveyError(NO_LAYER, file=file, layer=layer, layers=", ".join(one.name for one in layers))
    else:
        chosen = _only_one(file, [one for one in layers if one.features], kind)
    sheet = kind in _SHEETS
    rows = sheet_rows(chosen) if sheet else feature_rows(chosen)
    text = "".join("\t".join(map(cell_of, row)) + "\n" for row in rows).encode("utf-8", "replace")
    if not text.strip():
        raise SurveyError(NOTHING_IN_IT, file=file)
    source = text_of_bytes(file, text, "utf-8")
    notes: Tuple[Message, ...] = (message(READ_AS, file=file, kind=kind, layer=", ".join(one.name for one in chosen)),)
    crs = "" if sheet or not in_its_crs(chosen[0].layer) else _crs_of(chosen[0].layer)
    return TextSource(file, source.data, source.lines, False, "utf-8", notes, source.stood, TableForm(not sheet, crs))


def _opened(gdal: Any, path: str, kind: str) -> Tuple[Any, str]:
    """The dataset, None where GDAL cannot read it, and why."""
    gdal.ErrorReset()
    try:
        dataset = gdal.OpenEx(path, gdal.OF_VECTOR)
    except RuntimeError as error:
        return None, " ".join(str(error).split())[:120]
    return dataset, " ".join(gdal.GetLastErrorMsg().split())[:120] or "?"


#: Heights of GPX as Z; the first row of a sheet as it stands, as the reader knows headers better.
_CONFIG = {
    "GPX_ELE_AS_25D": "YES",
    "OGR_XLSX_HEADERS": "DISABLE",
    "OGR_ODS_HEADERS": "DISABLE",
    "OGR_XLS_HEADERS": "DISABLE",
}


@contextlib.contextmanager
def _settings(gdal: Any) -> Iterator[None]:
    """GDAL quiet and set as :data:`_CONFIG` says; layers are read late, so to the end."""
    before = {key: gdal.GetConfigOption(key) for key in _CONFIG}
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    try:
        for key, value in _CONFIG.items():
            gdal.SetConfigOption(key, value)
        yield
    finally:
        for key, value in before.items():
            gdal.SetConfigOption(key, value)
        gdal.PopErrorHandler()


def _only_one(file: str, layers: List[Layer], kind: str) -> List[Layer]:
    """The layer with points; a question where there are several."""
    if kind == "GPX":
        layers = [one for one in layers if one.name in ("waypoints", "track_points", "route_points")]
    if not layers:
        raise SurveyError(NOTHING_IN_IT, file=file)
    if len(layers) == 1:
        return layers
    answers = [Answer("--layer", one.name, message(LAYER, count=one.features)) for one in layers[:_MOST_ANSWERS]]
    if kind not in _SHEETS:
        answers.append(Answer("--layer", "*", message(LAYER, count=sum(one.features for one in layers))))
    raise QuestionError(file, [Question(Topic.LAYER, message(WHICH_LAYER, count=len(layers)), tuple(answers))])


def _crs_of(layer: Any) -> str:
    crs = layer.GetSpatialRef()
    return crs.ExportToWkt(["FORMAT=WKT2_2019"]) if crs is not None else ""
