"""What was learnt as the file that the second reader runs: an ONNX graph, its weights in small whole numbers.

A row of weights is kept as whole numbers up to ``LEVELS`` and a power of two in sixteenths, so that the file packs
well; the runtime multiplies them out once, when it is loaded. Needs ``onnx``, which nothing else here does.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

LEVELS = 3  # the largest whole number of a weight
PARTS = 16  # of a power of two
_ZERO = 160  # the number that stands for 1
_OPSET, _IR = 17, 8

Weights = Mapping[str, NDArray[np.float32]]


def whole(weights: NDArray[np.float32]) -> tuple[NDArray[np.int8], NDArray[np.uint8]]:
    """The whole numbers of each row of ``weights`` (rows, columns), and the number of its power of two."""
    most = np.abs(weights).max(axis=-1, keepdims=True).clip(1e-4)
    power = np.round(PARTS * np.log2(most / LEVELS) + _ZERO).clip(0, 255).astype(np.uint8)
    return np.round(weights / step(power)).clip(-LEVELS, LEVELS).astype(np.int8), power


def step(power: NDArray[np.uint8]) -> NDArray[np.float32]:
    """What one whole number of a row is worth."""
    return np.exp2((power.astype(np.float32) - _ZERO) / PARTS)


class Graph:
    """The nodes and the kept numbers of a graph that is being put together."""

    def __init__(self) -> None:
        from onnx import helper, numpy_helper

        self._make, self._kept = helper, numpy_helper
        self.nodes: list[Any] = []
        self.numbers: list[Any] = []
        self.constant("parts", np.float32(1 / PARTS))
        self.constant("zero", np.float32(_ZERO))
        self.constant("two", np.float32(2))

    def constant(self, name: str, value: Any) -> str:
        """One kept number or table of them."""
        self.numbers.append(self._kept.from_array(np.asarray(value), name))
        return name

    def number(self, name: str, values: Sequence[int]) -> str:
        """A short row of whole numbers."""
        return self.constant(name, np.array(values, np.int64))

    def add(self, kind: str, inputs: Sequence[str], output: str, **told: Any) -> str:
        """One node with one output, which is returned."""
        self.nodes.append(self._make.make_node(kind, list(inputs), [output], **told))
        return output

    def floats(self, name: str, values: NDArray[np.float32]) -> str:
        """Numbers of 16 bits, for what is only a few."""
        half = self.constant(f"{name} half", values.astype(np.float16))
        return self.add("Cast", [half], name, to=1)

    def weights(self, name: str, values: NDArray[np.float32]) -> str:
        """A matrix (or a stack of them) in whole numbers."""
        numbers, power = whole(values)
        first = self.add("Cast", [self.constant(f"{name} whole", numbers)], f"{name} number", to=1)
        told = self.add("Cast", [self.constant(f"{name} power", power)], f"{name} told", to=1)
        less = self.add("Sub", [told, "zero"], f"{name} less")
        part = self.add("Mul", [less, "parts"], f"{name} part")
        each = self.add("Pow", ["two", part], f"{name} step")
        return self.add("Mul", [first, each], name)

    def model(self, inputs: Sequence[Any], outputs: Sequence[Any], told: Mapping[str, str]) -> Any:
        """The finished model with what is told of it."""
        graph = self._make.make_graph(self.nodes, "second reader", list(inputs), list(outputs), self.numbers)
        made = self._make.make_model(graph, opset_imports=[self._make.make_opsetid("", _OPSET)])
        made.ir_version = _IR
        self._make.set_model_props(made, dict(told))
        return made


def export(weights: Weights, told: Mapping[str, str], out: Path) -> None:
    """Write the graph; ``weights`` by the names of ``net.Net``, ``told`` its words and slots."""
    from onnx import TensorProto, checker, helper

    graph = Graph()
    embedded = graph.add("Gather", [graph.weights("words known", weights["emb.weight"]), "words"], "embedded")
    now = graph.add("Unsqueeze", [embedded, graph.number("one", [1])], "steps")
    for layer in (0, 1):
        now = _recurrent(graph, weights, layer, now)
    size = 2 * weights["body.weight_hh_l0"].shape[1]
    states = graph.add("Reshape", [now, graph.number("flat", [-1, size])], "states")
    hidden = _told_of(graph, weights, states, size)
    half = weights["st.weight"].shape[1]
    graph.add("Split", [hidden, graph.number("halves", [half, half])], "of status", axis=1)
    graph.nodes[-1].output.append("of feet")
    foot = graph.add("Gather", [graph.weights("feet known", weights["foot.weight"]), "foot"], "foot told")
    status = graph.add("Relu", [graph.add("Add", ["of status", foot], "status sum")], "status")
    scores = graph.add(
        "Gemm", [status, graph.weights("st", weights["st.weight"]), _bias(graph, weights, "st")], "scores", transB=1
    )
    graph.add("Softmax", [scores], "statuses", axis=1)
    feet = graph.add("Relu", ["of feet"], "feet hidden")
    chances = graph.add(
        "Gemm", [feet, graph.weights("ft", weights["ft.weight"]), _bias(graph, weights, "ft")], "chances", transB=1
    )
    graph.add("Sigmoid", [chances], "feet")
    info = helper.make_tensor_value_info
    inputs = [
        info(name, TensorProto.INT64, [dim])
        for name, dim in (("words", "L"), *((n, "N") for n in ("first", "last", "slot", "foot")))
    ]
    outputs = [info("statuses", TensorProto.FLOAT, ["N", 7]), info("feet", TensorProto.FLOAT, ["N", 5])]
    model = graph.model(inputs, outputs, told)
    checker.check_model(model)
    part = out.with_name(f"{out.name}.part")
    part.write_bytes(model.SerializeToString())
    part.replace(out)


def _bias(graph: Graph, weights: Weights, name: str) -> str:
    return graph.floats(f"{name} bias", weights[f"{name}.bias"])


def _recurrent(graph: Graph, weights: Weights, layer: int, inputs: str) -> str:
    """One layer of gated units, forwards and backwards; torch has its gates in another order."""
    size = weights[f"body.weight_hh_l{layer}"].shape[1]
    both = [f"_l{layer}", f"_l{layer}_reverse"]
    of_input = np.stack([_gates(weights[f"body.weight_ih{end}"], size) for end in both])
    of_state = np.stack([_gates(weights[f"body.weight_hh{end}"], size) for end in both])
    bias = np.stack(
        [np.concatenate([_gates(weights[f"body.bias_{kind}{end}"], size) for kind in ("ih", "hh")]) for end in both]
    )
    names = [
        graph.weights(f"in {layer}", of_input),
        graph.weights(f"state {layer}", of_state),
        graph.floats(f"bias {layer}", bias),
    ]
    out = graph.add(
        "GRU", [inputs, *names], f"out {layer}", hidden_size=size, direction="bidirectional", linear_before_reset=1
    )
    turned = graph.add("Transpose", [out], f"turned {layer}", perm=[0, 2, 1, 3])
    return graph.add("Reshape", [turned, graph.number(f"both {layer}", [0, 1, 2 * size])], f"layer {layer}")


def _gates(rows: NDArray[np.float32], size: int) -> NDArray[np.float32]:
    reset, update, new = rows[:size], rows[size : 2 * size], rows[2 * size :]
    return np.concatenate([update, reset, new])


def _told_of(graph: Graph, weights: Weights, states: str, size: int) -> str:
    """What stands at the first and the last word of each fact and between them on average, and its slot."""
    one = graph.constant("one less", np.int64(1))
    sums = graph.add("CumSum", [states, graph.constant("axis", np.int64(0))], "running")
    padded = graph.add("Pad", [sums, graph.number("row before", [1, 0, 0, 0])], "sums")
    end = graph.add("Sub", ["last", one], "end")
    ends = [graph.add("Gather", [states, at], f"at {at}") for at in ("first", end)]
    over = graph.add(
        "Sub", [graph.add("Gather", [padded, "last"], "upto"), graph.add("Gather", [padded, "first"], "before")], "over"
    )
    count = graph.add("Cast", [graph.add("Sub", ["last", "first"], "count")], "many", to=1)
    mean = graph.add("Div", [over, graph.add("Unsqueeze", [count, "one"], "each")], "mean")
    joined = graph.add("Concat", [*ends, mean], "joined", axis=1)
    hidden = graph.add(
        "Gemm", [joined, graph.weights("hid", weights["hid.weight"]), _bias(graph, weights, "hid")], "hidden", transB=1
    )
    slot = graph.add("Gather", [graph.weights("slots known", weights["slot.weight"]), "slot"], "slot told")
    return graph.add("Add", [hidden, slot], "told of")
