;; What one step of an implicit method does with its vectors, two doubles at a time. Pointers are in bytes; `end` is where the first vector
;; ends. Vectors have room for an even number of entries.
(module
  (import "numerics" "memory" (memory 1))

  ;; out = base + Σ weight·K over `count` vectors that stand `stride` bytes apart; the weights in a row at `weights`.
  (func (export "combine")
    (param $out i32) (param $end i32) (param $base i32) (param $K i32) (param $stride i32) (param $count i32) (param $weights i32)
    (local $sum v128) (local $k i32) (local $w i32) (local $last i32)
    (local.set $last (i32.add (local.get $weights) (i32.shl (local.get $count) (i32.const 3))))
    (loop $each
      (local.set $sum (v128.load (local.get $base)))
      (local.set $k (local.get $K))
      (local.set $w (local.get $weights))
      (loop $terms
        (local.set $sum (f64x2.add (local.get $sum)
          (f64x2.mul (v128.load64_splat (local.get $w)) (v128.load (local.get $k)))))
        (local.set $k (i32.add (local.get $k) (local.get $stride)))
        (br_if $terms (i32.lt_u (local.tee $w (i32.add (local.get $w) (i32.const 8))) (local.get $last))))
      (v128.store (local.get $out) (local.get $sum))
      (local.set $base (i32.add (local.get $base) (i32.const 16)))
      (local.set $K (i32.add (local.get $K) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end)))))

  ;; out = a·x + b·y + c·p + d·q/r: a cubic from values x and y, slope p, and rate q of what is stored with capacity r.
  (func (export "cubic")
    (param $out i32) (param $end i32) (param $a f64) (param $x i32) (param $b f64) (param $y i32)
    (param $c f64) (param $p i32) (param $d f64) (param $q i32) (param $r i32)
    (loop $each
      (v128.store (local.get $out) (f64x2.add
        (f64x2.add
          (f64x2.add (f64x2.mul (f64x2.splat (local.get $a)) (v128.load (local.get $x)))
            (f64x2.mul (f64x2.splat (local.get $b)) (v128.load (local.get $y))))
          (f64x2.mul (f64x2.splat (local.get $c)) (v128.load (local.get $p))))
        (f64x2.div (f64x2.mul (f64x2.splat (local.get $d)) (v128.load (local.get $q))) (v128.load (local.get $r)))))
      (local.set $x (i32.add (local.get $x) (i32.const 16)))
      (local.set $y (i32.add (local.get $y) (i32.const 16)))
      (local.set $p (i32.add (local.get $p) (i32.const 16)))
      (local.set $q (i32.add (local.get $q) (i32.const 16)))
      (local.set $r (i32.add (local.get $r) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end)))))

  ;; out = a − (b − c)·w.
  (func (export "residual")
    (param $out i32) (param $end i32) (param $a i32) (param $b i32) (param $c i32) (param $w f64)
    (loop $each
      (v128.store (local.get $out) (f64x2.sub (v128.load (local.get $a)) (f64x2.mul (f64x2.splat (local.get $w))
        (f64x2.sub (v128.load (local.get $b)) (v128.load (local.get $c))))))
      (local.set $a (i32.add (local.get $a) (i32.const 16)))
      (local.set $b (i32.add (local.get $b) (i32.const 16)))
      (local.set $c (i32.add (local.get $c) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end)))))

  ;; out = (a − b)·w.
  (func (export "difference")
    (param $out i32) (param $end i32) (param $a i32) (param $b i32) (param $w f64)
    (loop $each
      (v128.store (local.get $out) (f64x2.mul (f64x2.splat (local.get $w))
        (f64x2.sub (v128.load (local.get $a)) (v128.load (local.get $b)))))
      (local.set $a (i32.add (local.get $a) (i32.const 16)))
      (local.set $b (i32.add (local.get $b) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end)))))

  ;; out = a/b.
  (func (export "quotient") (param $out i32) (param $end i32) (param $a i32) (param $b i32)
    (loop $each
      (v128.store (local.get $out) (f64x2.div (v128.load (local.get $a)) (v128.load (local.get $b))))
      (local.set $a (i32.add (local.get $a) (i32.const 16)))
      (local.set $b (i32.add (local.get $b) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end)))))

  ;; out = out + d; the largest |d|, or what is not a number where there is one.
  (func (export "correct") (param $out i32) (param $end i32) (param $d i32) (result f64)
    (local $v v128) (local $most v128)
    (loop $each
      (local.set $v (v128.load (local.get $d)))
      (local.set $most (f64x2.max (local.get $most) (f64x2.abs (local.get $v))))
      (v128.store (local.get $out) (f64x2.add (v128.load (local.get $out)) (local.get $v)))
      (local.set $d (i32.add (local.get $d) (i32.const 16)))
      (br_if $each (i32.lt_u (local.tee $out (i32.add (local.get $out) (i32.const 16))) (local.get $end))))
    (f64.max (f64x2.extract_lane 0 (local.get $most)) (f64x2.extract_lane 1 (local.get $most)))))
