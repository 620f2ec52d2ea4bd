"""Names, codes and reasons of files in map tips: text, never part of the page."""

import re
from pathlib import Path
from typing import Any, List

import pytest

STYLES = Path(__file__).parents[2] / "plugin" / "styles"
EVIL = "<b>x</b><script>alert(1)</script>&amp;"
SAFE = "&lt;b&gt;x&lt;/b&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;amp;"


#: Fields of numbers that tips show as they are.
NUMBERS = {"rank", "order"}


def with_tips() -> List[str]:
    return sorted(
        path.name for path in STYLES.glob("*.qml") if re.search(r"<mapTip>[^<]", path.read_text(encoding="utf-8"))
    )


def tip_of(layer: Any) -> str:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils

    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    context.setFeature(next(layer.getFeatures()))
    return str(QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context))


def layer_with(fields: List[str], kind: str) -> Any:
    """A layer of one feature, all of whose ``fields`` but the numbers are texts."""
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    types = {name: "integer" if name in NUMBERS else "string(200)" for name in fields}
    named = "&".join(f"field={name}:{kind_of}" for name, kind_of in types.items())
    layer = QgsVectorLayer(f"{kind}?crs=EPSG:25832&{named}", "layer", "memory")
    assert layer.isValid()
    feature = QgsFeature(layer.fields())
    feature.setAttributes([1 if name in NUMBERS else EVIL for name in fields])
    shapes = {"Point": "POINT(1 1)", "LineString": "LINESTRING(0 0, 1 1)", "Polygon": "POLYGON((0 0, 1 0, 1 1, 0 0))"}
    feature.setGeometry(QgsGeometry.fromWkt(shapes[kind]))
    assert layer.dataProvider().addFeatures([feature])[0]
    return layer


def test_a_point_whose_name_is_markup(project: Any) -> None:
    from plugin.processing.styles import apply_qml

    layer = layer_with(["name", "code", "status", "reason"], "Point")
    apply_qml(layer, "points.qml")
    tip = tip_of(layer)
    assert tip.count(SAFE) >= 3  # name, code and status
    assert "<script" not in tip
    assert set(re.findall(r"<[^>]*>", tip)) <= {"<b>", "</b>", "<br>"}


@pytest.mark.parametrize("name", with_tips())
def test_no_text_of_a_file_becomes_markup(project: Any, name: str) -> None:
    """Each field that a tip uses holds markup, and none of it comes through."""
    from plugin.processing.styles import apply_qml

    text = (STYLES / name).read_text(encoding="utf-8")
    kind = {"0": "Point", "1": "LineString", "2": "Polygon"}[re.search(r"<layerGeometryType>(\d)<", text)[1]]
    tip = re.search(r"<mapTip>(.*?)</mapTip>", text, re.DOTALL)[1]
    fields = sorted(set(re.findall(r"(?:\"|&quot;)(\w+)(?:\"|&quot;)", tip)))
    assert fields
    layer = layer_with(fields, kind)
    apply_qml(layer, name)
    shown = tip_of(layer)
    assert layer.mapTipTemplate()
    assert "script>" not in shown
    assert "</script" not in shown
