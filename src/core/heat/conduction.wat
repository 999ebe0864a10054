;; Heat content, conductivity and flow at the nodes of a mesh, two doubles at a time. Pointers are in bytes.
(module
  (import "numerics" "memory" (memory 1))

  ;; Adds a material's heat content at its nodes to U and leaves its conductivity there in k, two nodes at a time. `nodes` … `end` holds the
  ;; nodes as byte offsets, `volumes` what each has of the material. A table step holds k, dk/dT, ρcp, dρcp/dT, u (five doubles);
  ;; beyond either end of the table its outermost step is continued.
  (func (export "content")
    (param $table i32) (param $low f64) (param $perDegree f64) (param $last f64)
    (param $nodes i32) (param $end i32) (param $volumes i32) (param $T i32) (param $U i32) (param $k i32)
    (local $i i32) (local $j i32) (local $p i32) (local $q i32)
    (local $x v128) (local $cell v128) (local $s v128) (local $a v128) (local $b v128) (local $u v128)
    (local $lows v128) (local $scales v128) (local $lasts v128) (local $steps v128)
    (local.set $lows (f64x2.splat (local.get $low)))
    (local.set $scales (f64x2.splat (local.get $perDegree)))
    (local.set $lasts (f64x2.splat (local.get $last)))
    (local.set $steps (f64x2.splat (f64.div (f64.const 1) (local.get $perDegree))))
    (loop $pairs
      (local.set $i (i32.load (local.get $nodes)))
      (local.set $j (i32.load offset=4 (local.get $nodes)))
      (local.set $x (f64x2.mul (local.get $scales) (f64x2.sub
        (v128.load64_lane 1 (i32.add (local.get $T) (local.get $j))
          (v128.load64_zero (i32.add (local.get $T) (local.get $i))))
        (local.get $lows))))
      ;; The table step: what is not a number reads the first. Adding 2^52 leaves a whole number in the low bits.
      (local.set $cell (f64x2.floor (f64x2.pmin
        (f64x2.pmax (v128.const f64x2 0 0) (local.get $x)) (local.get $lasts))))
      (local.set $s (f64x2.mul (f64x2.sub (local.get $x) (local.get $cell)) (local.get $steps)))
      (local.set $cell (f64x2.add (local.get $cell) (v128.const f64x2 0x1p52 0x1p52)))
      (local.set $p (i32.add (local.get $table) (i32.mul (i32x4.extract_lane 0 (local.get $cell)) (i32.const 40))))
      (local.set $q (i32.add (local.get $table) (i32.mul (i32x4.extract_lane 2 (local.get $cell)) (i32.const 40))))
      ;; Conductivity.
      (local.set $a (v128.load (local.get $p)))
      (local.set $b (v128.load (local.get $q)))
      (local.set $u (f64x2.add
        (i8x16.shuffle 0 1 2 3 4 5 6 7 16 17 18 19 20 21 22 23 (local.get $a) (local.get $b))
        (f64x2.mul (local.get $s)
          (i8x16.shuffle 8 9 10 11 12 13 14 15 24 25 26 27 28 29 30 31 (local.get $a) (local.get $b)))))
      (v128.store64_lane 0 (i32.add (local.get $k) (local.get $i)) (local.get $u))
      (v128.store64_lane 1 (i32.add (local.get $k) (local.get $j)) (local.get $u))
      ;; u + s·(ρcp + s/2·dρcp/dT), times the volume.
      (local.set $a (v128.load offset=16 (local.get $p)))
      (local.set $b (v128.load offset=16 (local.get $q)))
      (local.set $u (f64x2.mul (v128.load (local.get $volumes)) (f64x2.add
        (v128.load64_lane offset=32 1 (local.get $q) (v128.load64_zero offset=32 (local.get $p)))
        (f64x2.mul (local.get $s) (f64x2.add
          (i8x16.shuffle 0 1 2 3 4 5 6 7 16 17 18 19 20 21 22 23 (local.get $a) (local.get $b))
          (f64x2.mul (f64x2.mul (v128.const f64x2 0.5 0.5) (local.get $s))
            (i8x16.shuffle 8 9 10 11 12 13 14 15 24 25 26 27 28 29 30 31 (local.get $a) (local.get $b))))))))
      (local.set $i (i32.add (local.get $U) (local.get $i)))
      (local.set $j (i32.add (local.get $U) (local.get $j)))
      (f64.store (local.get $i) (f64.add (f64.load (local.get $i)) (f64x2.extract_lane 0 (local.get $u))))
      (f64.store (local.get $j) (f64.add (f64.load (local.get $j)) (f64x2.extract_lane 1 (local.get $u))))
      (local.set $volumes (i32.add (local.get $volumes) (i32.const 16)))
      (br_if $pairs (i32.lt_u (local.tee $nodes (i32.add (local.get $nodes) (i32.const 8))) (local.get $end)))))

  ;; Adds to F what flows between the nodes of quads. A run is a row of quads of one material: pointer to its conductivities, pointer to
  ;; its metric, byte offset of its first node, quads. A pair of lanes holds the lower and the upper node, or side, of a quad; its twelve metric numbers
  ;; stand in pairs: m12 left, m12 right, m11 left, m11 right, m22 left, m22 right. `row` is the bytes from a node to the one above it.
  (func (export "flow") (param $runs i32) (param $end i32) (param $T i32) (param $F i32) (param $row i32)
    (local $k i32) (local $m i32) (local $a i32) (local $c i32) (local $stop i32) (local $f i32)
    (local $T0 v128) (local $T1 v128) (local $k0 v128) (local $k1 v128) (local $along v128)
    (local $left v128) (local $right v128) (local $x0 v128) (local $x1 v128)
    (local $q v128) (local $side v128) (local $other v128) (local $carry v128)
    ;; `k` and `F` as distances from the temperatures, so that one offset walks along all three.
    (local.set $F (i32.sub (local.get $F) (local.get $T)))
    (loop $eachRun
      (local.set $k (i32.sub (i32.load (local.get $runs)) (local.get $T)))
      (local.set $m (i32.load offset=4 (local.get $runs)))
      (local.set $a (i32.add (local.get $T) (i32.load offset=8 (local.get $runs))))
      (local.set $stop (i32.add (local.get $a) (i32.shl (i32.load offset=12 (local.get $runs)) (i32.const 3))))
      (local.set $c (i32.add (local.get $a) (local.get $row)))
      (local.set $T0 (v128.load64_lane 1 (local.get $c) (v128.load64_zero (local.get $a))))
      (local.set $k0 (v128.load64_lane 1 (i32.add (local.get $k) (local.get $c))
        (v128.load64_zero (i32.add (local.get $k) (local.get $a)))))
      (local.set $left (f64x2.sub
        (i8x16.shuffle 8 9 10 11 12 13 14 15 8 9 10 11 12 13 14 15 (local.get $T0) (local.get $T0))
        (i8x16.shuffle 0 1 2 3 4 5 6 7 0 1 2 3 4 5 6 7 (local.get $T0) (local.get $T0))))
      (local.set $carry (v128.const i64x2 0 0))
      (loop $quads
        (local.set $T1 (v128.load64_lane offset=8 1 (local.get $c) (v128.load64_zero offset=8 (local.get $a))))
        (local.set $k1 (v128.load64_lane offset=8 1 (i32.add (local.get $k) (local.get $c))
          (v128.load64_zero offset=8 (i32.add (local.get $k) (local.get $a)))))
        (local.set $along (f64x2.sub (local.get $T1) (local.get $T0)))
        (local.set $right (f64x2.sub
          (i8x16.shuffle 8 9 10 11 12 13 14 15 8 9 10 11 12 13 14 15 (local.get $T1) (local.get $T1))
          (i8x16.shuffle 0 1 2 3 4 5 6 7 0 1 2 3 4 5 6 7 (local.get $T1) (local.get $T1))))
        (local.set $x0 (f64x2.mul (local.get $k0) (v128.load (local.get $m))))
        (local.set $x1 (f64x2.mul (local.get $k1) (v128.load offset=16 (local.get $m))))
        ;; Flow along the lower and the upper side.
        (local.set $q (f64x2.add
          (f64x2.mul (local.get $along) (f64x2.add
            (f64x2.mul (local.get $k0) (v128.load offset=32 (local.get $m)))
            (f64x2.mul (local.get $k1) (v128.load offset=48 (local.get $m)))))
          (f64x2.add (f64x2.mul (local.get $left) (local.get $x0)) (f64x2.mul (local.get $right) (local.get $x1)))))
        ;; Flow up the left and the right side, as what its lower and its upper end give.
        (local.set $side (f64x2.add
          (f64x2.mul (local.get $left) (f64x2.mul (local.get $k0) (v128.load offset=64 (local.get $m))))
          (f64x2.mul (local.get $along) (local.get $x0))))
        (local.set $other (f64x2.add
          (f64x2.mul (local.get $right) (f64x2.mul (local.get $k1) (v128.load offset=80 (local.get $m))))
          (f64x2.mul (local.get $along) (local.get $x1))))
        ;; (left, −left) and (right, −right): what a node below gains, one above loses.
        (local.set $side (v128.xor (v128.const f64x2 0 -0) (f64x2.add (local.get $side)
          (i8x16.shuffle 8 9 10 11 12 13 14 15 0 1 2 3 4 5 6 7 (local.get $side) (local.get $side)))))
        (local.set $other (v128.xor (v128.const f64x2 0 -0) (f64x2.add (local.get $other)
          (i8x16.shuffle 8 9 10 11 12 13 14 15 0 1 2 3 4 5 6 7 (local.get $other) (local.get $other)))))
        (local.set $side (f64x2.add (f64x2.add (local.get $side) (local.get $q)) (local.get $carry)))
        (local.set $carry (f64x2.sub (local.get $other) (local.get $q)))
        (local.set $f (i32.add (local.get $F) (local.get $a)))
        (f64.store (local.get $f) (f64.add (f64.load (local.get $f)) (f64x2.extract_lane 0 (local.get $side))))
        (local.set $f (i32.add (local.get $F) (local.get $c)))
        (f64.store (local.get $f) (f64.add (f64.load (local.get $f)) (f64x2.extract_lane 1 (local.get $side))))
        (local.set $T0 (local.get $T1))
        (local.set $k0 (local.get $k1))
        (local.set $left (local.get $right))
        (local.set $m (i32.add (local.get $m) (i32.const 96)))
        (local.set $c (i32.add (local.get $c) (i32.const 8)))
        (br_if $quads (i32.lt_u (local.tee $a (i32.add (local.get $a) (i32.const 8))) (local.get $stop))))
      (local.set $f (i32.add (local.get $F) (local.get $a)))
      (f64.store (local.get $f) (f64.add (f64.load (local.get $f)) (f64x2.extract_lane 0 (local.get $carry))))
      (local.set $f (i32.add (local.get $F) (local.get $c)))
      (f64.store (local.get $f) (f64.add (f64.load (local.get $f)) (f64x2.extract_lane 1 (local.get $carry))))
      (br_if $eachRun (i32.lt_u (local.tee $runs (i32.add (local.get $runs) (i32.const 16))) (local.get $end))))))
