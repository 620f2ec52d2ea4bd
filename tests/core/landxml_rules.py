"""Rules of the LandXML 1.2 schema, from memory, for the elements that Hummock writes; and a checker.

The schema itself is not copied here: what stands below is what its authors' public documentation says of elements,
their order, needed attributes and enumerations, as remembered.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ElementTree
from pathlib import Path
from types import MappingProxyType
from typing import Dict, List, Mapping, NamedTuple, Set, Tuple

NAMESPACE = "{http://www.landxml.org/schema/LandXML-1.2}"

NUMBER = r"[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?"
REAL = rf"({NUMBER}|INF)"
WHOLE = r"\d+"
WORDS = r".*"
NAME = r".+"
DATE, TIME = r"\d{4}-\d\d-\d\d", r"\d\d:\d\d:\d\d(\.\d+)?(Z|[-+]\d\d:\d\d)?"
TRUTH = r"(true|false|0|1)"


def numbers(*counts: int) -> str:
    return "|".join(rf"\s*{NUMBER}(\s+{NUMBER}){{{count - 1}}}\s*" for count in counts)


def lists(size: int) -> str:
    return rf"\s*({NUMBER}(\s+{NUMBER}){{{size - 1}}}\s*)+"


class Rule(NamedTuple):
    """``children``: names in order with least and most (0: any); ``needed``, ``allowed``: attributes with patterns."""

    children: Tuple[Tuple[str, int, int], ...] = ()
    needed: Mapping[str, str] = MappingProxyType({})
    allowed: Mapping[str, str] = MappingProxyType({})
    text: str = r"\s*"
    any_order: bool = False


ANGLES = r"(radians|grads|decimal degrees|decimal dd.mm.ss)"
UNITS = {
    "Metric": Rule(
        needed={
            "areaUnit": "(hectare|squareMeter|squareMillimeter|squareCentimeter)",
            "linearUnit": "(millimeter|centimeter|meter|kilometer)",
            "volumeUnit": "(cubicMeter|liter|hectareMeter)",
            "temperatureUnit": "(celsius|kelvin)",
            "pressureUnit": "(HPA|milliBars|mmHG|millimeterHG)",
        },
        allowed={"angularUnit": ANGLES, "directionUnit": ANGLES, "elevationUnit": "(meter|kilometer|feet|miles)"},
    ),
    "Imperial": Rule(
        needed={
            "areaUnit": "(acre|squareFoot|squareInch|squareMiles)",
            "linearUnit": "(foot|USSurveyFoot|inch|mile)",
            "volumeUnit": "(US_gallon|IMP_gallon|cubicInch|cubicFeet|cubicYard|acreFeet)",
            "temperatureUnit": "(fahrenheit|kelvin)",
            "pressureUnit": "(inHG|inH2O)",
        },
        allowed={"angularUnit": ANGLES, "directionUnit": ANGLES, "elevationUnit": "(meter|kilometer|feet|miles)"},
    ),
}
DESCRIBED = {"name": NAME, "desc": WORDS, "code": WORDS, "state": WORDS, "pntRef": NAME}
RULES: Dict[str, Rule] = {
    "LandXML": Rule(
        (
            ("Units", 1, 1), ("CoordinateSystem", 0, 1), ("Project", 0, 1), ("Application", 0, 0),
            ("Alignments", 0, 0), ("CgPoints", 0, 0), ("Surfaces", 0, 0),
        ),
        {"date": DATE, "time": TIME, "version": r"1\.2"},
        {"language": WORDS, "readOnly": TRUTH, "LandXMLId": WHOLE, "crc": WHOLE,
         "{http://www.w3.org/2001/XMLSchema-instance}schemaLocation": r"\S+ \S+"},
    ),
    "Units": Rule((("Metric", 0, 1), ("Imperial", 0, 1))),
    **UNITS,
    "CoordinateSystem": Rule(
        allowed={"name": NAME, "desc": WORDS, "epsgCode": WHOLE, "ogcWktCode": NAME, "horizontalDatum": NAME,
                 "verticalDatum": NAME, "ellipsoidName": NAME, "projectedCoordinateSystemName": NAME}
    ),
    "Project": Rule(needed={"name": NAME}, allowed={"desc": WORDS, "state": WORDS}),
    "Application": Rule(
        needed={"name": NAME},
        allowed={"desc": WORDS, "manufacturer": WORDS, "version": WORDS, "manufacturerURL": WORDS, "timeStamp": WORDS},
    ),
    "CgPoints": Rule((("CgPoint", 0, 0),), allowed=DESCRIBED),
    "CgPoint": Rule(allowed=DESCRIBED, text=numbers(2, 3)),
    "Surfaces": Rule((("Surface", 1, 0),), allowed={"name": NAME, "desc": WORDS, "state": WORDS}),
    "Surface": Rule(
        (("SourceData", 0, 1), ("Definition", 0, 1)), {"name": NAME}, {"desc": WORDS, "OID": WORDS, "state": WORDS}
    ),
    "SourceData": Rule((("Boundaries", 0, 0), ("Breaklines", 0, 0), ("DataPoints", 0, 0))),
    "Boundaries": Rule((("Boundary", 1, 0),)),
    "Boundary": Rule(
        (("PntList2D", 0, 1), ("PntList3D", 0, 1)), {"bndType": "(outer|void|island)", "edgeTrim": TRUTH},
        {"area": NUMBER, "desc": WORDS, "name": NAME, "state": WORDS},
    ),
    "Breaklines": Rule((("Breakline", 1, 0),)),
    "Breakline": Rule(
        (("PntList2D", 0, 1), ("PntList3D", 0, 1)),
        allowed={"brkType": "(standard|wall|proximity|nondestructive|lateral|userDefined)", "name": NAME,
                 "desc": WORDS, "state": WORDS},
    ),
    "DataPoints": Rule((("PntList3D", 0, 1),), allowed={"code": WORDS, "name": NAME, "desc": WORDS}),
    "PntList2D": Rule(text=lists(2)),
    "PntList3D": Rule(text=lists(3)),
    "Definition": Rule(
        (("Pnts", 1, 1), ("Faces", 1, 0)), {"surfType": "(TIN|grid)"},
        {"area2DSurf": NUMBER, "area3DSurf": NUMBER, "elevMax": NUMBER, "elevMin": NUMBER},
    ),
    "Pnts": Rule((("P", 1, 0),)),
    "P": Rule(needed={"id": WHOLE}, allowed=DESCRIBED, text=numbers(3)),
    "Faces": Rule((("F", 1, 0),), allowed=DESCRIBED),
    "F": Rule(allowed={"i": "[01]", "n": rf"{WHOLE}( {WHOLE}){{2}}"}, text=rf"{WHOLE}( {WHOLE}){{2}}"),
    "Alignments": Rule((("Alignment", 1, 0),), allowed={"name": NAME, "desc": WORDS, "state": WORDS}),
    "Alignment": Rule(
        (("CoordGeom", 1, 1), ("StaEquation", 0, 0), ("Profile", 0, 0)),
        {"name": NAME, "length": NUMBER, "staStart": NUMBER}, {"desc": WORDS, "oID": WORDS, "state": WORDS},
    ),
    "CoordGeom": Rule(
        (("Line", 0, 0), ("IrregularLine", 0, 0), ("Curve", 0, 0), ("Spiral", 0, 0)), any_order=True
    ),
    "Line": Rule((("Start", 1, 1), ("End", 1, 1)), allowed={"length": NUMBER, "dir": NUMBER, "staStart": NUMBER}),
    "IrregularLine": Rule((("Start", 1, 1), ("End", 1, 1), ("PntList2D", 1, 1)), allowed={"length": NUMBER}),
    "Curve": Rule(
        (("Start", 1, 1), ("Center", 1, 1), ("End", 1, 1)), {"rot": "(cw|ccw)"},
        {"crvType": "(arc|chord)", "length": NUMBER, "radius": NUMBER},
    ),
    "Spiral": Rule(
        (("Start", 1, 1), ("PI", 1, 1), ("End", 1, 1)),
        {"length": NUMBER, "radiusStart": REAL, "radiusEnd": REAL, "rot": "(cw|ccw)", "spiType": "(clothoid|\\w+)"},
    ),
    **{name: Rule(allowed={"pntRef": NAME}, text=numbers(2, 3)) for name in ("Start", "Center", "PI", "End")},
    "StaEquation": Rule(
        needed={"staAhead": NUMBER, "staInternal": NUMBER},
        allowed={"staBack": NUMBER, "staIncrement": "(increasing|decreasing)", "desc": WORDS},
    ),
    "Profile": Rule(
        (("ProfAlign", 0, 0), ("ProfSurf", 0, 0)), allowed={"name": NAME, "staStart": NUMBER, "desc": WORDS},
        any_order=True,
    ),
    "ProfAlign": Rule((("PVI", 0, 0), ("ParaCurve", 0, 0)), {"name": NAME}, {"desc": WORDS}, any_order=True),
    "PVI": Rule(text=numbers(2)),
    "ParaCurve": Rule(needed={"length": NUMBER}, text=numbers(2)),
    "ProfSurf": Rule((("PntList2D", 1, 1),), {"name": NAME}, {"desc": WORDS}),
}  # fmt: skip


def broken_rules(path: Path) -> List[str]:
    """What in the file breaks a rule, one line each; empty for a file that keeps them all."""
    root = ElementTree.parse(path).getroot()
    found: List[str] = []
    _check(root, "", found)
    for surface in root.iter(f"{NAMESPACE}Definition"):
        _check_numbers(surface, found)
    return found


def _check(element: ElementTree.Element, where: str, found: List[str]) -> None:
    name = element.tag[len(NAMESPACE) :] if element.tag.startswith(NAMESPACE) else element.tag
    where = f"{where}/{name}"
    rule = RULES.get(name)
    if rule is None or not element.tag.startswith(NAMESPACE):
        found.append(f"{where}: no such element")
        return
    _check_attributes(element, rule, where, found)
    if not re.fullmatch(rule.text, element.text or "", re.DOTALL):
        found.append(f"{where}: text {(element.text or '')[:60]!r}")
    _check_order([child.tag[len(NAMESPACE) :] for child in element], rule, where, found)
    for child in element:
        _check(child, where, found)


def _check_attributes(element: ElementTree.Element, rule: Rule, where: str, found: List[str]) -> None:
    for name in rule.needed:
        if name not in element.attrib:
            found.append(f"{where}: lacks {name}")
    for name, value in element.attrib.items():
        pattern = rule.needed.get(name, rule.allowed.get(name))
        if pattern is None:
            found.append(f"{where}: no attribute {name}")
        elif not re.fullmatch(pattern, value, re.DOTALL):
            found.append(f"{where}: {name}={value[:60]!r}")


def _check_order(names: List[str], rule: Rule, where: str, found: List[str]) -> None:
    known = [child for child, _, _ in rule.children]
    ranks = [known.index(name) for name in names if name in known]
    if not rule.any_order and ranks != sorted(ranks):
        found.append(f"{where}: order {names[:10]}")
    for name, least, most in rule.children:
        count = names.count(name)
        if count < least or (most and count > most):
            found.append(f"{where}: {count} {name}")
    if where.endswith("/Units") and len(names) != 1:
        found.append(f"{where}: one of Metric and Imperial")


def _check_numbers(definition: ElementTree.Element, found: List[str]) -> None:
    """Numbers of points are unique, faces use them, and neighbours share the edge and are mutual."""
    ids: List[int] = [int(point.get("id", "")) for point in definition.iter(f"{NAMESPACE}P")]
    known: Set[int] = set(ids)
    if len(known) != len(ids) or min(ids) < 1:
        found.append("Pnts: numbers not unique")
    faces = list(definition.iter(f"{NAMESPACE}F"))
    corners = [[int(word) for word in (face.text or "").split()] for face in faces]
    for row in corners:
        if not set(row) <= known or len(set(row)) != 3:
            found.append(f"Faces: {row}")
    for face, row in zip(faces, corners):
        if face.get("n") is None:
            continue
        for side, other in enumerate(map(int, face.get("n", "").split())):
            edge = {row[side], row[(side + 1) % 3]}
            if other and (other > len(faces) or not edge <= set(corners[other - 1])):
                found.append(f"Faces: {row} is not beside {other}")
