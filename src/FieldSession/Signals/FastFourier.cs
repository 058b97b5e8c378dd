using System.Numerics;

namespace FieldSession.Signals;

/// <summary>
/// The discrete Fourier transform of a block whose length is a power of two (radix 2, any textbook of signal processing). One object serves
/// blocks of one length and one caller at a time.
/// </summary>
public sealed class FastFourier
{
    private readonly int _length;
    private readonly int[] _reversed;
    private readonly double[] _cosines;
    private readonly double[] _sines;
    private readonly double[] _real;
    private readonly double[] _imaginary;

    /// <summary>A transform for blocks of a length.</summary>
    /// <param name="length">Samples of a block; a power of two, 4 or more.</param>
    public FastFourier(int length)
    {
        if (length < 4 || !BitOperations.IsPow2(length))
        {
            throw new ArgumentOutOfRangeException(nameof(length), "a power of two from 4 on");
        }

        // two neighbouring real samples make one complex number, so that half the length is transformed
        _length = length / 2;
        _real = new double[_length];
        _imaginary = new double[_length];
        _reversed = new int[_length];
        int bits = BitOperations.Log2((uint)_length);
        for (int i = 0; i < _length; i++)
        {
            _reversed[i] = (_reversed[i >> 1] >> 1) | ((i & 1) << (bits - 1));
        }

        // the turns of a step of width h are from h on
        _cosines = new double[2 * _length];
        _sines = new double[2 * _length];
        for (int half = 1; half <= _length; half *= 2)
        {
            for (int k = 0; k < half && half + k < _cosines.Length; k++)
            {
                (_sines[half + k], _cosines[half + k]) = Math.SinCos(-Math.PI * k / half);
            }
        }
    }

    /// <summary>Squares of the magnitudes, from 0 Hz to half the rate.</summary>
    /// <param name="block">The samples, as many as the length.</param>
    /// <param name="power">Half the length and one more.</param>
    public void Power(ReadOnlySpan<double> block, Span<double> power)
    {
        for (int i = 0; i < _length; i++)
        {
            int from = _reversed[i];
            _real[i] = block[2 * from];
            _imaginary[i] = block[(2 * from) + 1];
        }

        for (int half = 1; half < _length; half *= 2)
        {
            Step(half);
        }

        power[0] = Square(_real[0] + _imaginary[0]);
        power[_length] = Square(_real[0] - _imaginary[0]);
        for (int k = 1; k < _length; k++)
        {
            double evenReal = (_real[k] + _real[_length - k]) / 2;
            double evenImaginary = (_imaginary[k] - _imaginary[_length - k]) / 2;
            double oddReal = (_imaginary[k] + _imaginary[_length - k]) / 2;
            double oddImaginary = (_real[_length - k] - _real[k]) / 2;
            double c = _cosines[_length + k];
            double s = _sines[_length + k];
            power[k] = Square(evenReal + (c * oddReal) - (s * oddImaginary)) + Square(evenImaginary + (c * oddImaginary) + (s * oddReal));
        }
    }

    /// <summary>Transforms complex numbers in place, half as many as the block's length.</summary>
    /// <param name="real">Real parts.</param>
    /// <param name="imaginary">Imaginary parts.</param>
    public void Transform(Span<double> real, Span<double> imaginary)
    {
        for (int i = 0; i < _length; i++)
        {
            _real[i] = real[_reversed[i]];
            _imaginary[i] = imaginary[_reversed[i]];
        }

        for (int half = 1; half < _length; half *= 2)
        {
            Step(half);
        }

        _real.CopyTo(real);
        _imaginary.CopyTo(imaginary);
    }

    private static double Square(double x) => x * x;

    private void Step(int half)
    {
        ReadOnlySpan<double> cosines = _cosines.AsSpan(half, half);
        ReadOnlySpan<double> sines = _sines.AsSpan(half, half);
        for (int at = 0; at < _length; at += 2 * half)
        {
            Butterflies(
                _real.AsSpan(at, half),
                _imaginary.AsSpan(at, half),
                _real.AsSpan(at + half, half),
                _imaginary.AsSpan(at + half, half),
                cosines,
                sines
            );
        }
    }

    private static void Butterflies(
        Span<double> real,
        Span<double> imaginary,
        Span<double> farReal,
        Span<double> farImaginary,
        ReadOnlySpan<double> cosines,
        ReadOnlySpan<double> sines
    )
    {
        int width = Vector<double>.Count;
        int i = 0;
        for (; i + width <= real.Length; i += width)
        {
            Vector<double> c = new(cosines[i..]);
            Vector<double> s = new(sines[i..]);
            Vector<double> x = new(farReal[i..]);
            Vector<double> y = new(farImaginary[i..]);
            Vector<double> turnedX = (x * c) - (y * s);
            Vector<double> turnedY = (x * s) + (y * c);
            Vector<double> nearX = new(real[i..]);
            Vector<double> nearY = new(imaginary[i..]);
            (nearX + turnedX).CopyTo(real[i..]);
            (nearY + turnedY).CopyTo(imaginary[i..]);
            (nearX - turnedX).CopyTo(farReal[i..]);
            (nearY - turnedY).CopyTo(farImaginary[i..]);
        }

        for (; i < real.Length; i++)
        {
            double turnedX = (farReal[i] * cosines[i]) - (farImaginary[i] * sines[i]);
            double turnedY = (farReal[i] * sines[i]) + (farImaginary[i] * cosines[i]);
            (real[i], farReal[i]) = (real[i] + turnedX, real[i] - turnedX);
            (imaginary[i], farImaginary[i]) = (imaginary[i] + turnedY, imaginary[i] - turnedY);
        }
    }
}
